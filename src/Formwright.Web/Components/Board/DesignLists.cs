using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Web.Reading;

namespace Formwright.Web.Components.Board;

/// <summary>
/// The lists of a design whose entries a maker adds and takes away: rings, bars, braces, sheets of stock. A list that the file leaves to the tool
/// is first written out as the tool has it, so that nothing changes before the maker changes it.
/// </summary>
internal static class DesignLists
{
    // A copy stands beside its pattern, not on it.
    private const double AsideMm = 20;

    /// <summary>The list that a group of keys is an entry of, or null: <c>rosette.rings[]</c> is one of <c>rosette.rings</c>.</summary>
    public static string? Of(string group) =>
        group.EndsWith("[]", StringComparison.Ordinal) ? group[..^2] : null;

    /// <summary>How many entries the file gives.</summary>
    public static int Count(BoardView view, string list)
    {
        int count = 0;
        while (view.IsSet($"{list}[{count}]"))
        {
            count++;
        }

        return count;
    }

    /// <summary>What to set so that the list has one entry more, or is written out; empty where the tool has no pattern for one.</summary>
    public static IReadOnlyDictionary<string, string?> Added(BoardView view, string list)
    {
        int count = Count(view, list);
        Dictionary<string, string?> changes = [];
        if (count == 0)
        {
            string[] entries =
            [
                .. Chosen(view.Design, list)
                    .Select(entry =>
                        $"{{ {string.Join(", ", entry.Select(pair => $"{pair.Name} = {pair.Value}"))} }}"
                    ),
            ];
            if (entries.Length > 0)
            {
                changes[list] = $"[\n    {string.Join(",\n    ", entries)},\n]";
            }

            return changes;
        }

        string last = $"{list}[{count - 1}]";
        foreach (KeySpec spec in BoardView.AllSpecs.Where(spec => spec.Group == list + "[]"))
        {
            if (
                view.IsSet($"{last}.{spec.Name}")
                && Written(spec, view.ValueOf($"{last}.{spec.Name}")) is { } value
            )
            {
                changes[$"{list}[{count}].{spec.Name}"] = value;
            }
        }

        return changes;
    }

    // As the tool has it where the file gives none; or, where the tool has none either, a pattern.
    private static IReadOnlyList<(string Name, string Value)[]> Chosen(
        InstrumentDesign design,
        string list
    ) =>
        list switch
        {
            "rosette.rings" =>
            [
                .. design.Rosette.Rings.Select(ring =>
                    new[]
                    {
                        ("inner", N(ring.InnerMm)),
                        ("outer", N(ring.OuterMm)),
                        ("depth", N(ring.DepthMm)),
                    }
                ),
            ],
            "back.bars" =>
            [
                .. design.Back.Bars.Select(bar =>
                    new[]
                    {
                        ("at", N(bar.AtMm)),
                        ("width", N(bar.WidthMm)),
                        ("height", N(bar.HeightMm)),
                    }
                ),
            ],
            "harmonic_bars" =>
            [
                [("at", N(design.Soundhole.AtMm + design.Soundhole.RadiusMm + AsideMm))],
            ],
            "braces" =>
            [
                [
                    (
                        "at",
                        $"[{N(design.Outline.Waist.AtMm + (2 * AsideMm))}, {N(design.Outline.LowerBout.AtMm)}]"
                    ),
                    ("y", $"[{N(2 * AsideMm)}, {N(3 * AsideMm)}]"),
                ],
            ],
            "stock.sheet" =>
            [
                [
                    ("material", "\"plywood\""),
                    ("thickness", "18"),
                    ("length", "2500"),
                    ("width", "1250"),
                    ("price", "0"),
                ],
            ],
            "stock.hardware" =>
            [
                [("kind", "\"dowel\""), ("diameter", "8"), ("price", "0")],
            ],
            _ => [],
        };

    private static string? Written(KeySpec spec, object? value) =>
        (spec.Kind, value) switch
        {
            (KeyKind.Length, double mm) => N(
                spec.Name == "at" ? Math.Min(mm + AsideMm, spec.Max) : mm
            ),
            (KeyKind.Flag, bool flag) => flag ? "true" : "false",
            (KeyKind.Choice or KeyKind.Text, string text) => KeyInput.Quoted(text),
            (_, IReadOnlyList<double> figures) => $"[{string.Join(", ", figures.Select(N))}]",
            (_, double number) => N(number),
            (_, long or int) => $"{value}",
            _ => null,
        };

    private static string N(double value) => LengthText.Number(value);
}
