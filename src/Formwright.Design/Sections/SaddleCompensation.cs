namespace Formwright.Design.Sections;

/// <summary>How nut and saddle are set for intonation.</summary>
public enum SaddleCompensation
{
    /// <summary>Nut and saddle at the bare scale.</summary>
    None,

    /// <summary>A straight saddle at the best set-back and angle, nut uncompensated.</summary>
    Straight,

    /// <summary>Each string has its own place on the saddle, nut uncompensated.</summary>
    PerString,

    /// <summary>Each string has its own place on saddle and nut.</summary>
    NutAndSaddle,
}
