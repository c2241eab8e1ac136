namespace Formwright.Findings;

/// <summary>A rule that a design breaks or nearly breaks, with the figures.</summary>
public sealed record Finding(
    Rule Rule,
    double Measured,
    double Limit,
    string Field,
    Place? Place,
    IReadOnlyList<object?> More
)
{
    public string Code => Rule.Code;

    public Severity Severity => Rule.Severity;

    /// <summary>One sentence that says what is wrong, in the reader's language.</summary>
    public string Message => Rule.Words.Format($"{Code}.message", Arguments);

    /// <summary>What to change.</summary>
    public string Cure => Rule.Words.Format($"{Code}.cure", Arguments);

    /// <summary>Where the limit comes from.</summary>
    public string Source => Rule.Words.Format($"{Code}.source", Arguments);

    private object?[] Arguments => [Measured, Limit, .. More];
}
