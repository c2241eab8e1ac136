namespace Formwright.Fields.Plates;

/// <summary>How an edge of a plate is held against moving out of its plane.</summary>
public enum RimSupport
{
    /// <summary>Not at all: the edge of a soundhole, or a plate held in the hand.</summary>
    Free,

    /// <summary>It can't rise but it can turn, as on a thin, soft lining.</summary>
    Hinged,

    /// <summary>It can neither rise nor turn, as on a stiff lining.</summary>
    Clamped,
}
