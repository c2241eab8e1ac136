using Formwright.Curves;
using Formwright.Trace.Geometry;

namespace Formwright.Trace.Svg;

/// <summary>Reads the data of a path: all segment kinds of SVG 1.1 section 8.3, absolute and relative.</summary>
internal ref struct SvgPath
{
    private readonly List<(List<Piece> Pieces, bool IsClosed)> subpaths = [];
    private List<Piece> pieces = [];
    private SvgNumbers at;
    private Point start;
    private Point here;
    private Point lastControl;
    private char last;

    private SvgPath(ReadOnlySpan<char> data) => at = new SvgNumbers(data);

    /// <summary>The subpaths of some path data.</summary>
    /// <param name="data">The attribute <c>d</c>.</param>
    /// <param name="subpaths">One row of pieces for each move.</param>
    /// <returns>The character at which it can't be read, or -1 when all is well.</returns>
    internal static int Read(string data, out List<(List<Piece> Pieces, bool IsClosed)> subpaths)
    {
        SvgPath path = new(data);
        subpaths = path.subpaths;
        int fault = path.Run();
        path.Finish(isClosed: false);
        return fault;
    }

    private int Run()
    {
        at.SkipSpace();
        bool isFirst = true;
        while (!at.IsAtEnd)
        {
            int place = at.At;
            char command = at.TakeLetter();
            bool isKnown = "MmLlHhVvCcSsQqTtAaZz".Contains(command, StringComparison.Ordinal);
            if (!isKnown || (isFirst && command is not ('M' or 'm')))
            {
                return place;
            }

            isFirst = false;
            if (command is 'Z' or 'z')
            {
                Close();
                at.SkipSpace();
                continue;
            }

            do
            {
                if (!One(command))
                {
                    return at.At;
                }

                // Further pairs after a move are lines.
                command = command switch
                {
                    'M' => 'L',
                    'm' => 'l',
                    _ => command,
                };
                at.SkipSpace();
            } while (at.Current is ',' or '.' or '+' or '-' || char.IsAsciiDigit(at.Current));
        }

        return -1;
    }

    private bool One(char command)
    {
        bool isRelative = char.IsAsciiLetterLower(command);
        switch (char.ToUpperInvariant(command))
        {
            case 'M':
                if (!TryPoint(isRelative, out Point to))
                {
                    return false;
                }

                Finish(isClosed: false);
                start = to;
                here = to;
                break;
            case 'L':
                if (!TryPoint(isRelative, out to))
                {
                    return false;
                }

                Line(to);
                break;
            case 'H':
                if (!at.TryNumber(out double x))
                {
                    return false;
                }

                Line(new(isRelative ? here.X + x : x, here.Y));
                break;
            case 'V':
                if (!at.TryNumber(out double y))
                {
                    return false;
                }

                Line(new(here.X, isRelative ? here.Y + y : y));
                break;
            case 'C':
            case 'S':
                if (!Cubic(isRelative, isSmooth: command is 'S' or 's'))
                {
                    return false;
                }

                break;
            case 'Q':
            case 'T':
                if (!Quadratic(isRelative, isSmooth: command is 'T' or 't'))
                {
                    return false;
                }

                break;
            case 'A':
                if (!Arc(isRelative))
                {
                    return false;
                }

                break;
            default:
                return false;
        }

        last = char.ToUpperInvariant(command);
        return true;
    }

    private bool Cubic(bool isRelative, bool isSmooth)
    {
        Point first = last is 'C' or 'S' ? here + (here - lastControl) : here;
        if (
            (!isSmooth && !TryPoint(isRelative, out first))
            || !TryPoint(isRelative, out Point second)
            || !TryPoint(isRelative, out Point to)
        )
        {
            return false;
        }

        pieces.Add(new CubicPiece(new CubicBezier(here, first, second, to)));
        lastControl = second;
        here = to;
        return true;
    }

    private bool Quadratic(bool isRelative, bool isSmooth)
    {
        Point control = last is 'Q' or 'T' ? here + (here - lastControl) : here;
        if (
            (!isSmooth && !TryPoint(isRelative, out control)) || !TryPoint(isRelative, out Point to)
        )
        {
            return false;
        }

        pieces.Add(CubicPiece.OfQuadratic(here, control, to));
        lastControl = control;
        here = to;
        return true;
    }

    private bool Arc(bool isRelative)
    {
        if (
            !at.TryNumber(out double rx)
            || !at.TryNumber(out double ry)
            || !at.TryNumber(out double degrees)
            || !at.TryFlag(out bool isLarge)
            || !at.TryFlag(out bool isPositive)
            || !TryPoint(isRelative, out Point to)
        )
        {
            return false;
        }

        if (here != to)
        {
            pieces.Add(SvgArc.Of(here, to, rx, ry, degrees * Math.PI / 180, isLarge, isPositive));
        }

        here = to;
        return true;
    }

    private bool TryPoint(bool isRelative, out Point place)
    {
        place = default;
        if (!at.TryNumber(out double x) || !at.TryNumber(out double y))
        {
            return false;
        }

        place = isRelative ? new(here.X + x, here.Y + y) : new(x, y);
        return true;
    }

    private void Line(Point to)
    {
        pieces.Add(new LinePiece(here, to));
        here = to;
    }

    private void Close()
    {
        if (here != start)
        {
            Line(start);
        }

        Finish(isClosed: true);
        here = start;
        last = 'Z';
    }

    private void Finish(bool isClosed)
    {
        if (pieces.Count > 0)
        {
            subpaths.Add((pieces, isClosed));
            pieces = [];
        }
    }
}
