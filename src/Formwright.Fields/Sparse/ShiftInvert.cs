namespace Formwright.Fields.Sparse;

/// <summary>
/// The lowest eigenpairs of K x = λ M x by block Lanczos on (K - σM)⁻¹M with full reorthogonalisation (Ericsson &amp; Ruhe, Math. Comp. 35,
/// 1980; Grimes, Lewis &amp; Simon, SIAM J. Matrix Anal. 15, 1994). Blocks of four find eigenvalues of multiplicity up to four.
/// </summary>
public static class ShiftInvert
{
    /// <summary>How far a Ritz vector may be from an eigenvector: |Ax - θx| over θ in the norm of M.</summary>
    public const double DefaultTolerance = 1e-10;

    /// <summary>The <paramref name="count"/> lowest eigenpairs, counted from the shift upwards.</summary>
    /// <param name="stiffness">K, symmetric.</param>
    /// <param name="mass">M, symmetric, positive definite, on the same pattern.</param>
    /// <param name="order">Order of elimination for that pattern.</param>
    /// <param name="count">How many; at most an eighth of the unknowns.</param>
    /// <param name="shift">σ, below all eigenvalues. 0 if K is positive definite, negative if K is singular (a free plate).</param>
    /// <param name="tolerance">See <see cref="DefaultTolerance"/>.</param>
    /// <exception cref="ArithmeticException">K - σM is singular.</exception>
    public static EigenPairs Lowest(
        SymmetricMatrix stiffness,
        SymmetricMatrix mass,
        EliminationOrder order,
        int count,
        double shift = 0,
        double tolerance = DefaultTolerance
    )
    {
        ArgumentNullException.ThrowIfNull(stiffness);
        ArgumentNullException.ThrowIfNull(mass);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, stiffness.Size / 8);
        if (!double.IsFinite(shift) || !(tolerance > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(shift), "Shift or tolerance is no use.");
        }

        SparseFactor factor = SparseFactor.Of(
            shift == 0 ? stiffness : stiffness.Plus(-shift, mass),
            order
        );
        int blocks = Math.Min(stiffness.Size / Lanes.Width, (count / 2) + 60);
        var basis = new KrylovBasis(mass, blocks + 1);
        double[] image = basis.RandomBlock();
        factor.SolveLanes(image);
        basis.Append(image);
        int check = Math.Min(blocks, ((2 * count) + 39) / Lanes.Width);
        while (true)
        {
            image = [.. basis.NewestMass];
            factor.SolveLanes(image);
            basis.Append(image);
            int done = basis.Blocks - 1;
            if (done < check)
            {
                continue;
            }

            (double[] theta, double[][] coefficients, double[] misses) = basis.Ritz();
            bool converged = true;
            for (int i = 0; i < count; i++)
            {
                converged &= misses[i] <= tolerance * theta[i];
            }

            if (converged || done >= blocks)
            {
                double[] found = [.. theta.Take(count + 1).Select(value => shift + (1 / value))];
                double[][] vectors = basis.Combine([.. coefficients.Take(count)]);
                return Finish(
                    new(stiffness, mass, factor, shift),
                    found,
                    vectors,
                    converged,
                    basis.Blocks
                );
            }

            check = done + 3;
        }
    }

    private readonly record struct Problem(
        SymmetricMatrix Stiffness,
        SymmetricMatrix Mass,
        SparseFactor Factor,
        double Shift
    );

    private static EigenPairs Finish(
        Problem problem,
        double[] found,
        double[][] vectors,
        bool converged,
        int solves
    )
    {
        int count = vectors.Length;
        double[] residuals = new double[count];
        int size = problem.Mass.Size;
        double[] lanes = new double[size * Lanes.Width];
        double[] mass = new double[lanes.Length];
        double[] stiff = new double[lanes.Length];
        for (int first = 0; first < count; first += Lanes.Width)
        {
            int width = Math.Min(Lanes.Width, count - first);
            Array.Clear(lanes);
            for (int k = 0; k < width; k++)
            {
                Lanes.Put(vectors[first + k], lanes, k);
            }

            // One more step of the operator smooths out what rounding left of the highest eigenvectors.
            problem.Mass.MultiplyLanes(lanes, mass);
            mass.CopyTo(lanes, 0);
            problem.Factor.SolveLanes(lanes);
            problem.Mass.MultiplyLanes(lanes, mass);
            problem.Stiffness.MultiplyLanes(lanes, stiff);
            for (int k = 0; k < width; k++)
            {
                double[] x = Lanes.Take(lanes, k);
                double[] mx = Lanes.Take(mass, k);
                double[] kx = Lanes.Take(stiff, k);
                double lambda = found[first + k];
                double missSquared = 0;
                double massSquared = 0;
                double length = 0;
                for (int i = 0; i < size; i++)
                {
                    double miss = kx[i] - (lambda * mx[i]);
                    missSquared += miss * miss;
                    massSquared += mx[i] * mx[i];
                    length += x[i] * mx[i];
                }

                double scale = Math.Max(Math.Abs(lambda), Math.Abs(problem.Shift));
                residuals[first + k] = Math.Sqrt(missSquared / massSquared) / scale;
                double unit = 1 / Math.Sqrt(length);
                vectors[first + k] = Array.ConvertAll(x, value => value * unit);
            }
        }

        return new(
            [.. found.Take(count)],
            [.. vectors],
            [.. residuals],
            converged,
            Missed(problem, found, count),
            solves + ((count + Lanes.Width - 1) / Lanes.Width)
        );
    }

    /// <summary>Counts the eigenvalues below a place in the highest clear gap and compares with those found.</summary>
    private static int Missed(Problem problem, double[] found, int count)
    {
        for (int below = count; below >= 1; below--)
        {
            double low = found[below - 1];
            double high = below < found.Length ? found[below] : double.PositiveInfinity;
            double scale = Math.Max(Math.Abs(low), Math.Abs(problem.Shift));
            double step = Math.Min((high - low) / 2, 1e-3 * scale);
            if (step > 1e-6 * scale)
            {
                SparseFactor counter = problem.Factor.Again(
                    problem.Stiffness.Plus(-(low + step), problem.Mass)
                );
                return counter.NegativePivots - below;
            }
        }

        return 0;
    }
}
