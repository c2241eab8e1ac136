using Formwright.Findings;

namespace Formwright.Web.Components.Board;

/// <summary>A stage of the job, in trade order.</summary>
/// <param name="Id">Last part of its address, and key of its name.</param>
/// <param name="Codes">What the codes of its findings start with; findings of other codes go to the stage of the field that cures them.</param>
/// <param name="Groups">Groups of the design file that are decided here.</param>
/// <param name="Cautions">Keys of the cautions that apply to its work.</param>
public sealed record Stage(
    string Id,
    IReadOnlyList<string> Codes,
    IReadOnlyList<string> Groups,
    IReadOnlyList<string> Cautions
)
{
    /// <summary>Parts that are looked at one at a time; none where the stage has a drawing of its own.</summary>
    public IReadOnlyList<StagePart> Parts { get; init; } = [];

    // Pages of one kind that are looked for; more than a design has.
    private const int MostPages = 8;

    public static Stage Outline { get; } =
        new(
            "outline",
            ["outline", "soundhole", "trace"],
            ["instrument", "outline", "soundhole", "harmonic_bars"],
            []
        );

    public static Stage Action { get; } =
        new(
            "action",
            ["action", "neck", "saddle", "strings", "fingerboard", "load", "measured"],
            [
                "neck",
                "fingerboard",
                "strings",
                "action",
                "saddle",
                "nut",
                "load",
                "measured",
                "tolerances",
            ],
            ["string-tension", "bone-dust"]
        );

    public static Stage Body { get; } =
        new(
            "body",
            ["dome"],
            [
                "dome",
                "soundboard",
                "bracing",
                "braces",
                "rosette",
                "bridge",
                "back",
                "ribs",
                "blocks",
                "plate",
            ],
            ["hot-bending", "router", "dust", "solvents"]
        )
        {
            Parts =
            [
                new("dome", ["soundboard", "brace-gauges", "rosette"]),
                new("back", ["back"]),
                new("ribs", ["ribs", "bending", "blocks"]),
                new("bridge", ["bridge"]),
                new("plate", ["plate", "modes", "thickness"]),
            ],
        };

    public static Stage Neck { get; } =
        new("neck", [], ["head", "heel"], ["router", "dust"]) { Parts = [new("neck", ["neck"])] };

    public static Stage Wood { get; } =
        new("wood", ["wood"], ["wood", "climate", "board_test", "board_target"], ["dust", "cites"])
        {
            Parts = [new("humidity", ["humidity"]), new("board", ["board"])],
        };

    public static Stage Workboard { get; } =
        new(
            "workboard",
            ["workboard", "board-check", "relief", "spine"],
            ["workboard"],
            ["router", "dust"]
        )
        {
            Parts =
            [
                new("plan", ["workboard"]),
                new("relief", ["spots", "overlay", "relief-gauges", "support-blocks"]),
                new("spine", ["spine"]),
                new("gaps", ["gaps"]),
            ],
        };

    public static Stage Mould { get; } =
        new("mould", ["mould"], ["mould", "templates"], ["router", "dust"])
        {
            Parts = [new("mould", ["mould"])],
        };

    public static Stage Jig { get; } =
        new("jig", ["jig"], ["jig"], ["router", "dust"])
        {
            Parts =
            [
                new("setting", ["jig-setting"]),
                new("slots", ["jig-board"]),
                new("bracket", ["jig-bracket"]),
            ],
        };

    public static Stage Stock { get; } =
        new("stock", ["stock"], ["stock"], ["router", "dust", "solvents"])
        {
            Parts =
            [
                new(
                    "order",
                    ["order", .. Enumerable.Range(1, MostPages).Select(i => $"order-{i}")]
                ),
                new(
                    "cut",
                    ["cut-list", .. Enumerable.Range(1, MostPages).Select(i => $"nest-{i}")]
                ),
            ],
        };

    public static Stage Sheets { get; } = new("sheets", [], ["sheets"], []);

    public static IReadOnlyList<Stage> All { get; } =
    [Outline, Action, Body, Neck, Wood, Workboard, Mould, Jig, Stock, Sheets];

    public string Name => WebWords.Of[$"stage.{Id}"];

    /// <summary>The stage of an address; the first where there is none such.</summary>
    public static Stage Named(string? id) => All.FirstOrDefault(stage => stage.Id == id) ?? Outline;

    /// <summary>The stage where a finding is seen to.</summary>
    public static Stage Of(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        string head = finding.Code.Split('.')[0];
        return All.FirstOrDefault(stage => stage.Codes.Contains(head)) ?? OfField(finding.Field);
    }

    /// <summary>The stage that has a key's field.</summary>
    public static Stage OfField(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        string group = path.Split('.', '[')[0];
        return All.FirstOrDefault(stage => stage.Groups.Contains(group)) ?? Sheets;
    }
}
