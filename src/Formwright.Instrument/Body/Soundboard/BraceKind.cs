namespace Formwright.Instrument.Body.Soundboard;

/// <summary>What a brace of the soundboard is.</summary>
public enum BraceKind
{
    HarmonicBar,
    Fan,
    ClosingBar,
    Own,
}
