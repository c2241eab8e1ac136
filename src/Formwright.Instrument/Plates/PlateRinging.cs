using Formwright.Design.Sections;
using Formwright.Fields.Plates;

namespace Formwright.Instrument.Plates;

/// <summary>The modes of a soundboard with its rim hinged and clamped.</summary>
/// <param name="Rim">How the rim is held for the many modes that are shown.</param>
/// <param name="Shown">These modes.</param>
/// <param name="Other">A few of the lowest with the rim held the other way.</param>
internal sealed record PlateRinging(RimSupport Rim, PlateModes Shown, PlateModes Other)
{
    /// <summary>How many modes are shown.</summary>
    internal const int Count = 20;

    /// <summary>Among how many the one that moves most air is looked for: the first, but for odd soundboards.</summary>
    internal const int Looked = 4;

    internal PlateModes Hinged => Rim == RimSupport.Hinged ? Shown : Other;

    internal PlateModes Clamped => Rim == RimSupport.Clamped ? Shown : Other;

    internal static PlateRinging? Of(PlateAnswers? answers, PlateRim rim)
    {
        if (answers is null)
        {
            return null;
        }

        bool isClamped = rim == PlateRim.Clamped;
        PlateModel shown = isClamped ? answers.ClampedModel : answers.HingedModel;
        PlateModel other = isClamped ? answers.HingedModel : answers.ClampedModel;
        return new PlateRinging(
            isClamped ? RimSupport.Clamped : RimSupport.Hinged,
            shown.Modes(Count),
            other.Modes(Looked)
        );
    }
}
