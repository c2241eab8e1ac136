namespace Formwright.Drawing;

/// <summary>What is done along a contour or at a hole. Each has a layer of its own in a cut file.</summary>
public enum CutOperation
{
    /// <summary>Right through, the part lies inside.</summary>
    OutsideCut,

    /// <summary>Right through, the part lies outside.</summary>
    InsideCut,

    /// <summary>A recess of a depth.</summary>
    Pocket,

    /// <summary>A hole, by a drill.</summary>
    Drill,

    /// <summary>A scribed line or a text.</summary>
    Engrave,
}
