using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>
/// Distances of many places from one datum, in one column (left, right) or row (above, below) beside the part.
/// Figures that would touch are moved apart and their witness lines bent.
/// </summary>
/// <param name="Datum">Where the figure is 0.</param>
/// <param name="Stations">The places.</param>
/// <param name="Side">On which side of the part the figures stand.</param>
/// <param name="OffsetMm">Distance on the sheet from the outermost place to the figures.</param>
public sealed record OrdinateDimensions(
    Point Datum,
    IReadOnlyList<Station> Stations,
    Side Side,
    double OffsetMm
) : Item
{
    private const double BendMm = 4;

    /// <summary>How far the part reaches beyond the outermost place, model mm: it comes on top of the offset at every scale.</summary>
    public double BeyondMm { get; init; }

    public int Decimals { get; init; } = 1;

    public TextStyle Style { get; init; } = TextStyle.SmallFigure;

    public TextStyle NameStyle { get; init; } = TextStyle.Body;

    /// <summary>The same, lettered a size up: for sheets of A2 and larger.</summary>
    public OrdinateDimensions Larger =>
        this with
        {
            Style = Style.Larger,
            NameStyle = NameStyle.Larger,
        };

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        if (Stations.Count == 0)
        {
            return;
        }

        bool column = Side is Side.Left or Side.Right;
        double sign = Side is Side.Right or Side.Above ? 1 : -1;
        // On the sheet: 'out' leads from the part to the figures, 'along' is measured.
        Vector outwards = column ? new(sign, 0) : new(0, sign);
        Vector along = column ? new(0, 1) : new(1, 0);
        double perSheet = DimensionLine.ModelPerSheet(placement, along);
        Point datum = placement.Apply(Datum);
        (Station Station, Point At, double Along)[] places =
        [
            .. Stations
                .Select(s => (s, placement.Apply(s.At)))
                .Select(p => (p.s, p.Item2, (p.Item2 - Point.Origin).Dot(along)))
                .OrderBy(p => p.Item3),
        ];
        double beyond = BeyondMm / DimensionLine.ModelPerSheet(placement, outwards);
        double edge = places.Max(p => (p.At - Point.Origin).Dot(outwards)) + beyond + OffsetMm;
        double[] spread = Spreading.Spread(
            [.. places.Select(p => p.Along)],
            1.5 * Math.Max(Style.HeightMm, NameStyle.HeightMm)
        );
        for (int i = 0; i < places.Length; i++)
        {
            (Station station, Point at, double wish) = places[i];
            double reach = (at - Point.Origin).Dot(outwards);
            Point knee = at + ((edge - BendMm - reach) * outwards);
            Point end = at + ((edge - reach) * outwards) + ((spread[i] - wish) * along);
            Point start = at + (Math.Min(1, Math.Max(0, edge - BendMm - reach)) * outwards);
            ink.Stroke(
                Math.Abs(spread[i] - wish) < 1e-9
                    ? Shape.Line(start, end)
                    : Shape.Polyline([start, knee, end]),
                LineStyle.Witness
            );
            double valueMm = Math.Abs((at - datum).Dot(along)) * perSheet;
            Letter(
                ink,
                end,
                outwards,
                column,
                sign,
                LetteredLengths.Figure(valueMm, Decimals),
                station.Name
            );
        }

        ink.Stroke(Shape.Circle(datum, 1), LineStyle.Dimension);
    }

    private void Letter(
        Ink ink,
        Point end,
        Vector outwards,
        bool column,
        double sign,
        string figure,
        string? name
    )
    {
        double angle = column ? 0 : Math.PI / 2;
        Align align = sign > 0 ? Align.Left : Align.Right;
        Point at = end + (1.2 * outwards);
        ink.Text(figure, at, Style, align, Rise.Middle, angle, clear: true);
        if (name is not null)
        {
            at += (Style.WidthMm(figure) + 1.8) * outwards;
            ink.Text(name, at, NameStyle, align, Rise.Middle, angle, clear: true);
        }
    }
}
