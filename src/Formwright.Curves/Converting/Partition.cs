namespace Formwright.Curves.Converting;

/// <summary>
/// Cuts a run into the fewest pieces whose errors stay within a tolerance, all errors about equal.
/// </summary>
/// <remarks>
/// Method (own): a piece's error grows like its length to a known power, so the density of cuts that would bring every error to the
/// tolerance follows from the errors of a first partition; cut anew along that density until all hold and no fewer would do. It looks the same from both ends,
/// so a reversed or mirrored curve is cut at the same places. Bounded: a dozen rounds, then halving of pieces that still fail.
/// </remarks>
internal static class Partition
{
    private const int Rounds = 12;
    private const int MostPieces = 100_000;

    /// <param name="run">What is cut.</param>
    /// <param name="errorOf">Error of the piece between two parameters, mm.</param>
    /// <param name="order">The error of a piece goes with its length to this power.</param>
    /// <param name="guess">How many pieces a cell of the run needs, by theory.</param>
    /// <param name="toleranceMm">Largest error allowed.</param>
    internal static List<double> Of(
        CurveRun run,
        Func<double, double, double> errorOf,
        int order,
        Func<double, double, double> guess,
        double toleranceMm
    )
    {
        // Cells carry the density, by theory at first; each partition then corrects it piece by piece.
        int cells = Math.Max(4, 128 / run.SpanCount);
        (List<double> grid, List<double> weights) = Cells(run, guess, cells);
        int finer = Math.Min(1000, (int)(4 * weights.Sum() / run.SpanCount));
        if (finer > cells)
        {
            (grid, weights) = Cells(run, guess, finer);
        }

        List<double>? best = null;
        List<double> last = grid;
        int count = Count(weights.Sum());
        for (int round = 0; round < Rounds; round++)
        {
            List<double> cuts = Quantiles(grid, weights, count);
            List<double> needs = [];
            for (int i = 1; i < cuts.Count; i++)
            {
                double error = errorOf(cuts[i - 1], cuts[i]);
                needs.Add(Math.Clamp(Math.Pow(error / toleranceMm, 1.0 / order), 0.05, 20));
            }

            double most = needs.Max();
            bool isWithin = most <= 1;
            bool isRetry = best is not null;
            if (isWithin && (best is null || cuts.Count < best.Count))
            {
                best = cuts;
            }

            // Once within the tolerance, one more try when it promises a saving.
            int fewer = Count(needs.Sum() * 1.001);
            if (best is not null && (isRetry || fewer >= 0.95 * (best.Count - 1)))
            {
                return best;
            }

            if (most > 1 && most < 1.1)
            {
                // Nearly: the same density, a little finer.
                count = Count((cuts.Count - 1) * most * 1.002);
                continue;
            }

            Correct(grid, weights, cuts, needs);
            count = fewer;
            last = cuts;
        }

        return best ?? Halved(last, errorOf, toleranceMm);
    }

    private static (List<double> Grid, List<double> Weights) Cells(
        CurveRun run,
        Func<double, double, double> guess,
        int cells
    )
    {
        List<double> grid = [0];
        List<double> weights = [];
        for (int i = 0; i < run.SpanCount; i++)
        {
            double from = run.StartOf(i);
            double width = (run.StartOf(i + 1) - from) / cells;
            for (int k = 1; k <= cells && width > 0; k++)
            {
                double to = k == cells ? run.StartOf(i + 1) : from + (k * width);
                weights.Add(Math.Max(guess(grid[^1], to), 1e-4 / cells));
                grid.Add(to);
            }
        }

        return (grid, weights);
    }

    private static int Count(double pieces) =>
        (int)Math.Clamp(Math.Ceiling(pieces - 1e-9), 1, MostPieces);

    /// <summary>Scales the cells of each piece so that they add up to what the piece needs.</summary>
    private static void Correct(
        List<double> grid,
        List<double> weights,
        List<double> cuts,
        List<double> needs
    )
    {
        int piece = 0;
        int first = 0;
        for (int cell = 0; cell <= weights.Count; cell++)
        {
            if (cell == weights.Count || 0.5 * (grid[cell] + grid[cell + 1]) > cuts[piece + 1])
            {
                double sum = 0;
                for (int i = first; i < cell; i++)
                {
                    sum += weights[i];
                }

                for (int i = first; i < cell; i++)
                {
                    weights[i] *= needs[piece] / sum;
                }

                first = cell;
                while (
                    cell < weights.Count && 0.5 * (grid[cell] + grid[cell + 1]) > cuts[piece + 1]
                )
                {
                    piece++;
                }
            }
        }
    }

    private static List<double> Quantiles(List<double> grid, List<double> weights, int count)
    {
        double total = weights.Sum();
        if (!(total > 0))
        {
            return [grid[0], grid[^1]];
        }

        List<double> cuts = [grid[0]];
        double before = 0;
        int cell = 0;
        for (int k = 1; k < count; k++)
        {
            double goal = total * k / count;
            while (cell < weights.Count - 1 && before + weights[cell] < goal)
            {
                before += weights[cell];
                cell++;
            }

            double share = Math.Clamp((goal - before) / weights[cell], 0, 1);
            double cut = grid[cell] + (share * (grid[cell + 1] - grid[cell]));
            if (cut > cuts[^1] && cut < grid[^1])
            {
                cuts.Add(cut);
            }
        }

        cuts.Add(grid[^1]);
        return cuts;
    }

    private static List<double> Halved(
        List<double> grid,
        Func<double, double, double> errorOf,
        double toleranceMm
    )
    {
        List<double> cuts = [grid[0]];
        for (int i = 1; i < grid.Count; i++)
        {
            Halve(grid[i - 1], grid[i], 0);
        }

        return cuts;

        void Halve(double from, double to, int depth)
        {
            if (depth < 12 && cuts.Count < MostPieces && errorOf(from, to) > toleranceMm)
            {
                double middle = 0.5 * (from + to);
                Halve(from, middle, depth + 1);
                Halve(middle, to, depth + 1);
            }
            else
            {
                cuts.Add(to);
            }
        }
    }
}
