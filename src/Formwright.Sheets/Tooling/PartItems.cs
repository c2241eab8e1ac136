using Formwright.Drawing;
using Formwright.Jigs.Parts;
using Hole = Formwright.Jigs.Parts.Hole;
using Mark = Formwright.Jigs.Parts.Mark;

namespace Formwright.Sheets.Tooling;

/// <summary>A part as it is drawn: edges, pockets, holes, scribed marks.</summary>
internal static class PartItems
{
    /// <summary>Everything of a part but its dimensions.</summary>
    public static IEnumerable<Item> Of(Part part, bool withWords = true)
    {
        yield return new Region([Shape.Of(part.Outside), .. part.Insides.Select(Shape.Of)])
        {
            Edge = LineStyle.Outline,
            Key = part.Id,
        };
        foreach (Pocket pocket in part.Pockets)
        {
            yield return new Line(Shape.Of(pocket.Edge), LineStyle.Pocket);
        }

        foreach (Hole hole in part.Holes)
        {
            yield return new Drawing.Hole(hole.Centre, hole.DiameterMm);
        }

        foreach (Mark mark in part.Marks)
        {
            if (mark.From != mark.To)
            {
                bool centre = mark.Key == "mark.centreline";
                yield return new Line(
                    mark.From,
                    mark.To,
                    centre ? LineStyle.Centreline : LineStyle.Engrave
                );
            }
        }

        if (!withWords)
        {
            yield break;
        }

        foreach (Mark mark in part.Marks.Where(mark => mark.Key != "mark.centreline"))
        {
            yield return new Label(mark.Text, mark.To)
            {
                Align = Align.Centre,
                ShiftMm = new(0, 2),
                Clear = true,
            };
        }
    }
}
