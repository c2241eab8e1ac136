using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Stock;

/// <summary>What a guitar's tooling takes ready made.</summary>
public static class HardwareList
{
    private const double BoltStepMm = 5;

    /// <summary>
    /// Dowels, bolts, captive nuts and washers of the mould; bolts, nuts and washers of the jig. A bolt of the mould has the length in trade that its
    /// stack asks for; where none fits, and for the jig, it is the next 5 mm.
    /// </summary>
    /// <param name="guitar">The guitar.</param>
    /// <param name="tooling">Its tooling.</param>
    public static IReadOnlyList<HardwareItem> Of(Guitar guitar, Tooling tooling)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(tooling);
        FastenersDesign design = guitar.Design.Mould.Fasteners;
        int dowels = tooling.Mould.Fasteners.Count(each => each.Kind == HoleKind.Dowel);
        int bolts = tooling.Mould.Fasteners.Count(each => each.Kind == HoleKind.Bolt);
        double length =
            tooling.Mould.Bolt?.LengthMm
            ?? (BoltStepMm * Math.Ceiling(tooling.Mould.BoltLengthMm / BoltStepMm));
        HardwareItem[] all =
        [
            new(HardwareKind.Dowel, design.DowelDiameterMm, tooling.Mould.DowelLengthMm, dowels),
            new(HardwareKind.Bolt, design.BoltDiameterMm, length, bolts),
            new(HardwareKind.CaptiveNut, design.BoltDiameterMm, 0, bolts),
            new(HardwareKind.Washer, design.BoltDiameterMm, 0, bolts),
        ];
        return [.. all.Concat(OfJig(tooling)).Where(item => item.Count > 0)];
    }

    private static IEnumerable<HardwareItem> OfJig(Tooling tooling)
    {
        if (tooling.Jig is not { } jig)
        {
            yield break;
        }

        double length = BoltStepMm * Math.Ceiling(jig.Hardware.LengthMm / BoltStepMm);
        double diameter = jig.Hardware.DiameterMm;
        yield return new(HardwareKind.Bolt, diameter, length, jig.Hardware.Bolts);
        yield return new(HardwareKind.Nut, diameter, 0, jig.Hardware.Bolts);
        yield return new(HardwareKind.Washer, diameter, 0, 2 * jig.Hardware.Bolts);
    }
}
