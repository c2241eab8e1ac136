using System.Diagnostics.CodeAnalysis;

namespace Formwright.Instrument.Boards;

/// <summary>What came of reading a WAV file.</summary>
public sealed record WavReading(Recording? Recording, WavFault Fault)
{
    [MemberNotNullWhen(true, nameof(Recording))]
    public bool Succeeded => Recording is not null;

    /// <summary>Why it failed, in the reader's language; empty when it did not.</summary>
    public string Message =>
        Fault == WavFault.None
            ? ""
            : InstrumentWords.Of[$"wav.{Design.Reading.Choices.NameOf(Fault)}"];
}
