using Formwright.Fields.Plates;

namespace Formwright.Plates.Tests.Plates;

/// <summary>
/// Modes of plates of one thickness, λ = ωa²√(ρh/D), against closed forms (Bessel functions for discs, sines for simply supported
/// rectangles) and converged Ritz values; the figures are known also from Leissa, Vibration of Plates, NASA SP-160.
/// </summary>
public sealed class ModesOfKnownPlatesTests
{
    /// <summary>Half of the last printed digit, where a value is given to fewer digits than the model reaches.</summary>
    private const double RitzDigits = 1e-4;

    private static double[] Lambdas(PlateModel model, int count, double a = 1) =>
        [.. model.Modes(count).Modes.Select(mode => 2 * Math.PI * mode.FrequencyHz * a * a)];

    public static TheoryData<string, double[]> Squares =>
        new()
        {
            { "hinged", [19.7392088, 49.3480220, 49.3480220, 78.9568352] },
            { "clamped", [35.98519, 73.39385, 73.39385, 108.21650] },
            { "free", [13.46820, 19.59614, 24.27020, 34.80089, 34.80089] },
        };

    public static TheoryData<string, double[]> Discs =>
        new()
        {
            { "hinged", [4.935149043, 13.89816507, 13.89816507] },
            {
                "clamped",
                [10.21582623, 21.26039769, 21.26039769, 34.87703542, 34.87703542, 39.77114824]
            },
            { "free", [5.35833, 5.35833, 9.00314, 12.43899, 12.43899] },
        };

    private static EdgeSupport Support(string name) =>
        name switch
        {
            "hinged" => EdgeSupport.Hinged,
            "clamped" => EdgeSupport.Clamped,
            _ => EdgeSupport.Free,
        };

    [Theory]
    [MemberData(nameof(Squares))]
    public void SquaresFromAboveAtFourthOrder(string support, double[] exact)
    {
        Plate plate = Square.Plate(Support(support));
        double[] coarse = Lambdas(PlateModel.On(plate, Square.Mesh(10, 10)), exact.Length);
        double[] fine = Lambdas(PlateModel.On(plate, Square.Mesh(20, 20)), exact.Length);
        double[] finest = Lambdas(PlateModel.On(plate, Square.Mesh(40, 40)), exact.Length);
        for (int i = 0; i < exact.Length; i++)
        {
            // Conforming: never below the true value (or below half of its last printed digit).
            Assert.True(coarse[i] > fine[i] && fine[i] > finest[i]);
            Assert.True(finest[i] > exact[i] * (1 - 2e-7), $"{finest[i]} {exact[i]}");
            double limit = finest[i] - ((fine[i] - finest[i]) / 15);
            Assert.Equal(exact[i], limit, 2e-6 * exact[i]);
            // The order shows in the differences, without the true value.
            double order = Square.Order(coarse[i] - fine[i], fine[i] - finest[i]);
            Assert.InRange(order, 3.5, 4.5);
        }
    }

    [Fact]
    public void TheFreeSquareLiesUnderPrintedUpperBounds()
    {
        // Barton, J. Appl. Mech. 18, 1951, ν = 0.3 (through Leissa): Ritz, so upper bounds.
        double[] printed = [13.49, 19.79, 24.43];
        double[] found = Lambdas(
            PlateModel.Of(Square.Plate(EdgeSupport.Free), 1000),
            printed.Length
        );
        for (int i = 0; i < printed.Length; i++)
        {
            Assert.True(found[i] < printed[i]);
        }
    }

    [Theory]
    [MemberData(nameof(Discs))]
    public void DiscsAtFourthOrder(string support, double[] exact)
    {
        Plate plate = Square.Plate(Support(support)) with { Rim = Rims.Circle(1) };
        (double Size, double Error)[] found =
        [
            .. new[] { 600, 1200, 2400, 4800 }.Select(unknowns =>
            {
                var model = PlateModel.Of(plate, unknowns);
                double[] lambdas = Lambdas(model, exact.Length);
                double largest = 0;
                for (int i = 0; i < exact.Length; i++)
                {
                    largest = Math.Max(largest, Math.Abs((lambdas[i] / exact[i]) - 1));
                }

                return (1 / Math.Sqrt(model.UnknownCount), largest);
            }),
        ];
        Assert.InRange(found[^1].Error, 0, 4e-5);
        if (support != "free")
        {
            // The Ritz values of the free disc have too few digits to measure an order with.
            Assert.InRange(Slope(found), 3.5, 4.6);
        }
    }

    [Fact]
    public void TheClampedDiscWithoutItsArcsIsAnUpperBound()
    {
        // Inscribed in the disc and clamped, the polygon's shapes are shapes of the disc too.
        Plate plate = Square.Plate(EdgeSupport.Clamped) with
        {
            Rim = Rims.Circle(1),
        };
        double[] exact = [10.21582623, 21.26039769, 21.26039769, 34.87703542, 34.87703542];
        foreach (double edge in (double[])[0.3, 0.15, 0.08])
        {
            var mesh = PlateMesh.Of(plate.Rim, [], [], edge, curvedRim: false);
            double[] found = Lambdas(PlateModel.On(plate, mesh), exact.Length);
            for (int i = 0; i < exact.Length; i++)
            {
                Assert.True(found[i] > exact[i]);
            }
        }
    }

    [Fact]
    public void SitkaRectangle()
    {
        // Orthotropic, simply supported: f = (π/2) √{[Dx(m/a)⁴ + 2H(m/a)²(n/b)² + Dy(n/b)⁴]/ρh}; free edges: converged Ritz.
        var plate = new Plate
        {
            Rim = Rims.Rectangle(500, 200),
            Wood = Woods.Sitka,
            ThicknessMm = _ => 2.5,
            Support = EdgeSupport.Hinged,
        };
        double[] hinged = Hertz(PlateModel.Of(plate, 6000), 4);
        double[] free = Hertz(PlateModel.Of(plate with { Support = EdgeSupport.Free }, 6000), 4);
        double[] exactHinged = [57.9915, 122.7063, 179.6890, 231.9662];
        double[] exactFree = [34.6626, 53.3971, 88.2051, 93.7016];
        for (int i = 0; i < 4; i++)
        {
            Assert.InRange(hinged[i], exactHinged[i] - 0.00005, exactHinged[i] * (1 + 5e-5));
            Assert.InRange(
                free[i],
                exactFree[i] * (1 - RitzDigits),
                exactFree[i] * (1 + RitzDigits)
            );
        }
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(Math.PI / 2)]
    [InlineData(2.1)]
    public void ATurnedPlateWithTurnedGrainRingsTheSame(double angle)
    {
        var plate = new Plate
        {
            Rim = Rims.Rectangle(500, 200, angle),
            Wood = Woods.Sitka,
            GrainAngleRad = angle,
            ThicknessMm = _ => 2.5,
        };
        double[] hinged = Hertz(PlateModel.Of(plate, 4000), 4);
        double[] free = Hertz(PlateModel.Of(plate with { Support = EdgeSupport.Free }, 4000), 2);
        Assert.Equal(57.9915, hinged[0], 57.9915 * 2e-5);
        Assert.Equal(231.9662, hinged[3], 231.9662 * 2e-4);
        Assert.Equal(34.6626, free[0], 34.6626 * 1e-4);
        Assert.Equal(53.3971, free[1], 53.3971 * 1e-4);
    }

    [Fact]
    public void AFreePlateHasThreeRigidMovements()
    {
        PlateModes modes = PlateModel.Of(Square.Plate(EdgeSupport.Free), 1000).Modes(6);
        Assert.Equal(3, modes.RigidCount);
        Assert.True(modes.Converged);
        Assert.Equal(0, modes.Missed);
        Assert.All(modes.Modes, mode => Assert.InRange(mode.Residual, 0, 1e-8));
    }

    [Fact]
    public void ModalMassAndSweptAreaOfTheHingedSquare()
    {
        // sin πx sin πy: mass ∫φ² = 1/4, swept area ∫φ = 4/π². The largest vertex of an even mesh is the middle.
        PlateModel model = PlateModel.On(Square.Plate(EdgeSupport.Hinged), Square.Mesh(16, 16));
        PlateMode first = model.Modes(1).Modes[0];
        // 1 t/mm² on 1 mm²: a quarter of a tonne.
        Assert.Equal(250, first.MassKg, 250 * 1e-4);
        Assert.Equal(4 / (Math.PI * Math.PI), Math.Abs(first.SweptMm2), 5e-5);
        Assert.Equal(1, first.Shape.HeightAt(new(0.5, 0.5)), 1e-12);
        Assert.Equal(Math.Sin(0.3 * Math.PI), first.Shape.HeightAt(new(0.3, 0.5)), 1e-4);
        Assert.Equal(1, first.Shape.Peak.HeightMm, 1e-12);
    }

    private static double[] Hertz(PlateModel model, int count) =>
        [.. model.Modes(count).Modes.Select(mode => mode.FrequencyHz)];

    /// <summary>Slope of log error over log size, least squares.</summary>
    private static double Slope((double Size, double Error)[] found)
    {
        double x = found.Average(point => Math.Log(point.Size));
        double y = found.Average(point => Math.Log(point.Error));
        return found.Sum(point => (Math.Log(point.Size) - x) * (Math.Log(point.Error) - y))
            / found.Sum(point => Math.Pow(Math.Log(point.Size) - x, 2));
    }
}
