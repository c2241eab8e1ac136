using System.ComponentModel;
using Formwright.Design.Reading;
using Formwright.Jigs;
using Formwright.Jigs.Steps;

namespace Formwright.Packs.Report;

/// <summary>A caution.</summary>
public sealed record CareReport(
    [property: Description("What can hurt, and what to do.")] string Text,
    [property: Description("Where it comes from.")] string Source
)
{
    internal static CareReport Of(Care care)
    {
        string key = $"care.{Choices.NameOf(care)}";
        return new CareReport(JigsWords.Of[key], JigsWords.Of[$"{key}.source"]);
    }
}
