namespace Formwright.Fuzz.Targets;

/// <summary>ASCII DXF files of all entities that are read.</summary>
internal sealed class DxfTarget : TraceFileTarget
{
    public override string Name => "dxf";

    public override IReadOnlyList<byte[]> Seeds { get; } =
        Texts(
            Groups(
                "0 SECTION 2 HEADER 9 $INSUNITS 70 4 9 $MEASUREMENT 70 1 0 ENDSEC",
                "0 SECTION 2 ENTITIES",
                "0 LINE 8 0 10 0 20 0 30 0 11 10 21 5 31 0",
                "0 ARC 8 L 10 1 20 2 40 5 50 0 51 90",
                "0 CIRCLE 10 0 20 0 40 3",
                "0 ELLIPSE 10 0 20 0 11 5 21 0 40 0.5 41 0 42 6.283",
                "0 LWPOLYLINE 90 3 70 1 10 0 20 0 42 0.5 10 5 20 0 10 5 20 5 42 -1",
                "0 ENDSEC 0 EOF"
            ),
            Groups(
                "0 SECTION 2 BLOCKS 0 BLOCK 2 B 10 1 20 1 0 LINE 10 0 20 0 11 1 21 1 0 INSERT 2 C 10 0 20 0 0 ENDBLK 0 BLOCK 2 C 10 0 20 0 0 CIRCLE 10 0 20 0 40 1 0 ENDBLK 0 ENDSEC",
                "0 SECTION 2 ENTITIES",
                "0 INSERT 2 B 10 5 20 5 41 2 42 3 50 30 70 2 71 2 44 10 45 10",
                "0 POLYLINE 66 1 70 1 0 VERTEX 10 0 20 0 42 0.2 0 VERTEX 10 4 20 0 0 VERTEX 10 4 20 4 0 SEQEND",
                "0 ENDSEC 0 EOF"
            ),
            Groups(
                "999 made by hand 0 SECTION 2 ENTITIES",
                "0 SPLINE 70 8 71 3 72 8 73 4 40 0 40 0 40 0 40 0 40 1 40 1 40 1 40 1 10 0 20 0 10 1 20 2 10 3 20 2 10 4 20 0",
                "0 SPLINE 70 12 71 2 72 6 73 3 40 0 40 0 40 0 40 1 40 1 40 1 41 1 41 0.7 41 1 10 0 20 0 10 1 20 1 10 2 20 0",
                "0 SPLINE 71 3 74 4 11 0 21 0 11 1 21 2 11 3 21 2 11 4 21 0",
                "0 TEXT 10 0 20 0 1 words 0 ENDSEC 0 EOF"
            )
        );

    public override IReadOnlyList<string> Pieces { get; } =
    [
        "  0\nSECTION\n",
        "  0\nENDSEC\n",
        "  0\nEOF\n",
        "  0\nINSERT\n  2\nB\n",
        "  0\nINSERT\n  2\nC\n",
        "  0\nVERTEX\n",
        "  0\nSEQEND\n",
        "  0\nLINE\n",
        "  0\nARC\n",
        "  0\nLWPOLYLINE\n",
        "  0\nSPLINE\n",
        "  0\nHATCH\n",
        " 10\n1e300\n",
        " 40\n-1\n",
        " 40\n0\n",
        " 42\n1e18\n",
        " 70\n1\n",
        " 71\n99\n",
        " 71\n2147483647\n",
        " 72\n0\n",
        " 73\n-4\n",
        " 44\n0\n",
        " 67\n1\n",
        "210\n0\n220\n0\n230\n-1\n",
        "210\n1\n220\n0\n230\n0\n",
        "999\n",
        "nan",
        "inf",
        "-",
        "1e",
        "0x10",
        "1,5",
        "\r\n",
        "\u001b",
        "Binary DXF",
        "99999999999",
    ];

    private static string Groups(params string[] rows)
    {
        // "0 LINE 8 0" is a row of pairs; a remark (999) takes the words up to the next number.
        List<string> lines = [];
        foreach (string row in rows)
        {
            string[] words = row.Split(' ');
            for (int i = 0; i < words.Length; i++)
            {
                lines.Add(words[i].PadLeft(3));
                List<string> value = [words[++i]];
                while (i + 1 < words.Length && !int.TryParse(words[i + 1], out _))
                {
                    value.Add(words[++i]);
                }

                lines.Add(string.Join(' ', value));
            }
        }

        return string.Join('\n', lines) + "\n";
    }
}
