using Formwright.Findings;

namespace Formwright.Web.Components.Board;

/// <summary>A stage of the job, in trade order.</summary>
/// <param name="Id">Last part of its address, and key of its name.</param>
/// <param name="Codes">What the codes of its findings start with.</param>
/// <param name="Groups">Groups of the design file that are decided here.</param>
public sealed record Stage(string Id, IReadOnlyList<string> Codes, IReadOnlyList<string> Groups)
{
    public static Stage Outline { get; } =
        new(
            "outline",
            ["outline", "soundhole", "trace"],
            ["instrument", "outline", "soundhole", "harmonic_bars"]
        );

    public static Stage Action { get; } =
        new(
            "action",
            [
                "action",
                "neck",
                "saddle",
                "strings",
                "fingerboard",
                "load",
                "measured",
                "dome",
                "ribs",
                "back",
                "body",
            ],
            [
                "neck",
                "fingerboard",
                "strings",
                "action",
                "saddle",
                "dome",
                "load",
                "measured",
                "tolerances",
                "soundboard",
                "ribs",
                "back",
                "wood",
                "climate",
                "board_test",
            ]
        );

    public static Stage Workboard { get; } =
        new("workboard", ["workboard", "relief", "spine"], ["workboard", "fasteners"]);

    public static Stage Mould { get; } = new("mould", ["mould", "bracket"], ["mould", "templates"]);

    public static Stage Sheets { get; } = new("sheets", [], ["sheets"]);

    public static IReadOnlyList<Stage> All { get; } = [Outline, Action, Workboard, Mould, Sheets];

    public string Name => WebWords.Of[$"stage.{Id}"];

    /// <summary>The stage of an address; the first where there is none such.</summary>
    public static Stage Named(string? id) => All.FirstOrDefault(stage => stage.Id == id) ?? Outline;

    /// <summary>The stage where a finding is seen to.</summary>
    public static Stage Of(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        string head = finding.Code.Split('.')[0];
        return All.FirstOrDefault(stage => stage.Codes.Contains(head)) ?? Sheets;
    }

    /// <summary>The stage that has a key's field.</summary>
    public static Stage OfField(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        string group = path.Split('.', '[')[0];
        return All.FirstOrDefault(stage => stage.Groups.Contains(group)) ?? Sheets;
    }
}
