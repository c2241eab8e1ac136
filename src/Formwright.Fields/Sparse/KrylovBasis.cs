using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Formwright.Fields.Sparse;

/// <summary>
/// A growing M-orthonormal basis in blocks of four vectors, and the operator's matrix in it. Every new block is orthogonalised twice
/// against all before it (Daniel, Gragg, Kaufman &amp; Stewart, Math. Comp. 30, 1976).
/// </summary>
internal sealed class KrylovBasis(SymmetricMatrix mass, int mostBlocks)
{
    // Derived: after two passes a vector this much shorter than it came consists of rounding.
    private const double Lost = 1e-10;

    private readonly List<double[]> blocks = [];
    private readonly List<double[]> massBlocks = [];
    private readonly double[] projected = new double[
        mostBlocks * mostBlocks * Lanes.Width * Lanes.Width
    ];
    private readonly Random random = new(20240229);

    /// <summary>R of the last block: how strongly the operator leads out of the basis.</summary>
    private double[] last = new double[Lanes.Width * Lanes.Width];

    internal int Blocks => blocks.Count;

    internal int Vectors => blocks.Count * Lanes.Width;

    private int Stride => mostBlocks * Lanes.Width;

    /// <summary>M times the newest block.</summary>
    internal double[] NewestMass => massBlocks[^1];

    internal double[] RandomBlock()
    {
        double[] block = new double[mass.Size * Lanes.Width];
        for (int i = 0; i < block.Length; i++)
        {
            block[i] = (2 * random.NextDouble()) - 1;
        }

        return block;
    }

    /// <summary>Takes in the operator's image of the newest block, or a start.</summary>
    internal void Append(double[] image)
    {
        int column = (blocks.Count - 1) * Lanes.Width;
        double[] removed = new double[Lanes.Width];
        for (int pass = 0; pass < 2; pass++)
        {
            for (int b = 0; b < blocks.Count; b++)
            {
                double[] share = Project(massBlocks[b], image);
                Remove(blocks[b], share, image);
                for (int i = 0; i < share.Length; i++)
                {
                    int row = (b * Lanes.Width) + (i / Lanes.Width);
                    projected[(row * Stride) + column + (i % Lanes.Width)] += share[i];
                    removed[i % Lanes.Width] += share[i] * share[i];
                }
            }
        }

        double[] massImage = new double[image.Length];
        double[] r = Orthonormalise(image, massImage, removed);
        last = Times(Orthonormalise(image, massImage, new double[Lanes.Width]), r);
        blocks.Add(image);
        massBlocks.Add(massImage);
    }

    /// <summary>
    /// Ritz values of all blocks but the newest, largest first, the coefficients of each vector, and by how much the operator misses it.
    /// </summary>
    internal (double[] Values, double[][] Coefficients, double[] Misses) Ritz()
    {
        int n = Vectors - Lanes.Width;
        double[] matrix = new double[n * n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                // The block below the diagonal is the one that Append measured as R; the upper triangle holds the projections.
                matrix[(i * n) + j] = matrix[(j * n) + i] = projected[(j * Stride) + i];
            }
        }

        (double[] values, double[][] vectors) = JacobiEigen.Solve(matrix, n);
        double[] misses = new double[n];
        for (int i = 0; i < n; i++)
        {
            double sum = 0;
            for (int row = 0; row < Lanes.Width; row++)
            {
                double miss = 0;
                for (int k = 0; k < Lanes.Width; k++)
                {
                    miss += last[(row * Lanes.Width) + k] * vectors[i][n - Lanes.Width + k];
                }

                sum += miss * miss;
            }

            misses[i] = Math.Sqrt(sum);
        }

        return (values, vectors, misses);
    }

    /// <summary>The vectors with the given coefficients, four at a time.</summary>
    internal double[][] Combine(IReadOnlyList<double[]> coefficients)
    {
        double[][] vectors = new double[coefficients.Count][];
        for (int first = 0; first < coefficients.Count; first += Lanes.Width)
        {
            double[] sum = new double[mass.Size * Lanes.Width];
            for (int b = 0; b < blocks.Count - 1; b++)
            {
                double[] share = new double[Lanes.Width * Lanes.Width];
                for (int i = 0; i < share.Length; i++)
                {
                    int vector = first + (i % Lanes.Width);
                    share[i] =
                        vector < coefficients.Count
                            ? -coefficients[vector][(b * Lanes.Width) + (i / Lanes.Width)]
                            : 0;
                }

                Remove(blocks[b], share, sum);
            }

            for (int k = 0; k < Lanes.Width && first + k < coefficients.Count; k++)
            {
                vectors[first + k] = Lanes.Take(sum, k);
            }
        }

        return vectors;
    }

    /// <summary>Inner products of two blocks, row by row.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double[] Project(double[] left, double[] right)
    {
        Vector256<double> a = default,
            b = default,
            c = default,
            d = default;
        for (int i = 0; i < left.Length; i += Lanes.Width)
        {
            Vector256<double> x = Vector256.LoadUnsafe(ref right[i]);
            a = Vector256.MultiplyAddEstimate(Vector256.Create(left[i]), x, a);
            b = Vector256.MultiplyAddEstimate(Vector256.Create(left[i + 1]), x, b);
            c = Vector256.MultiplyAddEstimate(Vector256.Create(left[i + 2]), x, c);
            d = Vector256.MultiplyAddEstimate(Vector256.Create(left[i + 3]), x, d);
        }

        double[] products = new double[Lanes.Width * Lanes.Width];
        Lanes.Store(a, products, 0);
        Lanes.Store(b, products, 1);
        Lanes.Store(c, products, 2);
        Lanes.Store(d, products, 3);
        return products;
    }

    /// <summary><c>target -= block · share</c>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Remove(double[] block, double[] share, double[] target)
    {
        Vector256<double> a = -Lanes.Load(share, 0);
        Vector256<double> b = -Lanes.Load(share, 1);
        Vector256<double> c = -Lanes.Load(share, 2);
        Vector256<double> d = -Lanes.Load(share, 3);
        for (int i = 0; i < block.Length; i += Lanes.Width)
        {
            Vector256<double> sum = Vector256.LoadUnsafe(ref target[i]);
            sum = Vector256.MultiplyAddEstimate(Vector256.Create(block[i]), a, sum);
            sum = Vector256.MultiplyAddEstimate(Vector256.Create(block[i + 1]), b, sum);
            sum = Vector256.MultiplyAddEstimate(Vector256.Create(block[i + 2]), c, sum);
            sum = Vector256.MultiplyAddEstimate(Vector256.Create(block[i + 3]), d, sum);
            sum.StoreUnsafe(ref target[i]);
        }
    }

    /// <summary>
    /// Gram-Schmidt within a block, which gives R; a vector that vanishes is replaced by a random one that the operator does not reach.
    /// </summary>
    private double[] Orthonormalise(double[] block, double[] massImage, double[] removed)
    {
        double[] r = new double[Lanes.Width * Lanes.Width];
        mass.MultiplyLanes(block, massImage);
        for (int k = 0; k < Lanes.Width; k++)
        {
            double before = Dot(massImage, k, block, k) + removed[k];
            for (int j = 0; j < k; j++)
            {
                double share = Dot(massImage, j, block, k);
                r[(j * Lanes.Width) + k] = share;
                AddTo(block, k, j, -share);
                AddTo(massImage, k, j, -share);
            }

            double rest = Dot(massImage, k, block, k);
            if (!(rest > Lost * Lost * before))
            {
                rest = Replace(block, massImage, k);
            }
            else
            {
                r[(k * Lanes.Width) + k] = Math.Sqrt(rest);
            }

            Scale(block, k, 1 / Math.Sqrt(rest));
            Scale(massImage, k, 1 / Math.Sqrt(rest));
        }

        return r;
    }

    private double Replace(double[] block, double[] massImage, int k)
    {
        for (int i = k; i < block.Length; i += Lanes.Width)
        {
            block[i] = (2 * random.NextDouble()) - 1;
        }

        double[] ownMass = new double[block.Length];
        for (int pass = 0; pass < 3; pass++)
        {
            for (int b = 0; b < blocks.Count; b++)
            {
                double[] share = Project(massBlocks[b], block);
                for (int i = 0; i < share.Length; i++)
                {
                    share[i] = i % Lanes.Width == k ? share[i] : 0;
                }

                Remove(blocks[b], share, block);
            }

            for (int j = 0; j < k; j++)
            {
                AddTo(block, k, j, -Dot(massImage, j, block, k));
            }
        }

        mass.MultiplyLanes(block, ownMass);
        for (int i = k; i < block.Length; i += Lanes.Width)
        {
            massImage[i] = ownMass[i];
        }

        return Dot(massImage, k, block, k);
    }

    private static double[] Times(double[] left, double[] right)
    {
        double[] product = new double[Lanes.Width * Lanes.Width];
        for (int i = 0; i < Lanes.Width; i++)
        {
            for (int k = 0; k < Lanes.Width; k++)
            {
                for (int j = 0; j < Lanes.Width; j++)
                {
                    product[(i * Lanes.Width) + k] +=
                        left[(i * Lanes.Width) + j] * right[(j * Lanes.Width) + k];
                }
            }
        }

        return product;
    }

    private static double Dot(double[] left, int j, double[] right, int k)
    {
        double sum = 0;
        for (int i = 0; i < left.Length; i += Lanes.Width)
        {
            sum += left[i + j] * right[i + k];
        }

        return sum;
    }

    private static void AddTo(double[] block, int target, int source, double factor)
    {
        for (int i = 0; i < block.Length; i += Lanes.Width)
        {
            block[i + target] += factor * block[i + source];
        }
    }

    private static void Scale(double[] block, int k, double factor)
    {
        for (int i = k; i < block.Length; i += Lanes.Width)
        {
            block[i] *= factor;
        }
    }
}
