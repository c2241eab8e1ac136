using Formwright.Design;
using Formwright.Design.Sections;

namespace Formwright.Instrument.Strings;

/// <summary>The strings of an instrument, bass to treble, at pitch and in place.</summary>
/// <param name="Strings">From the bass string to the treble string, whichever side of the frame that is.</param>
/// <param name="ScaleMm">Scale, mm.</param>
/// <param name="Hand">A left-handed instrument has the bass string on the frame's treble side.</param>
public sealed record StringSet(IReadOnlyList<InstrumentString> Strings, double ScaleMm, Hand Hand)
{
    /// <summary>Sum of all tensions, N.</summary>
    public double TotalTensionN => Strings.Sum(each => each.TensionN);

    /// <summary>The strings of a design.</summary>
    public static StringSet Of(InstrumentDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        StringsDesign strings = design.Strings;
        double scaleMm = design.Identity.ScaleMm;
        int count = strings.Strings.Count;
        double[] nut =
            strings.Layout == StringLayout.EvenGaps
                ? EvenGaps(strings)
                : EvenCentres(count, strings.SpacingNutMm);
        double[] saddle = EvenCentres(count, strings.SpacingSaddleMm);
        double side = design.Identity.Hand == Hand.Left ? -1 : 1;
        return new(
            [
                .. strings.Strings.Select(
                    (each, i) =>
                        StringOf(
                            each,
                            count - i,
                            scaleMm,
                            strings.A4Hz,
                            side * nut[i],
                            side * saddle[i]
                        )
                ),
            ],
            scaleMm,
            design.Identity.Hand
        );
    }

    /// <summary>How much each string's tension changes at another scale, pitch standard or tuning, N, bass to treble.</summary>
    /// <param name="scaleMm">The other scale, mm.</param>
    /// <param name="a4Hz">The other pitch standard, Hz.</param>
    /// <param name="notes">The other tuning, bass to treble; null to keep the notes.</param>
    /// <exception cref="ArgumentException">Not one note for each string.</exception>
    public IReadOnlyList<double> TensionChangesN(
        double scaleMm,
        double a4Hz,
        IReadOnlyList<NoteName>? notes = null
    )
    {
        if (notes is not null && notes.Count != Strings.Count)
        {
            throw new ArgumentException("One note for each string is needed.", nameof(notes));
        }

        return
        [
            .. Strings.Select(
                (each, i) =>
                    each.TensionAt(scaleMm, (notes?[i] ?? each.Note).FrequencyHz(a4Hz))
                    - each.TensionN
            ),
        ];
    }

    private static InstrumentString StringOf(
        StringDesign each,
        int number,
        double scaleMm,
        double a4Hz,
        double nutYMm,
        double saddleYMm
    )
    {
        double core = each.CoreDiameterMm ?? each.DiameterMm;
        double modulusMPa = 1000 * each.ModulusGPa;

        // n equal strands of together the core's section bend like n thin strings: one n-th of the solid core.
        double bending = VibratingString.BendingStiffnessNmm2(modulusMPa, core) / each.CoreStrands;
        NoteName note = each.Note!.Value;
        double frequencyHz = note.FrequencyHz(a4Hz);
        double tensionN = VibratingString.TensionN(each.UnitMassKgPerM, scaleMm, frequencyHz);
        return new(
            number,
            note,
            frequencyHz,
            each.UnitMassKgPerM,
            each.DiameterMm,
            modulusMPa,
            modulusMPa * Math.PI * core * core / 4,
            bending,
            tensionN,
            VibratingString.Inharmonicity(bending, tensionN, scaleMm),
            nutYMm,
            saddleYMm
        );
    }

    private static double[] EvenCentres(int count, double spacingMm) =>
        [.. Enumerable.Range(0, count).Select(i => spacingMm * (((double)i / (count - 1)) - 0.5))];

    // Gaps between the sides of neighbours are equal; the outermost centres stay where the spacing puts them.
    private static double[] EvenGaps(StringsDesign strings)
    {
        IReadOnlyList<StringDesign> all = strings.Strings;
        double wood = 0;
        for (int i = 1; i < all.Count; i++)
        {
            wood += 0.5 * (all[i - 1].DiameterMm + all[i].DiameterMm);
        }

        double gap = (strings.SpacingNutMm - wood) / (all.Count - 1);
        double[] places = new double[all.Count];
        places[0] = -0.5 * strings.SpacingNutMm;
        for (int i = 1; i < places.Length; i++)
        {
            places[i] = places[i - 1] + gap + (0.5 * (all[i - 1].DiameterMm + all[i].DiameterMm));
        }

        return places;
    }
}
