using Formwright.Curves;
using Formwright.Fields.Plates;

namespace Formwright.Bench;

/// <summary>The Heron's soundboard with two harmonic bars, six fan braces and a bridge.</summary>
internal static class HeronSoundboard
{
    internal static Plate Plate { get; } =
        new()
        {
            Rim = Outline(),
            Holes = [Circle(42, new(148, 0))],
            Wood = new(10800, 842, 691, 0.372, 400),
            ThicknessMm = place => place.X > 220 ? 2.5 - (0.4 * Math.Pow(place.Y / 184, 2)) : 2.5,
            Braces =
            [
                Bar(88, 137, 14),
                Bar(206, 117, 15),
                .. Enumerable
                    .Range(0, 3)
                    .SelectMany(i =>
                        new[] { 1, -1 }.Select(side =>
                            Fan(side * (12 + (26 * i)), side * (20 + (42 * i)), 440 - (15 * i))
                        )
                    ),
            ],
            Patches =
            [
                PlatePatch.Bridge(new(325, 0), 190, 28, 8, new(12300, 1500, 1500, 0.37, 750)),
            ],
        };

    internal static PlateSpot Bridge { get; } = PlateSpot.Of(Plate.Patches[0].Corners);

    private static Chain Outline() =>
        MinimumVariation
            .Solve(new(488, new(104, 282), new(190, 236), new(356, 368)))
            .Outline?.Closed
        ?? throw new InvalidOperationException("The Heron has no outline.");

    private static Chain Circle(double radius, Point middle)
    {
        var half = new Vector(radius, 0);
        return new(
            [
                new(middle + half, Math.PI / 2, 1 / radius, 0, Math.PI * radius),
                new(middle - half, -Math.PI / 2, 1 / radius, 0, Math.PI * radius),
            ],
            isClosed: true
        );
    }

    private static PlateBrace Bar(double x, double half, double height) =>
        new(
            [new(new(x, -half), height / 2), new(new(x, 0), height), new(new(x, half), height / 2)],
            6,
            10000,
            650,
            420
        );

    private static PlateBrace Fan(double fromY, double toY, double toX)
    {
        var start = new Point(220, fromY);
        var end = new Point(toX, toY);
        return new(
            [
                new(start, 1),
                new(start.Towards(end, 0.15), 5),
                new(start.Towards(end, 0.85), 5),
                new(end, 1),
            ],
            5,
            10000,
            650,
            420
        );
    }
}
