using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Findings;
using Formwright.Web.Designs;
using Formwright.Web.Reading;

namespace Formwright.Web.Components.Board;

/// <summary>What the stages of one drawing board share: the design as it stands, and the way to change it.</summary>
/// <param name="Session">The open design.</param>
/// <param name="State">Its state at the time of drawing.</param>
/// <param name="Reader">The person at the page.</param>
public sealed record BoardView(DesignSession Session, SessionState State, Reader Reader)
{
    private static readonly Dictionary<string, KeySpec> Specs = DesignText
        .Keys()
        .ToDictionary(spec => spec.Path, StringComparer.Ordinal);

    /// <summary>The last design that read well.</summary>
    public InstrumentDesign Design => State.Design!;

    /// <summary>All keys, in the order of the file.</summary>
    public static IEnumerable<KeySpec> AllSpecs => Specs.Values;

    /// <summary>What a key takes.</summary>
    public static KeySpec Spec(string path) => Specs[path];

    /// <summary>The length that the design has for a key, mm; null where it is left open.</summary>
    public double? LengthOf(string path) => DesignValue.Of(Design, path) as double?;

    /// <summary>Whether the file gives a key.</summary>
    public bool IsSet(string path) => State.Reading.Places.ContainsKey(path);

    /// <summary>Takes a value as TOML, null to leave the key open.</summary>
    /// <returns>What is wrong with it, or null.</returns>
    public string? Set(string path, string? toml)
    {
        IReadOnlyList<Diagnostic> faults = Session.Set(path, toml);
        return faults.Count > 0 ? faults[0].Message : null;
    }

    /// <summary>The findings of a stage with their numbers on the drawing.</summary>
    public IReadOnlyList<(int Number, Finding Finding)> FindingsOf(Stage stage) =>
        [
            .. (State.Study?.Findings ?? [])
                .Where(finding => Stage.Of(finding) == stage)
                .Select((finding, i) => (i + 1, finding)),
        ];
}
