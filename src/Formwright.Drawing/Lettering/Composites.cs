using System.Buffers.Binary;

namespace Formwright.Drawing;

/// <summary>
/// Rewrites the glyphs that are put together from glyphs that are themselves put together (½ is), so that each names its
/// outlines directly: subsetting in PDFsharp 6.2.4 follows one level only and loses the rest. OpenType 1.9, glyf table.
/// </summary>
internal static class Composites
{
    private const int WordArguments = 0x0001;
    private const int ArgumentsAreOffsets = 0x0002;
    private const int OneScale = 0x0008;
    private const int MoreComponents = 0x0020;
    private const int TwoScales = 0x0040;
    private const int Matrix = 0x0080;
    private const int Instructions = 0x0100;

    private const int Deepest = 8;

    private sealed record Component(int Flags, int Glyph, int X, int Y, byte[] Transform);

    /// <summary>Replaces glyf and loca by ones without nesting, loca in its long format.</summary>
    public static void Flatten(Dictionary<string, byte[]> tables)
    {
        byte[][] glyphs = ReadGlyphs(tables);
        byte[][] flat = [.. glyphs.Select(glyph => Flat(glyph, glyphs))];
        byte[] loca = new byte[4 * (flat.Length + 1)];
        using MemoryStream glyf = new();
        for (int i = 0; i < flat.Length; i++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(loca.AsSpan(4 * i), (uint)glyf.Length);
            glyf.Write(flat[i]);
            glyf.Write(new byte[(4 - (flat[i].Length % 4)) % 4]);
        }

        BinaryPrimitives.WriteUInt32BigEndian(loca.AsSpan(4 * flat.Length), (uint)glyf.Length);
        tables["glyf"] = glyf.ToArray();
        tables["loca"] = loca;
        byte[] head = [.. tables["head"]];
        BinaryPrimitives.WriteInt16BigEndian(head.AsSpan(50), 1);
        tables["head"] = head;
    }

    private static byte[][] ReadGlyphs(Dictionary<string, byte[]> tables)
    {
        byte[] loca = tables["loca"];
        byte[] glyf = tables["glyf"];
        bool isLong = BinaryPrimitives.ReadInt16BigEndian(tables["head"].AsSpan(50)) == 1;
        int count = BinaryPrimitives.ReadUInt16BigEndian(tables["maxp"].AsSpan(4));
        int Offset(int i) =>
            isLong
                ? (int)BinaryPrimitives.ReadUInt32BigEndian(loca.AsSpan(4 * i))
                : 2 * BinaryPrimitives.ReadUInt16BigEndian(loca.AsSpan(2 * i));
        return [.. Enumerable.Range(0, count).Select(i => glyf[Offset(i)..Offset(i + 1)])];
    }

    private static bool IsComposite(byte[] glyph) =>
        glyph.Length > 10 && BinaryPrimitives.ReadInt16BigEndian(glyph) < 0;

    private static byte[] Flat(byte[] glyph, byte[][] glyphs)
    {
        if (!IsComposite(glyph) || !Read(glyph).Any(part => IsComposite(glyphs[part.Glyph])))
        {
            return glyph;
        }

        Component[] parts = [.. Expand(glyph, glyphs, 0)];
        using MemoryStream stream = new();
        Span<byte> record = stackalloc byte[8];
        stream.Write(glyph.AsSpan(0, 10));
        for (int i = 0; i < parts.Length; i++)
        {
            (int flags, int part, int x, int y, byte[] transform) = parts[i];
            flags &= ~(Instructions | MoreComponents);
            flags |= WordArguments | (i + 1 < parts.Length ? MoreComponents : 0);
            BinaryPrimitives.WriteUInt16BigEndian(record, (ushort)flags);
            BinaryPrimitives.WriteUInt16BigEndian(record[2..], (ushort)part);
            BinaryPrimitives.WriteInt16BigEndian(record[4..], (short)x);
            BinaryPrimitives.WriteInt16BigEndian(record[6..], (short)y);
            stream.Write(record);
            stream.Write(transform);
        }

        return stream.ToArray();
    }

    private static IEnumerable<Component> Expand(byte[] glyph, byte[][] glyphs, int depth)
    {
        foreach (Component part in Read(glyph))
        {
            byte[] inner = glyphs[part.Glyph];
            bool hung = (part.Flags & ArgumentsAreOffsets) == 0;
            if (!IsComposite(inner) && !hung)
            {
                yield return part;
                continue;
            }

            if (depth > Deepest || part.Transform.Length > 0 || hung)
            {
                throw new InvalidOperationException("A nested glyph is scaled or hung by points.");
            }

            foreach (Component own in Expand(inner, glyphs, depth + 1))
            {
                yield return own with
                {
                    X = own.X + part.X,
                    Y = own.Y + part.Y,
                };
            }
        }
    }

    private static List<Component> Read(byte[] glyph)
    {
        List<Component> parts = [];
        int at = 10;
        int flags;
        do
        {
            flags = BinaryPrimitives.ReadUInt16BigEndian(glyph.AsSpan(at));
            int part = BinaryPrimitives.ReadUInt16BigEndian(glyph.AsSpan(at + 2));
            at += 4;
            bool words = (flags & WordArguments) != 0;
            int x = words
                ? BinaryPrimitives.ReadInt16BigEndian(glyph.AsSpan(at))
                : (sbyte)glyph[at];
            int y = words
                ? BinaryPrimitives.ReadInt16BigEndian(glyph.AsSpan(at + 2))
                : (sbyte)glyph[at + 1];
            at += words ? 4 : 2;
            int size =
                (flags & OneScale) != 0 ? 2
                : (flags & TwoScales) != 0 ? 4
                : (flags & Matrix) != 0 ? 8
                : 0;
            parts.Add(new Component(flags, part, x, y, glyph[at..(at + size)]));
            at += size;
        } while ((flags & MoreComponents) != 0);

        return parts;
    }
}
