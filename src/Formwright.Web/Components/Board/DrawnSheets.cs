using System.Collections.Concurrent;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Packs;
using Formwright.Sheets;
using Formwright.Web.Reading;
using Formwright.Writers;

namespace Formwright.Web.Components.Board;

/// <summary>The sheets of a study as pictures for the page, in one culture; each is drawn once, however many pages show it.</summary>
internal sealed partial class DrawnSheets
{
    // About what the frame of a 1440 screen shows without scrolling, mm of 96 pixels to the inch.
    private static readonly Size OnScreen = new(232, 186);

    // From full size down in steps of a tenth: letters keep their size, so the scale that fits can't be computed at once.
    private static readonly double[] Scales =
    [
        .. Enumerable.Range(0, 34).Select(i => Math.Pow(1.1, -i)),
    ];

    private static readonly ConditionalWeakTable<
        Study,
        ConcurrentDictionary<string, DrawnSheets>
    > Known = [];

    private readonly ConcurrentDictionary<string, Lazy<string?>> pages = new(
        StringComparer.Ordinal
    );
    private readonly ConcurrentDictionary<string, Lazy<IReadOnlyList<ViewPicture>>> views = new(
        StringComparer.Ordinal
    );
    private readonly Lazy<IReadOnlyList<NamedSheet>> sheets;
    private readonly Study study;
    private readonly CultureInfo culture;

    private DrawnSheets(Study study, CultureInfo culture)
    {
        this.study = study;
        this.culture = culture;
        sheets = new(() =>
        {
            using SheetCulture spoken = new(culture);
            return study.Sheets(withStock: false);
        });
    }

    public IReadOnlyList<NamedSheet> Sheets => sheets.Value;

    /// <summary>The sheets as they print, in the language of their design.</summary>
    public static DrawnSheets Of(Study study) => Of(study, SheetCulture.CultureOf(study.Design));

    /// <summary>The sheets as the person at the page reads them.</summary>
    public static DrawnSheets Of(Study study, CultureInfo culture) =>
        Known
            .GetValue(study, static _ => new(StringComparer.Ordinal))
            .GetOrAdd(
                culture.Name + culture.NumberFormat.NumberDecimalSeparator,
                _ => new DrawnSheets(study, culture)
            );

    /// <summary>A sheet as inline SVG; null where there is none of that name.</summary>
    public string? SvgOf(string id) =>
        pages
            .GetOrAdd(
                id,
                each =>
                    new(() =>
                    {
                        using SheetCulture spoken = new(culture);
                        return Find(each) is { } named
                            ? SvgWriter.Write(named.Sheet.Draw(), SvgOptions.Inline)
                            : null;
                    })
            )
            .Value;

    /// <summary>
    /// The views of a sheet, drawn anew at a scale at which their letters can be read on a screen; a sheet without views as it stands,
    /// without its frame.
    /// </summary>
    public IReadOnlyList<ViewPicture> ViewsOf(string id) =>
        views
            .GetOrAdd(
                id,
                each =>
                    new(() =>
                    {
                        using SheetCulture spoken = new(culture);
                        return study.Sheet(each) is { } named ? Draw(named) : [];
                    })
            )
            .Value;

    /// <summary>The views of sheets that are no part of a set.</summary>
    public static IReadOnlyList<ViewPicture> ViewsOf(
        Func<IEnumerable<NamedSheet>> sheets,
        CultureInfo culture
    )
    {
        using SheetCulture spoken = new(culture);
        return [.. sheets().SelectMany(Draw)];
    }

    private NamedSheet? Find(string id) => Sheets.FirstOrDefault(sheet => sheet.Id == id);

    private static ViewPicture[] Draw(NamedSheet named) =>
        named.Views is { Count: > 0 } each
            ? [.. each.Select(view => Picture(Fitted(view with { Label = "" }), view.Name, named))]
            : [Picture(new View([.. named.Sheet.Items]) { Label = "" }, "", named)];

    // The largest that fits; what is narrower in one direction than another never grows by a smaller scale.
    private static View Fitted(View view)
    {
        (int low, int high) = (0, Scales.Length - 1);
        while (low < high)
        {
            int middle = (low + high) / 2;
            Box box = (view with { Scale = Scales[middle] }).Bounds();
            if (box.WidthMm <= OnScreen.WidthMm && box.HeightMm <= OnScreen.HeightMm)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return view with
        {
            Scale = Scales[low],
        };
    }

    private static ViewPicture Picture(View view, string name, NamedSheet named)
    {
        Ink ink = new();
        ink.Draw(view, Placement.Identity);
        Box window = view.Bounds().Grown(3);
        string title = name.Length > 0 ? name : named.Sheet.Title.Title;
        string svg = SvgWriter.Write(ink.Marks(), window, title, SvgOptions.Inline);
        return new ViewPicture(
            name,
            view.Heights,
            svg[..svg.LastIndexOf("</svg>", StringComparison.Ordinal)],
            Layer().Matches(svg).Select(match => match.Groups[1].Value).ToHashSet(),
            [.. HolesOf(view, window)]
        );
    }

    private static IEnumerable<HoleTarget> HolesOf(View view, Box window) =>
        view
            .Items.OfType<Hole>()
            .Select(hole => new HoleTarget(
                hole.Centre,
                hole.DiameterMm,
                view.Placement.Apply(hole.Centre) is var at
                    ? new Point(at.X - window.LeftMm, window.TopMm - at.Y)
                    : default,
                hole.DiameterMm / 2 * view.Scale
            ));

    [GeneratedRegex("class=\"fw-([a-z_-]+)\"")]
    private static partial Regex Layer();
}
