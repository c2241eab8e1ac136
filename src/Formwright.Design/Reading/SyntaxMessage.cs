using System.Text.RegularExpressions;
using Formwright.Words;

namespace Formwright.Design.Reading;

/// <summary>
/// Says in a maker's words what is wrong with one statement. It looks at the statement itself rather than at the parser's message,
/// so that it can name what people really do: units without quotes, decimal commas, curly quotes, a colon for the equals sign.
/// </summary>
internal static partial class SyntaxMessage
{
    private static readonly Wording Words = DesignWords.Of;

    /// <summary>The message, and the offset in <paramref name="text"/> that it points at.</summary>
    /// <param name="text">The faulty statement.</param>
    /// <param name="fault">What the parser objects to.</param>
    /// <param name="statement">What the splitter found.</param>
    public static (string Message, int Offset) Of(
        string text,
        SyntaxFault fault,
        Statement statement
    )
    {
        int at = Math.Min(fault.Offset, Math.Max(0, text.Length - 1));
        Match pair = Pair().Match(text);
        Group value = pair.Groups["value"];
        if (pair.Success && WithUnit(value.Value) is { } length)
        {
            return (
                Words.Format("syntax.unit", Shown.Of(pair.Groups["key"].Value.Trim()), length),
                value.Index
            );
        }

        if (NoText().Match(text) is { Success: true } odd)
        {
            return odd.Value == "\r"
                ? (Words["syntax.line-end"], odd.Index)
                : (Words.Format("syntax.control", $"U+{(int)odd.Value[0]:X4}"), odd.Index);
        }

        if (statement.OpenAt >= 0)
        {
            int open = statement.OpenAt - statement.Start;
            if (statement.IsHeading)
            {
                return (Words["syntax.open-heading"], open);
            }

            return text[open] is '"' or '\''
                ? (Words["syntax.open-text"], open)
                : (
                    Words.Format("syntax.open-bracket", text[open], text[open] == '[' ? ']' : '}'),
                    open
                );
        }

        if (statement.IsHeading)
        {
            return (Words["syntax.heading"], at);
        }

        if (!pair.Success)
        {
            return WithoutEquals(text, at);
        }

        Group key = pair.Groups["key"];
        string name = Shown.Of(key.Value.Trim());
        if (!GoodKey().IsMatch(key.Value))
        {
            return (Words.Format("syntax.key", name), 0);
        }

        return value.Length == 0 || value.Value[0] == '#'
            ? (Words.Format("syntax.no-value", name), pair.Groups["equals"].Index)
            : OfValue(name, text, value.Index, at, fault);
    }

    private static (string Message, int Offset) OfValue(
        string key,
        string text,
        int start,
        int at,
        SyntaxFault fault
    )
    {
        string value = text[start..];
        string bare = Comment().Replace(value, "").Trim();
        string shown = Shown.Of(bare);
        if (bare.Length == 0)
        {
            // Blanks that are none to TOML: a no-break space, a line separator.
            return (Words.Format("syntax.no-value", key), start);
        }

        if (bare[0] is '“' or '”' or '„' or '«' or '‘' or '’')
        {
            return (Words.Format("syntax.curly", key), start);
        }

        if (DecimalComma().IsMatch(bare))
        {
            return (Words.Format("syntax.comma", key, bare.Replace(',', '.'), bare), start);
        }

        if (Flag().IsMatch(bare))
        {
            return (Words["syntax.flag"], start);
        }

        if (fault.Message.Contains("depth", StringComparison.Ordinal))
        {
            return (Words.Format("syntax.deep", key), start);
        }

        if (char.IsLetter(bare[0]) && at <= start + 1)
        {
            return (Words.Format("syntax.bare-text", key, shown), start);
        }

        if (value[0] is '[' or '{' && at < text.Length - 1)
        {
            return (Words.Format("syntax.list", key, Shown.Of(text[at..])), at);
        }

        if (
            value[0] is '"' or '\''
            && (
                fault.Message.Contains("escape", StringComparison.Ordinal)
                || fault.Message.Contains("Unicode", StringComparison.Ordinal)
            )
        )
        {
            return (
                Words.Format("syntax.escape", key),
                Math.Max(start, text.LastIndexOf('\\', at))
            );
        }

        bool inFirstWord = !text.AsSpan(start, Math.Max(0, at - start)).ContainsAny(' ', '\t');
        if (inFirstWord && (char.IsAsciiDigit(bare[0]) || bare[0] is '+' or '-' or '.'))
        {
            return (Words.Format("syntax.number", key, shown), start);
        }

        return at > start
            ? (Words.Format("syntax.after", key, Shown.Of(text[at..])), at)
            : (Words.Format("syntax.value", key, shown), start);
    }

    // 18 mm, 3/4 in, 1 3/4": a length as it should stand in quotes, or null.
    private static string? WithUnit(string value)
    {
        string bare = Comment().Replace(value, "").Trim();
        return
            Lengths.Read(bare, out _) == LengthFault.None
            && !PlainNumber().IsMatch(bare)
            && !DecimalComma().IsMatch(bare)
            ? Shown.Of(bare.Replace("\"", " in", StringComparison.Ordinal))
            : null;
    }

    private static (string Message, int Offset) WithoutEquals(string text, int at)
    {
        string line = text.Split('\n', 2)[0].TrimEnd();
        return Colon().Match(line) is { Success: true } colon
            ? (
                Words.Format("syntax.colon", Shown.Of(colon.Groups["key"].Value)),
                colon.Groups["colon"].Index
            )
            : (Words.Format("syntax.no-equals", Shown.Of(line)), line.Length > at ? at : 0);
    }

    [GeneratedRegex(
        """\A(?<key>[^=\n"']*|"[^"\n]*"|'[^'\n]*')(?<equals>=)[ \t]*(?<value>[^\n]*)""",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Pair();

    [GeneratedRegex(
        """\A\s*(?:[A-Za-z0-9_-]+|"[^"]*"|'[^']*')(?:\s*\.\s*[A-Za-z0-9_-]+)*\s*\z""",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex GoodKey();

    [GeneratedRegex("""\A(?<key>[\w.-]+)[ \t]*(?<colon>:)""", RegexOptions.CultureInvariant)]
    private static partial Regex Colon();

    [GeneratedRegex("""(?:\A|[ \t])#[^\n]*""", RegexOptions.CultureInvariant)]
    private static partial Regex Comment();

    [GeneratedRegex("""\A[+-]?[0-9]*,[0-9]+\z""", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalComma();

    [GeneratedRegex("""\A[+-]?[0-9]*\.?[0-9]*\z""", RegexOptions.CultureInvariant)]
    private static partial Regex PlainNumber();

    [GeneratedRegex(
        """\A(?:true|false|yes|no|on|off|sí|si|verdadero|falso)\z""",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex Flag();

    [GeneratedRegex("""\r(?!\n)|[\x00-\x08\x0B\x0C\x0E-\x1F\x7F]""", RegexOptions.CultureInvariant)]
    private static partial Regex NoText();
}
