using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument.Body;

namespace Formwright.Sheets.Body;

/// <summary>Bars and braces from the side at full size, glued edge up, as the gauge has it.</summary>
internal static class GaugeItems
{
    /// <summary>A bar with its curved glued edge on top and its scooped ends below.</summary>
    /// <param name="gauge">Its glued edge.</param>
    /// <param name="height">Its height at a place along it, mm.</param>
    /// <param name="name">Lettered in its middle.</param>
    /// <param name="at">Where its left end of the chord stands.</param>
    public static IEnumerable<Item> Bar(
        Gauge gauge,
        Func<double, double> height,
        string name,
        Point at
    )
    {
        Point[] top = [.. gauge.Points.Select(p => at + new Vector(p.AlongMm, p.RiseMm))];
        Point[] below =
        [
            .. gauge.Points.Select(p => at + new Vector(p.AlongMm, p.RiseMm - height(p.AlongMm))),
        ];
        yield return new Region(Shape.Polyline([.. top, .. below.Reverse()], closed: true))
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        Point end = at + new Vector(gauge.LengthMm, 0);
        yield return new Line(at, end, LineStyle.Detail);
        Point middle = at + new Vector(gauge.LengthMm / 2, 0);
        yield return new Line(
            middle + new Vector(0, 3 + gauge.RiseAt(gauge.LengthMm / 2)),
            middle - new Vector(0, height(gauge.LengthMm / 2) + 3),
            LineStyle.Centreline
        );
        yield return new Label(name, at + new Vector(-4, 0))
        {
            Align = Align.Right,
            Rise = Rise.Top,
            Style = TextStyle.Heading,
        };
    }
}
