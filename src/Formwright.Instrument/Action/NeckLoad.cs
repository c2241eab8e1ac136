using Formwright.Instrument.Necks;

namespace Formwright.Instrument.Action;

/// <summary>
/// How the strings bend the neck: an Euler-Bernoulli cantilever clamped at the join, of neck, fingerboard and bar as one transformed section, under
/// each string's tension at its height over the neutral axis, M(x) = Σ Tᵢ (hᵢ(x) + f + tf(x) + c(x)).
/// </summary>
/// <remarks>
/// hᵢ is the string's height over the chord of the frets from nut to join, straight from cn at the nut to h at the join; c is the neutral axis under
/// the neck's face. The bow itself is left out of the arm (0.1 mm in some 18). The deflection is then linear in H = Σ Tᵢ hᵢ(join):
/// w = fixed + H · perMoment.
/// </remarks>
internal sealed class NeckLoad
{
    private readonly double[] places;
    private readonly double[] fixedPart;
    private readonly double[] perMoment;

    public NeckLoad(ChainFigures figures, ChainGeometry geometry)
    {
        Cantilever beam = geometry.Beam;
        int n = beam.PointsMm.Count;
        double[] curvature = new double[n];
        double[] unit = new double[n];
        double total = 0;
        double atNut = 0;
        for (int i = 0; i < geometry.Count; i++)
        {
            double tension = figures.TensionFactor * geometry.Strings.Strings[i].TensionN;
            double share = geometry.ShareOf(i);
            total += tension;
            atNut +=
                tension * (figures.NutBassMm + (share * (figures.NutTrebleMm - figures.NutBassMm)));
        }

        for (int q = 0; q < n; q++)
        {
            double x = beam.PointsMm[q];
            double along = x / geometry.JoinMm;
            double board =
                figures.FingerboardNutMm
                + (along * (figures.FingerboardJoinMm - figures.FingerboardNutMm));
            NeckPlace place = geometry.Profile.At(x);
            CompositeSection section = geometry.Profile.SectionAt(
                place with
                {
                    ThicknessMm = place.ThicknessMm + figures.NeckThickerMm,
                },
                board,
                figures.NeckModulusMPa,
                figures.FingerboardModulusMPa
            );
            double moment =
                (total * (figures.FretHeightMm + board + section.AxisBelowFaceMm))
                + (atNut * (1 - along));
            curvature[q] = moment / section.BendingStiffnessNmm2;
            unit[q] = along / section.BendingStiffnessNmm2;
        }

        places = [.. beam.PlacesMm];
        fixedPart = beam.Deflections(curvature);
        perMoment = beam.Deflections(unit);
    }

    /// <summary>Rise at the nut for H, mm.</summary>
    public double AtNut(double momentNmm) => fixedPart[0] + (momentNmm * perMoment[0]);

    /// <summary>Rise at a place of the beam for H, mm; 0 at the join and past it.</summary>
    public double At(double xMm, double momentNmm)
    {
        const double near = 1e-6;
        for (int i = 0; i < places.Length; i++)
        {
            if (Math.Abs(places[i] - xMm) <= near)
            {
                return fixedPart[i] + (momentNmm * perMoment[i]);
            }
        }

        return 0;
    }
}
