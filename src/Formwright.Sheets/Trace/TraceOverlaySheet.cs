using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Trace;

namespace Formwright.Sheets.Trace;

/// <summary>The traced points over the fair outline at full size, the bumps numbered, with features, sides and bumps in tables.</summary>
internal static class TraceOverlaySheet
{
    private const double ColumnMm = 170;

    /// <summary>More points than this are thinned on paper: a line of 0.13 mm shows no more.</summary>
    private const int MostPoints = 4000;

    public static NamedSheet Of(TraceResult trace, string name)
    {
        View view = new([.. Items(trace)], ViewFrame.Front) { RotationRad = View.NeckUp };
        List<Block> blocks = [Features(trace)];
        if (trace.Bumps.Count > 0)
        {
            blocks.Add(BumpTable.Of(trace, ColumnMm));
        }

        if (trace.Differences.Count > 0)
        {
            blocks.Add(Differences(trace));
        }

        blocks.Add(new Notes("", [.. Remarks(trace)], ColumnMm) { Style = TextStyle.Body.Larger });
        Sheet sheet = Composing.WithColumn(
            TraceSheets.Title(name, "sheet.trace"),
            view,
            [.. blocks]
        );
        return new NamedSheet("trace", sheet, IsTiled: true);
    }

    private static IEnumerable<Item> Items(TraceResult trace)
    {
        double length = trace.Fair.BodyLengthMm;
        yield return new Line(new Point(-14, 0), new Point(length + 14, 0), LineStyle.Centreline);
        yield return new Line(TraceSheets.Closed(trace.Fair), LineStyle.Outline);
        foreach (IReadOnlyList<Point> side in (IReadOnlyList<Point>[])[trace.Treble, trace.Bass])
        {
            if (side.Count > 1)
            {
                int stride = 1 + (side.Count / MostPoints);
                yield return new Line(
                    Shape.Polyline([.. side.Where((_, i) => i % stride == 0)]),
                    LineStyle.Contour
                );
            }
        }

        for (int i = 0; i < trace.Bumps.Count && i < BumpTable.Most; i++)
        {
            yield return TraceSheets.BalloonOf(trace, i, -14);
        }

        double wide = trace.Features.LowerBout?.WidthMm ?? trace.Fair.WidthAt(length / 2);
        yield return new BassTreble(ViewFrame.Front, length * 0.35, wide * 0.2)
        {
            Style = TextStyle.Body.Larger,
        };
    }

    private static Table Features(TraceResult trace)
    {
        TracedFeatures features = trace.Features;
        List<IReadOnlyList<string>> rows = [];
        void Row(string key, TracedFeature? feature)
        {
            if (feature is not null)
            {
                rows.Add([
                    SheetsWords.Of[key],
                    Figures.Fixed(feature.UMm, 1),
                    Figures.Fixed(feature.WidthMm, 1),
                    Figures.Fixed(feature.RadiusMm, 0),
                ]);
            }
        }

        Row("station.upper-bout", features.UpperBout);
        Row("station.waist", features.Waist);
        Row("station.lower-bout", features.LowerBout);
        rows.Add([SheetsWords.Of["station.tail"], Figures.Fixed(features.BodyLengthMm, 1), "", ""]);
        return new Table(
            SheetsWords.Of["trace.features"],
            [
                new Column(""),
                new Column(SheetsWords.Of["column.station"], Align.Right, 34),
                new Column(SheetsWords.Of["column.width"], Align.Right, 30),
                new Column(SheetsWords.Of["column.radius"], Align.Right, 30),
            ],
            rows
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };
    }

    private static Table Differences(TraceResult trace) =>
        new(
            SheetsWords.Of["trace.sides"],
            [
                new Column(SheetsWords.Of["column.station"], Align.Right, 34),
                new Column(SheetsWords.Of["column.bass"], Align.Right, 36),
                new Column(SheetsWords.Of["column.treble"], Align.Right, 36),
                new Column(SheetsWords.Of["column.difference"], Align.Right, 36),
            ],
            [
                .. trace.Differences.Select(row =>
                    (IReadOnlyList<string>)
                        [
                            Figures.Mm(row.UMm),
                            Figures.Fixed(row.BassMm, 2),
                            Figures.Fixed(row.TrebleMm, 2),
                            Figures.Fixed(row.TrebleOverBassMm, 2),
                        ]
                ),
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };

    private static IEnumerable<string> Remarks(TraceResult trace)
    {
        yield return SheetsWords.Of.Format(
            "trace.fit",
            trace.Misfit.Segments,
            trace.Misfit.SegmentsMm
        );
        yield return SheetsWords.Of.Format(
            "trace.floor",
            trace.Floor.PointNoiseMm,
            trace.Floor.HeightMm(10),
            trace.Floor.HeightMm(40)
        );
        if (trace.Bumps.Count == 0)
        {
            yield return SheetsWords.Of["trace.no-bumps"];
        }

        foreach ((TraceSide side, double from, double until) in trace.Unsure)
        {
            yield return SheetsWords.Of.Format(
                side == TraceSide.Bass ? "trace.unsure-bass" : "trace.unsure-treble",
                from,
                until
            );
        }

        if (trace.Differences.Count > 0)
        {
            yield return SheetsWords.Of["trace.sides-note"];
        }
    }
}
