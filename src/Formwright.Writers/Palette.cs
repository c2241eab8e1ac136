using Formwright.Drawing;

namespace Formwright.Writers;

/// <summary>Tones on paper, as grey levels from 0 black to 255 white.</summary>
internal static class Palette
{
    public static byte Grey(Tone tone) =>
        tone switch
        {
            Tone.Ink => 0,
            Tone.SecondInk => 70,
            Tone.Wood => 238,
            Tone.Paper => 255,
            _ => throw new ArgumentOutOfRangeException(nameof(tone)),
        };
}
