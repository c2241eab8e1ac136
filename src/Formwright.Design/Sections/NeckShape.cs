namespace Formwright.Design.Sections;

/// <summary>Section of the neck under the fingerboard.</summary>
public enum NeckShape
{
    /// <summary>Half an ellipse.</summary>
    Round,

    /// <summary>Fuller than half an ellipse: half a superellipse of exponent 3.</summary>
    Full,

    /// <summary>A rectangle, as the blank is before it is carved.</summary>
    Square,
}
