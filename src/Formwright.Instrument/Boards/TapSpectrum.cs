using System.Numerics;
using NWaves.Transforms;

namespace Formwright.Instrument.Boards;

/// <summary>
/// The spectrum of one tap and the notes in it. The recording is cut from its loudest sample on, faded in over 40 ms and out to its end
/// (Hann flanks), padded to at least four times its length and transformed (FFT of NWaves). A peak's frequency is the vertex of the parabola
/// through the logarithms of its three highest lines: the spectrum of a damped note under a real window is symmetric about the note,
/// so this is exact but for noise and neighbours. Its decay is the slope of the note's level over shifted Hann frames.
/// </summary>
/// <param name="FrequenciesHz">Frequencies of the curve to draw, Hz.</param>
/// <param name="LevelsDb">Levels of the curve, dB under the loudest.</param>
/// <param name="FloorDb">Median level of the band: the noise.</param>
/// <param name="Peaks">Notes, in order of frequency.</param>
/// <param name="ResolutionHz">1 / length of the sound used: closer notes run together.</param>
public sealed record TapSpectrum(
    IReadOnlyList<double> FrequenciesHz,
    IReadOnlyList<double> LevelsDb,
    double FloorDb,
    IReadOnlyList<TapPeak> Peaks,
    double ResolutionHz
)
{
    /// <summary>Longest part of a recording that is used, samples.</summary>
    public const int MaxSamples = 1 << 19;

    // Tuned on recordings made by formula, with noise: what stands this far over the noise is a note.
    private const double OverFloorDb = 15;

    // A soft start keeps the skirts of a strong note from shifting its neighbours: with none, 0.2 Hz at 170 Hz; with this, 0.005 Hz.
    private const double RiseS = 0.04;
    private const double ProminenceDb = 6;
    private const double RangeDb = 60;
    private const int MaxPeaks = 40;
    private const int CurvePoints = 1500;

    /// <summary>The spectrum of a recorded tap.</summary>
    /// <param name="recording">The recording.</param>
    /// <param name="fromHz">Lowest frequency looked at, Hz.</param>
    /// <param name="toHz">Highest frequency looked at, Hz; at most 45 % of the sampling rate is used.</param>
    public static TapSpectrum Of(Recording recording, double fromHz = 20, double toHz = 1500)
    {
        ArgumentNullException.ThrowIfNull(recording);
        Guard.Positive(fromHz);
        Guard.Between(toHz, fromHz + 1, 1e6);
        double[] tap = Cut(recording);
        double rate = recording.RateHz;
        int size = 1;
        while (size < 4 * tap.Length)
        {
            size *= 2;
        }

        double[] re = new double[size];
        double[] im = new double[size];
        for (int i = 0; i < tap.Length; i++)
        {
            double rise = Math.Min(1, i / (RiseS * rate));
            re[i] =
                tap[i]
                * 0.25
                * (1 - Math.Cos(Math.PI * rise))
                * (1 + Math.Cos(Math.PI * i / tap.Length));
        }

        new Fft64(size).Direct(re, im);
        int first = Math.Max(1, (int)(fromHz / rate * size));
        int last = Math.Min((int)(0.45 * size), (int)Math.Ceiling(toHz / rate * size));
        if (last < first + 8)
        {
            return new TapSpectrum([], [], 0, [], rate / tap.Length);
        }

        double[] level = new double[last - first + 1];
        for (int i = 0; i < level.Length; i++)
        {
            level[i] =
                10
                * Math.Log10(
                    (re[first + i] * re[first + i]) + (im[first + i] * im[first + i]) + 1e-300
                );
        }

        double top = level.Max();
        for (int i = 0; i < level.Length; i++)
        {
            level[i] -= top;
        }

        double[] sorted = [.. level];
        Array.Sort(sorted);
        double floor = sorted[sorted.Length / 2];
        double line = rate / size;
        TapPeak[] peaks =
        [
            .. PeakLines(
                    level,
                    Math.Max(floor + OverFloorDb, -RangeDb),
                    (int)Math.Ceiling(2.0 * size / tap.Length)
                )
                .OrderByDescending(i => level[i])
                .Take(MaxPeaks)
                .Select(i => Refined(level, i, first, line, tap, rate))
                .OrderBy(peak => peak.FrequencyHz),
        ];
        (double[] f, double[] db) = Curve(level, first, line);
        return new TapSpectrum(f, db, floor, peaks, rate / tap.Length);
    }

    // From the loudest sample on, without its mean.
    private static double[] Cut(Recording recording)
    {
        IReadOnlyList<float> all = recording.Samples;
        int start = 0;
        for (int i = 1; i < all.Count; i++)
        {
            if (Math.Abs(all[i]) > Math.Abs(all[start]))
            {
                start = i;
            }
        }

        // A tap at the very end leaves nothing to look at: then the whole recording is taken.
        start = all.Count - start < recording.RateHz / 20 ? 0 : start;
        double[] tap = new double[Math.Min(all.Count - start, MaxSamples)];
        double mean = 0;
        for (int i = 0; i < tap.Length; i++)
        {
            tap[i] = all[start + i];
            mean += tap[i] / tap.Length;
        }

        for (int i = 0; i < tap.Length; i++)
        {
            tap[i] -= mean;
        }

        return tap;
    }

    // Local tops over the threshold that stand out by the prominence on both sides before a higher line comes.
    private static IEnumerable<int> PeakLines(double[] level, double threshold, int apart)
    {
        for (int i = 1; i + 1 < level.Length; i++)
        {
            if (level[i] < threshold || level[i] <= level[i - 1] || level[i] < level[i + 1])
            {
                continue;
            }

            if (StandsOut(level, i, -1) && StandsOut(level, i, 1) && IsHighest(level, i, apart))
            {
                yield return i;
            }
        }
    }

    private static bool StandsOut(double[] level, int top, int step)
    {
        for (int i = top + step; i >= 0 && i < level.Length && level[i] <= level[top]; i += step)
        {
            if (level[i] < level[top] - ProminenceDb)
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsHighest(double[] level, int top, int apart)
    {
        for (int i = Math.Max(0, top - apart); i <= Math.Min(level.Length - 1, top + apart); i++)
        {
            if (level[i] > level[top])
            {
                return false;
            }
        }

        return true;
    }

    private static TapPeak Refined(
        double[] level,
        int top,
        int first,
        double line,
        double[] tap,
        double rate
    )
    {
        double before = level[top - 1];
        double after = level[top + 1];
        double bend = before - (2 * level[top]) + after;
        double shift = bend < 0 ? 0.5 * (before - after) / bend : 0;
        double frequency = (first + top + shift) * line;
        return new TapPeak(frequency, level[top], Decay(tap, rate, frequency));
    }

    /// <summary>Slope of the note's log level over Hann frames of at least 12 of its periods, while it falls clearly and at most 40 dB.</summary>
    private static double Decay(double[] tap, double rate, double frequency)
    {
        int frame = (int)Math.Ceiling(Math.Max(12 / frequency, 0.04) * rate);
        int hop = Math.Max(1, frame / 4);
        List<double> logs = [];
        for (int start = 0; start + frame <= tap.Length && logs.Count < 400; start += hop)
        {
            double log = Math.Log(Amplitude(tap.AsSpan(start, frame), frequency / rate));
            if (logs.Count > 0 && (log < logs[0] - 4.6 || log > logs[^1]))
            {
                break;
            }

            logs.Add(log);
        }

        if (logs.Count < 4 || logs[0] - logs[^1] < 0.5)
        {
            return double.NaN;
        }

        // Least squares: with evenly spaced places only the slope is needed.
        double middle = (logs.Count - 1) / 2.0;
        double up = 0;
        double down = 0;
        for (int i = 0; i < logs.Count; i++)
        {
            up += (i - middle) * logs[i];
            down += (i - middle) * (i - middle);
        }

        return -up / down * rate / hop;
    }

    // One line of the frame's spectrum; the phasor is turned step by step, which loses under 1e-10 over a frame.
    private static double Amplitude(ReadOnlySpan<double> frame, double perSample)
    {
        Complex turn = Complex.FromPolarCoordinates(1, -2 * Math.PI * perSample);
        Complex fade = Complex.FromPolarCoordinates(1, 2 * Math.PI / frame.Length);
        Complex phasor = Complex.One;
        Complex window = Complex.FromPolarCoordinates(1, Math.PI / frame.Length);
        Complex sum = Complex.Zero;
        foreach (double sample in frame)
        {
            sum += 0.5 * (1 - window.Real) * sample * phasor;
            phasor *= turn;
            window *= fade;
        }

        return sum.Magnitude + 1e-300;
    }

    // The highest line of each of at most CurvePoints groups: no peak is lost in the picture.
    private static (double[] Frequencies, double[] Levels) Curve(
        double[] level,
        int first,
        double line
    )
    {
        int group = Math.Max(1, (int)Math.Ceiling((double)level.Length / CurvePoints));
        int count = (level.Length + group - 1) / group;
        double[] f = new double[count];
        double[] db = new double[count];
        for (int i = 0; i < count; i++)
        {
            int best = i * group;
            for (int j = best; j < Math.Min(level.Length, (i + 1) * group); j++)
            {
                best = level[j] > level[best] ? j : best;
            }

            f[i] = (first + best) * line;
            db[i] = level[best];
        }

        return (f, db);
    }
}
