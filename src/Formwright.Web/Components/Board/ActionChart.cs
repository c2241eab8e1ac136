using Formwright.Instrument.Action;
using Formwright.Web.Reading;
using static Formwright.Web.Components.Board.OutlineDrawing;

namespace Formwright.Web.Components.Board;

/// <summary>The chart of ramp against dome: a line for each whole mm of saddle, the design as a point, and the box that its builds fall into.</summary>
/// <param name="chart">What is drawn.</param>
/// <param name="reader">Who reads it.</param>
/// <param name="left">Its left edge on the page, pixels; so the others.</param>
/// <param name="right">Its right edge; names of lines stand beyond it.</param>
/// <param name="upper">Its upper edge.</param>
/// <param name="bottom">Its lower edge.</param>
internal sealed class ActionChart(
    RampDomeChart chart,
    Reader reader,
    double left,
    double right,
    double upper,
    double bottom
)
{
    // The letters of a name, about: so wide each, so high over their line.
    private const double LetterPx = 6.6;
    private const double HighPx = 13;

    // Clear between a name and its line, and the least between two names beyond the edge.
    private const double ClearPx = 5;
    private const double NamesApartPx = 16;

    public void Draw(SvgText text)
    {
        ArgumentNullException.ThrowIfNull(text);
        text.Path("dimension", $"M{N(left)} {N(upper)}V{N(bottom)}H{N(right)}");
        foreach ((double mm, string figure) in Ticks(chart.DomeMm.Low, chart.DomeMm.High))
        {
            text.Write("second", X(mm), bottom + 18, figure, "middle");
        }

        foreach ((double mm, string figure) in Ticks(chart.RampMm.Low, chart.RampMm.High))
        {
            text.Path("grid", $"M{N(left)} {N(Y(mm))}H{N(right)}");
            text.Write("second", left - 8, Y(mm) + 5, figure, "end");
        }

        double lastY = double.NegativeInfinity;
        foreach (ChartLine line in chart.Lines.OrderBy(line => line.SaddleMm))
        {
            IReadOnlyList<(double DomeMm, double RampMm)> seen = line.Within(
                chart.RampMm.Low,
                chart.RampMm.High
            );
            if (seen.Count < 2 || Math.Abs(line.SaddleMm - Math.Round(line.SaddleMm)) > 1e-9)
            {
                continue;
            }

            (double X, double Y)[] points =
            [
                .. seen.Select(point => (X(point.DomeMm), Y(point.RampMm))),
            ];
            text.Path(
                Math.Abs(line.SaddleMm - chart.SaddleMm) < 0.5 ? "plot" : "dimension",
                "M" + string.Join('L', points.Select(point => $"{N(point.X)} {N(point.Y)}"))
            );
            string name = WebWords.Of.Format("chart.saddle", reader.Figure(line.SaddleMm, 0));
            if (points[^1].X < right - 1)
            {
                Along(text, points[0], points[^1], name);
            }
            else if (points[^1].Y - lastY >= NamesApartPx)
            {
                lastY = points[^1].Y;
                text.Write("second", right + 6, lastY + 5, name);
            }
        }

        (double x, double y) = (X(chart.Design.DomeMm), Y(chart.Design.RampMm));
        // Builds beyond an edge are beyond what is drawn.
        (double boxLeft, double boxRight) = (Math.Max(x - BoxX, left), Math.Min(x + BoxX, right));
        (double boxTop, double boxBottom) = (Math.Max(y - BoxY, upper), Math.Min(y + BoxY, bottom));
        text.Path(
            "build-box",
            $"M{N(boxLeft)} {N(boxTop)}H{N(boxRight)}V{N(boxBottom)}H{N(boxLeft)}Z"
        );
        text.Path("point", $"M{N(x - 5)} {N(y)}a5 5 0 1 0 10 0a5 5 0 1 0 -10 0");
        text.Write(
            "second",
            (left + right) / 2,
            bottom + 40,
            WebWords.Of.Format("chart.dome", reader.Unit),
            "middle"
        );
        text.Write("second", left, upper - 12, WebWords.Of.Format("chart.ramp", reader.Unit));
    }

    private double BoxX => Math.Abs(X(chart.BoxMm.DomeMm) - X(0));

    private double BoxY => Math.Abs(Y(chart.BoxMm.RampMm) - Y(0));

    private double X(double domeMm) =>
        left
        + ((right - left) * (domeMm - chart.DomeMm.Low) / (chart.DomeMm.High - chart.DomeMm.Low));

    private double Y(double rampMm) =>
        bottom
        - ((bottom - upper) * (rampMm - chart.RampMm.Low) / (chart.RampMm.High - chart.RampMm.Low));

    // A line that ends within the chart has its name along it, over its upper end; where the line is too short, or only the box is left, none.
    private void Along(
        SvgText text,
        (double X, double Y) from,
        (double X, double Y) to,
        string name
    )
    {
        (double dx, double dy) = (to.X - from.X, to.Y - from.Y);
        double length = Math.Sqrt((dx * dx) + (dy * dy));
        double needed = name.Length * LetterPx;
        (dx, dy) = (dx / length, dy / length);
        for (double start = 8; start + needed + 8 <= length; start += 8)
        {
            // Right of the line as it falls, which is over it.
            (double X, double Y) at = (
                from.X + (dx * start) + (dy * ClearPx),
                from.Y + (dy * start) - (dx * ClearPx)
            );
            if (!IsOnBox(at, dx, dy, needed))
            {
                text.Turned(
                    "second",
                    at.X,
                    at.Y,
                    double.RadiansToDegrees(Math.Atan2(dy, dx)),
                    name
                );
                return;
            }
        }
    }

    private bool IsOnBox((double X, double Y) at, double dx, double dy, double needed)
    {
        (double x, double y) = (X(chart.Design.DomeMm), Y(chart.Design.RampMm));
        for (double along = 0; along <= needed; along += 4)
        {
            foreach (double over in (double[])[0, HighPx])
            {
                double px = at.X + (dx * along) + (dy * over);
                double py = at.Y + (dy * along) - (dx * over);
                if (Math.Abs(px - x) <= BoxX + ClearPx && Math.Abs(py - y) <= BoxY + ClearPx)
                {
                    return true;
                }
            }
        }

        return false;
    }

    // Round figures of the reader's unit, some four of them, with no more decimals than they need.
    private IEnumerable<(double Mm, string Figure)> Ticks(double lowMm, double highMm)
    {
        (double low, double high) = (lowMm / reader.MmPerUnit, highMm / reader.MmPerUnit);
        double power = Math.Pow(10, Math.Floor(Math.Log10((high - low) / 4)));
        double step =
            power
            * ((high - low) / 4 / power) switch
            {
                < 1.5 => 1,
                < 3.5 => 2,
                < 7.5 => 5,
                _ => 10,
            };
        int decimals = Math.Max(0, -(int)Math.Floor(Math.Log10(step) + 1e-9));
        for (int i = (int)Math.Ceiling((low / step) - 1e-9); i * step <= high + (1e-9 * step); i++)
        {
            yield return (i * step * reader.MmPerUnit, reader.Number(i * step, decimals));
        }
    }
}
