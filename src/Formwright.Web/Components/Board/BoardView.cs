using System.Text.RegularExpressions;
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
public sealed partial record BoardView(DesignSession Session, SessionState State, Reader Reader)
{
    private static readonly Dictionary<string, KeySpec> Specs = DesignText
        .Keys()
        .ToDictionary(spec => spec.Path, StringComparer.Ordinal);

    /// <summary>The last design that read well.</summary>
    public InstrumentDesign Design => State.Design!;

    /// <summary>All keys, in the order of the file.</summary>
    public static IEnumerable<KeySpec> AllSpecs => Specs.Values;

    /// <summary>What a key takes, be it one of a list (<c>back.bars[2].at</c>) or not.</summary>
    public static KeySpec Spec(string path) => Specs[Index().Replace(path, "[]")];

    /// <summary>What a key came to, given or by default; null where the design leaves it open.</summary>
    public object? ValueOf(string path) => State.Good?.Values.GetValueOrDefault(path);

    /// <summary>The length that the design has for a key, mm; null where it is left open.</summary>
    public double? LengthOf(string path) => ValueOf(path) as double?;

    /// <summary>Whether the file gives a key.</summary>
    public bool IsSet(string path) => State.Good?.Places.ContainsKey(path) == true;

    /// <summary>The keys that a spec has in this design: itself, or one for each entry of its lists.</summary>
    public IEnumerable<string> PathsOf(KeySpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        int mark = spec.Path.IndexOf("[]", StringComparison.Ordinal);
        if (mark < 0)
        {
            yield return spec.Path;
            yield break;
        }

        for (int i = 0; ; i++)
        {
            string path = $"{spec.Path[..mark]}[{i}]{spec.Path[(mark + 2)..]}";
            if (State.Good?.Values.ContainsKey(path) != true)
            {
                yield break;
            }

            yield return path;
        }
    }

    /// <summary>Takes a value as TOML, null to leave the key open.</summary>
    /// <returns>What is wrong with it, or null.</returns>
    public string? Set(string path, string? toml)
    {
        IReadOnlyList<Diagnostic> faults = Session.Set(path, toml);
        return faults.Count > 0 ? faults[0].Message : null;
    }

    /// <summary>A sentence of the engine with its lengths in the reader's unit.</summary>
    public string Said(string text) => SaidLengths.Of(text, Reader);

    /// <summary>The findings of a stage with their numbers on the drawing.</summary>
    public IReadOnlyList<(int Number, Finding Finding)> FindingsOf(Stage stage) =>
        [
            .. (State.Study?.Findings ?? [])
                .Where(finding => Stage.Of(finding) == stage)
                .Select((finding, i) => (i + 1, finding)),
        ];

    /// <summary>How many findings of a stage want more than to be known.</summary>
    public int ToSeeTo(Stage stage) =>
        FindingsOf(stage).Count(pair => pair.Finding.Severity != Severity.Note);

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Index();
}
