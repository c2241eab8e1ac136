using System.Diagnostics.CodeAnalysis;
using Formwright.Design.Reading;

namespace Formwright.Design;

/// <summary>What came of reading a design: the design, or everything that is wrong with the text.</summary>
/// <param name="Design">The design, null when there is any diagnostic.</param>
/// <param name="Diagnostics">All faults, in the order of the file.</param>
/// <param name="Text">The text that was read, for edits that keep its comments; empty if the file could not be read.</param>
public sealed record DesignReading(
    InstrumentDesign? Design,
    IReadOnlyList<Diagnostic> Diagnostics,
    string Text
)
{
    /// <summary>Whether a design came out.</summary>
    [MemberNotNullWhen(true, nameof(Design))]
    public bool Succeeded => Design is not null;
}
