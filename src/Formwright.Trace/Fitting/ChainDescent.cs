using Formwright.Curves;

namespace Formwright.Trace.Fitting;

/// <summary>
/// Fits a <see cref="HalfChain"/> with a given count of segments to weighted places: least squares of the normal distances, nodes and
/// curvatures free, the end held on the centreline and across it (Gauss-Newton with Levenberg's damping and Lagrange multipliers).
/// </summary>
internal sealed class ChainDescent
{
    private const int GridSteps = 160;
    private const int MostRefusals = 5;

    /// <summary>Descent ends when a step gains less than this share.</summary>
    private const double Rest = 1e-3;

    /// <summary>The end counts as so many places in the cost, its direction on an arm of this length, mm.</summary>
    private const double GapWeight = 50;
    private const double ArmMm = 100;

    private readonly Point[] places;
    private readonly double[] weights;
    private readonly double shortestMm;

    internal ChainDescent(Point[] places, double[] weights, double shortestMm)
    {
        this.places = places;
        this.weights = weights;
        this.shortestMm = shortestMm;
    }

    internal required HalfChain Chain { get; set; }

    /// <summary>Arc length of each place's foot.</summary>
    internal required double[] Feet { get; set; }

    /// <summary>Distance of each place, positive outside.</summary>
    internal double[] Distances { get; private set; } = [];

    internal double[] Weights => weights;

    /// <summary>Weighted squares of the distances, and what the end and too short segments cost.</summary>
    internal double Cost { get; private set; } = double.PositiveInfinity;

    /// <summary>Descends until the cost rests or the steps are used up.</summary>
    internal void Run(int steps)
    {
        double damping = 1e-3;
        Measure(Chain, Feet, out double[] feet, out double[] distances, out double cost);
        (Feet, Distances, Cost) = (feet, distances, cost);
        int stuck = 0;
        for (int i = 0; i < steps && stuck < MostRefusals; i++)
        {
            HalfChain? next = Next(damping);
            if (next is not null)
            {
                Measure(next, Feet, out feet, out distances, out cost);
            }

            if (next is null || !(cost < Cost))
            {
                damping *= 8;
                stuck++;
                continue;
            }

            bool isResting = Cost - cost < Rest * cost;
            (Chain, Feet, Distances, Cost) = (next, feet, distances, cost);
            damping = Math.Max(1e-9, damping / 5);
            stuck = 0;
            if (isResting)
            {
                break;
            }
        }
    }

    /// <summary>What a descent has come to.</summary>
    internal sealed record State(HalfChain Chain, double[] Feet, double[] Distances, double Cost);

    internal State Save() => new(Chain, Feet, Distances, Cost);

    internal void Restore(State state) =>
        (Chain, Feet, Distances, Cost) = (state.Chain, state.Feet, state.Distances, state.Cost);

    /// <summary>The same places with another chain.</summary>
    internal ChainDescent With(HalfChain chain) =>
        new(places, (double[])weights.Clone(), shortestMm)
        {
            Chain = chain,
            Feet = (double[])Feet.Clone(),
        };

    private void Measure(
        HalfChain chain,
        double[] near,
        out double[] feet,
        out double[] distances,
        out double cost
    )
    {
        feet = new double[places.Length];
        distances = new double[places.Length];
        cost = 0;
        double stretch = chain.LengthMm / Math.Max(1e-9, Chain.LengthMm);
        for (int i = 0; i < places.Length; i++)
        {
            (feet[i], distances[i]) = chain.Foot(places[i], near[i] * stretch);
            cost += weights[i] * distances[i] * distances[i];
        }

        for (int j = 0; j < chain.Count; j++)
        {
            double lack = Lack(chain, j);
            cost += lack * lack;
        }

        (double y, double angle) = chain.Gap;
        cost += GapWeight * ((y * y) + (angle * angle * ArmMm * ArmMm));
    }

    /// <summary>How much a segment is too short, as a residual.</summary>
    private double Lack(HalfChain chain, int j) =>
        Math.Max(0, shortestMm - (chain.S[j + 1] - chain.S[j])) * LackWeight;

    private const double LackWeight = 0.3;

    private HalfChain? Next(double damping)
    {
        HalfChain chain = Chain;
        int n = chain.Count;
        int parameters = (2 * n) + 1;
        double step = chain.LengthMm / GridSteps;
        double[] grid = new double[GridSteps + 1];
        for (int i = 0; i <= GridSteps; i++)
        {
            grid[i] = i * step;
        }

        double[][] moves = chain.NormalMoves(grid);
        double[][] a = DenseSolver.Matrix(parameters + 2);
        double[] b = new double[parameters + 2];
        double[] row = new double[parameters];
        for (int i = 0; i < places.Length; i++)
        {
            double w = weights[i];
            if (w == 0)
            {
                continue;
            }

            double at = Feet[i] / step;
            int g = Math.Clamp((int)at, 0, GridSteps - 1);
            double t = at - g;
            double[] before = moves[g];
            double[] after = moves[g + 1];
            for (int p = 0; p < parameters; p++)
            {
                row[p] = before[p] + (t * (after[p] - before[p]));
            }

            for (int p = 0; p < parameters; p++)
            {
                double wp = w * row[p];
                b[p] += wp * Distances[i];
                double[] line = a[p];
                for (int q = 0; q <= p; q++)
                {
                    line[q] += wp * row[q];
                }
            }
        }

        for (int j = 0; j < n; j++)
        {
            double lack = Lack(chain, j);
            if (lack > 0)
            {
                // d(lack)/dS_{j+1} = -weight, d/dS_j = +weight.
                Array.Clear(row);
                row[n + j + 1] = -LackWeight;
                if (j > 0)
                {
                    row[n + j] = LackWeight;
                }

                for (int p = n + 1; p <= 2 * n; p++)
                {
                    b[p] -= row[p] * lack;
                    for (int q = n + 1; q <= p; q++)
                    {
                        a[p][q] += row[p] * row[q];
                    }
                }
            }
        }

        for (int p = 0; p < parameters; p++)
        {
            a[p][p] += (damping * a[p][p]) + 1e-12;
            for (int q = 0; q < p; q++)
            {
                a[q][p] = a[p][q];
            }
        }

        Constrain(chain, a, b);
        if (!DenseSolver.Solve(a, b))
        {
            return null;
        }

        double[] s = new double[n + 1];
        double[] kappa = new double[n + 1];
        double share = 1;
        for (int j = 1; j <= n; j++)
        {
            double change = b[n + j] - (j > 1 ? b[n + j - 1] : 0);
            double length = chain.S[j] - chain.S[j - 1];
            if (change < -0.6 * length)
            {
                share = Math.Min(share, 0.6 * length / -change);
            }
        }

        for (int j = 0; j <= n; j++)
        {
            s[j] = chain.S[j] + (j > 0 ? share * b[n + j] : 0);
            kappa[j] = chain.Kappa[j] + (share * b[j]);
            if (!double.IsFinite(s[j] + kappa[j]) || Math.Abs(kappa[j]) * s[n] > 1000)
            {
                return null;
            }
        }

        for (int j = 1; j <= n; j++)
        {
            if (!(s[j] - s[j - 1] > 1e-3))
            {
                return null;
            }
        }

        return new HalfChain(chain.HeelU, s, kappa);
    }

    private static void Constrain(HalfChain chain, double[][] a, double[] b)
    {
        int n = chain.Count;
        int parameters = (2 * n) + 1;
        double[] turn = new double[parameters];
        chain.Turns(chain.LengthMm, turn);
        // y at the end: ∫ cos θ dθ_p ds.
        double[] rise = chain.EndRise();
        (double sin, _) = Math.SinCos(chain.End.Angle);
        for (int p = 0; p < parameters; p++)
        {
            double dy = rise[p];
            double dTheta = turn[p];
            if (p == 2 * n)
            {
                // The end moves along with its own arc length.
                dy += sin;
                dTheta += chain.Kappa[n];
            }

            a[parameters][p] = a[p][parameters] = dy;
            a[parameters + 1][p] = a[p][parameters + 1] = dTheta;
        }

        (double y, double angle) = chain.Gap;
        b[parameters] = -y;
        b[parameters + 1] = -angle;
    }
}
