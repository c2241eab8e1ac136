namespace Formwright.Instrument.Tolerances;

/// <summary>A model given as a plain function of its inputs, one set at a time.</summary>
/// <param name="inputs">The inputs.</param>
/// <param name="function">The function; it must be free of side effects.</param>
public sealed class FunctionModel(
    IReadOnlyList<UncertainInput> inputs,
    Func<double[], double> function
) : IBatchModel
{
    public IReadOnlyList<UncertainInput> Inputs { get; } = inputs;

    public int OutputCount => 1;

    public void Evaluate(ReadOnlySpan<double> inputs, Span<double> outputs, int stride, int count)
    {
        double[] set = new double[Inputs.Count];
        for (int n = 0; n < count; n++)
        {
            for (int i = 0; i < set.Length; i++)
            {
                set[i] = inputs[(i * stride) + n];
            }

            outputs[n] = function(set);
        }
    }
}
