namespace Formwright.Instrument.Tolerances;

/// <summary>
/// The law of propagation of uncertainty for independent inputs (JCGM 100:2008, GUM, 5.1.2, equation 10, and its note for the second-order terms).
/// Derivatives are central differences with steps of u, as its 5.1.3 note 2 allows.
/// </summary>
public static class Propagation
{
    // Step for inputs without spread, so that their sensitivity is known too, as a share of the value (tuned).
    private const double BareStep = 1e-4;

    /// <summary>The budget of one output.</summary>
    /// <param name="model">Any model.</param>
    /// <param name="output">Which of its outputs.</param>
    /// <param name="secondOrder">Whether to add the second-order terms; it takes some 4 n² evaluations.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such output.</exception>
    public static Budget Of(IBatchModel model, int output = 0, bool secondOrder = false)
    {
        ArgumentNullException.ThrowIfNull(model);
        return Of(model, [output], secondOrder)[0];
    }

    /// <summary>The budgets of several outputs from the same evaluations.</summary>
    public static IReadOnlyList<Budget> Of(
        IBatchModel model,
        IReadOnlyList<int> outputs,
        bool secondOrder = false
    )
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(outputs);
        foreach (int output in outputs)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(output);
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(output, model.OutputCount);
        }

        int n = model.Inputs.Count;
        double[] step = [.. model.Inputs.Select(StepOf)];
        Grid grid = new(model);
        int centre = grid.Add([]);
        (int Plus, int Minus)[] axis = new (int, int)[n];
        for (int i = 0; i < n; i++)
        {
            axis[i] = (grid.Add([(i, step[i])]), grid.Add([(i, -step[i])]));
        }

        int[,] corners = secondOrder ? AddCorners(grid, step) : new int[0, 0];
        grid.Evaluate();
        return
        [
            .. outputs.Select(output =>
                BudgetOf(model, grid, output, centre, axis, step, corners, secondOrder)
            ),
        ];
    }

    private static Budget BudgetOf(
        IBatchModel model,
        Grid grid,
        int output,
        int centre,
        (int Plus, int Minus)[] axis,
        double[] step,
        int[,] corners,
        bool secondOrder
    )
    {
        int n = axis.Length;
        double[] c = new double[n];
        double variance = 0;
        for (int i = 0; i < n; i++)
        {
            c[i] =
                (grid.Value(output, axis[i].Plus) - grid.Value(output, axis[i].Minus))
                / (2 * step[i]);
            double part = c[i] * model.Inputs[i].StandardUncertainty;
            variance += part * part;
        }

        double worst = 0;
        Contribution[] contributions = new Contribution[n];
        for (int i = 0; i < n; i++)
        {
            UncertainInput input = model.Inputs[i];
            double u = Math.Abs(c[i]) * input.StandardUncertainty;
            double plusMinus = Math.Abs(c[i]) * input.HalfWidth;
            worst += plusMinus;
            contributions[i] = new(input, c[i], u, plusMinus, variance > 0 ? u * u / variance : 0);
        }

        double? second = secondOrder
            ? Math.Sqrt(variance + NextTerms(model, grid, output, centre, axis, step, corners, c))
            : null;
        return new(grid.Value(output, centre), Math.Sqrt(variance), second, worst, contributions);
    }

    // Σ_i Σ_j [ ½ f_ij² + f_i f_ijj ] u_i² u_j²
    private static double NextTerms(
        IBatchModel model,
        Grid grid,
        int output,
        int centre,
        (int Plus, int Minus)[] axis,
        double[] step,
        int[,] corners,
        double[] c
    )
    {
        int n = axis.Length;
        double f0 = grid.Value(output, centre);
        double sum = 0;
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                double square = Square(
                    model.Inputs[i].StandardUncertainty * model.Inputs[j].StandardUncertainty
                );
                if (square == 0)
                {
                    continue;
                }

                double plusI = grid.Value(output, axis[i].Plus);
                double minusI = grid.Value(output, axis[i].Minus);
                if (i == j)
                {
                    double twoPlus = grid.Value(output, corners[i, 4 * i]);
                    double twoMinus = grid.Value(output, corners[i, (4 * i) + 1]);
                    double fii = (plusI - (2 * f0) + minusI) / Square(step[i]);
                    double fiii =
                        (twoPlus - (2 * plusI) + (2 * minusI) - twoMinus)
                        / (2 * step[i] * Square(step[i]));
                    sum += ((0.5 * fii * fii) + (c[i] * fiii)) * square;
                    continue;
                }

                double pp = grid.Value(output, corners[i, 4 * j]);
                double pm = grid.Value(output, corners[i, (4 * j) + 1]);
                double mp = grid.Value(output, corners[i, (4 * j) + 2]);
                double mm = grid.Value(output, corners[i, (4 * j) + 3]);
                double fij = (pp - pm - mp + mm) / (4 * step[i] * step[j]);
                double fijj =
                    (pp - (2 * plusI) + pm - (mp - (2 * minusI) + mm))
                    / (2 * step[i] * Square(step[j]));
                sum += ((0.5 * fij * fij) + (c[i] * fijj)) * square;
            }
        }

        return sum;
    }

    private static int[,] AddCorners(Grid grid, double[] step)
    {
        int n = step.Length;
        int[,] corners = new int[n, 4 * n];
        for (int i = 0; i < n; i++)
        {
            corners[i, 4 * i] = grid.Add([(i, 2 * step[i])]);
            corners[i, (4 * i) + 1] = grid.Add([(i, -2 * step[i])]);
            for (int j = i + 1; j < n; j++)
            {
                corners[i, 4 * j] = grid.Add([(i, step[i]), (j, step[j])]);
                corners[i, (4 * j) + 1] = grid.Add([(i, step[i]), (j, -step[j])]);
                corners[i, (4 * j) + 2] = grid.Add([(i, -step[i]), (j, step[j])]);
                corners[i, (4 * j) + 3] = grid.Add([(i, -step[i]), (j, -step[j])]);
                corners[j, 4 * i] = corners[i, 4 * j];
                corners[j, (4 * i) + 1] = corners[i, (4 * j) + 2];
                corners[j, (4 * i) + 2] = corners[i, (4 * j) + 1];
                corners[j, (4 * i) + 3] = corners[i, (4 * j) + 3];
            }
        }

        return corners;
    }

    private static double StepOf(UncertainInput input) =>
        input.StandardUncertainty > 0
            ? input.StandardUncertainty
            : BareStep * Math.Max(1, Math.Abs(input.Value));

    private static double Square(double value) => value * value;

    /// <summary>The places at which the model is evaluated, all in one batch.</summary>
    private sealed class Grid(IBatchModel model)
    {
        private readonly List<(int Input, double Step)[]> places = [];
        private double[] outputs = [];
        private int stride;

        public int Add((int Input, double Step)[] moves)
        {
            places.Add(moves);
            return places.Count - 1;
        }

        public void Evaluate()
        {
            stride = (places.Count + 3) / 4 * 4;
            double[] inputs = new double[model.Inputs.Count * stride];
            for (int i = 0; i < model.Inputs.Count; i++)
            {
                inputs.AsSpan(i * stride, stride).Fill(model.Inputs[i].Value);
            }

            for (int n = 0; n < places.Count; n++)
            {
                foreach ((int input, double move) in places[n])
                {
                    inputs[(input * stride) + n] += move;
                }
            }

            outputs = new double[model.OutputCount * stride];
            model.Evaluate(inputs, outputs, stride, places.Count);
        }

        public double Value(int output, int place) => outputs[(output * stride) + place];
    }
}
