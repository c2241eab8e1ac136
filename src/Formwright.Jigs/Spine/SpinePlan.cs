using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Instrument.Wood;
using Formwright.Jigs.Mould;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Spine;

/// <summary>
/// The laminated beam under the workboard: its stiffness, its sag on its feet, and the warp of the ramp when the two faces of the board stand in
/// different air (<see cref="BoardSection"/>, summed along the board at its true width). The board is plywood.
/// </summary>
/// <param name="Design">What the design asks for.</param>
/// <param name="DepthMm">Depth of the spine below the board, mm.</param>
/// <param name="WidthMm">Its width across, mm.</param>
/// <param name="FromMm">Where it starts, from the nut, mm.</param>
/// <param name="ModulusMPa">Its modulus, MPa.</param>
/// <param name="NeckStiffnessNmm2">E I of board and spine under the neck, N·mm².</param>
/// <param name="BareStiffnessNmm2">E I under the neck without the spine, N·mm².</param>
/// <param name="WarpMm">What the design's air adds to the drop at the nut as the straight edge at tail and join reads it, mm.</param>
/// <param name="ByLayers">The same for every number of layers, from none on.</param>
/// <param name="LeastLayers">The fewest layers that keep the warp within the ramp's tolerance; null where the most that are tried do not.</param>
/// <param name="SagMm">Sag in the middle between the feet under the design's load, mm.</param>
/// <param name="TailSagMm">Sag of the tail under the same load there, mm.</param>
/// <param name="Feet">The feet.</param>
/// <param name="Parts">Layers and feet.</param>
/// <param name="Findings">What to see to.</param>
public sealed record SpinePlan(
    SpineDesign Design,
    double DepthMm,
    double WidthMm,
    double FromMm,
    double ModulusMPa,
    double NeckStiffnessNmm2,
    double BareStiffnessNmm2,
    double WarpMm,
    IReadOnlyList<LayersWarp> ByLayers,
    int? LeastLayers,
    double SagMm,
    double TailSagMm,
    BoardFeet Feet,
    IReadOnlyList<Part> Parts,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>Swelling of plywood in its plane, per % of relative humidity: 0.0002 per 10 % (APA, The Engineered Wood Association).</summary>
    public const double PlywoodPerPercentHumidity = 0.00002;

    /// <summary>
    /// Swelling of solid wood along the grain, per % of moisture: 0.1 to 0.2 % from green to oven-dry for most species, here their middle
    /// over 30 % (<i>Wood Handbook</i>, FPL-GTR-190, 2010, p. 4-5). Wood from near the pith moves far more.
    /// </summary>
    public const double AlongPerPercentMoisture = 0.0015 / 30;

    /// <summary>Most layers that are tried.</summary>
    public const int MostLayers = 12;

    /// <summary>Warp of the bare board, mm.</summary>
    public double BareWarpMm => ByLayers[0].WarpMm;

    /// <summary>The spine of a guitar's board.</summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="mould">Its mould, whose bolts spine and feet must not cover.</param>
    public static SpinePlan Of(Guitar guitar, MouldPlan mould)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(mould);
        WorkboardDesign board = guitar.Design.Workboard;
        SpineDesign spine = board.Spine;
        (double depth, double width) = Size(spine, spine.Layers);
        BoardFeet feet = BoardFeet.Of(guitar, mould, depth);
        BoardBeam beam = new(guitar, feet.SpineEndMm);
        BoardSection Section(double wide, bool stiffened) =>
            SectionOf(guitar, wide, stiffened ? spine.Layers : 0);
        LayersWarp[] byLayers = [.. ByLayersOf(guitar, beam)];
        SpinePlan plan = new(
            spine,
            depth,
            width,
            -board.BeyondNutMm,
            ModulusOf(spine),
            SectionOf(guitar, board.NeckWidthMm, spine.Layers).StiffnessNmm2,
            SectionOf(guitar, board.NeckWidthMm, 0).StiffnessNmm2,
            beam.DropMm(Section),
            byLayers,
            byLayers.FirstOrDefault(row => row.Holds)?.Layers,
            beam.SagMm(Section, feet.NeckMiddleMm, feet.TailMiddleMm, spine.LoadN),
            beam.TailSagMm(Section, feet.NeckMiddleMm, feet.TailMiddleMm, spine.LoadN),
            feet,
            [],
            []
        );
        return plan with
        {
            Parts = [.. PartsOf(plan)],
            Findings = [.. SpineRules.Of(guitar, mould, plan)],
        };
    }

    private static IEnumerable<LayersWarp> ByLayersOf(Guitar guitar, BoardBeam beam)
    {
        WorkboardDesign board = guitar.Design.Workboard;
        for (int layers = 0; layers <= MostLayers; layers++)
        {
            // Layers on edge that are wider than the neck part can't be built.
            if (layers > 0 && Size(board.Spine, layers).Width > board.NeckWidthMm)
            {
                yield break;
            }

            int count = layers;
            double warp = beam.DropMm((wide, at) => SectionOf(guitar, wide, at ? count : 0));
            yield return new LayersWarp(layers, warp, Math.Abs(warp) <= board.RampToleranceMm);
        }
    }

    private static BoardSection SectionOf(Guitar guitar, double boardWidthMm, int layers)
    {
        WorkboardDesign board = guitar.Design.Workboard;
        SpineDesign spine = board.Spine;
        (double depth, double width) = Size(spine, layers);
        double strain = SpineStrain(guitar.Design.Climate, spine);
        return BoardSection.Of(
            new BoardSection.Strip(
                boardWidthMm,
                board.ThicknessMm,
                1000 * spine.BoardModulusGPa,
                spine.TopChangePercent * PlywoodPerPercentHumidity,
                spine.BottomChangePercent * PlywoodPerPercentHumidity
            ),
            new BoardSection.Strip(
                Math.Min(width, boardWidthMm),
                depth,
                ModulusOf(spine),
                strain,
                strain
            )
        );
    }

    private static double SpineStrain(ClimateDesign climate, SpineDesign spine)
    {
        if (spine.Wood is null)
        {
            return spine.BottomChangePercent * PlywoodPerPercentHumidity;
        }

        double damp = Math.Clamp(climate.ShopPercent + spine.BottomChangePercent, 0, 100);
        return AlongPerPercentMoisture
            * (
                Moisture.Equilibrium(climate.TemperatureC, damp)
                - Moisture.Equilibrium(climate.TemperatureC, climate.ShopPercent)
            );
    }

    private static double ModulusOf(SpineDesign spine) =>
        1000 * spine.ModulusGPa
        ?? (
            spine.Wood is { } wood
                ? SpeciesTable.Of(wood).ModulusLongMPa
                : 1000 * SpineDesign.PlywoodGPa
        );

    private static (double Depth, double Width) Size(SpineDesign spine, int layers) =>
        layers == 0 ? (0, 0)
        : spine.Lie == LayersLie.OnEdge ? (spine.WidthMm, layers * spine.LayerThicknessMm)
        : (layers * spine.LayerThicknessMm, spine.WidthMm);

    private static IEnumerable<Part> PartsOf(SpinePlan plan)
    {
        SpineDesign spine = plan.Design;
        if (spine.Layers > 0)
        {
            yield return Plain(
                "spine-layer",
                spine.Wood is null ? "material.plywood" : "material.solid",
                spine.LayerThicknessMm,
                spine.Layers,
                (plan.FromMm, plan.Feet.SpineEndMm),
                spine.WidthMm
            );
        }

        yield return Plain(
            "foot",
            "material.block",
            plan.Feet.HeightMm,
            2,
            (plan.Feet.NeckMm, plan.Feet.NeckMm + plan.Feet.LengthMm),
            plan.Feet.WidthMm
        );
    }

    private static Part Plain(
        string id,
        string material,
        double thick,
        int quantity,
        (double From, double To) along,
        double wide
    ) =>
        new(
            id,
            material,
            thick,
            quantity,
            new ContourBuilder()
                .LineTo(new Point(along.From, -wide / 2))
                .LineTo(new Point(along.From, wide / 2))
                .LineTo(new Point(along.To, wide / 2))
                .LineTo(new Point(along.To, -wide / 2))
                .Close(),
            [],
            [],
            [],
            [new Mark("mark.centreline", new Point(along.From, 0), new Point(along.To, 0))]
        );
}
