namespace Formwright.Curves;

/// <summary>Why a part of an offset could not be made.</summary>
public enum OffsetFault
{
    /// <summary>A piece found no partner to be joined to.</summary>
    OpenEnd,

    /// <summary>More crossings than the work allowed for.</summary>
    TooManyCrossings,
}
