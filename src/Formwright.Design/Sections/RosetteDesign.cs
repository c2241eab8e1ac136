using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[rosette]</c>: the channels routed around the soundhole.</summary>
/// <param name="Rings">Channels; where the file gives none, one that starts 5 mm outside the hole and is 18 mm wide.</param>
/// <param name="PilotMm">Diameter of the pin that the cutter turns on, mm.</param>
public sealed record RosetteDesign(IReadOnlyList<RosetteRingDesign> Rings, double PilotMm)
{
    internal static RosetteDesign Read(TableReader table, SoundholeDesign soundhole)
    {
        RosetteRingDesign[] rings = [.. table.Tables("rings").Select(RosetteRingDesign.Read)];
        return new(
            table.Has("rings")
                ? rings
                : [new(soundhole.RadiusMm + 5, soundhole.RadiusMm + 23, 1.4)],
            table.Length("pilot", 6, 1, 30)
        );
    }
}
