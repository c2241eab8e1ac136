namespace Formwright.Instrument.Boards;

/// <summary>Why a recording can't be used.</summary>
public enum WavFault
{
    None,

    /// <summary>Larger than <see cref="WavReader.MaxBytes"/>.</summary>
    TooLarge,

    /// <summary>Not a RIFF/WAVE file.</summary>
    NotWav,

    /// <summary>No format chunk before the samples, or one that makes no sense.</summary>
    BadFormat,

    /// <summary>Compressed, or a sample size that is not read.</summary>
    Compressed,

    /// <summary>No samples, or fewer than a tenth of a second.</summary>
    TooShort,

    /// <summary>Samples that are no numbers.</summary>
    NotNumbers,

    /// <summary>Nothing but silence.</summary>
    Silent,
}
