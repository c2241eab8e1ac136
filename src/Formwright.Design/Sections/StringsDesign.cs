using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[strings]</c>: the set, how it is tuned and how it lies. Strings are listed from the bass side to the treble side of the set.</summary>
/// <param name="Set">Name of the built-in set; empty where the file lists its own strings.</param>
/// <param name="Strings">The strings from bass to treble, each with its note.</param>
/// <param name="A4Hz">Pitch standard: frequency of A4, Hz.</param>
/// <param name="SpacingNutMm">Outermost strings at the nut, centre to centre, mm.</param>
/// <param name="SpacingSaddleMm">Outermost strings at the saddle, centre to centre, mm.</param>
/// <param name="Layout">How the strings between are spread.</param>
/// <param name="EdgeMm">Least distance from the side of an outermost string to the fingerboard's edge, mm.</param>
public sealed record StringsDesign(
    string Set,
    IReadOnlyList<StringDesign> Strings,
    double A4Hz,
    double SpacingNutMm,
    double SpacingSaddleMm,
    StringLayout Layout,
    double EdgeMm
)
{
    internal static StringsDesign Read(TableReader table)
    {
        string name = table.Word("set", "normal", StringSets.Names);
        string tuning = table.Text("tuning", "E2 A2 D3 G3 B3 E4");
        IReadOnlyList<StringDesign> own = [.. table.Tables("string").Select(StringDesign.Read)];
        bool isOwn = table.Has("string");
        IReadOnlyList<StringDesign> set = own;
        if (!isOwn)
        {
            set = StringSets.Find(name)!;
        }
        else if (table.Has("set"))
        {
            table.Fault("set", DesignWords.Of["diagnostic.set-or-strings"]);
        }

        if (set.Count is < 2 or > 12)
        {
            table.Fault("string", DesignWords.Of["diagnostic.string-count"]);
        }

        return new(
            isOwn ? "" : name,
            Tuned(table, set, tuning),
            table.Number("a4", 440, 380, 480, "Hz"),
            table.Length("spacing_nut", 43, 10, 110),
            table.Length("spacing_saddle", 58, 10, 150),
            table.Choice("layout", StringLayout.EvenCentres),
            table.Length("edge", 3, 0, 15)
        );
    }

    private static IReadOnlyList<StringDesign> Tuned(
        TableReader table,
        IReadOnlyList<StringDesign> set,
        string tuning
    )
    {
        string[] names = tuning.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        List<NoteName> notes = [];
        foreach (string name in names)
        {
            if (NoteName.TryRead(name, out NoteName note))
            {
                notes.Add(note);
            }
            else
            {
                table.Fault("tuning", DesignWords.Of.Format("diagnostic.note", name));
                return set;
            }
        }

        // A string's own note goes before the tuning, except that a tuning that the file gives retunes a built-in set.
        bool given = table.Has("tuning") || set.Any(each => each.Note is null);
        if (!given)
        {
            return set;
        }

        if (notes.Count != set.Count)
        {
            table.Fault(
                "tuning",
                DesignWords.Of.Format("diagnostic.tuning-count", notes.Count, set.Count)
            );
            return set;
        }

        return
        [
            .. set.Select(
                (each, i) =>
                    each with
                    {
                        Note = table.Has("string") ? each.Note ?? notes[i] : notes[i],
                    }
            ),
        ];
    }
}
