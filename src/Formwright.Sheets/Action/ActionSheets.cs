using Formwright.Instrument;
using Formwright.Instrument.Action;

namespace Formwright.Sheets.Action;

/// <summary>The sheets of neck and action, in trade order. Their language is the thread's UI culture.</summary>
public static class ActionSheets
{
    /// <summary>The sheets of one instrument.</summary>
    public static IReadOnlyList<NamedSheet> Of(Guitar guitar, NeckAndAction action)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(action);
        return
        [
            HeightsSheet.Of(guitar, action),
            ChartSheet.Of(guitar, action),
            FretRuleSheet.Of(guitar, action),
            StraightEdgeSheet.Of(guitar, action),
            NutAndSaddleSheet.Of(guitar, action),
        ];
    }
}
