using Formwright.Instrument;

namespace Formwright.Jigs.Steps;

/// <summary>All steps in an order in which each stands after what it needs.</summary>
public sealed class WorkOrder
{
    private readonly Dictionary<Step, int> numbers;

    private WorkOrder(IReadOnlyList<Step> steps)
    {
        Steps = steps;
        numbers = steps
            .Select((step, i) => (step, i))
            .ToDictionary(each => each.step, each => each.i + 1);
    }

    /// <summary>The steps.</summary>
    public IReadOnlyList<Step> Steps { get; }

    /// <summary>Hours of the longest chain of waits from the first step to the last: sooner it can't be done, whoever works.</summary>
    public double LongestWaitHours
    {
        get
        {
            Dictionary<Step, double> ready = [];
            foreach (Step step in Steps)
            {
                ready[step] =
                    step.Needs.Select(need => ready[need]).DefaultIfEmpty(0).Max()
                    + (step.Wait?.Hours ?? 0);
            }

            return ready.Values.DefaultIfEmpty(0).Max();
        }
    }

    /// <summary>The order that leads to some last steps: whatever they need, and what that needs, comes along.</summary>
    /// <param name="last">The last steps.</param>
    public static WorkOrder To(params IEnumerable<Step> last)
    {
        ArgumentNullException.ThrowIfNull(last);
        List<Step> steps = [];
        HashSet<Step> seen = [];
        foreach (Step step in last)
        {
            Add(step);
        }

        return new WorkOrder(steps);

        void Add(Step step)
        {
            if (seen.Add(step))
            {
                foreach (Step need in step.Needs)
                {
                    Add(need);
                }

                steps.Add(step);
            }
        }
    }

    /// <summary>The order of work for a guitar's tooling.</summary>
    /// <param name="guitar">The guitar.</param>
    /// <param name="tooling">Its tooling.</param>
    public static WorkOrder Of(Guitar guitar, Tooling tooling)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(tooling);
        GateFigures figures = new(guitar, tooling);
        TemplateSteps templates = TemplateSteps.Of(figures);
        BoardSteps board = BoardSteps.Of(tooling, figures, templates);
        MouldSteps? mould =
            tooling.Mould.Parts.Count > 0 ? MouldSteps.Of(guitar, figures, templates, board) : null;
        UseSteps use = UseSteps.Of(figures, board, mould);
        Step[] jig = tooling.Jig is { } plan ? [JigSteps.Of(plan, templates, board).Last] : [];
        return To([templates.Full, board.Sealed, use.Last, .. jig]);
    }

    /// <summary>Number of a step, from 1.</summary>
    /// <exception cref="KeyNotFoundException">A step of another order.</exception>
    public int NumberOf(Step step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return numbers[step];
    }

    /// <summary>What can be done while a step lies: later steps that it is not needed for and whose own needs are all done by then.</summary>
    public IReadOnlyList<Step> Meanwhile(Step step)
    {
        int number = NumberOf(step);
        return
        [
            .. Steps.Skip(number).Where(later => later.Needs.All(need => NumberOf(need) < number)),
        ];
    }
}
