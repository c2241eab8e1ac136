using Formwright.Design.Sections;

namespace Formwright.Instrument.Necks;

/// <summary>The neck between nut and join: sections at stations, straight between them.</summary>
/// <param name="Places">At least one, in order from the nut.</param>
/// <param name="Form">Shape of the section.</param>
/// <param name="Bar">Reinforcement bar; its width is 0 for none.</param>
public sealed record NeckProfile(
    IReadOnlyList<NeckPlace> Places,
    SectionForm Form,
    NeckBarDesign Bar
)
{
    /// <summary>The profile of a design: its stations, or else a straight taper from nut to join.</summary>
    public static NeckProfile Of(NeckDesign neck, double joinMm)
    {
        ArgumentNullException.ThrowIfNull(neck);
        Guard.Positive(joinMm);
        IReadOnlyList<NeckPlace> places =
            neck.Stations.Count > 0
                ?
                [
                    .. neck
                        .Stations.OrderBy(each => each.AtMm)
                        .Select(each => new NeckPlace(each.AtMm, each.WidthMm, each.ThicknessMm)),
                ]
                :
                [
                    new(0, neck.WidthNutMm, neck.ThicknessNutMm),
                    new(joinMm, neck.WidthJoinMm, neck.ThicknessJoinMm),
                ];
        return new(places, SectionForm.Of(neck.Shape), neck.Bar);
    }

    /// <summary>Width and thickness at a distance from the nut; beyond the end stations those of the end.</summary>
    public NeckPlace At(double xMm)
    {
        NeckPlace before = Places[0];
        if (xMm <= before.AtMm)
        {
            return before with { AtMm = xMm };
        }

        for (int i = 1; i < Places.Count; i++)
        {
            NeckPlace after = Places[i];
            if (xMm <= after.AtMm)
            {
                double share = (xMm - before.AtMm) / (after.AtMm - before.AtMm);
                return new(
                    xMm,
                    before.WidthMm + (share * (after.WidthMm - before.WidthMm)),
                    before.ThicknessMm + (share * (after.ThicknessMm - before.ThicknessMm))
                );
            }

            before = after;
        }

        return before with
        {
            AtMm = xMm,
        };
    }

    /// <summary>Stiffness of neck, bar and fingerboard together at a place.</summary>
    /// <param name="place">Where.</param>
    /// <param name="fingerboardMm">Thickness of the fingerboard there, mm.</param>
    /// <param name="neckModulusMPa">Modulus of the neck's wood, MPa.</param>
    /// <param name="fingerboardModulusMPa">Modulus of the fingerboard, MPa.</param>
    public CompositeSection SectionAt(
        NeckPlace place,
        double fingerboardMm,
        double neckModulusMPa,
        double fingerboardModulusMPa
    )
    {
        double b = place.WidthMm;
        double t = place.ThicknessMm;
        double tf = fingerboardMm;

        // Moments about the neck's face, downwards positive.
        double ea = (neckModulusMPa * Form.A * b * t) + (fingerboardModulusMPa * b * tf);
        double es =
            (neckModulusMPa * Form.S * b * t * t) - (0.5 * fingerboardModulusMPa * b * tf * tf);
        double ej =
            (neckModulusMPa * Form.J * b * t * t * t)
            + (fingerboardModulusMPa * b * tf * tf * tf / 3);
        if (Bar.IsPresent)
        {
            // The bar takes the place of the wood it is let into.
            double more = ((1000 * Bar.ModulusGPa) - neckModulusMPa) * Bar.WidthMm * Bar.DepthMm;
            double middle = Bar.BelowFaceMm + (0.5 * Bar.DepthMm);
            ea += more;
            es += more * middle;
            ej += more * ((middle * middle) + (Bar.DepthMm * Bar.DepthMm / 12));
        }

        double axis = es / ea;
        return new(ej - (es * axis), ea, axis);
    }
}
