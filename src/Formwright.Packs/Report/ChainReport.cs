using System.ComponentModel;
using System.Text.Json.Serialization;
using Formwright.Instrument.Action;

namespace Formwright.Packs.Report;

/// <summary>The height chain at one stage.</summary>
public sealed record ChainReport(
    [property: Description("Neck's face at the nut over the datum, mm.")] double NeckMm,
    [property: Description("Soundboard under the saddle on the centreline, mm.")] double DomeMm,
    [property: Description(
        "Underside of the outermost strings over the soundboard at the saddle, mm."
    )]
        SidedFigure SaddleHeightMm,
    [property:
        Description("Action of the outermost strings at fret 12, mm."),
        JsonPropertyName("action_12_mm")
    ]
        SidedFigure Action12Mm,
    [property: Description("Straight edge on the frets over the soundboard at the saddle, mm.")]
        double ProjectionMm,
    [property: Description("Every string, bass to treble.")]
        IReadOnlyList<StringHeightsReport> Strings
)
{
    internal static ChainReport Of(HeightChain chain) =>
        new(
            chain.NeckMm,
            chain.DomeMm,
            new SidedFigure(chain.Bass.SaddleMm, chain.Treble.SaddleMm),
            new SidedFigure(chain.Bass.Action12Mm, chain.Treble.Action12Mm),
            chain.ProjectionMm,
            [
                .. chain.Strings.Select(each => new StringHeightsReport(
                    each.Number,
                    each.SaddleMm,
                    each.ActionMm,
                    each.GapMm,
                    each.BreakAngleRad * 180 / Math.PI
                )),
            ]
        );
}
