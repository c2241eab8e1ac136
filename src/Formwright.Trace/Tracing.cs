using Formwright.Trace.Aligning;
using Formwright.Trace.Files;
using Formwright.Trace.Joining;

namespace Formwright.Trace;

/// <summary>From a trace file to a fair outline and its bumps.</summary>
public static class Tracing
{
    /// <summary>When a first scale is off by more than this share the trace is run once more.</summary>
    private const double ScaleShare = 1e-5;

    /// <summary>Reads a file's bytes and makes its trace fair: all in one, for whoever has a file in hand.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="name">Its name, for diagnostics; its kind is told by its beginning.</param>
    /// <param name="options">What the maker says about it.</param>
    /// <returns>The result, or the diagnostics that say why there is none.</returns>
    /// <exception cref="ArgumentException">An option is not finite or not above 0.</exception>
    public static TraceOutcome Run(ReadOnlyMemory<byte> bytes, string name, TraceOptions options)
    {
        TraceReading reading = TraceReader.Read(bytes, name);
        return reading.Succeeded
            ? Run(reading.File, options)
            : new TraceOutcome(null, reading.Diagnostics);
    }

    /// <summary>Makes a trace fair.</summary>
    /// <param name="file">A file that was read.</param>
    /// <param name="options">What the maker says about it.</param>
    /// <returns>The result, or one diagnostic that says why there is none.</returns>
    /// <exception cref="ArgumentException">An option is not finite or not above 0.</exception>
    public static TraceOutcome Run(TraceFile file, TraceOptions options)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(options);
        options.Check();
        try
        {
            return new TraceOutcome(Scaled(file, options), []);
        }
        catch (TraceFault fault)
        {
            return new TraceOutcome(null, [fault.Diagnostic]);
        }
    }

    private static TraceResult Scaled(TraceFile file, TraceOptions options)
    {
        double unit = options.MmPerUnit is { } mm ? mm / file.Unit.MmPerUnit : 1;
        if (options.Known is not { } known)
        {
            return Once(file, options, unit) with { ScaleFactor = 1 };
        }

        // A first scale from the raw extent, so that sampling and tolerances are of the right size, then from the fair outline.
        double factor = unit * RawFactor(file, options, known);
        TraceResult result = Once(file, options, factor);
        double correction = known.LengthMm / LengthOf(result.Fair, known.What);
        if (Math.Abs(correction - 1) > ScaleShare)
        {
            factor *= correction;
            result = Once(file, options, factor);
        }

        // What is left is far below the tolerance: the outline alone is brought to the length.
        double rest = known.LengthMm / LengthOf(result.Fair, known.What);
        return result.Scaled(rest) with { ScaleFactor = factor * rest / unit };
    }

    private static TraceResult Once(TraceFile file, TraceOptions options, double factor) =>
        new HalfFairing(file, options, Align(file, options, factor)).Run();

    private static AlignedTrace Align(TraceFile file, TraceOptions options, double factor)
    {
        Geometry.Affine scale = Geometry.Affine.Scale(factor, factor);
        List<TracedCurve> curves =
        [
            .. file
                .Curves.Where(curve =>
                    options.Layer is null
                    || string.Equals(curve.Name, options.Layer, StringComparison.OrdinalIgnoreCase)
                )
                .Select(curve => factor == 1 ? curve : curve.Under(scale)),
        ];
        if (curves.Count == 0)
        {
            string names = string.Join(
                ", ",
                file.Curves.Select(c => $"'{c.Name}'").Distinct().Take(12)
            );
            throw new TraceFault(file.Name, 1, 1, "fault.no-layer", options.Layer, names);
        }

        Sampler sampler = new(file.Name);
        Aligner aligner = new(file.Name, options);
        if (file.Layout == TraceLayout.BothHalfWidths)
        {
            return aligner.OfBoth(Sampled(curves[0], sampler), Sampled(curves[1], sampler));
        }

        IReadOnlyList<TracedCurve> joined = CurveJoiner.Join(curves, options.JoinGapMm);
        Trail trail =
            OutlineChoice.Of(joined, sampler)
            ?? throw new TraceFault(
                file.Name,
                curves[0].Line,
                curves[0].Column,
                "fault.no-outline"
            );
        return aligner.Of(Sampler.WithLinesFilled(trail), file.Layout);
    }

    private static Trail Sampled(TracedCurve curve, Sampler sampler) =>
        sampler.Of(curve.Pieces, curve.IsClosed, curve.Name, curve.Line, curve.Column);

    /// <summary>By what a file must be scaled for a known length, from the extent of its points.</summary>
    private static double RawFactor(TraceFile file, TraceOptions options, KnownLength known)
    {
        AlignedTrace raw = Align(file, options, SamplingFactor(file));
        double sampled = SamplingFactor(file);
        double measured =
            known.What == KnownLengthKind.BodyLength
                ? Ends(raw).Max(p => p.X) - Ends(raw).Min(p => p.X)
                : Widest(raw.Treble, raw.Bass);
        return measured > 0 ? sampled * known.LengthMm / measured : 1;
    }

    /// <summary>A file in unknown units may be a thousandth or a thousand times as large; for sampling it is brought to the size of a body.</summary>
    private static double SamplingFactor(TraceFile file)
    {
        Curves.Box box = Curves.Box.Empty;
        foreach (Geometry.Piece piece in file.Curves.SelectMany(curve => curve.Pieces))
        {
            box = box.With(piece.Start).With(piece.At(0.5)).With(piece.End);
        }

        double size = box.Min.DistanceTo(box.Max);
        return size > 0 ? 600 / size : 1;
    }

    private static IEnumerable<Curves.Point> Ends(AlignedTrace trace) =>
        (trace.Treble ?? []).Concat(trace.Bass ?? []);

    private static double Widest(Curves.Point[]? treble, Curves.Point[]? bass) =>
        (treble ?? bass!).Max(p => p.Y) + (bass ?? treble!).Max(p => p.Y);

    private static double LengthOf(Curves.Outline fair, KnownLengthKind what) =>
        what == KnownLengthKind.BodyLength ? fair.BodyLengthMm : 2 * fair.Half.Box.Max.Y;
}
