using System.Buffers.Binary;
using System.Text;

namespace Formwright.Drawing;

/// <summary>
/// Reads what layout needs of a TrueType font (OpenType 1.9: head, hhea, hmtx, OS/2, cmap format 4, and the single
/// substitution 'tnum' of GSUB), and writes the font again with its tabular figures as the usual ones.
/// </summary>
internal sealed class TrueType
{
    private readonly Dictionary<int, int> glyphs;
    private readonly int[] advances;

    private TrueType(byte[] file, Dictionary<string, byte[]> tables)
    {
        File = file;
        UnitsPerEm = U16(tables["head"], 18);
        CapitalHeight = S16(tables["OS/2"], 88);
        byte[] hmtx = tables["hmtx"];
        advances = new int[U16(tables["hhea"], 34)];
        for (int i = 0; i < advances.Length; i++)
        {
            advances[i] = U16(hmtx, 4 * i);
        }

        glyphs = ReadCmap(tables["cmap"]);
    }

    public byte[] File { get; }

    public int UnitsPerEm { get; }

    public int CapitalHeight { get; }

    public int Glyph(int code) => glyphs.GetValueOrDefault(code);

    public int Advance(int code) => advances[Math.Min(Glyph(code), advances.Length - 1)];

    /// <summary>The font with its figures replaced by the tabular ones, and without GSUB, GPOS, GDEF and kern.</summary>
    public static TrueType WithTabularFigures(byte[] file)
    {
        Dictionary<string, byte[]> tables = ReadTables(file);
        Dictionary<int, int> map = ReadCmap(tables["cmap"]);
        Dictionary<int, int> tabular = ReadSingleSubstitution(tables["GSUB"], "tnum");
        foreach ((int code, int glyph) in map.ToArray())
        {
            map[code] = tabular.GetValueOrDefault(glyph, glyph);
        }

        tables["cmap"] = WriteCmap(map);
        foreach (string tag in new[] { "GSUB", "GPOS", "GDEF", "kern" })
        {
            tables.Remove(tag);
        }

        Composites.Flatten(tables);
        return new TrueType(WriteTables(tables), tables);
    }

    private static Dictionary<string, byte[]> ReadTables(byte[] file)
    {
        Dictionary<string, byte[]> tables = [];
        for (int i = 0; i < U16(file, 4); i++)
        {
            int entry = 12 + (16 * i);
            int offset = (int)U32(file, entry + 8);
            tables[Encoding.ASCII.GetString(file, entry, 4)] = file[
                offset..(offset + (int)U32(file, entry + 12))
            ];
        }

        return tables;
    }

    private static byte[] WriteTables(Dictionary<string, byte[]> tables)
    {
        int count = tables.Count;
        int power = (int)Math.Log2(count);
        int size = 12 + (16 * count) + tables.Values.Sum(t => (t.Length + 3) & ~3);
        byte[] file = new byte[size];
        BinaryPrimitives.WriteUInt32BigEndian(file, 0x00010000);
        Put16(file, 4, count);
        Put16(file, 6, 16 << power);
        Put16(file, 8, power);
        Put16(file, 10, 16 * (count - (1 << power)));
        int offset = 12 + (16 * count);
        int entry = 12;
        int head = 0;
        foreach ((string tag, byte[] table) in tables.OrderBy(t => t.Key, StringComparer.Ordinal))
        {
            table.CopyTo(file, offset);
            if (tag == "head")
            {
                head = offset;
                file.AsSpan(offset + 8, 4).Clear();
            }

            Encoding.ASCII.GetBytes(tag, file.AsSpan(entry));
            Put32(file, entry + 4, Sum(file.AsSpan(offset, (table.Length + 3) & ~3)));
            Put32(file, entry + 8, (uint)offset);
            Put32(file, entry + 12, (uint)table.Length);
            entry += 16;
            offset += (table.Length + 3) & ~3;
        }

        Put32(file, head + 8, 0xB1B0AFBA - Sum(file));
        return file;
    }

    private static Dictionary<int, int> ReadCmap(byte[] cmap)
    {
        Dictionary<int, int> map = [];
        for (int i = 0; i < U16(cmap, 2); i++)
        {
            int t = (int)U32(cmap, 4 + (8 * i) + 4);
            if (U16(cmap, t) != 4 || map.Count > 0)
            {
                continue;
            }

            int segments2 = U16(cmap, t + 6);
            for (int s = 0; s < segments2; s += 2)
            {
                int last = U16(cmap, t + 14 + s);
                int first = U16(cmap, t + 16 + segments2 + s);
                int delta = U16(cmap, t + 16 + (2 * segments2) + s);
                int at = t + 16 + (3 * segments2) + s;
                int range = U16(cmap, at);
                for (int code = first; code <= last && code < 0xFFFF; code++)
                {
                    int glyph = range == 0 ? code : U16(cmap, at + range + (2 * (code - first)));
                    if (range == 0 || glyph != 0)
                    {
                        map[code] = (glyph + delta) & 0xFFFF;
                    }
                }
            }
        }

        return map;
    }

    /// <summary>A cmap of one format 4 table, with one segment per character: short for a Latin font, and simple.</summary>
    private static byte[] WriteCmap(Dictionary<int, int> map)
    {
        KeyValuePair<int, int>[] sorted =
        [
            .. map.Where(m => m.Key < 0xFFFF && m.Value != 0).OrderBy(m => m.Key),
            new(0xFFFF, 0),
        ];
        int n = sorted.Length;
        int power = (int)Math.Log2(n);
        int length = 16 + (8 * n);
        byte[] cmap = new byte[12 + length];
        Put16(cmap, 2, 1);
        Put16(cmap, 4, 3);
        Put16(cmap, 6, 1);
        Put32(cmap, 8, 12);
        Put16(cmap, 12, 4);
        Put16(cmap, 14, length);
        Put16(cmap, 18, 2 * n);
        Put16(cmap, 20, 2 << power);
        Put16(cmap, 22, power);
        Put16(cmap, 24, 2 * (n - (1 << power)));
        for (int i = 0; i < n; i++)
        {
            (int code, int glyph) = sorted[i];
            Put16(cmap, 26 + (2 * i), code);
            Put16(cmap, 28 + (2 * n) + (2 * i), code);
            Put16(cmap, 28 + (4 * n) + (2 * i), (glyph - code) & 0xFFFF);
        }

        return cmap;
    }

    /// <summary>The glyphs that a feature of single substitutions replaces (GSUB lookup type 1).</summary>
    private static Dictionary<int, int> ReadSingleSubstitution(byte[] gsub, string feature)
    {
        Dictionary<int, int> map = [];
        int features = U16(gsub, 6);
        int lookups = U16(gsub, 8);
        for (int i = 0; i < U16(gsub, features); i++)
        {
            int record = features + 2 + (6 * i);
            if (Encoding.ASCII.GetString(gsub, record, 4) != feature)
            {
                continue;
            }

            int table = features + U16(gsub, record + 4);
            for (int k = 0; k < U16(gsub, table + 2); k++)
            {
                int lookup =
                    lookups + U16(gsub, lookups + 2 + (2 * U16(gsub, table + 4 + (2 * k))));
                for (int s = 0; U16(gsub, lookup) == 1 && s < U16(gsub, lookup + 4); s++)
                {
                    ReadSubtable(gsub, lookup + U16(gsub, lookup + 6 + (2 * s)), map);
                }
            }
        }

        return map;
    }

    private static void ReadSubtable(byte[] gsub, int at, Dictionary<int, int> map)
    {
        int coverage = at + U16(gsub, at + 2);
        List<int> covered = [];
        for (int i = 0; i < U16(gsub, coverage + 2); i++)
        {
            if (U16(gsub, coverage) == 1)
            {
                covered.Add(U16(gsub, coverage + 4 + (2 * i)));
            }
            else
            {
                int range = coverage + 4 + (6 * i);
                covered.AddRange(
                    Enumerable.Range(U16(gsub, range), U16(gsub, range + 2) - U16(gsub, range) + 1)
                );
            }
        }

        for (int i = 0; i < covered.Count; i++)
        {
            map[covered[i]] =
                U16(gsub, at) == 1
                    ? (covered[i] + U16(gsub, at + 4)) & 0xFFFF
                    : U16(gsub, at + 6 + (2 * i));
        }
    }

    private static uint Sum(ReadOnlySpan<byte> bytes)
    {
        uint sum = 0;
        for (int i = 0; i + 3 < bytes.Length; i += 4)
        {
            sum += BinaryPrimitives.ReadUInt32BigEndian(bytes[i..]);
        }

        return sum;
    }

    private static int U16(byte[] b, int at) => BinaryPrimitives.ReadUInt16BigEndian(b.AsSpan(at));

    private static int S16(byte[] b, int at) => BinaryPrimitives.ReadInt16BigEndian(b.AsSpan(at));

    private static uint U32(byte[] b, int at) => BinaryPrimitives.ReadUInt32BigEndian(b.AsSpan(at));

    private static void Put16(byte[] b, int at, int v) =>
        BinaryPrimitives.WriteUInt16BigEndian(b.AsSpan(at), (ushort)v);

    private static void Put32(byte[] b, int at, uint v) =>
        BinaryPrimitives.WriteUInt32BigEndian(b.AsSpan(at), v);
}
