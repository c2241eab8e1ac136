using System.Globalization;

namespace Formwright.Drawing;

/// <summary>A size of paper.</summary>
/// <param name="Name">As it is written on the sheet.</param>
/// <param name="WidthMm">Along the lower edge.</param>
/// <param name="HeightMm">Along the left edge.</param>
public sealed record Paper(string Name, double WidthMm, double HeightMm)
{
    private const double LargestMm = 5000;

    /// <summary>ISO 216, upright.</summary>
    public static Paper A0 { get; } = new("A0", 841, 1189);

    /// <summary>ISO 216, upright.</summary>
    public static Paper A1 { get; } = new("A1", 594, 841);

    /// <summary>ISO 216, upright.</summary>
    public static Paper A2 { get; } = new("A2", 420, 594);

    /// <summary>ISO 216, upright.</summary>
    public static Paper A3 { get; } = new("A3", 297, 420);

    /// <summary>ISO 216, upright.</summary>
    public static Paper A4 { get; } = new("A4", 210, 297);

    /// <summary>ISO 5457, elongated: three times A4, upright; off a roll of 297 mm.</summary>
    public static Paper A4x3 { get; } = new("A4×3", 297, 630);

    /// <summary>ISO 5457, elongated: four times A4, upright.</summary>
    public static Paper A4x4 { get; } = new("A4×4", 297, 841);

    /// <summary>ISO 5457, elongated: three times A3, upright.</summary>
    public static Paper A3x3 { get; } = new("A3×3", 420, 891);

    /// <summary>ISO 5457, elongated: three times A2, upright; off a roll of 594 or 610 mm, where A0 wants one of 841 mm.</summary>
    public static Paper A2x3 { get; } = new("A2×3", 594, 1261);

    private static Paper[] Standard => [A4, A3, A4x3, A2, A4x4, A3x3, A1, A2x3, A0];

    /// <summary>Whether it is a size of ISO 216 or ISO 5457 that is named here, and not one of its own.</summary>
    public bool IsStandard => Standard.Any(paper => paper.Name == Name);

    /// <summary>On its side.</summary>
    public Paper Turned() => this with { WidthMm = HeightMm, HeightMm = WidthMm };

    /// <summary>A size of one's own, as for a roll: named by its two figures.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A side below 100 mm, above 5 m, or not a number.</exception>
    public static Paper Of(double widthMm, double heightMm)
    {
        Check(widthMm, nameof(widthMm));
        Check(heightMm, nameof(heightMm));
        return new Paper(
            string.Create(CultureInfo.InvariantCulture, $"{widthMm:0.#} × {heightMm:0.#}"),
            widthMm,
            heightMm
        );
    }

    /// <summary>The smallest of A4 to A0 and the long sizes, upright or on its side, whose drawing area holds a drawing of this size; else one of its own.</summary>
    public static Paper Holding(Size drawing)
    {
        foreach (Paper paper in Standard)
        {
            foreach (Paper way in new[] { paper, paper.Turned() })
            {
                Curves.Box area = new Sheet(TitleBlock.Empty, way).Area;
                if (drawing.WidthMm <= area.WidthMm && drawing.HeightMm <= area.HeightMm)
                {
                    return way;
                }
            }
        }

        Curves.Box room = new Sheet(TitleBlock.Empty, A0).Area;
        return Of(
            Math.Ceiling(drawing.WidthMm + A0.WidthMm - room.WidthMm),
            Math.Ceiling(drawing.HeightMm + A0.HeightMm - room.HeightMm)
        );
    }

    private static void Check(double sideMm, string name)
    {
        if (!(sideMm >= 100 && sideMm <= LargestMm))
        {
            throw new ArgumentOutOfRangeException(name, sideMm, "A sheet is 100 to 5000 mm.");
        }
    }
}
