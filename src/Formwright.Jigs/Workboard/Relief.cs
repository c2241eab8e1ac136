using Formwright.Curves;
using Formwright.Fields;
using Formwright.Instrument;

namespace Formwright.Jigs.Workboard;

/// <summary>
/// The hollow that clears the dome: (d_max + clearance) times the dome's shape, so that it fades to nothing at the rim. Body frame, depths positive.
/// </summary>
/// <param name="Shape">Depth as a height field, mm.</param>
/// <param name="DeepestMm">Greatest depth, mm.</param>
/// <param name="Deepest">Where it is, body frame.</param>
/// <param name="ClearanceMm">What is left under the dome at its highest, mm.</param>
public sealed record Relief(IHeightField Shape, double DeepestMm, Point Deepest, double ClearanceMm)
{
    /// <summary>The relief of a guitar's board.</summary>
    public static Relief Of(Guitar guitar)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        double clearance = guitar.Design.Workboard.ClearanceMm;
        double height = guitar.Design.Dome.HeightMm;
        double factor = height > 0 ? (height + clearance) / height : 1;
        ScaledField shape = new(guitar.Dome.Field, factor);
        return new Relief(shape, shape.Peak.HeightMm, shape.Peak.Place, height > 0 ? clearance : 0);
    }
}
