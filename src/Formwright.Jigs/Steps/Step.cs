using System.Collections.Immutable;

namespace Formwright.Jigs.Steps;

/// <summary>
/// One step of the work. It is made from the very steps that it needs, which therefore exist before it and can't change afterwards: a circle,
/// or a need for a step that there is not, can't be written down.
/// </summary>
public sealed class Step
{
    /// <param name="id">Its own name, a key of the resources: <c>rebate</c>.</param>
    /// <param name="piece">What is being made.</param>
    /// <param name="needs">What must be done before.</param>
    /// <exception cref="ArgumentException">No name, or a need that is null.</exception>
    public Step(string id, WorkPiece piece, params IEnumerable<Step> needs)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        ArgumentNullException.ThrowIfNull(needs);
        Id = id;
        Piece = piece;
        Needs = [.. needs];
        if (Needs.Contains(null!))
        {
            throw new ArgumentException("A step can't need nothing.", nameof(needs));
        }
    }

    /// <summary>Its own name.</summary>
    public string Id { get; }

    /// <summary>What is being made.</summary>
    public WorkPiece Piece { get; }

    /// <summary>What must be done before.</summary>
    public ImmutableArray<Step> Needs { get; }

    /// <summary>What it takes.</summary>
    public ImmutableArray<Tool> Tools { get; init; } = [];

    /// <summary>How long the work then lies before the next step; null where it need not.</summary>
    public Wait? Wait { get; init; }

    /// <summary>What must be measured before the next step.</summary>
    public ImmutableArray<Gate> Gates { get; init; } = [];

    /// <summary>What can hurt.</summary>
    public ImmutableArray<Care> Cares { get; init; } = [];

    /// <summary>What is done, in a few words, in the reader's language.</summary>
    public string Title => JigsWords.Of[$"step.{Id}"];

    /// <summary>How it is done.</summary>
    public string How => JigsWords.Of[$"step.{Id}.how"];
}
