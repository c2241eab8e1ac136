namespace Formwright.Curves;

/// <summary>Monotone runs of a chain's curvature, with extremes of too little prominence left out.</summary>
internal static class CurvatureRuns
{
    internal static IReadOnlyList<CurvaturePiece> Of(Chain chain, double toleranceShare)
    {
        List<(double S, double Kappa)> plot = Plot(chain);
        double range = plot.Max(p => p.Kappa) - plot.Min(p => p.Kappa);
        List<int> turns = Turns(plot, toleranceShare * range);
        List<CurvaturePiece> pieces = [];
        for (int i = 1; i < turns.Count; i++)
        {
            (double s0, double k0) = plot[turns[i - 1]];
            (double s1, double k1) = plot[turns[i]];
            pieces.Add(new(s0, s1, k0, k1));
        }

        return pieces;
    }

    /// <summary>The corners of κ over s; a closed chain starts at its largest curvature and ends there again.</summary>
    private static List<(double S, double Kappa)> Plot(Chain chain)
    {
        int count = chain.Segments.Length;
        int first = 0;
        if (chain.IsClosed)
        {
            for (int i = 1; i < count; i++)
            {
                if (chain.Segments[i].StartCurvature > chain.Segments[first].StartCurvature)
                {
                    first = i;
                }
            }
        }

        List<(double S, double Kappa)> plot = [];
        double s = chain.StartOf(first);
        for (int k = 0; k < count; k++)
        {
            EulerSegment segment = chain.Segments[(first + k) % count];
            plot.Add((s, segment.StartCurvature));
            s += segment.LengthMm;
            plot.Add((s, segment.EndCurvature));
        }

        return plot;
    }

    /// <summary>Indices of both ends and of the extremes between them: a turn counts once the plot has come back by more than the tolerance.</summary>
    private static List<int> Turns(List<(double S, double Kappa)> plot, double tolerance)
    {
        List<int> turns = [0];
        int low = 0;
        int high = 0;
        int way = 0;
        for (int i = 1; i < plot.Count; i++)
        {
            if (plot[i].Kappa > plot[high].Kappa)
            {
                high = i;
            }

            if (plot[i].Kappa < plot[low].Kappa)
            {
                low = i;
            }

            if (way >= 0 && plot[high].Kappa - plot[i].Kappa > tolerance)
            {
                if (way > 0)
                {
                    AddTurn(turns, high);
                }

                way = -1;
                low = i;
                high = i;
            }
            else if (way <= 0 && plot[i].Kappa - plot[low].Kappa > tolerance)
            {
                if (way < 0)
                {
                    AddTurn(turns, low);
                }

                way = 1;
                low = i;
                high = i;
            }
        }

        AddTurn(turns, plot.Count - 1);
        return turns;
    }

    private static void AddTurn(List<int> turns, int index)
    {
        if (turns[^1] != index)
        {
            turns.Add(index);
        }
    }
}
