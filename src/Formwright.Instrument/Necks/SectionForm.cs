using Formwright.Design.Sections;
using MathNet.Numerics;

namespace Formwright.Instrument.Necks;

/// <summary>
/// Area and moments of a neck's section about its flat face, for width b and thickness t: area = A b t, first moment = S b t², second moment = J b t³.
/// </summary>
/// <remarks>
/// The back is half a superellipse |2y/b|ⁿ + (z/t)ⁿ = 1, so that ∫zᵐ dA = b tᵐ⁺¹ (1/n) Beta((m+1)/n, 1 + 1/n) (closed form). n = 2 is half an
/// ellipse: π/4, 1/3, π/16. A rectangle is n → ∞: 1, 1/2, 1/3.
/// </remarks>
/// <param name="A">Area coefficient.</param>
/// <param name="S">First moment's coefficient.</param>
/// <param name="J">Second moment's coefficient.</param>
public readonly record struct SectionForm(double A, double S, double J)
{
    private static readonly SectionForm Round = Superellipse(2);
    private static readonly SectionForm Full = Superellipse(3);
    private static readonly SectionForm Square = new(1, 1.0 / 2, 1.0 / 3);

    /// <summary>The form of a shape.</summary>
    public static SectionForm Of(NeckShape shape) =>
        shape switch
        {
            NeckShape.Round => Round,
            NeckShape.Full => Full,
            _ => Square,
        };

    private static SectionForm Superellipse(double n)
    {
        double Moment(int m) => SpecialFunctions.Beta((m + 1) / n, 1 + (1 / n)) / n;
        return new(Moment(0), Moment(1), Moment(2));
    }
}
