using System.ComponentModel;
using Formwright.Curves;
using Formwright.Instrument;

namespace Formwright.Packs.Report;

/// <summary>The dome's figures.</summary>
public sealed record DomeReport(
    [property: Description("Greatest height over the rim, mm.")] double MaxMm,
    [property: Description("Station of the greatest height from the heel, mm.")] double MaxAtUMm,
    [property: Description("Station where the dome starts, mm.")] double StartUMm,
    [property: Description("Estimated error of the height anywhere, mm.")] double EstimatedErrorMm,
    [property: Description("Height along the centreline every 10 mm.")]
        IReadOnlyList<DomeReportRow> Centreline
)
{
    internal static DomeReport Of(Guitar guitar)
    {
        List<DomeReportRow> rows = [];
        for (double u = 0; u <= guitar.Outline.BodyLengthMm; u += 10)
        {
            rows.Add(new DomeReportRow(u, guitar.Dome.Field.HeightAt(new Point(u, 0))));
        }

        return new DomeReport(
            guitar.Dome.Field.Peak.HeightMm,
            guitar.Dome.Field.Peak.Place.X,
            guitar.Dome.StartUMm,
            guitar.Dome.EstimatedErrorMm,
            rows
        );
    }
}
