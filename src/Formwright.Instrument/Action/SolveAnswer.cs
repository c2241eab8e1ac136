namespace Formwright.Instrument.Action;

/// <summary>The answer to one question put to the chain.</summary>
/// <param name="Unknown">What was solved for.</param>
/// <param name="Figures">The figures that it sets; to be written into the design as <see cref="SolvedFigure.AfterMm"/>.</param>
/// <param name="IsPossible">Whether what is asked for can be made.</param>
/// <param name="Reason">Why not, in the reader's language; empty where it can.</param>
/// <param name="SaddleAskedMm">The saddle height that was held, middle of the outermost strings, mm.</param>
/// <param name="OnBoard">The new chain on the board, with the nearest figures where what is asked for can't be made.</param>
/// <param name="Strung">The new chain strung.</param>
/// <param name="Converged">Whether the search settled.</param>
public sealed record SolveAnswer(
    Unknown Unknown,
    IReadOnlyList<SolvedFigure> Figures,
    bool IsPossible,
    string Reason,
    double SaddleAskedMm,
    HeightChain OnBoard,
    HeightChain Strung,
    bool Converged
)
{
    /// <summary>By how much the figure must change, mm.</summary>
    public double ChangeMm => Figures.Count > 0 ? Figures[0].AskedMm - Figures[0].BeforeMm : 0;
}
