using System.Text;

namespace Formwright.Design.Reading;

/// <summary>Lines and columns of a text, both from 1; columns count characters (Unicode scalars), not bytes or halves of a pair.</summary>
internal sealed class Position(string text)
{
    private int line = 1;
    private int lineStart;
    private int last;

    /// <summary>Line and column of an offset. Quick when asked in rising order.</summary>
    public (int Line, int Column) Of(int offset)
    {
        if (offset < lineStart)
        {
            (line, lineStart, last) = (1, 0, 0);
        }

        for (int i = Math.Max(last, lineStart); i < offset; i++)
        {
            if (text[i] == '\n')
            {
                line++;
                lineStart = i + 1;
            }
        }

        last = offset;
        int column = 1;
        foreach (Rune _ in text.AsSpan(lineStart, offset - lineStart).EnumerateRunes())
        {
            column++;
        }

        return (line, column);
    }
}
