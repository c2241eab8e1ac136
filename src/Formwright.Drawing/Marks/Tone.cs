namespace Formwright.Drawing;

/// <summary>What a mark is coloured with. Paper and screen choose the actual colour.</summary>
public enum Tone
{
    /// <summary>Black on paper.</summary>
    Ink,

    /// <summary>Contours, guides and hatching: a dark grey line, never a text below 2.5 mm.</summary>
    SecondInk,

    /// <summary>A light flat fill for wood.</summary>
    Wood,

    /// <summary>The sheet itself: clears the ground under a figure.</summary>
    Paper,
}
