using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Fields;
using Formwright.Instrument;

namespace Formwright.Jigs.Workboard;

/// <summary>
/// The hollow that clears the dome. Carved: (d_max + clearance) times the dome's shape, so that it fades to nothing at the rim. Overlaid:
/// as deep as the overlay is thick, everywhere within the dome's edge. Body frame, depths positive.
/// </summary>
/// <param name="Method">How it is made.</param>
/// <param name="Shape">Depth as a height field, mm.</param>
/// <param name="Dome">The dome over it, mm.</param>
/// <param name="DeepestMm">Greatest depth, mm.</param>
/// <param name="Deepest">Where the dome is highest, body frame.</param>
/// <param name="ClearanceMm">What is left under the dome at its highest, mm.</param>
public sealed record Relief(
    ReliefMethod Method,
    IHeightField Shape,
    IHeightField Dome,
    double DeepestMm,
    Point Deepest,
    double ClearanceMm
)
{
    private const double AlongMm = 50;
    private const double AcrossMm = 30;

    /// <summary>The relief of a guitar's board.</summary>
    public static Relief Of(Guitar guitar)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        WorkboardDesign board = guitar.Design.Workboard;
        double height = guitar.Design.Dome.HeightMm;
        IHeightField dome = guitar.Dome.Field;
        if (board.Relief != ReliefMethod.Carved)
        {
            EvenField even = new(dome, board.OverlayThicknessMm);
            return new Relief(
                board.Relief,
                even,
                dome,
                board.OverlayThicknessMm,
                dome.Peak.Place,
                board.OverlayThicknessMm - height
            );
        }

        double clearance = board.ClearanceMm;
        double factor = height > 0 ? (height + clearance) / height : 1;
        ScaledField shape = new(dome, factor);
        return new Relief(
            board.Relief,
            shape,
            dome,
            shape.Peak.HeightMm,
            shape.Peak.Place,
            height > 0 ? clearance : 0
        );
    }

    /// <summary>What is left under the dome at a place, body frame, mm.</summary>
    public double ClearanceAt(Point place) => Shape.HeightAt(place) - Dome.HeightAt(place);

    /// <summary>Depth and clearance wherever there is a hollow, at even places: every 50 mm from the nut, every 30 mm from the centreline.</summary>
    public IEnumerable<ClearanceRow> Clearances(Guitar guitar)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        Box box = Shape.Region.Bounds;
        double start = Math.Ceiling((guitar.JoinMm + box.Min.X) / AlongMm) * AlongMm;
        for (double x = start; x < guitar.TailMm; x += AlongMm)
        {
            for (double y = 0; y <= box.Max.Y; y += AcrossMm)
            {
                Point at = new(x - guitar.JoinMm, y);
                double depth = Shape.HeightAt(at);
                if (depth > 0)
                {
                    yield return new ClearanceRow(x, y, depth, ClearanceAt(at));
                }
            }
        }
    }
}
