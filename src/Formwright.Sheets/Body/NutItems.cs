using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument.Bridges;

namespace Formwright.Sheets.Body;

/// <summary>The nut seen from the fingerboard: y across, height over its foot up.</summary>
internal static class NutItems
{
    /// <summary>The nut, its slots and its dimensions; bass at the left.</summary>
    public static IEnumerable<Item> Of(NutPlan nut)
    {
        double half = nut.LengthMm / 2;
        yield return new Region(
            Shape.Polyline(
                [
                    new Point(-half, 0),
                    new Point(half, 0),
                    new Point(half, nut.HeightTrebleMm),
                    new Point(-half, nut.HeightBassMm),
                ],
                closed: true
            )
        )
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        foreach (NutSlot slot in nut.Slots)
        {
            double r = slot.WidthMm / 2;
            double top =
                nut.HeightBassMm
                + ((nut.HeightTrebleMm - nut.HeightBassMm) * (slot.YMm + half) / nut.LengthMm);
            yield return new Region(
                Shape.Polyline(
                    [
                        new Point(slot.YMm - r, top),
                        new Point(slot.YMm - r, slot.BottomMm + r),
                        new Point(slot.YMm, slot.BottomMm),
                        new Point(slot.YMm + r, slot.BottomMm + r),
                        new Point(slot.YMm + r, top),
                    ],
                    closed: true
                )
            )
            {
                Fill = Tone.Paper,
                Edge = LineStyle.Detail,
            };
        }

        yield return new LinearDimension(new Point(-half, 0), new Point(half, 0), Side.Below, 8);
        yield return new LinearDimension(
            new Point(-half, 0),
            new Point(-half, nut.HeightBassMm),
            Side.Left,
            8
        );
        yield return new LinearDimension(
            new Point(half, 0),
            new Point(half, nut.HeightTrebleMm),
            Side.Right,
            8
        );
        foreach (Item word in Sides(half - 1, nut.HeightTrebleMm / 2))
        {
            yield return word;
        }
    }

    /// <summary>The words for the two sides, within a distance of the centreline: bass at the left, treble at the right.</summary>
    public static IEnumerable<Item> Sides(double halfMm, double heightMm)
    {
        yield return new Label(SheetsWords.Of["side.bass"], new Point(-halfMm, heightMm))
        {
            Rise = Rise.Middle,
        };
        yield return new Label(SheetsWords.Of["side.treble"], new Point(halfMm, heightMm))
        {
            Align = Align.Right,
            Rise = Rise.Middle,
        };
    }
}
