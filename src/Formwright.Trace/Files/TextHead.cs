namespace Formwright.Trace.Files;

/// <summary>The beginning of a file that may be text.</summary>
internal static class TextHead
{
    /// <summary>The beginning without byte order mark and leading blanks; empty where it is no text.</summary>
    internal static ReadOnlySpan<byte> Of(ReadOnlySpan<byte> head)
    {
        if (head.Contains((byte)0))
        {
            return [];
        }

        head = head.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? head[3..] : head;
        return head.TrimStart(" \t\r\n"u8);
    }

    /// <summary>The first line, without trailing blanks.</summary>
    internal static ReadOnlySpan<byte> FirstLine(ReadOnlySpan<byte> head)
    {
        ReadOnlySpan<byte> text = Of(head);
        int end = text.IndexOfAny((byte)'\r', (byte)'\n');
        return (end < 0 ? text : text[..end]).TrimEnd(" \t"u8);
    }
}
