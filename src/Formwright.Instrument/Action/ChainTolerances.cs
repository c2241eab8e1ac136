using Formwright.Design.Sections;
using Formwright.Instrument.Tolerances;

namespace Formwright.Instrument.Action;

/// <summary>How far each figure of the chain may be off, in the unit of its key in <c>[tolerances]</c>.</summary>
public sealed class ChainTolerances
{
    private static readonly ChainInput[] All = Enum.GetValues<ChainInput>();
    private readonly (InputShape Shape, double Spread)[] spreads;

    private ChainTolerances((InputShape, double)[] spreads) => this.spreads = spreads;

    /// <summary>The figures in order.</summary>
    public static IReadOnlyList<ChainInput> Inputs => All;

    /// <summary>Shape and spread of a figure.</summary>
    public (InputShape Shape, double Spread) this[ChainInput input] => spreads[(int)input];

    /// <summary>Those of a design.</summary>
    public static ChainTolerances Of(TolerancesDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return new([
            .. All.Select(input =>
                design.Of[input] is { Deviation: { } deviation }
                    ? (InputShape.Normal, deviation)
                    : (InputShape.Rectangular, design.Of[input].PlusMinus)
            ),
        ]);
    }

    /// <summary>The same with a rectangular ± for some figures; 0 where they are known.</summary>
    public ChainTolerances With(double halfWidth, params ReadOnlySpan<ChainInput> inputs)
    {
        Guard.Between(halfWidth, 0, double.MaxValue);
        (InputShape, double)[] changed = [.. spreads];
        foreach (ChainInput input in inputs)
        {
            changed[(int)input] = (InputShape.Rectangular, halfWidth);
        }

        return new(changed);
    }

    /// <summary>The same with a normal standard deviation for one figure.</summary>
    public ChainTolerances WithDeviation(ChainInput input, double deviation)
    {
        Guard.Between(deviation, 0, double.MaxValue);
        (InputShape, double)[] changed = [.. spreads];
        changed[(int)input] = (InputShape.Normal, deviation);
        return new(changed);
    }
}
