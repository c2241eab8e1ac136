using Formwright.Curves;

namespace Formwright.Jigs.Stock;

/// <summary>A rectangle of a sheet that is left over and worth keeping, in the sheet's frame, clear of every part by the kerf.</summary>
/// <param name="Box">Where it lies, mm.</param>
public sealed record Offcut(Box Box)
{
    /// <summary>Along the sheet, mm.</summary>
    public double LengthMm => Box.WidthMm;

    /// <summary>Across the sheet, mm.</summary>
    public double WidthMm => Box.HeightMm;
}
