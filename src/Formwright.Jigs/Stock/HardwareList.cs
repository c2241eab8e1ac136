using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Stock;

/// <summary>What a guitar's tooling takes ready made.</summary>
public static class HardwareList
{
    private const double BoltStepMm = 5;

    /// <summary>Dowels, bolts, captive nuts and washers of the mould; a bolt has the length in trade that its stack asks for; where none fits it is the next 5 mm, to be cut.</summary>
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
        return [.. all.Where(item => item.Count > 0)];
    }
}
