using System.Text.RegularExpressions;

namespace Formwright.Design.Reading;

/// <summary>
/// Cuts a file into statements without judging them, so that each can be parsed on its own when the whole can't be. A text in quotes ends
/// with its line at the latest, a text in triple quotes with the file; a list ends before a line that looks like the next statement.
/// Every character is looked at once.
/// </summary>
internal sealed partial class StatementSplitter(string text)
{
    private int at;

    public IEnumerable<Statement> Split()
    {
        while (at < text.Length)
        {
            if (char.IsWhiteSpace(text[at]))
            {
                at++;
            }
            else if (text[at] == '#')
            {
                at = LineEnd(at);
            }
            else if (text[at] == '[')
            {
                int start = at;
                at = LineEnd(at);
                int end = TrimmedEnd(start, at);
                int close = text.IndexOf(']', start, end - start);
                yield return new Statement(start, end, true, close < 0 ? start : -1);
            }
            else
            {
                yield return Pair();
            }
        }
    }

    private Statement Pair()
    {
        int start = at;
        int openText = -1;
        Stack<int> open = [];
        char before = '\0';
        while (at < text.Length)
        {
            char c = text[at];
            bool goesOn = before is ',' or '{';
            before = c is '#' || char.IsWhiteSpace(c) ? before : c;
            if (c is '"' or '\'')
            {
                int quote = at;
                if (!SkipText(c))
                {
                    openText = quote;
                    break;
                }
            }
            else if (c == '#')
            {
                at = LineEnd(at);
            }
            else if (c == '\n')
            {
                bool inBraces = open.Count > 0 && text[open.Peek()] == '{';
                if (
                    open.Count == 0
                    || (!(inBraces && goesOn) && NextStatement().IsMatch(text, at + 1))
                )
                {
                    break;
                }

                at++;
            }
            else
            {
                if (c is '[' or '{')
                {
                    open.Push(at);
                }
                else if (c is ']' or '}' && open.Count > 0)
                {
                    open.Pop();
                }

                at++;
            }
        }

        int openAt =
            openText >= 0 ? openText
            : open.Count > 0 ? open.Peek()
            : -1;
        return new Statement(start, TrimmedEnd(start, at), false, openAt);
    }

    // At a quote: goes behind the text it opens; false where the text is never closed.
    private bool SkipText(char quote)
    {
        bool triple = at + 2 < text.Length && text[at + 1] == quote && text[at + 2] == quote;
        at += triple ? 3 : 1;
        while (at < text.Length)
        {
            char c = text[at];
            if (c == '\\' && quote == '"')
            {
                at = Math.Min(
                    at + (at + 1 < text.Length && text[at + 1] == '\n' && !triple ? 1 : 2),
                    text.Length
                );
            }
            else if (c == '\n' && !triple)
            {
                return false;
            }
            else if (c == quote && !triple)
            {
                at++;
                return true;
            }
            else if (c == quote && text.AsSpan(at).StartsWith(quote == '"' ? "\"\"\"" : "'''"))
            {
                at += 3;
                while (at < text.Length && text[at] == quote)
                {
                    at++;
                }

                return true;
            }
            else
            {
                at++;
            }
        }

        return false;
    }

    private int LineEnd(int from)
    {
        int end = text.IndexOf('\n', from);
        return end < 0 ? text.Length : end;
    }

    private int TrimmedEnd(int start, int end)
    {
        while (end > start + 1 && char.IsWhiteSpace(text[end - 1]))
        {
            end--;
        }

        return end;
    }

    // Inside an open list: a heading or a pair at the start of a line. Values are no bare words, so this is no value.
    [GeneratedRegex(
        """\G[ \t]*(?:\[{1,2}[ \t]*[A-Za-z][\w.\- ]*\]|[\w.\-]+[ \t]*=)""",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex NextStatement();
}
