using Formwright.Curves;
using Formwright.Fields;

namespace Formwright.Bench;

/// <summary>The region of the Heron's dome: inside a rim of 12 mm, from a station to the tail.</summary>
internal static class HeronRegion
{
    internal static Region From(double startMm)
    {
        OutlineSolution solution = MinimumVariation.Solve(
            new(488, new(104, 282), new(190, 236), new(356, 368))
        );
        Outline outline =
            solution.Outline ?? throw new InvalidOperationException("The Heron has no outline.");
        Polyline edge = Offset.Of(outline.Closed, 12).Paths[0].ToPolyline(0.002);
        return Region.Of(edge.Points, edge.ErrorMm).BeyondX(startMm);
    }
}
