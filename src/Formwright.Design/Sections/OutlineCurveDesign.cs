using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>
/// <c>[outline.curve]</c>: the curve of a traced outline, as the run of its bend from heel to tail. The features of <c>[outline]</c> are met
/// exactly; this is the character that the outline keeps between them.
/// </summary>
/// <param name="LengthsMm">Length of each piece, mm.</param>
/// <param name="BendsPerM">Bend at the ends of the pieces, 1000 / radius in mm; positive on the bouts, negative in the waist, 0 straight.</param>
public sealed record OutlineCurveDesign(
    IReadOnlyList<double> LengthsMm,
    IReadOnlyList<double> BendsPerM
)
{
    internal static OutlineCurveDesign? Read(TableReader table)
    {
        OutlineCurveDesign curve = new(
            table.Lengths("lengths", [], 0.5, 3000),
            table.Numbers("bends", [], -200, 200, "1/m")
        );
        if (curve.LengthsMm.Count == 0 && curve.BendsPerM.Count == 0)
        {
            return null;
        }

        if (curve.BendsPerM.Count != curve.LengthsMm.Count + 1)
        {
            table.Fault(
                "bends",
                DesignWords.Of.Format(
                    "diagnostic.curve-counts",
                    curve.LengthsMm.Count,
                    curve.BendsPerM.Count
                )
            );
        }

        return curve;
    }

    /// <summary>Curves are the same when all their figures are.</summary>
    public bool Equals(OutlineCurveDesign? other) =>
        other is not null
        && LengthsMm.SequenceEqual(other.LengthsMm)
        && BendsPerM.SequenceEqual(other.BendsPerM);

    public override int GetHashCode()
    {
        HashCode hash = default;
        foreach (double each in LengthsMm.Concat(BendsPerM))
        {
            hash.Add(each);
        }

        return hash.ToHashCode();
    }
}
