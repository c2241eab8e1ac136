using System.Text;
using Formwright.Design;

namespace Formwright.Fuzz.Targets;

/// <summary>
/// Edits of a design's text: after an edit Tomlyn itself finds the new value at the key, every other value unchanged, and the comments where
/// they were. Texts that don't parse are refused as the caller's mistake, and only those.
/// </summary>
internal sealed class EditTarget : IFuzzTarget
{
    private static readonly string[] Values =
    [
        "1",
        "-2.5",
        "\"3/4 in\"",
        "'x'",
        "true",
        "[18, 18]",
        "{ at = 1 }",
        "\"\"\"a\nb\"\"\"",
        "[\n1, # c\n2]",
        "1979-05-27",
    ];

    private static readonly string[] Paths =
    [
        .. DesignText
            .Keys()
            .Select(spec => spec.Path.Replace("[]", "[0]", StringComparison.Ordinal)),
        "harmonic_bars[1].at",
        "harmonic_bars[2].at",
        "harmonic_bars[1]",
        "harmonic_bars[0]",
        "mould",
        "outline",
        "outline.waist",
        "mould.rebate",
        "a",
        "a.b",
        "a.b.c",
        "a[0].b",
        "a[0].b.c",
        "harmonic_bars",
    ];

    public string Name => "edit";

    public IReadOnlyList<byte[]> Seeds { get; } = DesignTexts.Seeds;

    public IReadOnlyList<string> Pieces { get; } = DesignTexts.Pieces;

    public int MostChanges => 2;

    public string Try(byte[] input, Random random)
    {
        string text = Encoding.UTF8.GetString(input);
        string path = Paths[random.Next(Paths.Length)];
        string value = Values[random.Next(Values.Length)];
        bool removes = random.Next(3) == 0;
        string edited;
        try
        {
            edited = removes ? DesignEdit.Remove(text, path) : DesignEdit.Set(text, path, value);
        }
        catch (ArgumentException refused)
        {
            return refused.ParamName == "text" ? "no TOML" : "no such place";
        }

        Flat before =
            Flat.Of(text) ?? throw new BrokenPromiseException("edited what doesn't parse");
        Flat after =
            Flat.Of(edited) ?? throw new BrokenPromiseException("the edited text doesn't parse");
        if (before.IsInPieces || after.IsInPieces)
        {
            return "a list in pieces";
        }

        if (removes)
        {
            CheckRemoved(before, after, path);
            return edited == text ? "nothing to remove" : "removed";
        }

        CheckSet(before, after, path, value);
        return "set";
    }

    private static void CheckSet(Flat before, Flat after, string path, string value)
    {
        Flat alone = Flat.Of($"v = {value}")!;
        foreach ((string under, string leaf) in alone.Values)
        {
            string key = path + under[1..];
            if (!after.Values.TryGetValue(key, out string? found) || found != leaf)
            {
                throw new BrokenPromiseException($"{key} is {found}, not {leaf}");
            }
        }

        Compare(before, after, path);
        foreach (string key in after.Values.Keys.Where(key => !IsUnder(key, path)))
        {
            // A group that came into being shows as its own entry.
            if (!before.Values.ContainsKey(key) && !path.StartsWith(key, StringComparison.Ordinal))
            {
                throw new BrokenPromiseException($"{key} came from nowhere");
            }
        }

        // A comment may only go with the value that it stood in.
        if (before.Comments.Count > after.Comments.Count + before.CommentsIn(path))
        {
            throw new BrokenPromiseException("a comment was lost");
        }
    }

    private static void CheckRemoved(Flat before, Flat after, string path)
    {
        if (path.EndsWith(']'))
        {
            // The entries after it move up; only the count is told.
            string list = path[..path.LastIndexOf('[')];
            int gone = before.CountOf(list) - after.CountOf(list);
            if (gone is not (0 or 1))
            {
                throw new BrokenPromiseException($"{gone} entries are gone");
            }

            return;
        }

        if (after.Values.Keys.FirstOrDefault(key => IsUnder(key, path)) is { } left)
        {
            throw new BrokenPromiseException($"{left} is still there");
        }

        Compare(before, after, path);
    }

    private static void Compare(Flat before, Flat after, string path)
    {
        foreach ((string key, string leaf) in before.Values)
        {
            if (
                !IsUnder(key, path)
                && !path.StartsWith(key, StringComparison.Ordinal)
                && (!after.Values.TryGetValue(key, out string? now) || now != leaf)
            )
            {
                throw new BrokenPromiseException($"{key} was {leaf}, is {now}");
            }
        }
    }

    private static bool IsUnder(string key, string path) =>
        key.StartsWith(path, StringComparison.Ordinal)
        && (key.Length == path.Length || key[path.Length] is '.' or '[');
}
