namespace Formwright.Instrument.Tolerances;

/// <summary>
/// A measurement model y = f(x), evaluated for many sets of inputs at once, so that it can be vectorised.
/// Everything in this folder (uncertainty, worst case, Monte Carlo) takes any such model.
/// </summary>
/// <remarks>Implementations are safe to call from several threads.</remarks>
public interface IBatchModel
{
    /// <summary>The inputs with their tolerances.</summary>
    IReadOnlyList<UncertainInput> Inputs { get; }

    /// <summary>How many figures the model gives.</summary>
    int OutputCount { get; }

    /// <summary>Evaluates <paramref name="count"/> sets. Input i of set n stands at <c>inputs[i * stride + n]</c>, output o at <c>outputs[o * stride + n]</c>.</summary>
    /// <param name="inputs">The sets, input by input.</param>
    /// <param name="outputs">Where the results go, output by output.</param>
    /// <param name="stride">Room for each input and output; a multiple of 4, so that places after <paramref name="count"/> may be written.</param>
    /// <param name="count">Number of sets.</param>
    void Evaluate(ReadOnlySpan<double> inputs, Span<double> outputs, int stride, int count);
}
