using Formwright.Curves;
using Formwright.Fields.Plates;

namespace Formwright.Plates.Tests.Plates;

/// <summary>Deflections against closed forms (Timoshenko &amp; Woinowsky-Krieger, Theory of Plates and Shells), thickness and rigidity 1.</summary>
public sealed class DeflectionOfKnownPlatesTests
{
    private static readonly Point middle = new(0.5, 0.5);

    private static double Uniform(PlateModel model, Point place, double pressure = 1) =>
        model.Deflect(new PlateLoad(PlateSpot.Whole, pressure * model.AreaMm2)).HeightAt(place);

    private static double Central(PlateModel model, Point place) =>
        model.Deflect(new PlateLoad(PlateSpot.At(place), 1)).HeightAt(place);

    [Fact]
    public void HingedSquareUnderUniformLoadAtFourthOrderFromBelow()
    {
        // Navier: the middle .004062352661 qa⁴/D; the mean 64/π⁸ Σ 1/(m²n²(m²+n²)²), m and n odd, which is twice the energy.
        double mean = 0;
        for (int m = 1; m < 200; m += 2)
        {
            for (int n = 1; n < 200; n += 2)
            {
                mean += 64 / Math.Pow(Math.PI, 8) / Math.Pow(m * n * ((m * m) + (n * n)), 2);
            }
        }

        double[] errors = ErrorsOnSquares(
            EdgeSupport.Hinged,
            mean,
            model => model.Deflect(new PlateLoad(PlateSpot.Whole, 1)).Mean(PlateSpot.Whole).RiseMm
        );
        Assert.All(errors, error => Assert.True(error < 0));
        Assert.InRange(errors[2], -2e-6 * mean, 0);
        Assert.InRange(Square.Order(errors[0], errors[1]), 3.7, 4.3);
        Assert.InRange(Square.Order(errors[1], errors[2]), 3.7, 4.3);
        var model = PlateModel.On(Square.Plate(EdgeSupport.Hinged), Square.Mesh(32, 32));
        Assert.Equal(0.004062352661, Uniform(model, middle), 2e-6 * 0.004062352661);
    }

    [Fact]
    public void HingedSquareUnderCentreLoadAtSecondOrderFromBelow()
    {
        // The work of the load is the energy: conforming shapes give too little. Under a point load w is only r² log r: second order.
        const double exact = 0.01160083971;
        double[] errors = ErrorsOnSquares(
            EdgeSupport.Hinged,
            exact,
            model => Central(model, middle)
        );
        Assert.All(errors, error => Assert.True(error < 0));
        Assert.InRange(errors[2], -5e-4 * exact, 0);
        Assert.InRange(Square.Order(errors[0], errors[1]), 1.7, 2.3);
        Assert.InRange(Square.Order(errors[1], errors[2]), 1.7, 2.3);
    }

    [Fact]
    public void ClampedDisc()
    {
        // q a⁴/64D and P a²/16πD.
        Plate plate = Square.Plate(EdgeSupport.Clamped) with
        {
            Rim = Rims.Circle(1),
        };
        var model = PlateModel.Of(plate, 4000);
        Assert.Equal(Math.PI, model.AreaMm2, 1e-8);
        Assert.Equal(1.0 / 64, Uniform(model, default), 1e-5 / 64);
        Assert.Equal(1 / (16 * Math.PI), Central(model, default), 2e-3 / (16 * Math.PI));
        // The whole shape: q (a² - r²)²/64D.
        PlateShape shape = model.Deflect(new PlateLoad(PlateSpot.Whole, model.AreaMm2));
        foreach (double r in (double[])[0.2, 0.5, 0.8, 0.97])
        {
            Point place = Point.Origin + (r * Vector.At(1.1));
            double exact = Math.Pow(1 - (r * r), 2) / 64;
            Assert.Equal(exact, shape.HeightAt(place), 2e-5 / 64);
            Assert.Equal(
                -4 * r * (1 - (r * r)) / 64,
                shape.At(place).SlopeAlong(Vector.At(1.1)),
                2e-4 / 64
            );
        }
    }

    [Fact]
    public void HingedDisc()
    {
        // (5 + ν)/(1 + ν) q a⁴/64D: on chords instead of the arc it would tend to the clamped disc's (Babuška's paradox).
        Plate plate = Square.Plate(EdgeSupport.Hinged) with
        {
            Rim = Rims.Circle(1),
        };
        double exact = 5.3 / 1.3 / 64;
        Assert.Equal(exact, Uniform(PlateModel.Of(plate, 3000), default), 2e-5 * exact);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(0.7)]
    public void ClampedOrthotropicEllipse(double turn)
    {
        // w0 = q/[8(3Dx/a⁴ + 2H/a²b² + 3Dy/b⁴)]. Turned grain: a turned ellipse is the same plate, so Dx, H, Dy turn with it.
        const double a = 120;
        const double b = 80;
        const double t = 2.5;
        PlateWood wood = Woods.Sitka;
        double divisor = 1 - (wood.Poisson * wood.Poisson * wood.AcrossMpa / wood.AlongMpa);
        double cube = t * t * t / 12;
        double dx = wood.AlongMpa / divisor * cube;
        double dy = wood.AcrossMpa / divisor * cube;
        double h = (wood.Poisson * wood.AcrossMpa / divisor * cube) + (2 * wood.ShearMpa * cube);
        Assert.Equal(14215.9, dx, 0.05);
        Assert.Equal(1108.8, dy, 0.05);
        Assert.Equal(2212.5, h, 0.05);
        const double q = 1e-3;
        double exact =
            q
            / (
                8
                * (
                    (3 * dx / Math.Pow(a, 4))
                    + (2 * h / (a * a * b * b))
                    + (3 * dy / Math.Pow(b, 4))
                )
            );
        var plate = new Plate
        {
            Rim = new Ellipse(a, b, turn),
            Wood = wood,
            GrainAngleRad = turn,
            ThicknessMm = _ => t,
            Support = EdgeSupport.Clamped,
        };
        double[] errors =
        [
            .. new[] { 800, 3200 }.Select(unknowns =>
            {
                // The shape is w0 (1 - x²/a² - y²/b²)², its mean a third of w0.
                var model = PlateModel.Of(plate, unknowns);
                PlateShape shape = model.Deflect(new PlateLoad(PlateSpot.Whole, q * model.AreaMm2));
                Assert.Equal(exact, shape.HeightAt(default), 2e-4 * exact);
                return (3 * shape.Mean(PlateSpot.Whole).RiseMm / exact) - 1;
            }),
        ];
        Assert.InRange(Math.Abs(errors[1]), 0, 2e-5);
        Assert.InRange(Square.Order(errors[0], errors[1]), 3.4, 4.6);
    }

    [Fact]
    public void ADiscWithAFreeHole()
    {
        // Clamped at a, free at b, uniform load: w = A + B r² + C ln r + E r² ln r + q r⁴/64D, the constants from w = w' = 0 at a and
        // M_r = V_r = 0 at b.
        const double b = 0.3;
        const double nu = 0.3;
        const double q = 1;
        // V_r = -D d/dr(∇²w): ∇²w = 4B + 4E(1 + ln r) + q r²/4, so V_r = 0 gives E.
        double e = -q * b * b / 8;
        // M_r = 0: w'' + ν w'/r = 0 at b. Then w'(1) = 0 with B and C unknown.
        double Moment(double second, double first) => second + (nu * first / b);
        double fromB = Moment(2, 2 * b);
        double fromC = Moment(-1 / (b * b), 1 / b);
        double rest =
            (e * Moment((2 * Math.Log(b)) + 3, (2 * b * Math.Log(b)) + b))
            + (q / 64 * Moment(12 * b * b, 4 * b * b * b));
        // w'(1) = 2B + C + E + q/16 = 0.
        double edge = e + (q / 16);
        double bb = (rest - (fromC * edge)) / ((2 * fromC) - fromB);
        double c = -edge - (2 * bb);
        double aa = -bb - (q / 64);
        double Exact(double r) =>
            aa
            + (bb * r * r)
            + (c * Math.Log(r))
            + (e * r * r * Math.Log(r))
            + (q / 64 * Math.Pow(r, 4));
        Plate plate = Square.Plate(EdgeSupport.Clamped) with
        {
            Rim = Rims.Circle(1),
            Holes = [Rims.Circle(b)],
        };
        var model = PlateModel.Of(plate, 4000);
        Assert.Equal(Math.PI * (1 - (b * b)), model.AreaMm2, 1e-8);
        PlateShape shape = model.Deflect(new PlateLoad(PlateSpot.Whole, model.AreaMm2));
        foreach (double r in (double[])[0.301, 0.4, 0.6, 0.9])
        {
            Assert.Equal(Exact(r), shape.HeightAt(new(0, r)), 5e-5 * Exact(b));
        }

        Assert.Equal(0, shape.HeightAt(new(0, 0.2)));
    }

    [Theory]
    [InlineData(1, 1.0 / 3)]
    [InlineData(0.8, 0.392943914)]
    [InlineData(0.5, 0.545177444)]
    public void AThicknessThatFallsAlongACantileverStrip(double tip, double exact)
    {
        // δ E I₀/P L³ of a cantilever whose depth falls linearly (closed form): a strip without contraction across bends as a beam.
        const double length = 20;
        var plate = new Plate
        {
            Rim = Rims.Rectangle(length, 1),
            Wood = Woods.Strip,
            ThicknessMm = place => 1 + ((tip - 1) * place.X / length),
            SupportAt = place => place.X < 1e-9 ? EdgeSupport.Clamped : EdgeSupport.Free,
        };
        var model = PlateModel.On(plate, Square.Mesh(40, 2, length, 1));
        // The load along the whole end: a thin patch at the tip.
        var end = PlateSpot.Of([
            new(length - 1e-3, 0),
            new(length, 0),
            new(length, 1),
            new(length - 1e-3, 1),
        ]);
        double rise = model.Deflect(new PlateLoad(end, 1)).HeightAt(new(length, 0.5));
        double scaled = rise / (length * length * length);
        Assert.Equal(exact, scaled, 2e-4 * exact);
    }

    [Fact]
    public void CouplesAndForcesAreReciprocal()
    {
        // Maxwell: the rise per couple is the slope per force.
        var model = PlateModel.Of(Square.Plate(EdgeSupport.Hinged), 1500);
        var spot = PlateSpot.Of([new(0.6, 0.3), new(0.7, 0.3), new(0.7, 0.8), new(0.6, 0.8)]);
        BridgeInfluence influence = model.Influence(spot);
        Assert.Equal(
            influence.PerCoupleNmm.RiseMm,
            influence.PerForceN.SlopeRad.X,
            1e-9 * Math.Abs(influence.PerCoupleNmm.RiseMm)
        );
        Assert.True(influence.PerForceN.RiseMm > 0);
        Assert.True(influence.PerCoupleNmm.SlopeRad.X > 0);
        // In a flat plate without braces a pull bends nothing.
        Assert.Equal(0, influence.PerPullN.RiseMm);
    }

    [Fact]
    public void StringsAreACoupleAndAPull()
    {
        var model = PlateModel.Of(Square.Plate(EdgeSupport.Hinged), 800);
        var spot = PlateSpot.Of([new(0.6, 0.3), new(0.7, 0.3), new(0.7, 0.8), new(0.6, 0.8)]);
        PlateMotion direct = model.Deflect(PlateLoad.Strings(spot, 3, 0.9, 0.2)).Mean(spot);
        PlateMotion summed = model.Influence(spot).Under(3, 0.9, 0.2);
        Assert.Equal(direct.RiseMm, summed.RiseMm, 1e-9 * Math.Abs(direct.RiseMm));
        Assert.Equal(direct.SlopeRad.X, summed.SlopeRad.X, 1e-9 * direct.SlopeRad.X);
        // Towards the nut the plate sinks, behind the bridge it rises.
        Assert.True(direct.SlopeRad.X > 0);
    }

    private static double[] ErrorsOnSquares(
        EdgeSupport support,
        double exact,
        Func<PlateModel, double> value
    ) =>
        [
            .. new[] { 8, 16, 32 }.Select(n =>
                value(PlateModel.On(Square.Plate(support), Square.Mesh(n, n))) - exact
            ),
        ];
}
