using Formwright.Curves;

namespace Formwright.Jigs.Stock.Nesting;

/// <summary>
/// An outline turned by an angle, grown all round by half the kerf, moved so that its box then starts at the origin, and cut into rows of even
/// height: for each row the stretches along the sheet that the grown part covers anywhere within the row. Exact along the row, never too
/// small across it.
/// </summary>
internal sealed class TurnedOutline
{
    private readonly double[] from;
    private readonly double[] to;

    /// <param name="outline">The outline.</param>
    /// <param name="angleRad">How far it is turned.</param>
    /// <param name="growMm">How far it is grown, beside what its chords may be off.</param>
    /// <param name="rowMm">Height of a row.</param>
    public TurnedOutline(NestOutline outline, double angleRad, double growMm, double rowMm)
    {
        AngleRad = angleRad;
        (double sin, double cos) = SinCos(angleRad);
        Point[][] turned =
        [
            .. outline.Loops.Select(loop =>
                loop.Select(p => new Point((p.X * cos) - (p.Y * sin), (p.X * sin) + (p.Y * cos)))
                    .ToArray()
            ),
        ];
        double grow = growMm + outline.ErrorMm;
        Box box = turned
            .SelectMany(loop => loop)
            .Aggregate(Box.Empty, (b, p) => b.With(p))
            .Grown(grow);
        Shift = Point.Origin - box.Min;
        WidthMm = box.WidthMm;
        HeightMm = box.HeightMm;
        Rows = (int)Math.Ceiling((HeightMm / rowMm) - 1e-9);
        List<Stretch>[] stretches = [.. Enumerable.Range(0, Rows).Select(_ => new List<Stretch>())];
        foreach (Point[] loop in turned)
        {
            for (int i = 0; i < loop.Length; i++)
            {
                AddEdge(
                    stretches,
                    new GrownEdge(loop[i] + Shift, loop[(i + 1) % loop.Length] + Shift, grow),
                    rowMm
                );
            }
        }

        AddInside(stretches, turned, rowMm);
        foreach (List<Stretch> row in stretches)
        {
            Stretch.Unite(row);
        }

        (Layers, from, to) = Stretch.InLayers(stretches);
    }

    /// <summary>How far it is turned, rad.</summary>
    public double AngleRad { get; }

    /// <summary>From the turned outline to the place where its grown box starts at the origin.</summary>
    public Vector Shift { get; }

    /// <summary>Size of its grown box along the sheet, mm.</summary>
    public double WidthMm { get; }

    /// <summary>Size of its grown box across the sheet, mm.</summary>
    public double HeightMm { get; }

    /// <summary>Number of its rows.</summary>
    public int Rows { get; }

    /// <summary>Most stretches in a row.</summary>
    public int Layers { get; }

    /// <summary>Start of the first, second, … stretch of every row; infinite where a row has fewer.</summary>
    public ReadOnlySpan<double> From(int layer) => from.AsSpan(layer * Rows, Rows);

    /// <summary>Their ends; minus infinity where a row has fewer.</summary>
    public ReadOnlySpan<double> To(int layer) => to.AsSpan(layer * Rows, Rows);

    /// <summary>Sine and cosine, exact for quarter turns.</summary>
    public static (double Sin, double Cos) SinCos(double angleRad)
    {
        double quarters = angleRad / (Math.PI / 2);
        double whole = Math.Round(quarters);
        return Math.Abs(quarters - whole) > 1e-12
            ? Math.SinCos(angleRad)
            : ((((int)whole % 4) + 4) % 4) switch
            {
                0 => (0, 1),
                1 => (1, 0),
                2 => (0, -1),
                _ => (-1, 0),
            };
    }

    private void AddEdge(List<Stretch>[] stretches, GrownEdge edge, double rowMm)
    {
        int first = Math.Max(0, (int)Math.Floor(edge.LowMm / rowMm));
        int last = Math.Min(Rows - 1, (int)Math.Floor(edge.HighMm / rowMm));
        for (int row = first; row <= last; row++)
        {
            stretches[row].Add(edge.Within(row * rowMm, (row + 1) * rowMm));
        }
    }

    // Inside by the even-odd rule along the middle of each row. What lies inside but not straight above or below the middle is cut off from
    // it by an edge within the row, which covers it.
    private void AddInside(List<Stretch>[] stretches, Point[][] loops, double rowMm)
    {
        List<double> crossings = [];
        for (int row = 0; row < Rows; row++)
        {
            double y = ((row + 0.5) * rowMm) - Shift.Y;
            crossings.Clear();
            foreach (Point[] loop in loops)
            {
                for (int i = 0; i < loop.Length; i++)
                {
                    Point a = loop[i];
                    Point b = loop[(i + 1) % loop.Length];
                    if (a.Y > y != b.Y > y)
                    {
                        crossings.Add(a.X + ((y - a.Y) / (b.Y - a.Y) * (b.X - a.X)) + Shift.X);
                    }
                }
            }

            crossings.Sort();
            for (int i = 0; i + 1 < crossings.Count; i += 2)
            {
                stretches[row].Add(new Stretch(crossings[i], crossings[i + 1]));
            }
        }
    }
}
