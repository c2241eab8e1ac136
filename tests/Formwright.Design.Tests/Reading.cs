using Formwright.Design.Reading;

namespace Formwright.Design.Tests;

/// <summary>Short ways to read a text in a test.</summary>
internal static class Reading
{
    /// <summary>A design that reads; tests add to it or replace parts of it.</summary>
    public const string Whole =
        "[instrument]\nscale = 650\n[outline]\nbody_length = 488\nupper_bout = { at = 104, width = 282 }\n"
        + "waist = { at = 190, width = 236 }\nlower_bout = { at = 356, width = 368 }\n[soundhole]\nat = 148\nradius = 42\n";

    /// <summary><c>line:column: message</c> of every fault.</summary>
    public static string[] Faults(string text) =>
        [.. DesignText.Parse(text, "f").Diagnostics.Select(Short)];

    /// <summary>The faults of a text that stands after a whole design.</summary>
    public static string[] FaultsAfterWhole(string text)
    {
        int lines = Whole.Count(c => c == '\n');
        return
        [
            .. DesignText
                .Parse(Whole + text, "f")
                .Diagnostics.Select(d => Short(d with { Line = d.Line - lines })),
        ];
    }

    private static string Short(Diagnostic diagnostic) => diagnostic.ToString()["f:".Length..];
}
