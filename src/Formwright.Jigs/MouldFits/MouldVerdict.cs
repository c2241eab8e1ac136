namespace Formwright.Jigs.MouldFits;

/// <summary>Whether an existing mould serves another design.</summary>
public enum MouldVerdict
{
    Fits,
    FitsWithChanges,
    DoesNotFit,
}
