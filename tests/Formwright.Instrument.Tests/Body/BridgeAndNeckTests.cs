using Formwright.Curves;
using Formwright.Instrument.Body;
using Formwright.Instrument.Bridges;
using Formwright.Instrument.NeckBlanks;
using Xunit;

namespace Formwright.Instrument.Tests.Body;

public sealed class BridgeAndNeckTests
{
    [Fact]
    public void TheBridgeStandsAtTheSaddle()
    {
        BodyPlan plan = Demo.Plan();
        // Scale 650, saddle 5 mm ahead of the bridge's middle, 28 mm wide.
        Assert.Equal(650 + 5 - 325, plan.Bridge.Middle.X, 1e-9);
        Assert.Equal(9, plan.Bridge.SlotMiddleMm, 1e-9);
        Assert.Equal(9 + 11, plan.Bridge.TieHoleFromFrontMm, 1e-9);
        Assert.Equal(5.5, plan.Bridge.SlotDepthMm, 1e-9);
        Assert.Equal(
            [-29, -17.4, -5.8, 5.8, 17.4, 29],
            plan.Bridge.Strings.Select(s => s.YMm),
            Near
        );
        // Its underside is the dome's section: hollow by what the dome rises over its ends.
        double middle = plan.Guitar.Dome.Field.HeightAt(plan.Bridge.Middle);
        double wing = plan.Guitar.Dome.Field.HeightAt(plan.Bridge.Middle + new Vector(0, 94));
        Assert.Equal(middle - wing, plan.Bridge.Across.MostMm, 0.01);
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-9;

    // A slanting saddle: set back more on the bass side, the slot slants by the angle of its places.
    [Fact]
    public void ASlantingSaddleSlantsItsSlot()
    {
        Guitar guitar = Demo.Guitar();
        double[] saddle = [652, 651.6, 651.2, 650.8, 650.4, 650];
        BodyPlan plan = BodyPlan.Of(guitar, saddle);
        Assert.Equal(Math.Atan(2 / 58.0) * 180 / Math.PI, plan.Bridge.SlotSlopeDeg, 1e-9);
        Assert.Equal(651 + 5 - 325, plan.Bridge.Middle.X, 1e-9);
    }

    [Fact]
    public void TheCaulIsNotchedWhereBracesPass()
    {
        BodyPlan plan = Demo.Plan();
        string[] under = [.. plan.BridgeCaul.Notches.Select(notch => notch.Brace)];
        Assert.Equal(7, under.Distinct().Count());
        foreach (CaulNotch notch in plan.BridgeCaul.Notches)
        {
            Assert.Equal(6.5 + 1, notch.WidthMm, 1e-9);
            Assert.InRange(notch.To.X - notch.From.X, 20, 34);
        }
    }

    [Fact]
    public void NutSlotsLieAsTheStringsDo()
    {
        NutPlan nut = Demo.Plan().Nut;
        Assert.Equal(52, nut.LengthMm);
        Assert.Equal(6, nut.Slots.Count);
        Assert.Equal((52 - 43) / 2.0, nut.Slots[0].FromBassEdgeMm, 1e-9);
        Assert.All(nut.Slots, slot => Assert.True(slot.TopMm > slot.BottomMm));
        // The top holds every string.
        foreach (NutSlot slot in nut.Slots)
        {
            double top =
                nut.HeightBassMm
                + ((nut.HeightTrebleMm - nut.HeightBassMm) * slot.FromBassEdgeMm / nut.LengthMm);
            Assert.True(top >= slot.TopMm - 1e-9);
        }
    }

    [Fact]
    public void TheBlankHoldsTheNeck()
    {
        BodyPlan plan = Demo.Plan();
        NeckBlank blank = plan.Neck;
        // Scarf of a board t thick at 15°: face t/sin, run t/tan.
        Assert.Equal(blank.BoardThicknessMm / Math.Sin(15 * Math.PI / 180), blank.ScarfMm, 1e-9);
        Assert.Equal(190 * Math.Sin(15 * Math.PI / 180), blank.HeadDropMm, 1e-9);
        Assert.Equal(325 + 42, blank.ShaftMm, 1e-9);
        Assert.Equal(plan.Ribs.Points[^1].HeightMm + 2.5, blank.HeelHeightMm, 1e-9);
        double stack = (blank.HeelHeightMm - blank.BoardThicknessMm) / 22;
        Assert.Equal((int)Math.Ceiling(stack), blank.StackPieces);
        HeelSlot slot = blank.Slot!;
        Assert.Equal(24, slot.BetweenMm, 1e-9);
        Assert.Equal(3.5, slot.WidthFrontMm, 1e-9);
        Assert.Equal(6, slot.WidthBackMm, 1e-9);
        Assert.Equal(2.5 / slot.HeightMm, Math.Tan(slot.WedgeTaperDeg * Math.PI / 180), 1e-12);
    }

    [Fact]
    public void DowelsReplaceTheSlots()
    {
        NeckBlank blank = Demo.Plan(more: "[heel]\nmethod = \"dowels\"").Neck;
        Assert.Null(blank.Slot);
        Assert.Equal(3, blank.DowelHeightsMm.Count);
        Assert.Equal(325, blank.ShaftMm, 1e-9);
        Assert.Equal(0, blank.SoundboardStepMm);
    }

    // The side view is one simple polygon that holds every corner once.
    [Theory]
    [InlineData("")]
    [InlineData("[heel]\nmethod = \"dowels\"")]
    [InlineData("[head]\nangle = 0\nveneer = 0")]
    public void TheSideViewIsASimplePolygon(string more)
    {
        NeckBlank blank = Demo.Plan(more: more).Neck;
        Fields.Region region = Fields.Region.Of(blank.Side);
        Assert.True(region.AreaMm2 > 5000);
    }
}
