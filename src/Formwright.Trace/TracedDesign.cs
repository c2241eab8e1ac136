using System.Globalization;
using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;

namespace Formwright.Trace;

/// <summary>Makes a design of a traced outline.</summary>
public static class TracedDesign
{
    /// <summary>Most pieces that a design file takes.</summary>
    public const int MostPieces = 63;

    /// <summary>The invented model whose body is nearest in length: the rest of a new design starts from it.</summary>
    public static string NearestModel(double bodyLengthMm) =>
        DesignModels.Names.MinBy(name =>
            Math.Abs(
                DesignText.Parse(DesignModels.TextOf(name), name).Design!.Outline.BodyLengthMm
                    - bodyLengthMm
            )
        )!;

    /// <summary>
    /// A design's text with the traced outline in place of its own. Where the fairest curve through the features meets the trace within
    /// the tolerance, the features are all that is written; otherwise the run of the curve stands beside them.
    /// </summary>
    /// <param name="text">The text of a design.</param>
    /// <param name="trace">A trace that has two bouts and a waist.</param>
    /// <exception cref="ArgumentException">The trace has no bouts and waist, or too many pieces.</exception>
    public static string Text(string text, TraceResult trace)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(trace);
        if (!CanBeWritten(trace))
        {
            throw new ArgumentException("A design needs two bouts and a waist.", nameof(trace));
        }

        OutlineDesign outline = Outline(trace);
        text = DesignEdit.Set(text, "outline.body_length", Number(outline.BodyLengthMm));
        text = Flat(text, "outline.heel_flat", outline.HeelFlatMm);
        text = Flat(text, "outline.tail_flat", outline.TailFlatMm);
        text = Bout(text, "outline.upper_bout", outline.UpperBout);
        text = Bout(text, "outline.waist", outline.Waist);
        text = Bout(text, "outline.lower_bout", outline.LowerBout);
        if (outline.Curve is { } curve)
        {
            text = DesignEdit.Set(text, "outline.curve.lengths", List(curve.LengthsMm, "0.###"));
            text = DesignEdit.Set(text, "outline.curve.bends", List(curve.BendsPerM, "0.#####"));
        }

        return text;
    }

    /// <summary>Whether a trace has what a design needs.</summary>
    public static bool CanBeWritten(TraceResult trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        return trace.Features.IsGuitar && trace.Fair.Half.Segments.Length <= MostPieces;
    }

    /// <summary>The outline's section of a design.</summary>
    /// <exception cref="ArgumentException">The trace has no bouts and waist.</exception>
    public static OutlineDesign Outline(TraceResult trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        if (trace.Plain is { } plain)
        {
            return new OutlineDesign(
                Rounded(plain.BodyLengthMm),
                Rounded(plain.HeelFlatMm),
                Rounded(plain.TailFlatMm),
                Bout(plain.UpperBout),
                Bout(plain.Waist),
                Bout(plain.LowerBout)
            );
        }

        TracedFeatures features = trace.Features;
        if (features is not { UpperBout: { } upper, Waist: { } waist, LowerBout: { } lower })
        {
            throw new ArgumentException("A design needs two bouts and a waist.", nameof(trace));
        }

        CurvaturePlot plot = CurvaturePlot.Of(trace.Fair);
        return new OutlineDesign(
            Rounded(features.BodyLengthMm),
            Rounded(features.HeelFlatMm),
            Rounded(features.TailFlatMm),
            Bout(upper),
            Bout(waist),
            Bout(lower),
            new OutlineCurveDesign(
                [.. plot.LengthsMm.Select(length => Math.Round(length, 3))],
                [.. plot.Curvatures.Select(kappa => Math.Round(-1000 * kappa, 5) + 0.0)]
            )
        );
    }

    private static BoutDesign Bout(TracedFeature feature) =>
        new(Rounded(feature.UMm), Rounded(feature.WidthMm), null);

    private static BoutDesign Bout(OutlineStation station) =>
        new(
            Rounded(station.UMm),
            Rounded(station.WidthMm),
            station.RadiusMm is { } radius ? Rounded(radius) : null
        );

    private static string Flat(string text, string key, double width) =>
        width > 0 ? DesignEdit.Set(text, key, Number(width)) : DesignEdit.Remove(text, key);

    private static string Bout(string text, string key, BoutDesign bout)
    {
        text = DesignEdit.Set(text, $"{key}.at", Number(bout.AtMm));
        text = DesignEdit.Set(text, $"{key}.width", Number(bout.WidthMm));
        return bout.RadiusMm is { } radius
            ? DesignEdit.Set(text, $"{key}.radius", Number(radius))
            : DesignEdit.Remove(text, $"{key}.radius");
    }

    private static string List(IReadOnlyList<double> values, string format) =>
        $"[{string.Join(", ", values.Select(value => value.ToString(format, CultureInfo.InvariantCulture)))}]";

    private static double Rounded(double mm) => Math.Round(mm, 2);

    private static string Number(double mm) => mm.ToString("0.##", CultureInfo.InvariantCulture);
}
