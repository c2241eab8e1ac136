namespace Formwright.Jigs.MouldFits;

/// <summary>Something to change on an existing mould, or the reason why it can't be.</summary>
/// <param name="Key">What: a key among the words, <c>line</c> for <c>mould-fit.line</c>.</param>
/// <param name="AmountMm">How much, mm.</param>
/// <param name="LimitMm">How much the mould allows, mm.</param>
public sealed record MouldChange(string Key, double AmountMm, double LimitMm)
{
    /// <summary>Whether the mould allows it.</summary>
    public bool IsPossible => AmountMm <= LimitMm;

    /// <summary>One sentence in the reader's language.</summary>
    public string Text =>
        JigsWords.Of.Format(
            IsPossible ? $"mould-fit.{Key}" : $"mould-fit.{Key}-not",
            AmountMm,
            LimitMm
        );
}
