namespace Formwright.Design.Sections;

/// <summary>Which hand frets. It swaps the strings, never the frame (bass and treble sides of the wood stay).</summary>
public enum Hand
{
    Right,
    Left,
}
