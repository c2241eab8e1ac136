namespace Formwright.Design.Sections;

/// <summary>Section of a fan brace.</summary>
public enum BraceSection
{
    /// <summary>A rectangle.</summary>
    Square,

    /// <summary>Its upper half is half an ellipse.</summary>
    Round,

    /// <summary>Its upper half is a gable.</summary>
    Gable,
}
