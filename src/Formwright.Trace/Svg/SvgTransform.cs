using Formwright.Trace.Geometry;

namespace Formwright.Trace.Svg;

/// <summary>Reads the <c>transform</c> attribute: a list of matrix, translate, scale, rotate, skewX and skewY.</summary>
internal static class SvgTransform
{
    /// <summary>The map of a list, the last one working first; null when it can't be read.</summary>
    internal static Affine? Read(string text)
    {
        SvgNumbers at = new(text);
        Affine whole = Affine.Identity;
        Span<double> values = stackalloc double[6];
        at.SkipSpace();
        if (text.AsSpan().Trim() is "none")
        {
            return whole;
        }

        while (!at.IsAtEnd)
        {
            string name = at.TakeName().ToString();
            at.SkipSpace();
            if (!at.Take('('))
            {
                return null;
            }

            int count = 0;
            at.SkipSpace();
            while (!at.Take(')'))
            {
                if (count == 6 || !at.TryNumber(out values[count]))
                {
                    return null;
                }

                count++;
                at.SkipSpace();
            }

            if (One(name, values[..count]) is not { IsFinite: true } map)
            {
                return null;
            }

            whole = whole.After(map);
            at.SkipSeparator();
        }

        return whole.IsFinite ? whole : null;
    }

    private static Affine? One(string name, ReadOnlySpan<double> v) =>
        (name, v.Length) switch
        {
            ("matrix", 6) => new Affine(v[0], v[1], v[2], v[3], v[4], v[5]),
            ("translate", 1) => Affine.Move(v[0], 0),
            ("translate", 2) => Affine.Move(v[0], v[1]),
            ("scale", 1) => Affine.Scale(v[0], v[0]),
            ("scale", 2) => Affine.Scale(v[0], v[1]),
            ("rotate", 1) => Affine.Turn(v[0] * Math.PI / 180),
            ("rotate", 3) => Affine
                .Move(v[1], v[2])
                .After(Affine.Turn(v[0] * Math.PI / 180))
                .After(Affine.Move(-v[1], -v[2])),
            ("skewX", 1) => new Affine(1, 0, Math.Tan(v[0] * Math.PI / 180), 1, 0, 0),
            ("skewY", 1) => new Affine(1, Math.Tan(v[0] * Math.PI / 180), 0, 1, 0, 0),
            _ => null,
        };
}
