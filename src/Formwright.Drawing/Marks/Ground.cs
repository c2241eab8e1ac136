using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Finds the fill that lies under a point.</summary>
internal static class Ground
{
    /// <summary>Tone of the last fill that holds the point by the even-odd rule; paper where none does.</summary>
    public static Tone ToneAt(IReadOnlyList<FillMark> fills, Point at)
    {
        for (int i = fills.Count - 1; i >= 0; i--)
        {
            if (fills[i].Loops.Count(loop => Winds(loop.Flatten(0.2), at)) % 2 == 1)
            {
                return fills[i].Tone;
            }
        }

        return Tone.Paper;
    }

    /// <summary>Whether a ray to the right of the point crosses the loop an odd number of times.</summary>
    private static bool Winds(IReadOnlyList<Point> loop, Point at)
    {
        bool inside = false;
        for (int i = 0, k = loop.Count - 1; i < loop.Count; k = i++)
        {
            Point a = loop[k];
            Point b = loop[i];
            if (a.Y > at.Y != b.Y > at.Y && at.X < a.X + ((at.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
