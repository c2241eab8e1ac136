using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[jig]</c>: a slotted board with brackets that are set to each instrument, in place of a mould.</summary>
/// <param name="Make">Whether its sheets and parts go into the pack, and what is wrong with it into the findings.</param>
/// <param name="LargestGapMm">Longest piece of rib that may stand between two contacts, or between a contact and a block, mm.</param>
/// <param name="Align">What lies on the line across the board.</param>
/// <param name="BoardThicknessMm">Thickness of the board, mm.</param>
/// <param name="EdgeMm">Board outside the farthest slot, and beyond heel and tail, mm.</param>
/// <param name="SpareMm">How much longer a slot is than its bolts need, at each end, mm.</param>
/// <param name="WebMm">Wood left between two slots, mm.</param>
/// <param name="ClearanceMm">Least distance of a bracket from another, from the neck and from the ribs beside its face, mm.</param>
/// <param name="Bracket">The bracket.</param>
/// <param name="Slots">Slots that the board has; none for a board that is still to be slotted.</param>
public sealed record JigDesign(
    bool Make,
    double LargestGapMm,
    JigAlignment Align,
    double BoardThicknessMm,
    double EdgeMm,
    double SpareMm,
    double WebMm,
    double ClearanceMm,
    BracketDesign Bracket,
    IReadOnlyList<JigSlotDesign> Slots
)
{
    internal static JigDesign Read(TableReader table) =>
        new(
            table.Flag("make", false),
            table.Length("largest_gap", 110, 30, 400),
            table.Choice("align", JigAlignment.Join),
            table.Length("board_thickness", 18, 6, 60),
            table.Length("edge", 30, 10, 200),
            table.Length("spare", 10, 2, 100),
            table.Length("web", 12, 3, 60),
            table.Length("clearance", 2, 0, 30),
            BracketDesign.Read(table.Table("bracket")),
            [.. table.Tables("slots").Select(JigSlotDesign.Read)]
        );
}
