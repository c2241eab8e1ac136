using System.Text;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Jigs;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Steps;
using Formwright.Jigs.Stock;
using Formwright.Packs.Report;
using Formwright.Sheets;
using Formwright.Sheets.Cutting;
using Formwright.Writers;

namespace Formwright.Packs;

/// <summary>Which files a pack holds.</summary>
internal static class PackContents
{
    private const double PreviewPxPerMm = 2.5;

    public static IEnumerable<PackEntry> Of(Study study, string designText)
    {
        if (study.Tooling is not { } tooling)
        {
            yield break;
        }

        SheetsDesign settings = study.Design.Sheets;
        PrintScale scale = new(settings.PrintScaleX, settings.PrintScaleY);
        IEnumerable<PackEntry> files =
        [
            .. OfSheets(study.Sheets(), scale),
            .. OfParts(tooling.Parts),
            .. study is { Stock: { } stock, Order: { } order } ? OfStock(stock, order) : [],
            Calibration(study.Design.Identity.Owner),
        ];
        foreach (PackEntry file in files)
        {
            yield return file;
        }

        yield return PackEntry.Plain(
            "report.json",
            "report",
            PacksWords.Of["report"],
            to => Text(to, ReportJson.Write(study.Report))
        );
        yield return PackEntry.Plain(
            "design.toml",
            "design",
            PacksWords.Of["design"],
            to => Text(to, designText)
        );
    }

    /// <summary>Sheets as PDF, SVG and preview, and in tiles where they are printed true to size.</summary>
    public static IEnumerable<PackEntry> OfSheets(
        IReadOnlyList<NamedSheet> sheets,
        PrintScale scale
    )
    {
        foreach (NamedSheet named in sheets)
        {
            Lazy<DrawnSheet> drawn = new(named.Sheet.Draw);
            string name = $"{named.Sheet.Title.SheetNumber:00}-{named.Id}";
            string title = named.Sheet.Title.Title;
            yield return PackEntry.Plain(
                $"sheets/{name}.pdf",
                "sheet",
                title,
                to => PdfWriter.Write(to, [drawn.Value], scale)
            );
            yield return PackEntry.Plain(
                $"sheets/{name}.svg",
                "sheet",
                title,
                to => Text(to, SvgWriter.Write(drawn.Value))
            );
            yield return PackEntry.Plain(
                $"previews/{name}.png",
                "preview",
                title,
                to => PngWriter.Write(to, drawn.Value, PreviewPxPerMm)
            );
            if (named.IsTiled)
            {
                foreach (PaperSize size in Enum.GetValues<PaperSize>())
                {
                    Paper paper = size == PaperSize.A4 ? Paper.A4 : Paper.A3;
                    string path = $"tiles/{name}-{paper.Name.ToLowerInvariant()}.pdf";
                    yield return PackEntry.Plain(
                        path,
                        "tiled-sheet",
                        title,
                        to =>
                            PdfWriter.Write(to, TilePlan.Of(drawn.Value, paper, printScale: scale))
                    );
                }
            }
        }
    }

    /// <summary>Parts as DXF and SVG.</summary>
    public static IEnumerable<PackEntry> OfParts(IEnumerable<Part> parts)
    {
        foreach (Part part in parts)
        {
            Lazy<CutPart> cut = new(() => CutParts.Of(part));
            PackFile file = new(
                "",
                "part",
                part.Name,
                part.Id,
                part.Quantity,
                JigsWords.Of[part.Material],
                part.ThicknessMm,
                0,
                ""
            );
            yield return new PackEntry(
                file with
                {
                    Path = $"parts/{part.Id}.dxf",
                },
                to => Text(to, DxfWriter.Write(cut.Value))
            );
            yield return new PackEntry(
                file with
                {
                    Path = $"parts/{part.Id}.svg",
                },
                to => Text(to, SvgWriter.Write(cut.Value))
            );
        }
    }

    /// <summary>Nests as cut files, cut list and order of work.</summary>
    private static IEnumerable<PackEntry> OfStock(StockPlan stock, WorkOrder order)
    {
        foreach (SheetNest nest in stock.Sheets)
        {
            Lazy<CutPart> cut = new(() => CutNests.Of(nest));
            string title = PacksWords.Of.Format("nest", nest.Number);
            yield return PackEntry.Plain(
                $"nests/{nest.Id}.dxf",
                "nest",
                title,
                to => Text(to, DxfWriter.Write(cut.Value))
            );
            yield return PackEntry.Plain(
                $"nests/{nest.Id}.svg",
                "nest",
                title,
                to => Text(to, SvgWriter.Write(cut.Value))
            );
        }

        yield return PackEntry.Plain(
            "cut-list.csv",
            "cut-list",
            PacksWords.Of["cut-list"],
            to => Text(to, CutListCsv.Write(stock))
        );
        yield return PackEntry.Plain(
            "order-of-work.json",
            "order-of-work",
            PacksWords.Of["order-of-work"],
            to => Text(to, ReportJson.Write(OrderReport.Of(order)))
        );
    }

    /// <summary>The page that tells how true a printer is.</summary>
    public static PackEntry Calibration(string owner)
    {
        TitleBlock calibration = new(PacksWords.Of["calibration"], "") { Owner = owner };
        return PackEntry.Plain(
            "print-calibration.pdf",
            "sheet",
            calibration.Title,
            to => PdfWriter.Write(to, [CalibrationPage.Sheet(calibration).Draw()])
        );
    }

    /// <summary>Writes a text.</summary>
    public static void Text(Stream to, string text) => to.Write(Encoding.UTF8.GetBytes(text));
}
