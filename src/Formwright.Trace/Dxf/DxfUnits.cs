using Formwright.Trace.Files;

namespace Formwright.Trace.Dxf;

/// <summary>The unit of a drawing, from its header.</summary>
internal static class DxfUnits
{
    /// <summary>The unit that $INSUNITS names, else what $MEASUREMENT lets guess, else mm.</summary>
    /// <param name="insUnits">$INSUNITS, null where the header has none (R12).</param>
    /// <param name="measurement">$MEASUREMENT: 1 metric, 0 inches; null where the header has none.</param>
    internal static TraceUnit Of(int? insUnits, int? measurement) =>
        (insUnits ?? 0) switch
        {
            1 => Stated(25.4),
            2 => Stated(304.8),
            4 => Stated(1),
            5 => Stated(10),
            6 => Stated(1000),
            8 => Stated(25.4e-6),
            9 => Stated(25.4e-3),
            10 => Stated(914.4),
            12 => Stated(1e-6),
            13 => Stated(1e-3),
            14 => Stated(100),
            15 => Stated(1e4),
            _ => measurement == 0
                ? new TraceUnit(25.4, false, "unit.dxf-english")
                : new TraceUnit(
                    1,
                    false,
                    measurement is null ? "unit.dxf-none" : "unit.dxf-metric"
                ),
        };

    private static TraceUnit Stated(double mm) => new(mm, true, "unit.dxf");
}
