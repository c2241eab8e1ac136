using System.Globalization;

namespace Formwright.Design.Sections;

/// <summary>A note in scientific pitch notation (<c>E2</c>, <c>F#3</c>, <c>Bb3</c>; C4 is middle C), as semitones in equal temperament.</summary>
/// <param name="Semitone">Semitones above C-1; A4 is 69.</param>
public readonly record struct NoteName(int Semitone)
{
    private const int A4 = 69;
    private static readonly string[] Names =
    [
        "C",
        "C#",
        "D",
        "D#",
        "E",
        "F",
        "F#",
        "G",
        "G#",
        "A",
        "A#",
        "B",
    ];

    /// <summary>Frequency f = a4 · 2^((n - 69)/12), Hz (equal temperament).</summary>
    public double FrequencyHz(double a4Hz) => a4Hz * Math.Pow(2, (Semitone - A4) / 12.0);

    /// <summary>Reads a note; false where the text is none.</summary>
    public static bool TryRead(string text, out NoteName note)
    {
        note = default;
        ArgumentNullException.ThrowIfNull(text);
        text = text.Trim();
        if (text.Length is < 2 or > 4)
        {
            return false;
        }

        int step = "C D EF G A B".IndexOf(char.ToUpperInvariant(text[0]), StringComparison.Ordinal);
        if (step < 0 || text[0] == ' ')
        {
            return false;
        }

        int at = 1;
        if (text[at] is '#' or '♯')
        {
            step++;
            at++;
        }
        else if (text[at] is 'b' or '♭')
        {
            step--;
            at++;
        }

        if (
            !int.TryParse(
                text.AsSpan(at),
                NumberStyles.None,
                CultureInfo.InvariantCulture,
                out int octave
            )
            || octave > 8
        )
        {
            return false;
        }

        note = new NoteName(step + (12 * (octave + 1)));
        return true;
    }

    public override string ToString() =>
        Names[((Semitone % 12) + 12) % 12]
        + ((int)Math.Floor(Semitone / 12.0) - 1).ToString(CultureInfo.InvariantCulture);
}
