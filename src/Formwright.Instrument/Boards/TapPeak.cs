namespace Formwright.Instrument.Boards;

/// <summary>A note in the spectrum of a tap.</summary>
/// <param name="FrequencyHz">Frequency, Hz.</param>
/// <param name="LevelDb">Level under the loudest, dB (0 or less).</param>
/// <param name="DecayPerS">Rate α at which its amplitude dies, e^(-αt), 1/s; NaN where it is too weak or too close to another to follow.</param>
public readonly record struct TapPeak(double FrequencyHz, double LevelDb, double DecayPerS)
{
    /// <summary>Loss factor 1/Q = α/(π f).</summary>
    public double LossFactor => DecayPerS / (Math.PI * FrequencyHz);
}
