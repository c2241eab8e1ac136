using Formwright.Curves;
using Formwright.Drawing;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Formwright.Writers;

/// <summary>Writes sheets as PDF of true size, with real text in the face that ships.</summary>
/// <remarks>Ids and font tags are random, so that two files of the same sheets are equal page by page, not byte by byte.</remarks>
public static class PdfWriter
{
    /// <summary>The unit of PDF is 1/72 in.</summary>
    public const double PointsPerMm = 72 / 25.4;

    /// <summary>Writes sheets full size, one page each, in order.</summary>
    /// <param name="stream">Where to; stays open.</param>
    /// <param name="sheets">At least one sheet, laid out.</param>
    /// <param name="printScale">Correction for the printer. What it pushes beyond the edge of the paper is lost.</param>
    /// <exception cref="ArgumentException">No sheet.</exception>
    public static void Write(
        Stream stream,
        IReadOnlyList<DrawnSheet> sheets,
        PrintScale? printScale = null
    )
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(sheets);
        if (sheets.Count == 0)
        {
            throw new ArgumentException("A file needs a sheet.", nameof(sheets));
        }

        using PdfDocument document = New(sheets[0].Sheet.Title);
        foreach (DrawnSheet drawn in sheets)
        {
            Paper paper = drawn.Sheet.Paper;
            using XGraphics graphics = AddPage(document, paper, printScale);
            new PdfPen(graphics, drawn.Sheet.PaperBox).Draw(drawn.Marks);
        }

        document.Save(stream, closeStream: false);
    }

    /// <summary>Writes a sheet in pieces: the key map, then one page per tile. The content is in the file once.</summary>
    /// <param name="stream">Where to; stays open.</param>
    /// <param name="plan">How the sheet is cut up, and the correction for the printer.</param>
    public static void Write(Stream stream, TilePlan plan)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(plan);
        using PdfDocument document = New(plan.Sheet.Sheet.Title);
        using XForm content = new(
            document,
            XUnit.FromPoint(plan.Area.WidthMm * PointsPerMm),
            XUnit.FromPoint(plan.Area.HeightMm * PointsPerMm)
        );
        using (XGraphics graphics = XGraphics.FromForm(content))
        {
            new PdfPen(graphics, plan.Area).Draw(plan.Content);
        }

        Box paper = Box.Of(0, 0, plan.Page.WidthMm, plan.Page.HeightMm);
        foreach (PrintedPage page in plan.Pages())
        {
            using XGraphics graphics = AddPage(document, plan.Page, plan.PrintScale);
            XGraphicsState state = graphics.Save();
            graphics.IntersectClip(Rectangle(page.Clip, plan.Page.HeightMm));
            Box shown = new(page.Content.Apply(plan.Area.Min), page.Content.Apply(plan.Area.Max));
            graphics.DrawImage(content, Rectangle(shown, plan.Page.HeightMm));
            graphics.Restore(state);
            new PdfPen(graphics, paper).Draw(page.Marks);
        }

        document.Save(stream, closeStream: false);
    }

    private static XRect Rectangle(Box box, double heightMm) =>
        new(
            box.LeftMm * PointsPerMm,
            (heightMm - box.TopMm) * PointsPerMm,
            box.WidthMm * PointsPerMm,
            box.HeightMm * PointsPerMm
        );

    private static PdfDocument New(TitleBlock title)
    {
        PdfDocument document = new();
        document.Info.Title = title.Title;
        document.Info.Author = title.Creator;
        document.Info.Subject = title.IdentificationNumber;
        document.Info.Creator = "Formwright";
        return document;
    }

    private static XGraphics AddPage(PdfDocument document, Paper paper, PrintScale? printScale)
    {
        PdfPage page = document.AddPage();
        page.Width = XUnit.FromPoint(paper.WidthMm * PointsPerMm);
        page.Height = XUnit.FromPoint(paper.HeightMm * PointsPerMm);
        XGraphics graphics = XGraphics.FromPdfPage(page);
        if (printScale is { } scale && scale != PrintScale.True)
        {
            graphics.ScaleAtTransform(
                1 / scale.X,
                1 / scale.Y,
                new XPoint(page.Width.Point / 2, page.Height.Point / 2)
            );
        }

        return graphics;
    }
}
