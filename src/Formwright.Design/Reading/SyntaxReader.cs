using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>
/// Parses TOML with Tomlyn. A text that doesn't parse as a whole is parsed statement by statement: each faulty statement gives one
/// diagnostic in our words and is blanked out, so that the rest of the file is still checked.
/// </summary>
internal sealed class SyntaxReader(string file, List<Diagnostic> diagnostics)
{
    /// <summary>Faults of syntax after which the rest of a file is not read any more.</summary>
    public const int MaxFaults = 100;

    /// <summary>The parsed text without its faulty statements, in place; null where nothing could be made of it.</summary>
    /// <param name="text">The text, without a byte order mark.</param>
    public DocumentSyntax? Read(string text)
    {
        if (TryParse(text, out _) is { } whole)
        {
            return whole;
        }

        char[] rest = text.ToCharArray();
        Position position = new(text);
        bool skipping = false;
        int faults = 0;
        foreach (Statement statement in new StatementSplitter(text).Split())
        {
            string part = text[statement.Start..statement.End];
            bool faulty = TryParse(part, out SyntaxFault? fault) is null;
            if (faulty)
            {
                faults++;
                (string message, int offset) = SyntaxMessage.Of(part, fault!, statement);
                (int line, int column) = position.Of(statement.Start + offset);
                diagnostics.Add(new Diagnostic(file, line, column, "", message));
            }

            // What stands below a heading that can't be read belongs to no table that we know.
            skipping = statement.IsHeading ? faulty : skipping;
            if (faulty || skipping)
            {
                Blank(rest.AsSpan(statement.Start, statement.End - statement.Start));
            }

            if (faults >= MaxFaults)
            {
                Diagnostic last = diagnostics[^1];
                string more = DesignWords.Of.Format("diagnostic.more", MaxFaults);
                diagnostics.Add(last with { Message = more });
                return null;
            }
        }

        DocumentSyntax? document = TryParse(new string(rest), out SyntaxFault? left);
        if (faults == 0)
        {
            (int line, int column) = position.Of(left?.Offset ?? text.Length);
            diagnostics.Add(
                new Diagnostic(file, line, column, "", DesignWords.Of["diagnostic.syntax"])
            );
        }

        return document;
    }

    private static DocumentSyntax? TryParse(string text, out SyntaxFault? fault)
    {
        fault = null;
        try
        {
            DocumentSyntax document = SyntaxParser.Parse(text, "", validate: false);
            if (!document.HasErrors)
            {
                return document;
            }

            DiagnosticMessage first = document.Diagnostics[0];
            fault = new SyntaxFault(
                Math.Clamp(first.Span.Start.Offset, 0, text.Length),
                first.Message
            );
        }
        catch (TomlException tooDeep)
        {
            // Tomlyn 2.10: more than 64 brackets within each other.
            fault = new SyntaxFault(0, tooDeep.Message);
        }
        catch (ArgumentOutOfRangeException unclosed)
        {
            // Tomlyn 2.10: a text in quotes that ends in a lone backslash at the end of the file.
            fault = new SyntaxFault(text.Length, unclosed.Message);
        }

        return null;
    }

    private static void Blank(Span<char> part)
    {
        foreach (ref char c in part)
        {
            c = c is '\n' or '\r' ? c : ' ';
        }
    }
}
