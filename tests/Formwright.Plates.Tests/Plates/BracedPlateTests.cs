using Formwright.Curves;
using Formwright.Fields.Plates;

namespace Formwright.Plates.Tests.Plates;

/// <summary>Braces and patches against what they must become when plate or brace counts for nothing, and against closed forms.</summary>
public sealed class BracedPlateTests
{
    private static PlateBrace Brace(
        Point from,
        Point to,
        double width,
        double height,
        double modulus,
        double shear = 0,
        double density = 0,
        double? offset = null,
        double? endHeight = null
    ) =>
        new(
            [new(from, height), new(to, endHeight ?? height)],
            width,
            modulus,
            shear,
            density,
            offset
        );

    [Fact]
    public void AVeryStiffBraceIsALineSupport()
    {
        // Across the middle of a hinged square, from rim to rim: the first mode can't bend the line, so it becomes the one with the line
        // at rest, (2,1): λ = 5π². Without stiffness it is (1,1): 2π².
        double First(double modulus, int n) =>
            2
            * Math.PI
            * PlateModel
                .On(
                    Square.Plate(EdgeSupport.Hinged) with
                    {
                        Braces = [Brace(new(0.5, 0), new(0.5, 1), 1, 1, modulus, offset: 0)],
                    },
                    Square.Mesh(n, n)
                )
                .Modes(1)
                .Modes[0]
                .FrequencyHz;
        double soft = First(1e-9, 16);
        Assert.Equal(2 * Math.PI * Math.PI, soft, 5e-4);
        double before = soft;
        foreach (double modulus in (double[])[1, 10, 100, 1e3, 1e6])
        {
            double found = First(modulus, 16);
            Assert.True(found >= before * (1 - 1e-9));
            before = found;
        }

        Assert.Equal(5 * Math.PI * Math.PI, before, 1e-4 * before);
        // Off the edges of the mesh (17 squares: the line cuts through triangles) it is still held, a little too stiffly.
        Assert.InRange(First(1e6, 17), 5 * Math.PI * Math.PI, 5 * Math.PI * Math.PI * 1.03);
    }

    public static TheoryData<double, double> Tapers =>
        new()
        {
            { 1, 1.0 / 3 },
            { 0.8, 0.392943914 },
            { 0.5, 0.545177444 },
        };

    [Theory]
    [MemberData(nameof(Tapers))]
    public void ABraceAloneIsATaperedCantilever(double tip, double exact)
    {
        // δ E I₀/P L³ (closed form) with a plate a billion times softer; the brace lies askew through the triangles.
        const double length = 10;
        var from = new Point(0, 0.31);
        var to = new Point(length, 0.77);
        double own = from.DistanceTo(to);
        const double height = 0.4;
        const double width = 0.3;
        const double modulus = 1e10;
        var plate = new Plate
        {
            Rim = Rims.Rectangle(length, 1),
            Wood = Woods.Strip,
            ThicknessMm = _ => 1,
            SupportAt = place => place.X < 1e-9 ? EdgeSupport.Clamped : EdgeSupport.Free,
            Braces = [Brace(from, to, width, height, modulus, offset: 0, endHeight: tip * height)],
        };
        var model = PlateModel.On(plate, Square.Mesh(30, 3, length, 1));
        Assert.Equal(0, model.StrayBraceMm, 1e-9);
        PlateShape shape = model.Deflect(new PlateLoad(PlateSpot.At(to), 1));
        double inertia = width * height * height * height / 12;
        double scaled = shape.HeightAt(to) * modulus * inertia / (own * own * own);
        // The clamped edge is not square to the brace but the plate twists freely.
        Assert.Equal(exact, scaled, 1e-3 * exact);
        if (tip == 1)
        {
            // An end moment: ML²/2EI.
            Vector along = (to - from) * (1 / own);
            PlateShape bent = model.Deflect(new PlateLoad(PlateSpot.At(to), 0, along));
            Assert.Equal(0.5, bent.HeightAt(to) * modulus * inertia / (own * own), 1e-3);
        }
    }

    [Fact]
    public void ABraceAloneRingsAsABeam()
    {
        // Cantilever βL 1.8751040687, 4.6940911330; free-free 4.7300407449, 7.8532046241.
        const double length = 10;
        const double height = 0.05;
        const double width = 0.1;
        double Omega(double beta) =>
            beta * beta * Math.Sqrt(12e9 * height * height / 12 / 1e0) / (length * length);
        var plate = new Plate
        {
            Rim = Rims.Rectangle(length, 0.2),
            // Light and soft, and thick enough to ring far above the brace.
            Wood = PlateWood.Isotropic(12, 0, 1e3),
            ThicknessMm = _ => 2,
            Support = EdgeSupport.Free,
            Braces =
            [
                Brace(new(0, 0.1), new(length, 0.1), width, height, 12e9, density: 1e12, offset: 0),
            ],
        };
        PlateMesh mesh = Square.Mesh(40, 2, length, 0.2);
        double[] free = Bending(PlateModel.On(plate, mesh));
        double[] clamped = Bending(
            PlateModel.On(
                plate with
                {
                    SupportAt = place => place.X < 1e-9 ? EdgeSupport.Clamped : EdgeSupport.Free,
                },
                mesh
            )
        );
        Assert.Equal(Omega(4.7300407449), free[0], 1e-3 * free[0]);
        Assert.Equal(Omega(7.8532046241), free[1], 1e-3 * free[1]);
        Assert.Equal(Omega(1.8751040687), clamped[0], 1e-3 * clamped[0]);
        Assert.Equal(Omega(4.6940911330), clamped[1], 1e-3 * clamped[1]);

        // Modes that turn about the brace swing the plate alone; those that move its line bend it.
        double[] Bending(PlateModel model) =>
            [
                .. model
                    .Modes(12)
                    .Modes.Where(mode => Math.Abs(mode.Shape.HeightAt(new(length, 0.1))) > 0.5)
                    .Select(mode => 2 * Math.PI * mode.FrequencyHz),
            ];
    }

    [Fact]
    public void ABraceAloneTwists()
    {
        // T L/G J; J of a rectangle 1 × 2 is 0.2287 · 2 · 1³ (Timoshenko & Goodier, table of section 109, k1 = 0.229).
        double torsion = PlateBrace.TorsionConstant(1, 2);
        Assert.Equal(0.229 * 2, torsion, 0.0005 * 2);
        Assert.Equal(0.1406, PlateBrace.TorsionConstant(1, 1), 0.00005);
        Assert.Equal(torsion, PlateBrace.TorsionConstant(2, 1), 1e-14);
        const double length = 10;
        var plate = new Plate
        {
            Rim = Rims.Rectangle(length, 1),
            Wood = Woods.Strip,
            ThicknessMm = _ => 1,
            SupportAt = place => place.X < 1e-9 ? EdgeSupport.Clamped : EdgeSupport.Free,
            Braces = [Brace(new(0, 0.5), new(length, 0.5), 1, 2, 1e10, 1e10, offset: 0)],
        };
        var model = PlateModel.On(plate, Square.Mesh(20, 2, length, 1));
        var tip = new Point(length, 0.5);
        // A couple that lifts the side of greater y is a twist about x.
        double slope = model
            .Deflect(new PlateLoad(PlateSpot.At(tip), 0, new Vector(0, 1)))
            .At(tip)
            .Slope.Y;
        Assert.Equal(length / (1e10 * torsion), slope, 5e-3 * slope);
    }

    [Fact]
    public void ABraceUnderAStripIsATSection()
    {
        // Transformed section: neutral axis and EI of strip and bar together; 5qL⁴/384EI between hinges, free to slide.
        const double length = 400;
        const double width = 8;
        const double thickness = 2.5;
        const double barWidth = 6;
        const double barHeight = 12;
        var wood = new PlateWood(10000, 10000, 5000, 0, 400);
        var support = new EdgeSupport(RimSupport.Hinged, InPlaneSupport.Free);
        var plate = new Plate
        {
            Rim = Rims.Rectangle(length, width),
            Wood = wood,
            ThicknessMm = _ => thickness,
            SupportAt = place =>
                place.X < 1e-6 || place.X > length - 1e-6 ? support : EdgeSupport.Free,
            Braces =
            [
                Brace(
                    new(0, width / 2),
                    new(length, width / 2),
                    barWidth,
                    barHeight,
                    14000,
                    density: 700
                ),
            ],
        };
        double plateEa = 10000 * width * thickness;
        double barEa = 14000.0 * barWidth * barHeight;
        double apart = (thickness + barHeight) / 2;
        double stiffness =
            (plateEa * thickness * thickness / 12)
            + (barEa * barHeight * barHeight / 12)
            + (plateEa * barEa / (plateEa + barEa) * apart * apart);
        var model = PlateModel.On(plate, Square.Mesh(40, 2, length, width));
        const double q = 1e-3;
        PlateShape shape = model.Deflect(new PlateLoad(PlateSpot.Whole, q * length));
        double exact = 5 * q * Math.Pow(length, 4) / (384 * stiffness);
        double middle = shape.HeightAt(new(length / 2, width / 2));
        Assert.Equal(exact, middle, 2e-3 * exact);
        // Held at its ends it can't stretch there and is stiffer: a bar off the middle that does not slide.
        double held = PlateModel
            .On(
                plate with
                {
                    SupportAt = place =>
                        place.X < 1e-6 || place.X > length - 1e-6
                            ? new(RimSupport.Hinged, InPlaneSupport.Held)
                            : EdgeSupport.Free,
                },
                Square.Mesh(40, 2, length, width)
            )
            .Deflect(new PlateLoad(PlateSpot.Whole, q * length))
            .HeightAt(new(length / 2, width / 2));
        Assert.True(held < 0.9 * middle);
        // And it rings as the same beam.
        double mass = ((400 * width * thickness) + (700 * barWidth * barHeight)) * 1e-12;
        double omega = Math.PI * Math.PI / (length * length) * Math.Sqrt(stiffness / mass);
        // Free in its plane it swings there too; such a mode has hardly any rise, so a huge mass where it rises.
        PlateMode first = model.Modes(6).Modes.First(mode => mode.MassKg < model.MassKg);
        double found = 2 * Math.PI * first.FrequencyHz;
        Assert.Equal(omega, found, 3e-3 * omega);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void APatchOverTheWholePlateIsAThickerPlate(bool outside)
    {
        // Two sheets of one wood glued together, free to slide at the rim, bend as one: D ∝ (t₁ + t₂)³.
        var support = new EdgeSupport(RimSupport.Hinged, InPlaneSupport.Free);
        Plate one = Square.Plate(support, Woods.Unit);
        Plate two = one with
        {
            ThicknessMm = _ => 0.6,
            Patches =
            [
                new([new(0, 0), new(1, 0), new(1, 1), new(0, 1)], 0.4, Woods.Unit, 0, outside),
            ],
        };
        var model = PlateModel.On(two, Square.Mesh(10, 10));
        double deflection = model
            .Deflect(new PlateLoad(PlateSpot.Whole, 1))
            .HeightAt(new(0.5, 0.5));
        // A thick square in mm: the model is thin by assumption, so Navier's value holds.
        Assert.Equal(0.004062352661, deflection, 1e-4 * 0.004062352661);
        Assert.Equal(1, model.MassKg / 1000, 1e-9);
    }

    [Fact]
    public void AShallowSphericalPanelOnItsDiaphragms()
    {
        // Hinged, held along its edges, free across them: ρhω² = D(α² + β²)² + Eh/R² (Leissa, Vibration of Shells, NASA SP-288;
        // exact for shallow shells without inertia in the plane).
        const double a = 300;
        const double b = 200;
        const double radius = 5000;
        const double t = 2.5;
        PlateWood wood = PlateWood.Isotropic(10000, 0.3, 400);
        var plate = new Plate
        {
            Rim = Rims.Rectangle(a, b),
            Wood = wood,
            ThicknessMm = _ => t,
            Support = EdgeSupport.Hinged,
            DomeSlope = place => new(-(place.X - (a / 2)) / radius, -(place.Y - (b / 2)) / radius),
        };
        double rigidity = 10000 * t * t * t / 12 / (1 - 0.09);
        double Exact(int m, int n)
        {
            double wave = Math.Pow(m * Math.PI / a, 2) + Math.Pow(n * Math.PI / b, 2);
            double stiff = (rigidity * wave * wave) + (10000 * t / (radius * radius));
            return Math.Sqrt(stiff / (400e-12 * t)) / (2 * Math.PI);
        }

        PlateModes modes = PlateModel.On(plate, Square.Mesh(18, 12, a, b)).Modes(3);
        double[] exact = [.. new[] { Exact(1, 1), Exact(2, 1), Exact(1, 2) }.Order()];
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(exact[i], modes.Modes[i].FrequencyHz, 1e-3 * exact[i]);
        }

        // Flat it would ring lower: the dome counts.
        Assert.True(
            exact[0]
                > 1.05
                    * Math.Sqrt(rigidity / (400e-12 * t))
                    * (Math.Pow(Math.PI / a, 2) + Math.Pow(Math.PI / b, 2))
                    / (2 * Math.PI)
        );
    }

    [Fact]
    public void WhatLiesOffThePlateIsReported()
    {
        Plate plate = Square.Plate(EdgeSupport.Hinged) with
        {
            Holes = [Rims.Circle(0.1, new(0.5, 0.5))],
            Braces = [Brace(new(0, 0.5), new(1, 0.5), 0.1, 0.1, 1, offset: 0)],
        };
        // Over the hole, but for the slivers between its arcs and chords.
        Assert.Equal(0.2, PlateModel.Of(plate, 3000).StrayBraceMm, 0.004);
    }
}
