using Formwright.Design;
using Formwright.Instrument.Strings;

namespace Formwright.Instrument.Action;

/// <summary>The fret table with the fingerboard at each fret.</summary>
public static class FretTable
{
    /// <summary>Nut and frets in order.</summary>
    /// <param name="design">The design.</param>
    /// <param name="model">Its chain.</param>
    /// <param name="domeMm">Height of the soundboard at (x, y), mm.</param>
    public static IReadOnlyList<FretRow> Of(
        InstrumentDesign design,
        ChainModel model,
        Func<double, double, double> domeMm
    )
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(domeMm);
        IReadOnlyList<double> frets = model.Geometry.FretsMm;
        FretRow[] rows = new FretRow[frets.Count];
        double before = 0;
        for (int k = 0; k < rows.Length; k++)
        {
            double x = frets[k];
            double width = WidthAt(design, x);
            (double bass, double treble) = Edges(model, x, width);
            rows[k] = new(k, x, x - before, width, BoardAt(model, x, domeMm), bass, treble);
            before = x;
        }

        return rows;
    }

    /// <summary>Where the fingerboard ends, mm from the nut.</summary>
    public static double EndMm(InstrumentDesign design, ChainModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return EndMm(design, model.Geometry.FretsMm[^1]);
    }

    /// <summary>Where the fingerboard ends, mm from the nut.</summary>
    /// <param name="design">The design.</param>
    /// <param name="lastFretMm">The last fret, from the nut, mm.</param>
    public static double EndMm(InstrumentDesign design, double lastFretMm)
    {
        ArgumentNullException.ThrowIfNull(design);

        // 4 mm past the last fret where the file says nothing (common practice: the fret needs wood behind it).
        const double pastLastFretMm = 4;
        return design.Fingerboard.OverhangMm is { } overhang
            ? design.Identity.JoinMm + overhang
            : lastFretMm + pastLastFretMm;
    }

    /// <summary>Width of the fingerboard at a distance from the nut, straight through nut and join, mm.</summary>
    public static double WidthAt(InstrumentDesign design, double xMm)
    {
        ArgumentNullException.ThrowIfNull(design);
        double along = xMm / design.Identity.JoinMm;
        return design.Neck.WidthNutMm
            + ((design.Neck.WidthJoinMm - design.Neck.WidthNutMm) * along);
    }

    /// <summary>Thickness of the fingerboard on the centreline over the neck, or past the join over the soundboard, mm.</summary>
    public static double BoardAt(ChainModel model, double xMm, Func<double, double, double> domeMm)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(domeMm);
        ChainFigures f = model.Figures;
        double along = xMm / model.Geometry.JoinMm;
        double even = f.FingerboardNutMm + ((f.FingerboardJoinMm - f.FingerboardNutMm) * along);
        if (along <= 1 || model.Geometry.FollowsKink)
        {
            return even;
        }

        double top =
            f.RampMm
            + f.FingerboardNutMm
            + ((f.FingerboardJoinMm - f.RampMm - f.FingerboardNutMm) * along);
        return top - domeMm(xMm, 0);
    }

    private static (double Bass, double Treble) Edges(ChainModel model, double xMm, double width)
    {
        StringSet set = model.Geometry.Strings;
        double least = double.PositiveInfinity;
        double most = double.NegativeInfinity;
        foreach (InstrumentString each in set.Strings)
        {
            double y = each.YAt(xMm / set.ScaleMm);
            least = Math.Min(least, y - (0.5 * each.DiameterMm));
            most = Math.Max(most, y + (0.5 * each.DiameterMm));
        }

        return ((0.5 * width) + least, (0.5 * width) - most);
    }
}
