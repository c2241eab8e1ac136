using System.Runtime.CompilerServices;
using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Packs;
using Formwright.Sheets;
using Formwright.Web.Reading;
using Formwright.Writers;

namespace Formwright.Web.Components.Board;

/// <summary>The sheets of a study as pictures for the page; each is drawn once, however many pages show it.</summary>
internal sealed class DrawnSheets
{
    // About what a screen shows of a sheet without scrolling, sheet mm.
    private static readonly Box OnScreen = Box.Of(0, 0, 340, 230);

    private static readonly ConditionalWeakTable<Study, DrawnSheets> Known = [];

    private readonly Dictionary<string, (DrawnSheet Drawn, string Svg)> pictures = new(
        StringComparer.Ordinal
    );
    private readonly Lock gate = new();
    private readonly Study study;

    private DrawnSheets(Study study)
    {
        this.study = study;
        using SheetCulture spoken = SheetCulture.Of(study.Design);
        Sheets = study.Sheets();
    }

    public IReadOnlyList<NamedSheet> Sheets { get; }

    public static DrawnSheets Of(Study study) =>
        Known.GetValue(study, static each => new DrawnSheets(each));

    /// <summary>A sheet as inline SVG; null where there is none of that name.</summary>
    public string? SvgOf(string id) => Picture(id)?.Svg;

    /// <summary>The views of a sheet as inline SVG, drawn anew at a scale at which their letters can be read on a screen.</summary>
    public IReadOnlyList<(string Name, string Svg)> ViewsOf(string id)
    {
        using SheetCulture spoken = SheetCulture.Of(study.Design);
        if (Sheets.FirstOrDefault(sheet => sheet.Id == id) is not { } named)
        {
            return [];
        }

        List<(string, string)> pictures = [];
        foreach (View view in named.Sheet.Items.OfType<View>())
        {
            View fitted = view.FittedIn(OnScreen);
            Ink ink = new();
            ink.Draw(fitted, Placement.Identity);
            Box window = fitted.Bounds().Grown(3);
            pictures.Add(
                (
                    view.Label ?? "",
                    SvgWriter.Write(
                        ink.Marks(),
                        window,
                        view.Label ?? named.Sheet.Title.Title,
                        SvgOptions.Inline
                    )
                )
            );
        }

        return pictures;
    }

    private (DrawnSheet Drawn, string Svg)? Picture(string id)
    {
        lock (gate)
        {
            if (pictures.TryGetValue(id, out (DrawnSheet Drawn, string Svg) known))
            {
                return known;
            }

            using SheetCulture spoken = SheetCulture.Of(study.Design);
            if (Sheets.FirstOrDefault(sheet => sheet.Id == id) is not { } named)
            {
                return null;
            }

            DrawnSheet drawn = named.Sheet.Draw();
            return pictures[id] = (drawn, SvgWriter.Write(drawn, SvgOptions.Inline));
        }
    }
}
