using MathNet.Numerics.LinearAlgebra;

namespace Formwright.Instrument.Boards;

/// <summary>
/// Bending vibrations of a thin rectangular orthotropic plate, free at its edges, grain along the length: Ritz's method (1909) with
/// products of Legendre polynomials, whose derivatives are exact in the same basis. Frequencies are upper bounds that fall to the
/// true ones as terms are added; shear deformation and the weight of the air are left out.
/// </summary>
/// <param name="LengthMm">Length, mm.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="LongNmm">D_L, N·mm.</param>
/// <param name="CrossNmm">D_R, N·mm.</param>
/// <param name="CouplingNmm">ν_LR D_R, N·mm.</param>
/// <param name="TwistNmm">G h³/12, N·mm.</param>
/// <param name="KgPerM2">Mass per area, kg/m².</param>
public sealed record FreePlate(
    double LengthMm,
    double WidthMm,
    double LongNmm,
    double CrossNmm,
    double CouplingNmm,
    double TwistNmm,
    double KgPerM2
)
{
    /// <summary>Polynomials of each parity and direction; with six the first modes of a tone-wood plate stand to 1e-5.</summary>
    private const int Terms = 6;

    private static readonly double[,] First = Derivative();
    private static readonly double[,] Second = Product(First, First);

    /// <summary>
    /// The three modes that a maker listens for: the lowest that bends mostly along the length, the lowest that bends mostly across
    /// (both even both ways), and the lowest that twists (odd both ways).
    /// </summary>
    public (FreePlateMode Along, FreePlateMode Across, FreePlateMode Twist) TapModes()
    {
        IReadOnlyList<FreePlateMode> even = Modes(0, 0);
        return (
            even.First(mode => mode.LongShare > mode.CrossShare),
            even.First(mode => mode.CrossShare > mode.LongShare),
            Modes(1, 1)[0]
        );
    }

    /// <summary>The lowest modes of all parities, in order of frequency.</summary>
    public IReadOnlyList<FreePlateMode> Lowest(int count) =>
        [
            .. new[] { (0, 0), (0, 1), (1, 0), (1, 1) }
                .SelectMany(parity => Modes(parity.Item1, parity.Item2))
                .OrderBy(mode => mode.FrequencyHz)
                .Take(count),
        ];

    /// <summary>The modes of one parity (0 even, 1 odd) without those of a rigid body.</summary>
    private IReadOnlyList<FreePlateMode> Modes(int parityX, int parityY)
    {
        const int Size = Terms * Terms;
        double perX = Math.Pow(2 / LengthMm, 2);
        double perY = Math.Pow(2 / WidthMm, 2);
        Matrix<double> stiffness = Matrix<double>.Build.Dense(Size, Size);
        Matrix<double> along = Matrix<double>.Build.Dense(Size, Size);
        Matrix<double> across = Matrix<double>.Build.Dense(Size, Size);
        for (int i = 0; i < Size; i++)
        {
            int m = (2 * (i / Terms)) + parityX;
            int n = (2 * (i % Terms)) + parityY;
            for (int j = 0; j < Size; j++)
            {
                int p = (2 * (j / Terms)) + parityX;
                int q = (2 * (j % Terms)) + parityY;
                along[i, j] = n == q ? LongNmm * perX * perX * Gram(Second, m, p) : 0;
                across[i, j] = m == p ? CrossNmm * perY * perY * Gram(Second, n, q) : 0;
                double coupled = (Second[p, m] * Second[n, q]) + (Second[m, p] * Second[q, n]);
                double twist = Gram(First, m, p) * Gram(First, n, q);
                stiffness[i, j] =
                    along[i, j]
                    + across[i, j]
                    + (perX * perY * ((CouplingNmm * coupled) + (4 * TwistNmm * twist)));
            }
        }

        var solved = stiffness.Evd(Symmetricity.Symmetric);
        // Even-even holds the lift, the mixed ones a tilt each, odd-odd none: rigid, at frequency 0.
        int rigid = parityX + parityY < 2 ? 1 : 0;
        // N·mm / (kg/m² · mm⁴) = 1e9 / s².
        return
        [
            .. Enumerable
                .Range(rigid, Size - rigid)
                .Select(k =>
                {
                    Vector<double> shape = solved.EigenVectors.Column(k);
                    double value = solved.EigenValues[k].Real;
                    return new FreePlateMode(
                        Math.Sqrt(Math.Max(0, value) * 1e9 / KgPerM2) / (2 * Math.PI),
                        shape * along * shape / value,
                        shape * across * shape / value
                    );
                }),
        ];
    }

    // ∫ f_i f_j of derivatives given by their coefficients in the orthonormal basis.
    private static double Gram(double[,] derivative, int i, int j)
    {
        double sum = 0;
        for (int k = 0; k < derivative.GetLength(0); k++)
        {
            sum += derivative[k, i] * derivative[k, j];
        }

        return sum;
    }

    // Orthonormal Legendre polynomials: P_m' = Σ (2k+1) P_k over k = m-1, m-3, …
    private static double[,] Derivative()
    {
        const int Count = 2 * Terms;
        double[,] d = new double[Count, Count];
        for (int m = 0; m < Count; m++)
        {
            for (int k = m - 1; k >= 0; k -= 2)
            {
                d[k, m] = Math.Sqrt(((2 * m) + 1.0) * ((2 * k) + 1.0));
            }
        }

        return d;
    }

    private static double[,] Product(double[,] a, double[,] b)
    {
        int count = a.GetLength(0);
        double[,] c = new double[count, count];
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j < count; j++)
            {
                for (int k = 0; k < count; k++)
                {
                    c[i, j] += a[i, k] * b[k, j];
                }
            }
        }

        return c;
    }
}
