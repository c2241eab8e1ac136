namespace Formwright.Instrument.Action;

/// <summary>When a height is looked at.</summary>
public enum BuildStage
{
    /// <summary>On the board, unloaded.</summary>
    OnBoard,

    /// <summary>Box off the board, fingerboard glued, no strings: where the bench checks the projection.</summary>
    Free,

    /// <summary>Strung, at pitch, settled.</summary>
    Strung,
}
