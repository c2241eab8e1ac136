using Formwright.Curves;

namespace Formwright.Plates.Tests.Plates;

/// <summary>Edges of plates for the tests.</summary>
internal static class Rims
{
    internal static Chain Rectangle(double lengthMm, double widthMm, double angleRad = 0)
    {
        Point[] corners = [new(0, 0), new(lengthMm, 0), new(lengthMm, widthMm), new(0, widthMm)];
        Point[] turned =
        [
            .. corners.Select(corner => Point.Origin + (corner - Point.Origin).Turned(angleRad)),
        ];
        return new(
            Enumerable.Range(0, 4).Select(i => EulerSegment.Line(turned[i], turned[(i + 1) % 4])),
            isClosed: true
        );
    }

    internal static Chain Circle(double radiusMm, Point middle = default)
    {
        var half = new Vector(radiusMm, 0);
        return new(
            [
                new(middle + half, Math.PI / 2, 1 / radiusMm, 0, Math.PI * radiusMm),
                new(middle - half, -Math.PI / 2, 1 / radiusMm, 0, Math.PI * radiusMm),
            ],
            isClosed: true
        );
    }

    /// <summary>The Heron's outline (demo data of our own).</summary>
    internal static Chain Heron { get; } =
        MinimumVariation
            .Solve(new(488, new(104, 282), new(190, 236), new(356, 368)))
            .Outline!.Closed;

    internal static Chain HeronSoundhole { get; } = Circle(42, new(148, 0));
}
