namespace Formwright.Instrument.Boards;

/// <summary>A recorded sound, one channel.</summary>
/// <param name="Samples">Samples, -1 to 1.</param>
/// <param name="RateHz">Samples in a second.</param>
public sealed record Recording(IReadOnlyList<float> Samples, int RateHz)
{
    public double LengthS => (double)Samples.Count / RateHz;
}
