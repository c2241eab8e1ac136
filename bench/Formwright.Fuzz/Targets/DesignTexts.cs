using System.Text;
using Formwright.Design;
using Formwright.Design.Reading;

namespace Formwright.Fuzz.Targets;

/// <summary>What the mutator starts from and throws in, for targets that read designs.</summary>
internal static class DesignTexts
{
    private const string Everything =
        "# all forms\n[instrument]\nname = 'Test'\nscale = \"25 1/2 in\"\njoin_fret = 12\n\n[outline]\nbody_length = 48.8e1 # so\n"
        + "upper_bout.at = 104\nupper_bout.width = 282\nwaist = { at = 190, width = 236, radius = \"6,5 cm\" }\n[outline.lower_bout]\nat = 356\nwidth = 368\n"
        + "\n[soundhole]\nat = 148\nradius = 42\n\n[[harmonic_bars]]\nat = 88\n\n[[harmonic_bars]]\nat = 206\nwidth = 6\n\n[mould]\nlayers = [\n  18, # one\n  \"3/4 in\",\n]\n"
        + "rebate = { width = 8, depth = 2.5 }\n[mould.fasteners]\ndowels = 2\n";

    private static readonly string[] Forms =
    [
        "[",
        "]",
        "[[",
        "]]",
        "{",
        "}",
        "=",
        ",",
        ".",
        "\"",
        "'",
        "\"\"\"",
        "'''",
        "\\",
        "\\u",
        "\\U0010FFFF",
        "\\x",
        "#",
        "\n",
        "\r\n",
        "\r",
        "\t",
        " ",
        "nan",
        "inf",
        "-inf",
        "1e308",
        "1e999",
        "-1",
        "0",
        "0x1F",
        "1_000",
        "01",
        "9223372036854775807",
        "99999999999999999999",
        "1979-05-27T07:32:00Z",
        "true",
        "false",
        "\"18 parsecs\"",
        "\"3/4 in\"",
        "\"1 ½ in\"",
        "\"12,5 mm\"",
        "18 mm",
        "12,5",
        "{ at = 5 }",
        "[{ at = 5 }]",
        "[1, 2]",
        "[]",
        "{}",
        "\uFEFF",
        "😀",
        "ñ",
        "“",
        "”",
        "\u0000",
        "\u001b[31m",
        "\u2028",
        "a.b.c = 1\n",
        "[a.b]\n",
        "[[a]]\n",
        "x = \"\"\"\n",
        "\"quoted key\" = 1\n",
        "\"\" = 1\n",
    ];

    public static IReadOnlyList<byte[]> Seeds { get; } =
    [
        .. DesignModels.Names.Select(name => Encoding.UTF8.GetBytes(DesignModels.TextOf(name))),
        Encoding.UTF8.GetBytes(Everything),
        Encoding.UTF8.GetBytes(
            "\uFEFF" + Everything.Replace("\n", "\r\n", StringComparison.Ordinal)
        ),
        [],
    ];

    public static IReadOnlyList<string> Pieces { get; } =
    [.. Forms, .. Forms, .. DesignText.Keys().SelectMany(Lines)];

    private static IEnumerable<string> Lines(KeySpec spec)
    {
        string path = spec.Path.Replace("[]", "", StringComparison.Ordinal);
        string name = path[(path.LastIndexOf('.') + 1)..];
        string value = string.IsNullOrEmpty(spec.Default) ? "5" : spec.Default;
        yield return name;
        yield return $"{name} = {value}\n";
        yield return $"{path} = {value}\n";
    }
}
