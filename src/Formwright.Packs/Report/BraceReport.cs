using System.ComponentModel;
using Formwright.Design.Reading;
using Formwright.Instrument.Body.Soundboard;

namespace Formwright.Packs.Report;

/// <summary>One bar or brace of the soundboard.</summary>
public sealed record BraceReport(
    [property: Description("Its name on the sheet.")] string Name,
    [property: Description("What it is.")] string Kind,
    [property: Description("Length, mm.")] double LengthMm,
    [property: Description("Height of the piece that it is cut from, mm.")] double BlankHeightMm,
    [property: Description("Mass, g.")] double MassG
)
{
    internal static BraceReport Of(Brace brace) =>
        new(
            brace.Name,
            Choices.NameOf(brace.Kind),
            brace.LengthMm,
            brace.BlankHeightMm,
            brace.MassG
        );
}
