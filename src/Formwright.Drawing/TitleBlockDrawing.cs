using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Draws the title block: 180 mm wide, in three rows; in two rows on a compact sheet.</summary>
internal static class TitleBlockDrawing
{
    private const double WidthMm = 180;
    private static readonly double[] Heights = [5, 3.5, 2.5, 1.8];

    private sealed record Field(string Key, string Value, double WidthMm, double HeightMm = 2.5);

    private sealed record Row(double HeightMm, params Field[] Fields);

    public static Size SizeOn(Sheet sheet) =>
        new(Math.Min(WidthMm, sheet.Frame.WidthMm), Rows(sheet).Sum(row => row.HeightMm));

    public static void Draw(Ink ink, Sheet sheet)
    {
        Box box = sheet.TitleBlockBox;
        double squeeze = box.WidthMm / WidthMm;
        ink.Fill([Shape.Rectangle(box)], Tone.Paper, "clear", Level.Clear);
        ink.Stroke(Shape.Rectangle(box), LineStyle.Rule, Level.Over);
        double top = box.TopMm;
        foreach (Row row in Rows(sheet))
        {
            double bottom = top - row.HeightMm;
            double left = box.LeftMm;
            foreach (Field field in row.Fields)
            {
                double right = left + (field.WidthMm * squeeze);
                Box cell = Box.Of(left, bottom, right, top);
                ink.Stroke(
                    Shape.Line(cell.BottomLeft, cell.BottomRight),
                    LineStyle.Witness,
                    Level.Over
                );
                if (left > box.LeftMm)
                {
                    ink.Stroke(
                        Shape.Line(cell.BottomLeft, cell.TopLeft),
                        LineStyle.Witness,
                        Level.Over
                    );
                }

                Letter(ink, field, cell);
                left = right;
            }

            top = bottom;
        }
    }

    private static void Letter(Ink ink, Field field, Box cell)
    {
        const double padMm = 2;
        ink.Text(
            Words.Of($"title.{field.Key}"),
            cell.TopLeft + new Vector(padMm, -1.4),
            TextStyle.Small,
            rise: Rise.Top
        );
        double room = cell.WidthMm - (2 * padMm);
        TextStyle style = TextStyle.Strong with { Layer = "title" };
        foreach (double height in Heights.Where(h => h <= field.HeightMm))
        {
            style = style with { HeightMm = height };
            if (style.WidthMm(field.Value) <= room)
            {
                break;
            }
        }

        string text = field.Value;
        if (style.WidthMm(text) > room)
        {
            ink.Flaw(SheetFlawKind.TextCut, text, cell.BottomLeft);
            while (text.Length > 0 && style.WidthMm(text + "…") > room)
            {
                text = text[..^1];
            }

            text += "…";
        }

        ink.Text(text, cell.BottomLeft + new Vector(padMm, 1.9), style);
    }

    private static Row[] Rows(Sheet sheet)
    {
        TitleBlock t = sheet.Title;
        string number = Words.Format("title.sheet_of", t.SheetNumber, t.SheetCount);
        string scale = t.Scale ?? ScaleOf(sheet);
        return sheet.IsCompact
            ?
            [
                new(
                    10,
                    new("title", t.Title, 82, 3.5),
                    new("identification", t.IdentificationNumber, 46, 3.5),
                    new("scale", scale, 28),
                    new("sheet", number, 24)
                ),
                new(
                    8.5,
                    new("owner", t.Owner, 48),
                    new("creator", t.Creator, 30),
                    new("approval", t.Approval, 30),
                    new("document_type", t.DocumentType, 34),
                    new("date", t.Date, 22),
                    new("revision", t.Revision, 16)
                ),
            ]
            :
            [
                new(
                    13,
                    new("title", t.Title, 120, 5),
                    new("identification", t.IdentificationNumber, 60, 3.5)
                ),
                new(
                    9.5,
                    new("owner", t.Owner, 60),
                    new("document_type", t.DocumentType, 60),
                    new("date", t.Date, 34),
                    new("revision", t.Revision, 26)
                ),
                new(
                    9.5,
                    new("creator", t.Creator, 60),
                    new("approval", t.Approval, 60),
                    new("scale", scale, 34),
                    new("sheet", number, 26)
                ),
            ];
    }

    private static string ScaleOf(Sheet sheet)
    {
        double[] scales =
        [
            .. sheet.Items.Select(item => item.NamedScale).OfType<double>().Distinct(),
        ];
        return scales.Length switch
        {
            0 => "",
            1 => View.ScaleText(scales[0]),
            _ => Words.Of("scale.as_shown"),
        };
    }
}
