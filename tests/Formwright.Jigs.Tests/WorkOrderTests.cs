using System.Globalization;
using CsCheck;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Steps;
using Formwright.Testing;
using QuikGraph;
using QuikGraph.Algorithms;
using Xunit;

namespace Formwright.Jigs.Tests;

public sealed class WorkOrderTests
{
    public static TheoryData<string, ReliefMethod> Boards()
    {
        TheoryData<string, ReliefMethod> boards = [];
        foreach (string model in Examples.Models)
        {
            foreach (ReliefMethod method in Enum.GetValues<ReliefMethod>())
            {
                boards.Add(model, method);
            }
        }

        return boards;
    }

    [Theory]
    [MemberData(nameof(Boards))]
    public void Each_step_stands_after_all_that_it_needs(string model, ReliefMethod method)
    {
        WorkOrder order = Order(model, method);
        // The general graph library knows nothing of the order, only who needs whom.
        AdjacencyGraph<Step, Edge<Step>> graph = Graph(order);
        Assert.True(graph.IsDirectedAcyclicGraph());
        Assert.Equal(order.Steps.Count, graph.VertexCount);
        Assert.All(
            graph.Edges,
            edge => Assert.True(order.NumberOf(edge.Source) < order.NumberOf(edge.Target))
        );
        Assert.Equal(order.Steps.Count, graph.TopologicalSort().Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Boards))]
    public void The_longest_wait_is_that_of_the_longest_path(string model, ReliefMethod method)
    {
        WorkOrder order = Order(model, method);
        BidirectionalGraph<Step, Edge<Step>> graph = new();
        graph.AddVertexRange(order.Steps);
        graph.AddEdgeRange(
            order.Steps.SelectMany(step => step.Needs.Select(need => new Edge<Step>(need, step)))
        );
        Dictionary<Step, double> ready = [];
        foreach (Step step in graph.TopologicalSort())
        {
            ready[step] =
                graph.InEdges(step).Select(edge => ready[edge.Source]).DefaultIfEmpty(0).Max()
                + (step.Wait?.Hours ?? 0);
        }

        Assert.Equal(ready.Values.Max(), order.LongestWaitHours);
        Assert.True(order.LongestWaitHours >= 72);
    }

    [Theory]
    [MemberData(nameof(Boards))]
    public void The_order_of_the_trade_is_kept(string model, ReliefMethod method)
    {
        WorkOrder order = Order(model, method);
        foreach (
            (string first, string then) in new[]
            {
                ("half-template", "layers-rough"),
                ("half-template", "bottom-layer"),
                ("rebate", "dowel-holes"),
                ("rebate", "dowels"),
                ("dowels", "bolt-holes"),
                ("ramp", "gap-check"),
                ("gap-check", "board-seal"),
                ("mould-fit", "use-check"),
                ("use-check", "use-soundboard"),
                ("spine-fit", "board-flat"),
                ("feet", "ramp"),
                ("full-template", "jig-set"),
                ("jig-slots", "jig-set"),
                ("jig-set", "use-jig"),
            }
        )
        {
            Assert.True(Reaches(Find(order, then), Find(order, first)), $"{then} without {first}");
        }
    }

    [Fact]
    public void Each_relief_method_has_its_own_steps()
    {
        Assert.Contains("relief-carve", Ids(ReliefMethod.Carved));
        Assert.DoesNotContain("overlay-glue", Ids(ReliefMethod.Carved));
        Assert.Contains("overlay-glue", Ids(ReliefMethod.CorkOverlay));
        Assert.DoesNotContain("relief-carve", Ids(ReliefMethod.CorkOverlay));

        static IEnumerable<string> Ids(ReliefMethod method) =>
            Order("heron", method).Steps.Select(step => step.Id);
    }

    [Fact]
    public void What_can_be_done_meanwhile_needs_nothing_that_lies()
    {
        foreach (ReliefMethod method in Enum.GetValues<ReliefMethod>())
        {
            WorkOrder order = Order("heron", method);
            foreach (Step step in order.Steps.Where(step => step.Wait is not null))
            {
                Assert.All(
                    order.Meanwhile(step),
                    later =>
                    {
                        Assert.False(Reaches(later, step));
                        Assert.True(order.NumberOf(later) > order.NumberOf(step));
                    }
                );
            }
        }
    }

    [Fact]
    public void A_step_can_t_be_changed_to_need_itself()
    {
        List<Step> needs = [];
        Step step = new("ramp", WorkPiece.Workboard, needs);
        needs.Add(step);
        Assert.Empty(step.Needs);
        Assert.Null(typeof(Step).GetProperty(nameof(Step.Needs))!.SetMethod);
        Assert.Throws<ArgumentException>(() => new Step("ramp", WorkPiece.Workboard, [null!]));
    }

    [Fact]
    public void Whatever_is_built_can_be_ordered() =>
        Gen.Int[0, 1000]
            .Array[1, 25]
            .Holds(picks =>
            {
                List<Step> made = [];
                for (int i = 0; i < picks.Length; i++)
                {
                    Step[] needs =
                    [
                        .. made.Where((_, k) => ((picks[i] * (k + 3)) + picks[k]) % 4 == 0),
                    ];
                    made.Add(new Step($"s{i}", WorkPiece.Mould, needs));
                }

                WorkOrder order = WorkOrder.To(made.Where((_, i) => i % 3 == 0).Reverse());
                Assert.All(
                    order.Steps,
                    step =>
                        Assert.All(
                            step.Needs,
                            need => Assert.True(order.NumberOf(need) < order.NumberOf(step))
                        )
                );
                Assert.True(Graph(order).IsDirectedAcyclicGraph());
            });

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void No_figure_is_typed_into_a_step(string language)
    {
        CultureInfo culture =
            language == "en" ? CultureInfo.InvariantCulture : CultureInfo.GetCultureInfo("es");
        foreach (
            string key in JigsWords
                .Of.Keys(culture)
                .Where(key =>
                    key.StartsWith("step.", StringComparison.Ordinal)
                    || key.StartsWith("gate.", StringComparison.Ordinal)
                    || key.StartsWith("wait.", StringComparison.Ordinal)
                )
        )
        {
            CultureInfo before = CultureInfo.CurrentUICulture;
            try
            {
                CultureInfo.CurrentUICulture = culture;
                string bare = System.Text.RegularExpressions.Regex.Replace(
                    JigsWords.Of[key],
                    @"\{[^}]*\}",
                    ""
                );
                Assert.DoesNotContain(bare, char.IsAsciiDigit);
            }
            finally
            {
                CultureInfo.CurrentUICulture = before;
            }
        }
    }

    [Fact]
    public void A_gate_follows_the_design()
    {
        InstrumentDesign design = Examples.Design("heron");
        Guitar deeper = Examples.Build(
            design with
            {
                Mould = design.Mould with { Rebate = design.Mould.Rebate with { DepthMm = 2.2 } },
            }
        );
        Gate gate = Find(WorkOrder.Of(deeper, Tooling.Of(deeper)), "rebate").Gates[0];
        Assert.Equal("mould.rebate.depth", gate.Figure.Reference);
        Assert.Equal(2.2, gate.Figure.Value);
    }

    private static WorkOrder Order(string model, ReliefMethod method)
    {
        InstrumentDesign design = Examples.Design(model);
        Guitar guitar = Examples.Build(
            design with
            {
                Workboard = design.Workboard with { Relief = method },
                Jig = design.Jig with { Make = true },
            }
        );
        return WorkOrder.Of(guitar, Tooling.Of(guitar));
    }

    private static Step Find(WorkOrder order, string id) =>
        order.Steps.Single(step => step.Id == id);

    private static bool Reaches(Step from, Step to) =>
        from.Needs.Any(need => need == to || Reaches(need, to));

    private static AdjacencyGraph<Step, Edge<Step>> Graph(WorkOrder order)
    {
        AdjacencyGraph<Step, Edge<Step>> graph = new();
        graph.AddVertexRange(order.Steps);
        // An edge to a step outside the order would be refused.
        Assert.Equal(
            order.Steps.Sum(step => step.Needs.Length),
            graph.AddEdgeRange(
                order.Steps.SelectMany(step =>
                    step.Needs.Select(need => new Edge<Step>(need, step))
                )
            )
        );
        return graph;
    }
}
