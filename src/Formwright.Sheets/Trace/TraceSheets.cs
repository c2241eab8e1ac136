using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Trace;
using Formwright.Trace.Comparing;

namespace Formwright.Sheets.Trace;

/// <summary>The sheets of a traced outline. Their language is the thread's UI culture.</summary>
public static class TraceSheets
{
    /// <summary>The trace over its fair outline, its bumps drawn large, and its curvature; numbered.</summary>
    /// <param name="trace">The trace.</param>
    /// <param name="name">Name for the title blocks.</param>
    public static IReadOnlyList<NamedSheet> Of(TraceResult trace, string name)
    {
        ArgumentNullException.ThrowIfNull(trace);
        ArgumentNullException.ThrowIfNull(name);
        List<NamedSheet> sheets = [TraceOverlaySheet.Of(trace, name)];
        sheets.AddRange(BumpSheet.Of(trace, name));
        sheets.Add(CurvatureSheet.Of(name, [("", trace.Fair)]));
        return [.. sheets.Select((sheet, i) => Numbered(sheet, i + 1, sheets.Count))];
    }

    /// <summary>Two outlines over each other, and their curvature.</summary>
    public static IReadOnlyList<NamedSheet> Of(
        string first,
        Curves.Outline outline,
        string second,
        Curves.Outline other,
        OutlineComparison comparison
    )
    {
        ArgumentNullException.ThrowIfNull(comparison);
        NamedSheet[] sheets =
        [
            CompareSheet.Of(first, outline, second, other, comparison),
            CurvatureSheet.Of($"{first}, {second}", [(first, outline), (second, other)]),
        ];
        return [.. sheets.Select((sheet, i) => Numbered(sheet, i + 1, sheets.Length))];
    }

    internal static TitleBlock Title(string name, string titleKey) =>
        new($"{name} · {SheetsWords.Of[titleKey]}", "")
        {
            DocumentType = SheetsWords.Of["document.drawing"],
        };

    /// <summary>The whole outline as a closed shape.</summary>
    internal static Shape Closed(Curves.Outline outline) =>
        Shape.Of(outline.Closed.ToBeziers(0.01));

    /// <summary>The number of a bump beside its place on the fair outline; outside at a distance, inside at one below 0.</summary>
    internal static Balloon BalloonOf(TraceResult trace, int index, double awayMm)
    {
        Bump bump = trace.Bumps[index];
        CurvePoint place = trace.Fair.Half.At(
            Math.Clamp(bump.ArcMm, 0, trace.Fair.HalfPerimeterMm)
        );
        double sign = bump.Side == TraceSide.Bass ? -1 : 1;
        Vector outwards = place.Normal with { Y = sign * place.Normal.Y };
        // The view is turned: a step on the sheet is the step of the model turned with it.
        return new Balloon(
            $"{index + 1}",
            place.Position with
            {
                Y = sign * place.Position.Y,
            },
            outwards.Turned(View.NeckUp) * awayMm
        );
    }

    private static NamedSheet Numbered(NamedSheet named, int number, int count) =>
        named with
        {
            Sheet = named.Sheet with
            {
                Title = named.Sheet.Title with { SheetNumber = number, SheetCount = count },
            },
        };
}
