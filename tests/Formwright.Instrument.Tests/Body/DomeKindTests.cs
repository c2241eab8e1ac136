using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Fields;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Domes;
using Xunit;

namespace Formwright.Instrument.Tests.Body;

public sealed class DomeKindTests
{
    private static Guitar Of(DomeKind kind, double? radius = null, double? centre = null)
    {
        var design = Demo.Design();
        return Instrument
            .Guitar.Build(
                design with
                {
                    Dome = design.Dome with
                    {
                        Kind = kind,
                        RadiusMm = radius,
                        CentreMm = centre,
                        StartMm = kind == DomeKind.RimOnSphere ? 88 : null,
                    },
                }
            )
            .Guitar!;
    }

    [Fact]
    public void DishHasItsHeightAndAFlatRim()
    {
        Guitar guitar = Of(DomeKind.Dish);
        IHeightField dish = guitar.Dome.Field;
        Assert.Equal(2.5, dish.Peak.HeightMm, 1e-9);
        Assert.Equal(356, dish.Peak.Place.X, 1e-6);
        foreach (double s in new[] { 300.0, 450, 600, 700 })
        {
            CurvePoint at = guitar.Outline.Half.At(s);
            // Inside is to the right of the half.
            Point onRim = at.Position - (at.Normal * 6);
            Point justInside = at.Position - (at.Normal * 12.5);
            Assert.Equal(0, dish.HeightAt(onRim));
            // Neither step nor crease: at half a mm from the rim the height is below a µm.
            Assert.InRange(dish.HeightAt(justInside), 0, 1e-3);
        }
    }

    // Away from the rim and the sphere's rounded edge the dish is the sphere: H - (R - √(R² - ρ²)).
    [Fact]
    public void DishIsTheSphereInTheMiddle()
    {
        IHeightField dish = Of(DomeKind.Dish, radius: 7620).Dome.Field;
        foreach (Point at in new Point[] { new(356, 0), new(340, 60), new(300, -80), new(395, 30) })
        {
            double rho = at.DistanceTo(new Point(356, 0));
            double sphere = 2.5 - (7620 - Math.Sqrt((7620.0 * 7620) - (rho * rho)));
            Assert.Equal(sphere, dish.HeightAt(at), 1e-9);
        }
    }

    [Fact]
    public void DishDerivativesMatchDifferences()
    {
        IHeightField dish = Of(DomeKind.Dish).Dome.Field;
        Derivatives.Check(dish, new(300, -120), new(420, 120), 2e-6);
        Derivatives.Check(dish, new(230, 100), new(300, 110), 2e-6);
    }

    [Fact]
    public void RimOnSphereRunsThroughTheDatumAtBarAndTail()
    {
        Guitar guitar = Of(DomeKind.RimOnSphere);
        SphereRimDome field = (SphereRimDome)guitar.Dome.Field;
        Assert.Equal(2.5, field.HeightAt(new Point(288, 0)), 1e-9);
        Assert.Equal(0, field.HeightAt(new Point(88, 0)));
        Assert.Equal(0, field.HeightAt(new Point(60, 40)));
        Assert.Equal(0, field.HeightAt(new Point(487.99, 0)), 1e-3);
        // R = (c² + H²)/2H with half the chord c = 200.
        Assert.Equal((40000 + 6.25) / 5, field.RadiusMm, 1e-9);
        // To the side it falls as the sphere does.
        double rho2 = ((350 - 288.0) * (350 - 288.0)) + (150.0 * 150);
        double expected =
            2.5 - (field.RadiusMm - Math.Sqrt((field.RadiusMm * field.RadiusMm) - rho2));
        Assert.Equal(expected, field.HeightAt(new Point(350, 150)), 1e-9);
        Derivatives.Check(field, new(95, -110), new(420, 110), 2e-6);
    }

    // A radius given instead of a height: the height over the chord from bar to tail.
    [Fact]
    public void RadiusGivesTheHeight()
    {
        var design = Formwright.Design.DesignText.Parse(
            File.ReadAllText(Testing.Repository.PathOf("examples", "heron.toml"))
                .Replace(
                    "height = 2.5",
                    "kind = \"rim-on-sphere\"\nradius = 8000",
                    StringComparison.Ordinal
                ),
            "heron"
        );
        Assert.True(design.Succeeded, string.Join("\n", design.Diagnostics));
        Assert.Equal(88, design.Design.Dome.StartMm);
        Assert.Equal(8000 - Math.Sqrt(6.4e7 - 40000), design.Design.Dome.HeightMm, 1e-9);
    }

    // Ribs follow the rim: where the sphere falls below the datum, the rib is lower by as much.
    [Fact]
    public void RibsFollowTheRim()
    {
        BodyPlan sphere = BodyPlan.Of(Of(DomeKind.RimOnSphere));
        BodyPlan flat = Demo.Plan();
        Assert.False(sphere.Ribs.IsFrontStraight);
        Assert.True(flat.Ribs.IsFrontStraight);
        for (int i = 0; i < flat.Ribs.Points.Count; i++)
        {
            var a = sphere.Ribs.Points[i];
            var b = flat.Ribs.Points[i];
            Assert.Equal(b.BackMm, a.BackMm, 1e-9);
            double z = sphere.Guitar.Dome.Field.HeightAt(new Point(a.UMm, a.YMm));
            Assert.Equal(b.HeightMm + z, a.HeightMm, 1e-9);
        }
    }
}
