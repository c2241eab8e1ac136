namespace Formwright.Instrument.Tolerances;

/// <summary>One figure that goes into a model, with how far it may be off.</summary>
/// <param name="Name">Key of the figure.</param>
/// <param name="Value">Its value, in its own unit.</param>
/// <param name="Shape">How it spreads.</param>
/// <param name="Spread">Half width a (rectangular, triangular, arcsine) or standard deviation (normal); not negative.</param>
public sealed record UncertainInput(string Name, double Value, InputShape Shape, double Spread)
{
    private readonly bool isChecked = Check(Value, Spread);

    /// <summary>Half width that the worst case takes for a normal input, in deviations (tuned: 997 of 1000).</summary>
    public const double NormalReach = 3;

    /// <summary>Standard uncertainty u.</summary>
    public double StandardUncertainty =>
        Shape switch
        {
            InputShape.Rectangular => Spread / Math.Sqrt(3),
            InputShape.Triangular => Spread / Math.Sqrt(6),
            InputShape.Arcsine => Spread / Math.Sqrt(2),
            _ => Spread,
        };

    /// <summary>Half width a of a bounded shape; <see cref="NormalReach"/> deviations of a normal one.</summary>
    public double HalfWidth => Shape == InputShape.Normal ? NormalReach * Spread : Spread;

    /// <summary>A rectangular ± a.</summary>
    public static UncertainInput PlusMinus(string name, double value, double halfWidth) =>
        new(name, value, InputShape.Rectangular, halfWidth);

    /// <summary>A normal input of deviation u.</summary>
    public static UncertainInput Normal(string name, double value, double deviation) =>
        new(name, value, InputShape.Normal, deviation);

    private static bool Check(double value, double spread)
    {
        Guard.Finite(value);
        Guard.Between(spread, 0, double.MaxValue);
        return true;
    }
}
