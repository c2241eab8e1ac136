namespace Formwright.Instrument.Boards;

/// <summary>A mode of a free rectangular plate.</summary>
/// <param name="FrequencyHz">Frequency, Hz.</param>
/// <param name="LongShare">Share of its energy that is bending along the length.</param>
/// <param name="CrossShare">Share that is bending along the width.</param>
public readonly record struct FreePlateMode(
    double FrequencyHz,
    double LongShare,
    double CrossShare
);
