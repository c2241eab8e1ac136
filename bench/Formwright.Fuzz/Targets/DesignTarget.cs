using Formwright.Design;
using Formwright.Design.Reading;
using Tomlyn.Parsing;

namespace Formwright.Fuzz.Targets;

/// <summary>
/// The reader of design files. It never throws; it gives either a design or diagnostics; every diagnostic points into the text and can be
/// shown on a terminal; a text means the same with the line ends of another system; and it finds a key twice exactly where Tomlyn's own
/// validator does.
/// </summary>
internal sealed class DesignTarget : IFuzzTarget
{
    public string Name => "design";

    public IReadOnlyList<byte[]> Seeds { get; } = DesignTexts.Seeds;

    public IReadOnlyList<string> Pieces { get; } = DesignTexts.Pieces;

    public int MostChanges => 12;

    public string Try(byte[] input, Random random)
    {
        DesignReading reading = DesignText.Read(input, "f.toml");
        if (reading.Succeeded == reading.Diagnostics.Count > 0)
        {
            throw new BrokenPromiseException("neither design nor diagnostics, or both");
        }

        string text = reading.Text.StartsWith('\uFEFF') ? reading.Text[1..] : reading.Text;
        string[] lines = text.Split('\n');
        foreach (Diagnostic diagnostic in reading.Diagnostics)
        {
            Check(diagnostic, lines);
        }

        if (text.Length == 0)
        {
            return "refused";
        }

        CheckTwice(text, reading);
        CheckLineEnds(text, reading);
        return reading.Succeeded ? "a design"
            : IsSyntax(text) ? "faults of values"
            : "faults of syntax";
    }

    private static void Check(Diagnostic diagnostic, string[] lines)
    {
        if (diagnostic.Line < 1 || diagnostic.Line > lines.Length)
        {
            throw new BrokenPromiseException($"line {diagnostic.Line} of {lines.Length}");
        }

        int characters = lines[diagnostic.Line - 1].EnumerateRunes().Count();
        if (diagnostic.Column < 1 || diagnostic.Column > characters + 1)
        {
            throw new BrokenPromiseException($"column {diagnostic.Column} of {characters}");
        }

        if (diagnostic.Message.Length is 0 or > 1000 || diagnostic.Message.Any(char.IsControl))
        {
            throw new BrokenPromiseException("a message that can't be shown");
        }
    }

    private static bool IsSyntax(string text)
    {
        try
        {
            return !SyntaxParser.Parse(text, "", validate: false).HasErrors;
        }
        catch (Exception known) when (known is ArgumentOutOfRangeException or Tomlyn.TomlException)
        {
            return false;
        }
    }

    // Only where all is well otherwise: other faults may fill the list, or hide lines.
    private static void CheckTwice(string text, DesignReading reading)
    {
        if (!IsSyntax(text) || reading.Diagnostics.Count > DesignText.MaxDiagnostics)
        {
            return;
        }

        bool ours = reading.Diagnostics.Any(d =>
            d.Message.Contains("second time", StringComparison.Ordinal)
        );
        bool theirs = SyntaxParser.Parse(text, "", validate: true).HasErrors;
        if (ours != theirs)
        {
            throw new BrokenPromiseException($"a key twice: we say {ours}, Tomlyn says {theirs}");
        }
    }

    private static void CheckLineEnds(string text, DesignReading reading)
    {
        if (
            text.Contains('\r', StringComparison.Ordinal)
            || reading.Diagnostics.Any(d => d.Message.Contains("U+", StringComparison.Ordinal))
        )
        {
            return;
        }

        DesignReading other = DesignText.Parse(
            text.Replace("\n", "\r\n", StringComparison.Ordinal),
            "f.toml"
        );
        if (
            !reading
                .Diagnostics.Select(d => d.Line)
                .SequenceEqual(other.Diagnostics.Select(d => d.Line))
        )
        {
            throw new BrokenPromiseException("other faults with the line ends of Windows");
        }
    }
}
