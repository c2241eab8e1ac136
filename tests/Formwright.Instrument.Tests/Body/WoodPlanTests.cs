using Formwright.Instrument.Body;
using Formwright.Instrument.Wood;
using Xunit;

namespace Formwright.Instrument.Tests.Body;

public sealed class WoodPlanTests
{
    [Fact]
    public void HeronInItsAir()
    {
        WoodPlan wood = Demo.Plan().Wood;
        Assert.Equal(3, wood.BackBars.Count);
        Assert.Equal(2, wood.SoundboardBars.Count);
        foreach (BarArch bar in wood.BackBars)
        {
            Assert.True(bar.Dry.RiseMm < bar.Glued.RiseMm && bar.Glued.RiseMm < bar.Wet.RiseMm);
            Assert.Equal(4000, bar.Glued.RadiusMm, 1e-3);
            Assert.Equal(0, bar.Glued.PlatePullMPa, 1e-9);
        }

        // The shop's own line of the humidity sheet moves nothing.
        HumidityRow shop = wood.Humidity.Single(row => row.HumidityPercent == 45);
        Assert.Equal(0, shop.SoundboardMm, 1e-12);
        Assert.True(wood.GluePercent <= wood.BestGluePercent);
        Assert.InRange(wood.BestGluePercent, 30, 65);
    }

    // Eq. 13-2 with the coefficient of Engelmann spruce, computed apart: 368 mm, C .00129959, from 45 to 65 % at 20 °C.
    [Fact]
    public void SoundboardMovesByEquation132()
    {
        WoodPlan wood = Demo.Plan().Wood;
        double change =
            368 * 0.00129959 * (Moisture.Equilibrium(20, 65) - Moisture.Equilibrium(20, 45));
        Assert.Equal(
            change,
            wood.Movements.Single(part => part.Part == "soundboard-width").WetMm,
            1e-4
        );
    }

    // An average board needs the design's own thickness; a stiffer one less, a softer one more.
    [Fact]
    public void AnAverageBoardNeedsTheDesignsThickness()
    {
        BodyPlan plan = Demo.Plan();
        Assert.Equal(2.5, plan.Wood.Thickness.ForLongMm, 1e-9);
        Assert.Equal(2.5, plan.Wood.Thickness.ForCrossMm, 1e-9);
        Assert.Equal(2.5, plan.Wood.Thickness.ForMassMm, 1e-9);
        BodyPlan stiff = Demo.Plan(more: "[wood.soundboard]\nmodulus_long = 13");
        Assert.Equal(2.5 * Math.Cbrt(1.1 * 8.9 / 13), stiff.Wood.Thickness.ForLongMm, 0.02);
    }

    [Fact]
    public void ABoardTestGoesAllTheWayToAThickness()
    {
        BodyPlan plan = Demo.Plan(
            more: """
            [board_test]
            length = 550
            width = 205
            thickness = 4.1
            mass = 186
            bend_span = 450
            bend_load = 500
            bend_deflection = 0.75
            tap_long = 70
            tap_cross = 134
            tap_twist = 47
            """
        );
        Assert.True(plan.Board.Tap!.Converged);
        Assert.True(plan.Board.Timber.LongMeasured && plan.Board.Timber.ShearMeasured);
        Assert.InRange(plan.Wood.Thickness.ForBothMm, 1.5, 4);
        Assert.InRange(plan.Board.LongUncertaintyShare!.Value, 0.01, 0.06);
    }
}
