using Formwright.Curves;
using Formwright.Fields;
using Xunit;

namespace Formwright.Instrument.Tests.Body;

/// <summary>Slope and curvature of a height field against central differences of its heights.</summary>
internal static class Derivatives
{
    internal static void Check(IHeightField field, Point min, Point max, double tolerance)
    {
        Random random = new(5);
        const double H = 0.02;
        for (int i = 0; i < 200; i++)
        {
            Point at = new(
                min.X + (random.NextDouble() * (max.X - min.X)),
                min.Y + (random.NextDouble() * (max.Y - min.Y))
            );
            HeightSample s = field.At(at);
            HeightSample east = field.At(at + new Vector(H, 0));
            HeightSample west = field.At(at - new Vector(H, 0));
            HeightSample north = field.At(at + new Vector(0, H));
            HeightSample south = field.At(at - new Vector(0, H));
            Assert.Equal(field.HeightAt(at), s.HeightMm);
            Assert.Equal((east.HeightMm - west.HeightMm) / (2 * H), s.Slope.X, tolerance);
            Assert.Equal((north.HeightMm - south.HeightMm) / (2 * H), s.Slope.Y, tolerance);
            Assert.Equal((east.Slope.X - west.Slope.X) / (2 * H), s.Zxx, tolerance);
            Assert.Equal((east.Slope.Y - west.Slope.Y) / (2 * H), s.Zxy, tolerance);
            Assert.Equal((north.Slope.X - south.Slope.X) / (2 * H), s.Zxy, tolerance);
            Assert.Equal((north.Slope.Y - south.Slope.Y) / (2 * H), s.Zyy, tolerance);
        }
    }
}
