using Formwright.Curves;
using Formwright.Design.Reading;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs;
using Formwright.Jigs.Stock;
using Formwright.Sheets.Cutting;

namespace Formwright.Sheets.Stock;

/// <summary>One sheet of stock with its parts, true to a stated scale: what is cut where, what is left.</summary>
internal static class NestSheet
{
    private const double ColumnMm = 86;

    // A drawing of this size and its schedules go on an A3 on its side.
    private const double WidestMm = 284;
    private const double TallestMm = 216;

    public static NamedSheet Of(Guitar guitar, SheetNest nest)
    {
        TitleBlock title = Titles.Of(guitar, "sheet.nest") is var own
            ? own with
            {
                Title = SheetsWords.Of.Format("nest.title", own.Title, nest.Number),
            }
            : own;
        View view = new([.. Items(nest, 1)], ViewFrame.Part) { Label = NameOf(nest) };
        View fitted = view.FittedIn(Box.Of(0, 0, WidestMm, TallestMm));
        fitted = fitted with { Items = [.. Items(nest, fitted.Scale)] };
        Block[] blocks =
        [
            Parts(nest),
            .. nest.Offcuts.Count > 0 ? [Left(nest)] : Array.Empty<Block>(),
            Figured(nest),
        ];
        return new NamedSheet(
            nest.Id,
            Composing.WithColumnAcross(title, fitted, blocks),
            IsTiled: false
        );
    }

    /// <summary>What a sheet is: plywood 18 mm, 2500 × 1250.</summary>
    public static string NameOf(SheetNest nest) =>
        SheetsWords.Of.Format(
            "nest.sheet",
            nest.Number,
            JigsWords.Of[$"material.{Choices.NameOf(nest.Stock.Material)}"],
            nest.Stock.ThicknessMm,
            nest.Stock.LengthMm,
            nest.Stock.WidthMm
        );

    private static IEnumerable<Item> Items(SheetNest nest, double scale)
    {
        double length = nest.Stock.LengthMm;
        double width = nest.Stock.WidthMm;
        yield return new Region(Shape.Rectangle(Box.Of(0, 0, length, width)))
        {
            Edge = LineStyle.Outline,
        };
        Box inner = Box.Of(0, 0, length, width).Grown(-nest.MarginMm);
        if (nest.MarginMm > 0 && inner.WidthMm > 0 && inner.HeightMm > 0)
        {
            yield return new Line(Shape.Rectangle(inner), LineStyle.Hair);
        }

        foreach (Offcut offcut in nest.Offcuts)
        {
            yield return new Line(Shape.Rectangle(offcut.Box), LineStyle.Hidden);
            // A small one has its size in the table only.
            double run = Math.Max(offcut.LengthMm, offcut.WidthMm) * scale;
            double across = Math.Min(offcut.LengthMm, offcut.WidthMm) * scale;
            if (run < TextStyle.Body.WidthMm(SizeOf(offcut)) + 2 || across < TextStyle.Body.LineMm)
            {
                continue;
            }

            yield return new Label(SizeOf(offcut), offcut.Box.Centre)
            {
                Align = Align.Centre,
                Rise = Rise.Middle,
                Degrees = offcut.WidthMm > offcut.LengthMm ? 90 : 0,
            };
        }

        foreach (PlacedPart placed in nest.Parts)
        {
            Placement place = CutNests.PlacementOf(placed);
            yield return new Region([
                .. placed
                    .Part.Insides.Prepend(placed.Part.Outside)
                    .Select(edge => Shape.Of(edge).Placed(place)),
            ])
            {
                Fill = Tone.Wood,
                Edge = LineStyle.Detail,
                Key = placed.Part.Id,
            };
            yield return new Label($"{placed.Number}", LabelPlace.Within(placed))
            {
                Align = Align.Centre,
                Rise = Rise.Middle,
                Style = TextStyle.Strong,
                Clear = true,
            };
        }

        yield return new LinearDimension(new Point(0, 0), new Point(length, 0), Side.Below, 16)
        {
            Decimals = 0,
        };
        if (nest.UsedLengthMm < length)
        {
            yield return new LinearDimension(
                new Point(0, 0),
                new Point(nest.UsedLengthMm, 0),
                Side.Below,
                7
            );
        }

        yield return new LinearDimension(
            new Point(length, 0),
            new Point(length, width),
            Side.Right,
            7
        )
        {
            Decimals = 0,
        };
    }

    private static string SizeOf(Offcut offcut) =>
        $"{Figures.Mm(Math.Floor(offcut.LengthMm), 0)} × {Figures.Mm(Math.Floor(offcut.WidthMm), 0)}";

    private static Table Parts(SheetNest nest) =>
        new(
            SheetsWords.Of["nest.parts"],
            [
                new Column(SheetsWords.Of["column.number"], Align.Right, 8) { Strong = true },
                new Column(SheetsWords.Of["column.part"], Align.Left, 54),
                new Column(SheetsWords.Of["column.pieces"], Align.Right, 14),
            ],
            [
                .. nest
                    .Parts.GroupBy(placed => placed.Number)
                    .Select(group =>
                        (IReadOnlyList<string>)
                            [$"{group.Key}", NameOf(group.First()), $"{group.Count()}"]
                    ),
            ]
        );

    private static string NameOf(PlacedPart placed) =>
        placed.Part.IsTurnedOver
            ? SheetsWords.Of.Format("nest.face-down", placed.Part.Name)
            : placed.Part.Name;

    private static Table Left(SheetNest nest) =>
        new(
            SheetsWords.Of["nest.offcuts"],
            [new Column(SheetsWords.Of["column.box"], Align.Left, ColumnMm)],
            [.. nest.Offcuts.Select(offcut => (IReadOnlyList<string>)[SizeOf(offcut)])]
        );

    private static Notes Figured(SheetNest nest) =>
        new(
            "",
            [
                nest.Stock.HasGrain
                    ? SheetsWords.Of["nest.grain"]
                    : SheetsWords.Of["nest.no-grain"],
                SheetsWords.Of.Format("nest.kerf", nest.KerfMm, nest.MarginMm),
                SheetsWords.Of.Format("nest.used", nest.UsedFraction, nest.CutFraction),
                SheetsWords.Of.Format("nest.file", nest.Id),
            ],
            ColumnMm
        );
}
