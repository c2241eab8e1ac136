namespace Formwright.Instrument.Action;

/// <summary>What <see cref="ActionBatch"/> gives, mm.</summary>
public enum ActionOutput
{
    /// <summary>Action of the lowest string at fret 12.</summary>
    ActionBass,

    /// <summary>Action of the highest string at fret 12.</summary>
    ActionTreble,

    /// <summary>Saddle height that the lowest string would need for the action wanted.</summary>
    SaddleBass,

    /// <summary>Saddle height that the highest string would need.</summary>
    SaddleTreble,

    /// <summary>Action less the action wanted, the lower of both.</summary>
    LowestMiss,

    /// <summary>The same, the higher of both.</summary>
    HighestMiss,

    /// <summary>Saddle height needed, the lower of both.</summary>
    LowestSaddle,

    /// <summary>Saddle height needed, the higher of both.</summary>
    HighestSaddle,
}
