using Formwright.Instrument;
using Formwright.Instrument.Body;

namespace Formwright.Sheets.Body;

/// <summary>The sheets of body, neck blank, bridge and wood, in the order in which they are made.</summary>
public static class BodySheets
{
    /// <summary>The sheets, not yet numbered.</summary>
    public static IEnumerable<NamedSheet> Of(Guitar guitar, BodyPlan body)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(body);
        yield return HumiditySheet.Of(guitar, body);
        yield return BoardSheet.Of(guitar, body);
        yield return SoundboardSheet.Of(guitar, body);
        yield return BraceGaugeSheet.Of(guitar, body);
        yield return RosetteSheet.Of(guitar, body);
        yield return NeckSheet.Of(guitar, body);
        yield return RibSheet.Of(guitar, body);
        yield return BendingSheet.Of(guitar, body);
        yield return BlockSheet.Of(guitar, body);
        yield return BackSheet.Of(guitar, body);
        yield return BridgeSheet.Of(guitar, body);
    }
}
