namespace Formwright.Trace;

/// <summary>Lengths of an outline that a maker is likely to know.</summary>
public enum KnownLengthKind
{
    /// <summary>Heel to tail along the centreline.</summary>
    BodyLength,

    /// <summary>The widest place.</summary>
    LargestWidth,
}
