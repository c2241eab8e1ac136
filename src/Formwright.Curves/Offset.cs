using Formwright.Curves.Offsetting;

namespace Formwright.Curves;

/// <summary>Curves at a constant distance from a chain.</summary>
/// <remarks>
/// Exact normals; a regular offset has curvature κ/(1 - κd). Trimming after Liu et al. (2007, doi 10.1016/j.compind.2006.06.002): raw
/// offset, intersect with itself, cut at the crossings, discard the slices that are nearer than d to the source, stitch the rest by the
/// identity of the crossings. Pieces where the radius is smaller than the offset (κd ≥ 1) are known beforehand and left out. Corners of
/// the source are rounded on their outer side.
/// The work is bounded; <see cref="OffsetValidator"/> checks the result independently.
/// </remarks>
public static class Offset
{
    /// <summary>The trimmed offset of a chain: every place of it is at the distance from the chain and none is nearer.</summary>
    /// <param name="source">
    /// Open, or closed and then without crossing itself. An open one gets no caps: its offset is that of its own normals, less what comes
    /// too near to any part of it on either side.
    /// </param>
    /// <param name="distanceMm">To the left of the chain's direction when positive, to the right when negative, mm; not 0.</param>
    /// <exception cref="ArgumentException">The distance is 0 or not a number.</exception>
    public static OffsetResult Of(Chain source, double distanceMm)
    {
        ArgumentNullException.ThrowIfNull(source);
        Guard.Finite(distanceMm);
        if (distanceMm == 0)
        {
            throw new ArgumentOutOfRangeException(
                nameof(distanceMm),
                "An offset of 0 is the curve itself."
            );
        }

        return new Trimming(source, RawOffset.Of(source, distanceMm), distanceMm).Run();
    }
}
