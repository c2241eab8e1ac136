using System.IO.Compression;
using System.Text;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Packs;
using Formwright.Sheets;
using Formwright.Sheets.Tooling;
using Formwright.Web.Designs;
using Formwright.Web.Reading;
using Formwright.Writers;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Formwright.Web.Serving;

/// <summary>Files of a design: a sheet, its tiles, the pack, the page that calibrates a printer.</summary>
internal static class Downloads
{
    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/files/{name}/pack.zip", Pack);
        app.MapGet("/files/{name}/calibration.pdf", Calibration);
        app.MapGet("/files/{name}/shim.pdf", Shim);
        app.MapGet("/files/{name}/{sheet}.svg", Svg);
        app.MapGet(
            "/files/{name}/a4/{sheet}.pdf",
            (string name, string sheet, DesignSessions sessions) =>
                Tiles(name, sheet, Paper.A4, sessions)
        );
        app.MapGet(
            "/files/{name}/a3/{sheet}.pdf",
            (string name, string sheet, DesignSessions sessions) =>
                Tiles(name, sheet, Paper.A3, sessions)
        );
        app.MapGet("/files/{name}/{sheet}.pdf", Pdf);
    }

    private static Task<IResult> Svg(string name, string sheet, DesignSessions sessions) =>
        With(
            name,
            sheet,
            sessions,
            (drawn, _) =>
                Results.Bytes(
                    Encoding.UTF8.GetBytes(SvgWriter.Write(drawn)),
                    "image/svg+xml",
                    $"{name} {sheet}.svg"
                )
        );

    private static Task<IResult> Pdf(string name, string sheet, DesignSessions sessions) =>
        With(
            name,
            sheet,
            sessions,
            (drawn, scale) =>
                PdfOf($"{name} {sheet}.pdf", to => PdfWriter.Write(to, [drawn], scale))
        );

    private static Task<IResult> Tiles(
        string name,
        string sheet,
        Paper paper,
        DesignSessions sessions
    ) =>
        With(
            name,
            sheet,
            sessions,
            (drawn, scale) =>
                PdfOf(
                    $"{name} {sheet} {paper.Name}.pdf",
                    to => PdfWriter.Write(to, TilePlan.Of(drawn, paper, printScale: scale))
                )
        );

    private static async Task<IResult> Calibration(string name, DesignSessions sessions)
    {
        if (await StudyOf(name, sessions) is not { } study)
        {
            return Results.NotFound();
        }

        using SheetCulture spoken = SheetCulture.Of(study.Design);
        TitleBlock title = new(WebWords.Of["sheets.calibration"], "")
        {
            Owner = study.Design.Identity.Owner,
        };
        return PdfOf(
            $"{name} {WebWords.Of["sheets.calibration"]}.pdf",
            to => PdfWriter.Write(to, [CalibrationPage.Sheet(title).Draw()])
        );
    }

    private static async Task<IResult> Shim(string name, DesignSessions sessions)
    {
        if (
            await StudyOf(name, sessions) is not { Guitar: { } guitar } study
            || sessions.Open(name)?.State.Gaps.Check(study) is not { } check
        )
        {
            return Results.NotFound();
        }

        using SheetCulture spoken = SheetCulture.Of(study.Design);
        SheetsDesign settings = study.Design.Sheets;
        DrawnSheet[] drawn = [.. ShimSheet.Of(guitar, check).Select(named => named.Sheet.Draw())];
        return drawn.Length == 0
            ? Results.NotFound()
            : PdfOf(
                $"{name} shim.pdf",
                to =>
                    PdfWriter.Write(
                        to,
                        drawn,
                        new PrintScale(settings.PrintScaleX, settings.PrintScaleY)
                    )
            );
    }

    private static async Task<IResult> Pack(string name, DesignSessions sessions)
    {
        if (await StudyOf(name, sessions) is not { } study)
        {
            return Results.NotFound();
        }

        using SheetCulture spoken = SheetCulture.Of(study.Design);
        string folder = Path.Combine(Path.GetTempPath(), $"formwright-{Guid.NewGuid():N}");
        try
        {
            PackResult result = PackWriter.Write(study, sessions.Open(name)!.State.Text, folder);
            if (result.Folder is null)
            {
                return Results.Text(
                    result.Fault,
                    "text/plain",
                    Encoding.UTF8,
                    StatusCodes.Status409Conflict
                );
            }

            MemoryStream zip = new();
            ZipFile.CreateFromDirectory(
                folder,
                zip,
                CompressionLevel.Fastest,
                includeBaseDirectory: false
            );
            zip.Position = 0;
            return Results.Stream(zip, "application/zip", $"{name}.zip");
        }
        finally
        {
            if (Directory.Exists(folder))
            {
                Directory.Delete(folder, recursive: true);
            }
        }
    }

    private static async Task<IResult> With(
        string name,
        string sheet,
        DesignSessions sessions,
        Func<DrawnSheet, PrintScale, IResult> write
    )
    {
        if (await StudyOf(name, sessions) is not { } study)
        {
            return Results.NotFound();
        }

        using SheetCulture spoken = SheetCulture.Of(study.Design);
        NamedSheet? named = study.Sheets().FirstOrDefault(each => each.Id == sheet);
        SheetsDesign settings = study.Design.Sheets;
        return named is null
            ? Results.NotFound()
            : write(named.Sheet.Draw(), new PrintScale(settings.PrintScaleX, settings.PrintScaleY));
    }

    private static async Task<Study?> StudyOf(string name, DesignSessions sessions)
    {
        if (sessions.Open(name) is not { } session)
        {
            return null;
        }

        await session.WhenSettled();
        return session.State.Study;
    }

    private static IResult PdfOf(string name, Action<Stream> write)
    {
        MemoryStream bytes = new();
        write(bytes);
        bytes.Position = 0;
        return Results.Stream(bytes, "application/pdf", name);
    }
}
