namespace Formwright.Curves;

/// <summary>Curves at a constant distance from a chain.</summary>
public static class Offset
{
    /// <summary>The trimmed offset of a chain: every place of it is at the distance from the chain and none is nearer.</summary>
    /// <param name="source">Open or closed.</param>
    /// <param name="distanceMm">To the left of the chain's direction when positive, to the right when negative, mm.</param>
    public static OffsetResult Of(Chain source, double distanceMm) =>
        throw new NotImplementedException();
}
