using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>
/// How long a printer makes 100 mm, over 100 mm, along the width and the height of its page. A page is drawn larger
/// or smaller by the inverse about its middle, so that it prints true; the size of the page stays.
/// </summary>
public readonly record struct PrintScale
{
    /// <summary>Beyond this a setting such as 'fit to page' is on: turn it off instead.</summary>
    public const double Most = 0.1;

    /// <exception cref="ArgumentOutOfRangeException">Not within 10 % of 1.</exception>
    public PrintScale(double x, double y)
    {
        X = Check(x, nameof(x));
        Y = Check(y, nameof(y));
    }

    /// <summary>The part of a page that such a printer puts on its paper, in true mm: a page drawn larger loses its edges.</summary>
    internal Box Reach(Paper page)
    {
        double halfX = page.WidthMm / 2 * Math.Min(1, X);
        double halfY = page.HeightMm / 2 * Math.Min(1, Y);
        Point middle = new(page.WidthMm / 2, page.HeightMm / 2);
        return new Box(middle, middle)
            .With(middle + new Vector(halfX, halfY))
            .With(middle - new Vector(halfX, halfY));
    }

    /// <summary>A printer that is true.</summary>
    public static PrintScale True { get; } = new(1, 1);

    public double X { get; }

    public double Y { get; }

    /// <summary>From the two bars of the calibration page as they were measured on its print.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not within 10 % of their true lengths.</exception>
    public static PrintScale FromMeasured(double acrossMm, double upMm) =>
        new(acrossMm / CalibrationPage.AcrossMm, upMm / CalibrationPage.UpMm);

    private static double Check(double value, string name) =>
        Math.Abs(value - 1) <= Most
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                value,
                "A printer within 10 % of true can be corrected."
            );
}
