using Formwright.Design.Reading;
using Formwright.Design.Sections;

namespace Formwright.Design;

/// <summary>A whole design as the file states it: checked key by key, lengths in mm. What it implies is computed by the stages after it.</summary>
public sealed record InstrumentDesign(
    IdentityDesign Identity,
    OutlineDesign Outline,
    SoundholeDesign Soundhole,
    IReadOnlyList<HarmonicBarDesign> HarmonicBars,
    SoundboardDesign Soundboard,
    DomeDesign Dome,
    BracingDesign Bracing,
    IReadOnlyList<BraceDesign> Braces,
    RosetteDesign Rosette,
    BridgeDesign Bridge,
    NutDesign Nut,
    BackDesign Back,
    RibsDesign Ribs,
    BlocksDesign Blocks,
    HeadDesign Head,
    HeelDesign Heel,
    NeckDesign Neck,
    FingerboardDesign Fingerboard,
    StringsDesign Strings,
    ActionDesign Action,
    SaddleDesign Saddle,
    LoadDesign Load,
    PlateDesign Plate,
    TolerancesDesign Tolerances,
    MeasuredDesign Measured,
    WorkboardDesign Workboard,
    MouldDesign Mould,
    JigDesign Jig,
    TemplatesDesign Templates,
    StockDesign Stock,
    WoodDesign Wood,
    ClimateDesign Climate,
    BoardTestDesign BoardTest,
    BoardTargetDesign BoardTarget,
    SheetsDesign Sheets
)
{
    internal static InstrumentDesign Read(TableReader root)
    {
        // Read in the order of the record, which is the order of the reference.
        OutlineDesign outline;
        SoundholeDesign soundhole;
        HarmonicBarDesign[] bars;
        DomeDesign dome;
        return new(
            IdentityDesign.Read(root.Table("instrument")),
            outline = OutlineDesign.Read(root.Table("outline")),
            soundhole = SoundholeDesign.Read(root.Table("soundhole")),
            bars = [.. root.Tables("harmonic_bars").Select(HarmonicBarDesign.Read)],
            SoundboardDesign.Read(root.Table("soundboard")),
            dome = DomeDesign.Read(root.Table("dome"), outline, bars),
            BracingDesign.Read(root.Table("bracing")),
            [.. root.Tables("braces").Select(BraceDesign.Read)],
            RosetteDesign.Read(root.Table("rosette"), soundhole),
            BridgeDesign.Read(root.Table("bridge")),
            NutDesign.Read(root.Table("nut")),
            BackDesign.Read(root.Table("back"), outline),
            RibsDesign.Read(root.Table("ribs")),
            BlocksDesign.Read(root.Table("blocks")),
            HeadDesign.Read(root.Table("head")),
            HeelDesign.Read(root.Table("heel")),
            NeckDesign.Read(root.Table("neck")),
            FingerboardDesign.Read(root.Table("fingerboard")),
            StringsDesign.Read(root.Table("strings")),
            ActionDesign.Read(root.Table("action")),
            SaddleDesign.Read(root.Table("saddle")),
            LoadDesign.Read(root.Table("load"), dome),
            PlateDesign.Read(root.Table("plate")),
            TolerancesDesign.Read(root.Table("tolerances")),
            MeasuredDesign.Read(root.Table("measured")),
            WorkboardDesign.Read(root.Table("workboard")),
            MouldDesign.Read(root.Table("mould")),
            JigDesign.Read(root.Table("jig")),
            TemplatesDesign.Read(root.Table("templates")),
            StockDesign.Read(root.Table("stock")),
            WoodDesign.Read(root.Table("wood")),
            ClimateDesign.Read(root.Table("climate")),
            BoardTestDesign.Read(root.Table("board_test")),
            BoardTargetDesign.Read(root.Table("board_target")),
            SheetsDesign.Read(root.Table("sheets"))
        );
    }
}
