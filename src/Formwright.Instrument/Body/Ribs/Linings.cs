using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Body.Ribs;

/// <summary>Linings along the inside of a rib, from block to block.</summary>
internal static class Linings
{
    internal static LiningPlan Of(InstrumentDesign design, RibGeometry rib)
    {
        RibsDesign ribs = design.Ribs;
        double t = ribs.ThicknessMm;
        double width = ribs.LiningWidthMm;
        double inside = t + (width / 2);
        bool hasBlock = design.Heel.Method == HeelMethod.Dowels;
        double heel = rib.WhereAcross(
            (hasBlock ? design.Blocks.HeelWidthMm : design.Heel.WidthMm) / 2,
            inside,
            nearTail: false
        );
        double tail = rib.WhereAcross(design.Blocks.TailWidthMm / 2, inside, nearTail: true);
        double front = rib.MiddleLength(tail, inside) - rib.MiddleLength(heel, inside);
        double back = BackLength(rib, heel, tail, inside);
        double outer = rib.Outline.Half.TightestRight is { } tight
            ? tight.Curve.RadiusMm
            : double.PositiveInfinity;
        double face = outer - t;
        double step = KerfStep(face, width, ribs.KerfMm, ribs.KerfWebMm);
        bool isBlocks = width > 0 && ribs.Lining == LiningKind.GlueBlocks;
        double longer = isBlocks ? back : Math.Max(front, back);
        return new LiningPlan(
            front,
            back,
            face,
            width <= 0 ? 0 : 100 * (width / 2) / (face - (width / 2)),
            step,
            double.IsFinite(step) && step > 0 ? (int)Math.Floor(longer / step) : 0,
            isBlocks
                ? (int)
                    Math.Floor(
                        (front + ribs.GlueBlockGapMm) / (ribs.GlueBlockMm + ribs.GlueBlockGapMm)
                    )
                : 0,
            isBlocks && double.IsFinite(face) && ribs.GlueBlockMm < 2 * face
                ? Sagitta.OfRadius(face, ribs.GlueBlockMm)
                : 0
        );
    }

    /// <summary>
    /// Distance of kerfs, mm, with which they just close on the inside of a bend. A kerf k wide and d deep closes when the lining turns by
    /// 2 atan(k/2d); what stays whole is the web against the rib, whose middle bends at its own radius, so a step turns by step/R.
    /// </summary>
    /// <param name="faceRadiusMm">Radius of the lining's face against the rib, mm.</param>
    /// <param name="widthMm">Width of the lining, square to the rib, mm.</param>
    /// <param name="kerfMm">Width of the kerf, mm.</param>
    /// <param name="webMm">Wood that it leaves, mm.</param>
    internal static double KerfStep(
        double faceRadiusMm,
        double widthMm,
        double kerfMm,
        double webMm
    )
    {
        double deep = widthMm - webMm;
        return deep <= 0 || !double.IsFinite(faceRadiusMm)
            ? double.PositiveInfinity
            : (faceRadiusMm - (webMm / 2)) * 2 * Math.Atan(kerfMm / (2 * deep));
    }

    // Length on the slope of the back: ∫ √(ds² + dD²), by chords of at most 3 mm.
    private static double BackLength(RibGeometry rib, double from, double to, double inside)
    {
        int steps = Math.Max(4, (int)Math.Ceiling((to - from) / RibMaker.StepMm));
        double sum = 0;
        double beforeLength = rib.MiddleLength(from, inside);
        double beforeDepth = rib.Depth.HeightAt(rib.Inside(from, inside));
        for (int i = 1; i <= steps; i++)
        {
            double s = from + ((to - from) * i / steps);
            double length = rib.MiddleLength(s, inside);
            double depth = rib.Depth.HeightAt(rib.Inside(s, inside));
            double ds = length - beforeLength;
            double dz = depth - beforeDepth;
            sum += Math.Sqrt((ds * ds) + (dz * dz));
            (beforeLength, beforeDepth) = (length, depth);
        }

        return sum;
    }
}
