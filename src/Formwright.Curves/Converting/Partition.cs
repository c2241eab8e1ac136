namespace Formwright.Curves.Converting;

/// <summary>
/// Cuts a run into the fewest pieces whose errors stay within a tolerance, all errors about equal.
/// </summary>
/// <remarks>
/// Method (own): a piece's error grows like its length to a known power, so the density of cuts that would bring every error to the
/// tolerance follows from the errors of a first partition; cut anew along that density until it settles. It looks the same from both ends,
/// so a reversed or mirrored curve is cut at the same places. Bounded: a dozen rounds, then halving of pieces that still fail.
/// </remarks>
internal static class Partition
{
    private const int Rounds = 12;
    private const int MostPieces = 200_000;

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
        // Cells: four for each span carry the density at first, later each piece of the last partition does.
        List<double> grid = [0];
        List<double> weights = [];
        for (int i = 0; i < run.SpanCount; i++)
        {
            double from = run.StartOf(i);
            double width = (run.StartOf(i + 1) - from) / 4;
            for (int k = 1; k <= 4 && width > 0; k++)
            {
                double to = k == 4 ? run.StartOf(i + 1) : from + (k * width);
                weights.Add(guess(grid[^1], to));
                grid.Add(to);
            }
        }

        List<double>? best = null;
        for (int round = 0; round < Rounds; round++)
        {
            double total = weights.Sum();
            int count = (int)Math.Clamp(Math.Ceiling((total * 1.001) + 1e-6), 1, MostPieces);
            if (best is not null && count >= best.Count - 1)
            {
                return best;
            }

            List<double> cuts = Quantiles(grid, weights, count);
            List<double> needs = [];
            bool isWithin = true;
            for (int i = 1; i < cuts.Count; i++)
            {
                double error = errorOf(cuts[i - 1], cuts[i]);
                isWithin &= error <= toleranceMm;
                double need = Math.Pow(error / toleranceMm, 1.0 / order);
                needs.Add(Math.Clamp(need, 0.05, 20));
            }

            if (isWithin)
            {
                best = cuts;
            }

            grid = cuts;
            weights = needs;
        }

        return best ?? Halved(grid, errorOf, toleranceMm);
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
