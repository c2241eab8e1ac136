using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[wood]</c>: what each part is made of.</summary>
public sealed record WoodDesign(
    PartWoodDesign Soundboard,
    PartWoodDesign Braces,
    PartWoodDesign Back,
    PartWoodDesign BackBars,
    PartWoodDesign Ribs,
    PartWoodDesign Linings,
    PartWoodDesign Blocks,
    PartWoodDesign Neck,
    PartWoodDesign Fingerboard,
    PartWoodDesign Bridge
)
{
    internal static WoodDesign Read(TableReader table)
    {
        PartWoodDesign Part(string key, Species species, GrainCut cut = GrainCut.Quarter) =>
            PartWoodDesign.Read(table.Table(key), species, cut);
        return new(
            Part("soundboard", Species.EngelmannSpruce),
            Part("braces", Species.EngelmannSpruce),
            Part("back", Species.IndianRosewood),
            Part("back_bars", Species.SpanishCedar),
            Part("ribs", Species.IndianRosewood),
            Part("linings", Species.SpanishCedar),
            Part("blocks", Species.SpanishCedar),
            Part("neck", Species.SpanishCedar),
            Part("fingerboard", Species.AfricanEbony),
            Part("bridge", Species.IndianRosewood)
        );
    }
}
