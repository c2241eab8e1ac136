namespace Formwright.Curves.Offsetting;

/// <summary>A place where a strand is crossed.</summary>
/// <param name="Strand">Which strand.</param>
/// <param name="Span">Which of its spans.</param>
/// <param name="T">Parameter on the span.</param>
/// <param name="Crossing">Number of the crossing, shared by the two strands; -1 for a natural end of a strand.</param>
internal readonly record struct Cut(int Strand, int Span, double T, int Crossing)
{
    internal bool IsAfter(Cut other) => Span > other.Span || (Span == other.Span && T > other.T);
}
