using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Ribs;

namespace Formwright.Sheets.Body;

/// <summary>The blocks' faces at full size, from above, with their heights.</summary>
internal static class BlockSheet
{
    public static NamedSheet Of(Guitar guitar, BodyPlan body)
    {
        BlockFace[] blocks = body.Ribs.HeelBlock is { } heel
            ? [body.Ribs.TailBlock, heel]
            : [body.Ribs.TailBlock];
        Sheet sheet = Layout.Of(
            Titles.Of(guitar, "sheet.blocks"),
            [
                .. blocks.Select(block => new View([.. Items(block)])
                {
                    Label = SheetsWords.Of[block.IsTail ? "blocks.tail" : "blocks.heel"],
                }),
            ],
            [Faces(blocks), Heights(blocks), new Notes("", [SheetsWords.Of["blocks.note"]], 160)],
            160
        );
        return new NamedSheet("blocks", sheet, IsTiled: false);
    }

    // Face up: v down the page is into the box.
    private static IEnumerable<Item> Items(BlockFace block)
    {
        Point[] face = [.. block.Face.Select(at => new Point(at.Y, -at.X))];
        double half = block.WidthMm / 2;
        yield return new Region(
            Shape.Polyline(
                [
                    .. face,
                    new Point(half, -block.ThicknessMm),
                    new Point(-half, -block.ThicknessMm),
                ],
                closed: true
            )
        )
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        yield return new Line(
            new Point(0, 6),
            new Point(0, -block.ThicknessMm - 6),
            LineStyle.Centreline
        );
        yield return new LinearDimension(
            new Point(-half, -block.ThicknessMm),
            new Point(half, -block.ThicknessMm),
            Side.Below,
            10
        );
        yield return new LinearDimension(
            new Point(0, 0),
            new Point(half, -block.ThicknessMm),
            Side.Right,
            10
        );
        yield return new LinearDimension(face[0], new Point(0, 0), Side.Left, 10) { Decimals = 2 };
        yield return new Label(SheetsWords.Of["blocks.face"], new Point(-half / 2, 3))
        {
            Align = Align.Centre,
        };
    }

    private static Table Faces(BlockFace[] blocks) =>
        new(
            SheetsWords.Of["blocks.curve"],
            [
                new Column(SheetsWords.Of["column.from-centreline"], Align.Right, 34),
                .. blocks.Select(block => new Column(
                    SheetsWords.Of[block.IsTail ? "blocks.tail" : "blocks.heel"],
                    Align.Right,
                    30
                )),
            ],
            [
                .. Enumerable
                    .Range(0, 9)
                    .Select(i => i * 5.0)
                    .Where(y => blocks.Any(block => y <= block.WidthMm / 2))
                    .Select(y =>
                        (IReadOnlyList<string>)
                            [
                                Figures.Fixed(y, 0),
                                .. blocks.Select(block =>
                                    y <= block.WidthMm / 2 ? Figures.Fixed(Drop(block, y), 2) : ""
                                ),
                            ]
                    ),
            ]
        );

    private static double Drop(BlockFace block, double y)
    {
        for (int i = 1; i < block.Face.Count; i++)
        {
            Point a = block.Face[i - 1];
            Point b = block.Face[i];
            if (a.Y <= y && y <= b.Y)
            {
                return a.X + ((b.X - a.X) * (y - a.Y) / (b.Y - a.Y));
            }
        }

        return block.DropMm;
    }

    private static Table Heights(BlockFace[] blocks) =>
        new(
            SheetsWords.Of["blocks.heights"],
            [
                new Column(""),
                .. blocks.Select(block => new Column(
                    SheetsWords.Of[block.IsTail ? "blocks.tail" : "blocks.heel"],
                    Align.Right,
                    30
                )),
            ],
            [
                RowOf("blocks.middle", blocks.Select(block => block.HeightMiddleMm)),
                RowOf("blocks.corner", blocks.Select(block => block.HeightCornerMm)),
                RowOf("blocks.inside", blocks.Select(block => block.HeightInsideMm)),
            ]
        )
        {
            WidthMm = 92,
        };

    private static string[] RowOf(string key, IEnumerable<double> values) =>
        [SheetsWords.Of[key], .. values.Select(value => Figures.Fixed(value, 1))];
}
