using Formwright.Trace.Aligning;

namespace Formwright.Trace;

/// <summary>What a maker says about a trace.</summary>
public sealed record TraceOptions
{
    /// <summary>How far the fair curve's segments may leave the fair curve, mm.</summary>
    public double ToleranceMm { get; init; } = 0.05;

    /// <summary>Lowest bump that is told, mm; the noise floor may be higher.</summary>
    public double SmallestBumpMm { get; init; } = 0.05;

    /// <summary>Which side the fair outline follows.</summary>
    public SideChoice Sides { get; init; } = SideChoice.Averaged;

    /// <summary>The centreline, where the maker knows it; otherwise it is found.</summary>
    public Centreline? Centreline { get; init; }

    /// <summary>Where the heel lies in the drawing.</summary>
    public HeelSide Heel { get; init; } = HeelSide.Auto;

    /// <summary>The drawing shows the instrument from behind (or lies face down): it is turned over.</summary>
    public bool IsSeenFromBehind { get; init; }

    /// <summary>A length that sets the scale; null to believe the file.</summary>
    public KnownLength? Known { get; init; }

    /// <summary>mm in one unit of the file, whatever it says itself; null to believe it.</summary>
    public double? MmPerUnit { get; init; }

    /// <summary>Ends no farther apart than this are joined, mm.</summary>
    public double JoinGapMm { get; init; } = 1;

    /// <summary>Only curves on this layer (DXF) or with this id (SVG); null for all.</summary>
    public string? Layer { get; init; }

    /// <summary>Refuses what only a mistake in the calling code can bring.</summary>
    internal void Check()
    {
        Positive(ToleranceMm, nameof(ToleranceMm));
        Positive(SmallestBumpMm, nameof(SmallestBumpMm));
        Positive(JoinGapMm, nameof(JoinGapMm));
        Positive(MmPerUnit ?? 1, nameof(MmPerUnit));
        if (Centreline is { } line && !(line.From.DistanceTo(line.To) > 0))
        {
            throw new ArgumentException(
                "A centreline needs two different places.",
                nameof(Centreline)
            );
        }

        static void Positive(double value, string name)
        {
            if (!(double.IsFinite(value) && value > 0))
            {
                throw new ArgumentOutOfRangeException(
                    name,
                    value,
                    "A finite number above 0 is needed."
                );
            }
        }
    }
}
