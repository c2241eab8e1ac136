using System.Collections.Immutable;

namespace Formwright.Jigs.Steps;

/// <summary>What must be measured, and pass, before the next step.</summary>
/// <param name="Key">What is measured: a key of the resources.</param>
/// <param name="Figure">The figure.</param>
/// <param name="Places">Words that its text takes beside the figure, such as the place on the board.</param>
public sealed record Gate(string Key, GateFigure Figure, ImmutableArray<string> Places)
{
    public Gate(string key, GateFigure figure)
        : this(key, figure, []) { }

    /// <summary>What to measure and what must come out, in the reader's language.</summary>
    public string Text
    {
        get
        {
            string text = JigsWords.Of.Format($"gate.{Key}", [Figure.Value, .. Places]);
            return Figure.Tolerance is { } tolerance
                ? JigsWords.Of.Format("gate.with-tolerance", text, tolerance, Figure.Unit)
                : JigsWords.Of.Format("gate.plain", text, Figure.Unit);
        }
    }
}
