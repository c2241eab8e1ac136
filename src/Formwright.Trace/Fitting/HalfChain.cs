using Formwright.Curves;

namespace Formwright.Trace.Fitting;

/// <summary>
/// A half outline as a curvature plot of straight pieces: nodes at arc lengths S₀ = 0 … Sₙ with curvatures κ₀ … κₙ. It leaves the
/// centreline at (u₀, 0) straight across it; left is outside, so that κ is negative on the bouts.
/// </summary>
internal sealed class HalfChain
{
    private readonly double[] s;
    private readonly double[] kappa;
    private readonly EulerSegment[] segments;

    internal HalfChain(double heelU, double[] s, double[] kappa)
    {
        HeelU = heelU;
        this.s = s;
        this.kappa = kappa;
        segments = new EulerSegment[s.Length - 1];
        CurvePoint at = new(new(heelU, 0), 0.5 * Math.PI, kappa[0]);
        for (int j = 0; j < segments.Length; j++)
        {
            double length = s[j + 1] - s[j];
            segments[j] = new EulerSegment(
                at.Position,
                at.Angle,
                kappa[j],
                (kappa[j + 1] - kappa[j]) / length,
                length
            );
            at = segments[j].End;
        }

        End = at;
    }

    internal double HeelU { get; }

    internal int Count => segments.Length;

    internal ReadOnlySpan<double> S => s;

    internal ReadOnlySpan<double> Kappa => kappa;

    internal double LengthMm => s[^1];

    internal CurvePoint End { get; }

    /// <summary>How far the end is from lying on the centreline (mm) and running straight across it (rad).</summary>
    internal (double Y, double Angle) Gap => (End.Position.Y, End.Angle + (0.5 * Math.PI));

    internal Chain ToChain() => new(segments);

    /// <summary>The chain with its curvatures changed as little as possible so that it ends on the centreline and straight across it.</summary>
    /// <returns>The chain; null when that does not converge.</returns>
    internal HalfChain? Closed()
    {
        HalfChain chain = this;
        for (int round = 0; round < 20; round++)
        {
            (double y, double angle) = chain.Gap;
            if (Math.Abs(y) < 1e-9 && Math.Abs(angle) < 1e-12)
            {
                return chain;
            }

            double[] turn = new double[(2 * Count) + 1];
            chain.Turns(LengthMm, turn);
            double[] rise = chain.EndRise();
            double tt = 0;
            double tr = 0;
            double rr = 0;
            for (int j = 0; j <= Count; j++)
            {
                tt += turn[j] * turn[j];
                tr += turn[j] * rise[j];
                rr += rise[j] * rise[j];
            }

            double det = (tt * rr) - (tr * tr);
            double a = ((-angle * rr) + (y * tr)) / det;
            double b = ((-y * tt) + (angle * tr)) / det;
            double[] next = new double[Count + 1];
            for (int j = 0; j <= Count; j++)
            {
                next[j] = chain.kappa[j] + (a * turn[j]) + (b * rise[j]);
                if (!double.IsFinite(next[j]) || Math.Abs(next[j]) * LengthMm > 1000)
                {
                    return null;
                }
            }

            chain = new HalfChain(HeelU, s, next);
        }

        return null;
    }

    /// <summary>The chain at an arc length; a little beyond its ends it goes on as it was.</summary>
    internal CurvePoint At(double at)
    {
        int j = Array.BinarySearch(s, at);
        j = Math.Clamp(j >= 0 ? j : ~j - 1, 0, segments.Length - 1);
        return segments[j].At(at - s[j]);
    }

    /// <summary>Foot of a place near an arc length: Newton's method, three steps at most.</summary>
    internal (double S, double Distance) Foot(Point place, double near)
    {
        double at = Math.Clamp(near, 0, LengthMm);
        double distance = 0;
        for (int i = 0; i < 3; i++)
        {
            CurvePoint c = At(at);
            Vector from = place - c.Position;
            Vector tangent = c.Tangent;
            double along = from.Dot(tangent);
            distance = from.Dot(tangent.Left);
            double shrink = 1 - (c.Curvature * distance);
            double step = along / Math.Clamp(shrink, 0.3, 3);
            double next = Math.Clamp(at + Math.Clamp(step, -20, 20), 0, LengthMm);
            bool isThere = Math.Abs(next - at) < 1e-3;
            at = next;
            if (isThere)
            {
                // The rest of the step moves the foot along the curve, not the distance.
                break;
            }
        }

        return (at, distance);
    }

    /// <summary>
    /// How a small change of each parameter turns and moves the chain: κ₀ … κₙ, then S₁ … Sₙ. Row i holds the move along the
    /// left normal at arc length <c>grid[i]</c>.
    /// </summary>
    internal double[][] NormalMoves(ReadOnlySpan<double> grid)
    {
        int n = Count;
        int parameters = (2 * n) + 1;
        double[][] moves = new double[grid.Length][];
        double[] alongX = new double[parameters];
        double[] alongY = new double[parameters];
        double[] turnBefore = new double[parameters];
        double[] turn = new double[parameters];
        CurvePoint before = At(0);
        for (int i = 0; i < grid.Length; i++)
        {
            CurvePoint here = At(grid[i]);
            Turns(grid[i], turn);
            double step = i == 0 ? 0 : 0.5 * (grid[i] - grid[i - 1]);
            (double sin, double cos) = Math.SinCos(here.Angle);
            (double sinBefore, double cosBefore) = Math.SinCos(before.Angle);
            double[] row = new double[parameters];
            moves[i] = row;
            for (int p = 0; p < parameters; p++)
            {
                // dP = ∫ left(t) dθ dt with left = (-sin θ, cos θ).
                alongX[p] -= step * ((sinBefore * turnBefore[p]) + (sin * turn[p]));
                alongY[p] += step * ((cosBefore * turnBefore[p]) + (cos * turn[p]));
                row[p] = (cos * alongY[p]) - (sin * alongX[p]);
            }

            (turnBefore, turn) = (turn, turnBefore);
            before = here;
        }

        return moves;
    }

    /// <summary>How y at the end changes with each parameter, the end's own arc length kept: ∫ cos θ dθ ds, by Simpson's rule.</summary>
    internal double[] EndRise()
    {
        const int Steps = 100;
        double[] rise = new double[(2 * Count) + 1];
        double[] turn = new double[rise.Length];
        double h = LengthMm / Steps;
        for (int i = 0; i <= Steps; i++)
        {
            double at = i * h;
            Turns(at, turn);
            double weight =
                h
                / 3
                * (
                    i is 0 or Steps ? 1
                    : i % 2 == 1 ? 4
                    : 2
                )
                * Math.Cos(At(at).Angle);
            for (int p = 0; p < rise.Length; p++)
            {
                rise[p] += weight * turn[p];
            }
        }

        return rise;
    }

    /// <summary>dθ at an arc length for a change of each κ and each S.</summary>
    internal void Turns(double at, double[] turn)
    {
        int n = Count;
        Array.Clear(turn);
        for (int j = 0; j < n; j++)
        {
            double t = Math.Min(at, s[j + 1]) - s[j];
            if (t <= 0)
            {
                break;
            }

            double l = s[j + 1] - s[j];
            double rise = t * t / (2 * l);
            double slope = (kappa[j + 1] - kappa[j]) / l;
            turn[j] += t - rise;
            turn[j + 1] += rise;
            // S_j is parameter n + j (S₀ is none).
            if (j > 0)
            {
                turn[n + j] -= slope * (t - rise);
            }

            turn[n + j + 1] -= slope * rise;
        }
    }
}
