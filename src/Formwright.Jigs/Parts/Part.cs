using Formwright.Curves;

namespace Formwright.Jigs.Parts;

/// <summary>
/// One flat part as it is cut, in the workboard frame (x from the nut towards the tail, y_b towards the bass side, seen from above).
/// </summary>
/// <param name="Id">Id of the part in pack and cut list: <c>mould-bottom-treble</c>.</param>
/// <param name="Material">What it is cut from: a key of the resources, <c>material.plywood</c>.</param>
/// <param name="ThicknessMm">Thickness of the stock, mm.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Outside">Outer edge, closed.</param>
/// <param name="Insides">Edges of openings, closed.</param>
/// <param name="Pockets">Steps and hollows of even depth.</param>
/// <param name="Holes">Drilled holes.</param>
/// <param name="Marks">Lines to scribe and short words to write.</param>
public sealed record Part(
    string Id,
    string Material,
    double ThicknessMm,
    int Quantity,
    ArcPath Outside,
    IReadOnlyList<ArcPath> Insides,
    IReadOnlyList<Pocket> Pockets,
    IReadOnlyList<Hole> Holes,
    IReadOnlyList<Mark> Marks
)
{
    /// <summary>How it lies to the grain.</summary>
    public PartGrain Grain { get; init; }

    /// <summary>Cut from the face that lies on the board: its cut file and its place on a sheet show it from below.</summary>
    public bool IsTurnedOver => Pockets.Any(pocket => pocket.FromBelow);

    /// <summary>Name of the part in the reader's language.</summary>
    public string Name
    {
        get
        {
            string number = string.Concat(Id.Where(char.IsAsciiDigit));
            string word = string.Concat(Id.Where(letter => !char.IsAsciiDigit(letter)));
            return JigsWords.Of.Format($"part.{word}", number);
        }
    }

    /// <summary>Largest distance of any edge from the exact curve, mm.</summary>
    public double ErrorMm =>
        Insides
            .Concat(Pockets.Select(pocket => pocket.Edge))
            .Append(Outside)
            .Max(path => path.ErrorMm);
}
