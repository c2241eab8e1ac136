using System.Globalization;

namespace Formwright.Trace.Svg;

/// <summary>Walks over the numbers, letters and separators of an SVG attribute.</summary>
internal ref struct SvgNumbers(ReadOnlySpan<char> text)
{
    private readonly ReadOnlySpan<char> text = text;

    /// <summary>Where it stands, characters from the start.</summary>
    internal int At { get; private set; }

    internal readonly bool IsAtEnd => At >= text.Length;

    internal readonly char Current => At < text.Length ? text[At] : '\0';

    internal void SkipSpace()
    {
        while (At < text.Length && text[At] is ' ' or '\t' or '\r' or '\n' or '\f')
        {
            At++;
        }
    }

    /// <summary>Skips spaces and at most one comma.</summary>
    internal void SkipSeparator()
    {
        SkipSpace();
        if (Current == ',')
        {
            At++;
            SkipSpace();
        }
    }

    internal char TakeLetter() => text[At++];

    internal bool Take(char wanted)
    {
        if (Current != wanted || IsAtEnd)
        {
            return false;
        }

        At++;
        return true;
    }

    /// <summary>A name of letters.</summary>
    internal ReadOnlySpan<char> TakeName()
    {
        int from = At;
        while (At < text.Length && char.IsAsciiLetter(text[At]))
        {
            At++;
        }

        return text[from..At];
    }

    /// <summary>A flag of an arc: a single 0 or 1, which may stand without a separator after it.</summary>
    internal bool TryFlag(out bool flag)
    {
        SkipSeparator();
        flag = Current == '1';
        if (Current is not ('0' or '1'))
        {
            return false;
        }

        At++;
        return true;
    }

    /// <summary>A number as SVG 1.1 section 8.3.9 writes it: <c>-.5</c>, <c>1e-3</c>; the next one may follow without a separator.</summary>
    internal bool TryNumber(out double value)
    {
        SkipSeparator();
        int i = At;
        if (i < text.Length && text[i] is '+' or '-')
        {
            i++;
        }

        int digits = 0;
        while (i < text.Length && char.IsAsciiDigit(text[i]))
        {
            (i, digits) = (i + 1, digits + 1);
        }

        if (i < text.Length && text[i] == '.')
        {
            i++;
            while (i < text.Length && char.IsAsciiDigit(text[i]))
            {
                (i, digits) = (i + 1, digits + 1);
            }
        }

        if (digits == 0)
        {
            value = double.NaN;
            return false;
        }

        if (i < text.Length && text[i] is 'e' or 'E')
        {
            int j = i + 1;
            if (j < text.Length && text[j] is '+' or '-')
            {
                j++;
            }

            int exponent = j;
            while (j < text.Length && char.IsAsciiDigit(text[j]))
            {
                j++;
            }

            // "1em" is the number 1 and a unit.
            i = j > exponent ? j : i;
        }

        bool ok = double.TryParse(
            text[At..i],
            NumberStyles.Float,
            CultureInfo.InvariantCulture,
            out value
        );
        At = i;
        return ok && double.IsFinite(value);
    }
}
