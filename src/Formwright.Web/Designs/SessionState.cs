using Formwright.Curves;
using Formwright.Design;
using Formwright.Packs;

namespace Formwright.Web.Designs;

/// <summary>What is known of an open design at one moment.</summary>
/// <param name="Text">Its text.</param>
/// <param name="Reading">What came of reading the text: a design, or diagnostics.</param>
/// <param name="Good">The last text that read well; null where none has.</param>
/// <param name="Outline">Its outline, solved; null where no design has read well.</param>
/// <param name="Study">What was computed last; null before the first time.</param>
/// <param name="IsPending">Whether <paramref name="Study"/> is behind <see cref="Design"/>: on its way, unless <see cref="HasFailed"/>.</param>
/// <param name="SavedAt">When it was last kept on disk.</param>
/// <param name="IsSaved">Whether the text is on disk.</param>
/// <param name="SaveFault">Why it could not be kept, or null.</param>
/// <param name="Theirs">A text that someone else wrote to the file while this one was not kept yet; null where there is no clash.</param>
/// <param name="CanUndo">Whether there is something to undo.</param>
/// <param name="CanRedo">Whether there is something to redo.</param>
public sealed record SessionState(
    string Text,
    DesignReading Reading,
    DesignReading? Good,
    OutlineSolution? Outline,
    Study? Study,
    bool IsPending,
    DateTime SavedAt,
    bool IsSaved,
    string? SaveFault,
    string? Theirs,
    bool CanUndo,
    bool CanRedo
)
{
    /// <summary>Whether the design could not be computed, so that its study is not on its way.</summary>
    public bool HasFailed { get; init; }

    /// <summary>The gaps found on the workboard.</summary>
    public FoundGaps Gaps { get; init; } = FoundGaps.None;

    /// <summary>Another outline that lies over this one; null where there is none.</summary>
    public Overlay? Overlay { get; init; }

    /// <summary>The last design that read well; null where none has.</summary>
    public InstrumentDesign? Design => Good?.Design;
}
