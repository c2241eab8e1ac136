using System.Globalization;
using System.Text;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Back;
using Formwright.Instrument.Body.Ribs;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Instrument.Wood;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Body;

/// <summary>The figures of the examples' bodies, looked at and approved.</summary>
public sealed class BodySummaryTests
{
    [Theory]
    [InlineData("heron")]
    [InlineData("dunlin")]
    [InlineData("plover")]
    public void FiguresAreAsApproved(string name)
    {
        BodyPlan plan = Demo.Plan(name);
        StringBuilder text = new();
        RibPlan ribs = plan.Ribs;
        Line(
            text,
            "rib",
            ribs.LengthMm,
            ribs.LeastHeightMm,
            ribs.MostHeightMm,
            ribs.BlankLengthMm,
            ribs.BlankWidthMm,
            ribs.MassG
        );
        foreach (RibStation station in ribs.Stations)
        {
            Line(
                text,
                $"  {station.Mark}",
                station.At.AlongMm,
                station.At.UMm,
                station.At.HeightMm,
                station.At.BackBevelDeg
            );
        }

        foreach (RibBend bend in ribs.Bends)
        {
            Line(
                text,
                bend.IsWaist ? "  waist" : "  bout",
                bend.FromMm,
                bend.ToMm,
                bend.TightestMm,
                bend.TurnDeg,
                bend.StrainPercent,
                bend.ThicknessThatBendsMm
            );
        }

        Line(
            text,
            "lining",
            ribs.Lining.FrontMm,
            ribs.Lining.BackMm,
            ribs.Lining.KerfStepMm,
            ribs.Lining.Kerfs
        );
        Line(
            text,
            "tail block",
            ribs.TailBlock.WidthMm,
            ribs.TailBlock.DropMm,
            ribs.TailBlock.HeightMiddleMm,
            ribs.TailBlock.HeightInsideMm
        );
        Line(
            text,
            "back",
            plan.Back.DeepestMm,
            plan.Back.DeepestAtMm,
            plan.Back.LongRiseMm,
            plan.Back.CrossRiseMm,
            plan.Back.VolumeL,
            plan.Back.MassG
        );
        foreach (BackBar bar in plan.Back.Bars)
        {
            Line(text, "  bar", bar.AtMm, bar.LengthMm, bar.Gauge.MostMm, bar.MassG);
        }

        Line(
            text,
            "soundboard",
            plan.Soundboard.AreaMm2,
            plan.Soundboard.MassG,
            plan.Soundboard.BraceMassG
        );
        foreach (Brace brace in plan.Soundboard.Braces)
        {
            Line(
                text,
                $"  {brace.Name}",
                brace.LengthMm,
                brace.Gauge.MostMm,
                brace.Gauge.MostAtMm,
                brace.BlankHeightMm,
                brace.MassG
            );
        }

        Line(
            text,
            "bridge",
            plan.Bridge.Middle.X,
            plan.Bridge.Across.MostMm,
            plan.Bridge.Along.MostMm,
            plan.Bridge.WoodAheadMm,
            plan.Bridge.MassG
        );
        Line(text, "nut", plan.Nut.HeightBassMm, plan.Nut.HeightTrebleMm);
        Line(
            text,
            "neck",
            plan.Neck.BoardLengthMm,
            plan.Neck.BoardThicknessMm,
            plan.Neck.ScarfMm,
            plan.Neck.StackPieces,
            plan.Neck.HeelHeightMm
        );
        Line(text, "glue at", plan.Wood.BestGluePercent, plan.Wood.DampestGluePercent);
        foreach (BarArch bar in plan.Wood.SoundboardBars.Concat(plan.Wood.BackBars))
        {
            Line(
                text,
                $"  {bar.Name}",
                bar.Arch.ShareMm,
                bar.Dry.RiseMm,
                bar.Glued.RiseMm,
                bar.Wet.RiseMm,
                bar.Dry.PlatePullMPa
            );
        }

        foreach (PartMovement part in plan.Wood.Movements)
        {
            Line(text, $"  {part.Part}", part.DimensionMm, part.DryMm, part.WetMm);
        }

        foreach (var finding in plan.Findings)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"{finding.Severity} {finding.Code}: {finding.Message}\n"
            );
        }

        Approved.Check("Formwright.Instrument.Tests", $"body-{name}.txt", text.ToString());
    }

    private static void Line(StringBuilder text, string name, params double[] values)
    {
        text.Append(name);
        foreach (double value in values)
        {
            text.Append(CultureInfo.InvariantCulture, $" {value:0.###}");
        }

        text.Append('\n');
    }
}
