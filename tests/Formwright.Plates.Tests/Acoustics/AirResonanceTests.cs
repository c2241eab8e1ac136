using CsCheck;
using Formwright.Fields.Acoustics;
using Formwright.Testing;

namespace Formwright.Plates.Tests.Acoustics;

public sealed class AirResonanceTests
{
    [Fact]
    public void HelmholtzOfAGuitarSizedBox() =>
        // f = (c/2π)√(S/(V L)), L = t + 1.7 r, worked out: r 42.5, t 2.5, c 343, 13.5 L.
        Assert.Equal(129.45, AirResonance.HelmholtzHz(42.5, 2.5, 13.5), 0.005);

    [Fact]
    public void TheMeasuredGuitarOfChristensenAndVistisen()
    {
        // JASA 68(3) 758, 1980: measured f₋ 104, f_h 127, f₊ 219 Hz give f_p and f_v; these must give f₋ and f₊ back.
        double closed = Math.Sqrt((104.0 * 104) + (219.0 * 219) - (127.0 * 127));
        double vacuum = 104.0 * 219 / 127;
        Assert.Equal(206.514, closed, 0.001);
        Assert.Equal(179.339, vacuum, 0.001);
        CoupledResonances pair = AirResonance.Coupled(127, vacuum, closed);
        Assert.Equal(104, pair.LowHz, 1e-9);
        Assert.Equal(219, pair.HighHz, 1e-9);
    }

    [Fact]
    public void CoupledRelationsHold() =>
        Gen.Select(Gen.Double[40, 300], Gen.Double[40, 400], Gen.Double[0, 200])
            .Holds(
                (air, vacuum, more) =>
                {
                    double closed = vacuum + more;
                    CoupledResonances pair = AirResonance.Coupled(air, vacuum, closed);
                    double sum = (air * air) + (closed * closed);
                    Assert.Equal(
                        sum,
                        (pair.LowHz * pair.LowHz) + (pair.HighHz * pair.HighHz),
                        1e-9 * sum
                    );
                    Assert.Equal(air * vacuum, pair.LowHz * pair.HighHz, 1e-9 * air * vacuum);
                    // Coupling pushes apart.
                    Assert.True(pair.LowHz <= Math.Min(air, vacuum) * (1 + 1e-12));
                    Assert.True(pair.HighHz >= Math.Max(air, closed) * (1 - 1e-12));
                }
            );

    [Fact]
    public void WithoutCouplingNothingMoves()
    {
        CoupledResonances pair = AirResonance.Coupled(127, 180, 180);
        Assert.Equal(127, pair.LowHz, 1e-10);
        Assert.Equal(180, pair.HighHz, 1e-10);
        Assert.Equal(180, AirResonance.ClosedHz(180, 0.1, 0, 13.5), 1e-12);
    }

    [Fact]
    public void TheClosedBoxIsAPistonOnAnAirSpring()
    {
        // A free piston of area A and mass m on a box: ω² = ρc²A²/(V m), from ρc² = 1.204 · 343² Pa.
        double area = 0.04;
        double spring = 1.204 * 343 * 343 * area * area / 0.0135;
        double alone = Math.Sqrt(spring / 0.08) / (2 * Math.PI);
        Assert.Equal(
            Math.Sqrt((150 * 150) + (alone * alone)),
            AirResonance.ClosedHz(150, 0.08, 40000, 13.5),
            1e-9
        );
    }

    [Fact]
    public void ImpossibleFiguresThrow()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => AirResonance.HelmholtzHz(0, 2.5, 13.5));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            AirResonance.HelmholtzHz(42, double.NaN, 13.5)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => AirResonance.Coupled(127, 180, 179));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            AirResonance.ClosedHz(180, 0.1, double.NaN, 13.5)
        );
    }
}
