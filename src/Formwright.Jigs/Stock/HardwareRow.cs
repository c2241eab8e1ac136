namespace Formwright.Jigs.Stock;

/// <summary>One row of the hardware list.</summary>
/// <param name="Item">What is bought.</param>
/// <param name="Price">Price of one; null where it is not known.</param>
/// <param name="IsBuiltInPrice">The price is one of the built-in, invented ones.</param>
public sealed record HardwareRow(HardwareItem Item, double? Price, bool IsBuiltInPrice)
{
    /// <summary>Price of all; null where it is not known.</summary>
    public double? Cost => Price * Item.Count;
}
