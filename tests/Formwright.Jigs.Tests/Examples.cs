using Formwright.Design;
using Formwright.Instrument;
using Formwright.Testing;

namespace Formwright.Jigs.Tests;

/// <summary>The three examples, computed once; and variants of them.</summary>
internal static class Examples
{
    public static readonly string[] Models = ["heron", "dunlin", "plover"];

    public static InstrumentDesign Design(string model) =>
        DesignText.Load(Repository.PathOf("examples", $"{model}.toml")).Design!;

    public static Guitar Guitar(string model) => Build(Design(model));

    public static Guitar Build(InstrumentDesign design)
    {
        GuitarResult result = Instrument.Guitar.Build(design);
        return result.Guitar
            ?? throw new InvalidOperationException(
                string.Join("; ", result.Findings.Select(finding => finding.Message))
            );
    }
}
