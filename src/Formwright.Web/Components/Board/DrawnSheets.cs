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
    private const double MarginMm = 2;
    private const double Wide = 1.6;

    // From twice full size down in steps of a twentieth: letters keep their size, so the scale that fits can't be computed at once.
    private static readonly double[] Scales =
    [
        .. Enumerable.Range(0, 84).Select(i => 2 * Math.Pow(1.05, -i)),
    ];

    private static readonly ConditionalWeakTable<
        Study,
        ConcurrentDictionary<string, DrawnSheets>
    > Known = [];

    private readonly ConcurrentDictionary<string, Lazy<string?>> pages = new(
        StringComparer.Ordinal
    );
    private readonly ConcurrentDictionary<string, Lazy<IReadOnlyList<StageView>>> views = new(
        StringComparer.Ordinal
    );
    private readonly Lazy<Task<IReadOnlyList<NamedSheet>>> early;
    private readonly Lazy<Task<IReadOnlyList<NamedSheet>>> whole;
    private readonly Study study;
    private readonly CultureInfo culture;
    private readonly Reader? reader;

    private DrawnSheets(Study study, CultureInfo culture, Reader? reader = null)
    {
        this.study = study;
        this.culture = culture;
        this.reader = reader;
        early = new(() => Task.Run(() => Spoken(() => study.Sheets(withStock: false))));
        whole = new(async () =>
        {
            IReadOnlyList<NamedSheet> made = await early!.Value;
            return await Task.Run(() => Spoken(() => study.WithStock(made)));
        });
    }

    /// <summary>Whether the sheets are listed, if not yet those of the stock.</summary>
    public bool IsListed => IsDone(early) || IsWhole;

    /// <summary>Whether <see cref="Sheets"/> has those of the stock, as the pack has.</summary>
    public bool IsWhole => IsDone(whole);

    /// <summary>The sheets in the pack's order; none before <see cref="Follow"/> has them.</summary>
    public IReadOnlyList<NamedSheet> Sheets =>
        IsWhole ? whole.Value.Result
        : IsListed ? early.Value.Result
        : [];

    /// <summary>Makes the sheets behind the page, those of the stock last, for which it must be nested; ends when all are there.</summary>
    /// <param name="told">Called when there are more of them, where this was called from.</param>
    public async Task Follow(Action told)
    {
        ArgumentNullException.ThrowIfNull(told);
        await early.Value;
        told();
        await whole.Value;
        told();
    }

    private static bool IsDone(Lazy<Task<IReadOnlyList<NamedSheet>>> made) =>
        made is { IsValueCreated: true, Value.IsCompletedSuccessfully: true };

    private IReadOnlyList<NamedSheet> Spoken(Func<IReadOnlyList<NamedSheet>> make)
    {
        using SheetCulture spoken = new(culture);
        return make();
    }

    /// <summary>The sheets as they print, in the language of their design.</summary>
    public static DrawnSheets Of(Study study) =>
        Of(study, "as printed", () => new(study, SheetCulture.CultureOf(study.Design)));

    /// <summary>The sheets as the person at the page reads them: their views in the reader's unit.</summary>
    public static DrawnSheets Of(Study study, Reader reader) =>
        Of(
            study,
            $"{reader.Language} {reader.Unit} {reader.Comma}",
            () => new(study, reader.Culture, reader)
        );

    private static DrawnSheets Of(Study study, string key, Func<DrawnSheets> make) =>
        Known.GetValue(study, static _ => new(StringComparer.Ordinal)).GetOrAdd(key, _ => make());

    /// <summary>A sheet as inline SVG; null where there is none of that name.</summary>
    public string? SvgOf(string id) =>
        pages
            .GetOrAdd(
                // The number of sheets stands on each of them.
                $"{id} {IsWhole}",
                _ =>
                    new(() =>
                    {
                        using SheetCulture spoken = new(culture);
                        return Find(id) is { } named
                            ? SvgWriter.Write(named.Sheet.Draw(), SvgOptions.Inline)
                            : null;
                    })
            )
            .Value;

    /// <summary>
    /// The views of sheets, each to be drawn anew for the room on the screen, so that their letters can be read; the charts of a sheet without
    /// views, and the rest of it as text. Sheets that the design does not have are left out.
    /// </summary>
    public IReadOnlyList<StageView> ViewsOf(IEnumerable<string> ids) =>
        StageView.Joined(ids.SelectMany(ViewsOf));

    private IReadOnlyList<StageView> ViewsOf(string id) =>
        views
            .GetOrAdd(
                id,
                each =>
                    new(() =>
                        ViewsOf(() => study.Sheet(each) is { } it ? [it] : [], culture, reader)
                    )
            )
            .Value;

    private NamedSheet? Find(string id) => Sheets.FirstOrDefault(sheet => sheet.Id == id);

    /// <summary>The views of sheets that are no part of a set.</summary>
    public static IReadOnlyList<StageView> ViewsOf(
        Func<IEnumerable<NamedSheet>> sheets,
        Reader reader
    ) => ViewsOf(sheets, reader.Culture, reader);

    private static IReadOnlyList<StageView> ViewsOf(
        Func<IEnumerable<NamedSheet>> sheets,
        CultureInfo culture,
        Reader? reader
    )
    {
        using SheetCulture spoken = new(culture);
        return [.. sheets().SelectMany(named => ViewsOf(named, culture, reader))];
    }

    private static IEnumerable<StageView> ViewsOf(
        NamedSheet named,
        CultureInfo culture,
        Reader? reader
    )
    {
        if (named.Views is { Count: > 0 } drawn)
        {
            // What is seen from above comes first.
            foreach (View view in drawn.OrderBy(each => each.RotationRad != View.NeckUp))
            {
                View even = view with { Label = "", Items = [.. view.Items.Select(OfOneSize)] };
                yield return Shown(view.Name, room => Fitted(even, room), view, reader);
            }

            yield break;
        }

        foreach (Plot plot in named.Sheet.Items.OfType<Plot>())
        {
            // The axes of a chart are in mm, and say so.
            yield return Shown(
                plot.Heading,
                room => Alone(plot, room),
                Alone(plot, new(120, 80)),
                null
            );
        }

        Block[] rest = [.. named.Sheet.Items.OfType<Block>().Where(block => block is not Plot)];
        bool isWhole = rest.Length == named.Sheet.Items.Count;
        yield return new StageView(
            isWhole ? Plain(named) : WebWords.Of["views.rest"],
            room => [Text(room)]
        )
        {
            IsText = true,
        };

        StageView Shown(string name, Func<Size, View> fit, View small, Reader? reader) =>
            new(
                reader is null ? name : InchLetters.Of(name, reader),
                room =>
                {
                    using SheetCulture spoken = new(culture);
                    using LetteredLengths? unit = reader is null ? null : InchLetters.For(reader);
                    string shown = name.Length > 0 ? name : Plain(named);
                    return
                    [
                        Picture(
                            fit(room),
                            reader is null ? shown : InchLetters.Of(shown, reader),
                            small.Heights
                        ) with
                        {
                            IsInInches = unit is not null,
                        },
                    ];
                }
            )
            {
                Small = new(() =>
                {
                    using SheetCulture spoken = new(culture);
                    return Small(small, name.Length > 0 ? name : Plain(named));
                }),
            };

        // As it stands on the sheet where the room is wide enough, else in one column.
        ViewPicture Text(Size room)
        {
            using SheetCulture spoken = new(culture);
            View page = new([.. named.Sheet.Items]) { Label = "" };
            bool isColumn =
                !isWhole
                || (rest.Length == page.Items.Count && page.Bounds().WidthMm > 1.15 * room.WidthMm);
            return Picture(
                isColumn
                    ? page with
                    {
                        Items = Flow.Down(
                            default,
                            8,
                            [.. rest.Select(block => Narrowed(block, room))]
                        ),
                    }
                    : page,
                Plain(named),
                1
            );
        }
    }

    private static Block Narrowed(Block block, Size room) =>
        block.Size.WidthMm <= room.WidthMm - (2 * MarginMm)
            ? block
            : block switch
            {
                Notes notes => notes with { WidthMm = room.WidthMm - (2 * MarginMm) },
                Table table => table with { WidthMm = room.WidthMm - (2 * MarginMm) },
                _ => block,
            };

    // A sheet's title without the instrument's name, which stands in the title block of the page.
    public static string Plain(NamedSheet named) => named.Sheet.Title.Title.Split(" · ")[^1];

    // A chart fills its room, but is no higher than wide.
    private static View Alone(Plot plot, Size room) =>
        new([
            plot with
            {
                TopLeft = default,
                Heading = "",
                Extent = new(
                    room.WidthMm - (2 * MarginMm),
                    Math.Min(room.HeightMm, 0.75 * room.WidthMm) - (2 * MarginMm)
                ),
            },
        ])
        {
            Label = "",
        };

    // What a large sheet letters a size up, since it is read from afar, has the size of all else on the screen.
    private static Item OfOneSize(Item item) =>
        item switch
        {
            Label label when label.Style == TextStyle.Body.Larger => label with
            {
                Style = TextStyle.Body,
            },
            BassTreble sides => sides with { Style = TextStyle.Body },
            OrdinateDimensions stations => stations with
            {
                Style = TextStyle.SmallFigure,
                NameStyle = TextStyle.Body,
            },
            _ => item,
        };

    // The largest that fits; what is narrower in one direction than another never grows by a smaller scale.
    private static View Fitted(View view, Size room)
    {
        (int low, int high) = (0, Scales.Length - 1);
        while (low < high)
        {
            int middle = (low + high) / 2;
            Box box = (view with { Scale = Scales[middle] }).Bounds().Grown(MarginMm);
            if (box.WidthMm <= room.WidthMm && box.HeightMm <= room.HeightMm)
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

    // Edges and what is filled, without letters, dimensions and fine lines.
    private static SmallPicture? Small(View view, string name)
    {
        Ink ink = new();
        ink.Draw(view with { Label = "", Scale = 0.25 }, Placement.Identity);
        Mark[] marks =
        [
            .. ink.Marks()
                .Where(mark =>
                    mark
                        is StrokeMark { Layer: "outline" or "cut" or "detail" or "curve" }
                            or FillMark { Tone: Tone.Wood }
                ),
        ];
        Box window = marks
            .OfType<StrokeMark>()
            .Aggregate(Box.Empty, (box, line) => box.With(line.Shape.Bounds()));
        return window.IsEmpty
            ? null
            : new(
                SvgWriter.Write(marks, window.Grown(1), name, SvgOptions.Inline),
                window.WidthMm > Wide * window.HeightMm
            );
    }

    private static ViewPicture Picture(View view, string name, double heights)
    {
        Ink ink = new();
        ink.Draw(view, Placement.Identity);
        Box window = view.Bounds().Grown(MarginMm);
        string svg = SvgWriter.Write(ink.Marks(), window, name, SvgOptions.Inline);
        return new ViewPicture(
            name,
            heights,
            svg[..svg.LastIndexOf("</svg>", StringComparison.Ordinal)],
            Layer().Matches(svg).Select(match => match.Groups[1].Value).ToHashSet(),
            [.. HolesOf(view, window)]
        );
    }

    // A hole, or a cross that may mark one.
    private static IEnumerable<HoleTarget> HolesOf(View view, Box window)
    {
        foreach (Item item in view.Items)
        {
            (Point Centre, double Mm)? hole = item switch
            {
                Hole drawn => (drawn.Centre, drawn.DiameterMm),
                Cross cross => (cross.At, 0),
                _ => null,
            };
            if (hole is { } at)
            {
                Point on = view.Placement.Apply(at.Centre);
                yield return new HoleTarget(
                    at.Centre,
                    at.Mm,
                    new Point(on.X - window.LeftMm, window.TopMm - on.Y),
                    at.Mm / 2 * view.Scale
                );
            }
        }
    }

    [GeneratedRegex("class=\"fw-([a-z_-]+)\"")]
    private static partial Regex Layer();
}
