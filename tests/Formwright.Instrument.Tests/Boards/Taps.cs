using Formwright.Instrument.Boards;

namespace Formwright.Instrument.Tests.Boards;

/// <summary>Taps made by formula: damped notes after a short silence, with seeded Gaussian noise.</summary>
internal static class Taps
{
    internal readonly record struct Note(double Hz, double Amplitude, double DecayPerS);

    internal static Recording Of(
        int rateHz,
        double lengthS,
        double noise,
        int seed,
        params Note[] notes
    )
    {
        Random random = new(seed);
        float[] samples = new float[(int)(rateHz * lengthS)];
        int start = rateHz / 10;
        for (int i = 0; i < samples.Length; i++)
        {
            double value = noise * Gauss(random);
            double t = (i - start) / (double)rateHz;
            if (t >= 0)
            {
                foreach (Note note in notes)
                {
                    // Cosine: the tap starts at its loudest.
                    value +=
                        note.Amplitude
                        * Math.Exp(-note.DecayPerS * t)
                        * Math.Cos(2 * Math.PI * note.Hz * t);
                }
            }

            samples[i] = (float)value;
        }

        return new Recording(samples, rateHz);
    }

    private static double Gauss(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble()))
        * Math.Cos(2 * Math.PI * random.NextDouble());
}
