using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[instrument]</c>: what it is and for whom.</summary>
/// <param name="Name">Name of the model or instrument, on every sheet.</param>
/// <param name="Owner">Workshop that owns the drawings (title block).</param>
/// <param name="Number">The maker's own number or mark.</param>
/// <param name="Date">Date as the maker writes it; sheets never take the clock's, so that the same design gives the same bytes.</param>
/// <param name="Revision">Revision of the drawings.</param>
/// <param name="Hand">Which hand frets.</param>
/// <param name="ScaleMm">Scale length: nut to uncompensated saddle, mm.</param>
/// <param name="JoinFret">Fret at which neck meets body.</param>
/// <param name="Frets">Number of frets.</param>
public sealed record IdentityDesign(
    string Name,
    string Owner,
    string Number,
    string Date,
    string Revision,
    Hand Hand,
    double ScaleMm,
    int JoinFret,
    int Frets
)
{
    /// <summary>Distance from the nut to the join, L (1 - 2^(-k/12)), mm (equal temperament).</summary>
    public double JoinMm => ScaleMm * (1 - Math.Pow(2, -JoinFret / 12.0));

    internal static IdentityDesign Read(TableReader table) =>
        new(
            table.Text("name", "Untitled"),
            table.Text("owner", ""),
            table.Text("number", ""),
            table.Text("date", ""),
            table.Text("revision", "A"),
            table.Choice("hand", Hand.Right),
            table.Length("scale", null, 300, 800),
            table.Whole("join_fret", 12, 8, 16),
            table.Whole("frets", 19, 12, 24)
        );
}
