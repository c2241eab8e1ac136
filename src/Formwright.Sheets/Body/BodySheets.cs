using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Body;
using Formwright.Instrument.Plates;

namespace Formwright.Sheets.Body;

/// <summary>The sheets of body, neck blank, bridge and wood, in the order in which they are made.</summary>
public static class BodySheets
{
    /// <summary>The sheets, not yet numbered.</summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="body">Its body and wood.</param>
    /// <param name="action">Its neck and action; null leaves the sheets of the plate out.</param>
    /// <param name="plate">Its soundboard as a plate; null leaves its sheets out.</param>
    public static IEnumerable<NamedSheet> Of(
        Guitar guitar,
        BodyPlan body,
        NeckAndAction? action = null,
        SoundboardPlate? plate = null
    )
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(body);
        yield return HumiditySheet.Of(guitar, body);
        yield return BoardSheet.Of(guitar, body);
        yield return SoundboardSheet.Of(guitar, body);
        if (plate is not null)
        {
            yield return ThicknessSheet.Of(guitar, plate.Thickness);
        }

        yield return BraceGaugeSheet.Of(guitar, body);
        if (
            action?.Bridge is { } load
            && plate?.Under(load.PullN, load.CoupleNmm) is { } motion
            && plate.ShapeUnder(load.PullN, load.CoupleNmm) is { } shape
        )
        {
            yield return PlateSheet.Of(
                guitar,
                body,
                action,
                plate,
                action.BridgeMotion ?? motion,
                shape
            );
        }

        if (plate?.Tones is { } tones)
        {
            yield return ModesSheet.Of(guitar, tones);
        }

        yield return RosetteSheet.Of(guitar, body);
        yield return NeckSheet.Of(guitar, body);
        yield return RibSheet.Of(guitar, body);
        yield return BendingSheet.Of(guitar, body);
        yield return BlockSheet.Of(guitar, body);
        yield return BackSheet.Of(guitar, body);
        yield return BridgeSheet.Of(guitar, body);
    }
}
