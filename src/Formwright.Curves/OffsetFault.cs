namespace Formwright.Curves;

/// <summary>Why a part of an offset could not be made.</summary>
public enum OffsetFault
{
    /// <summary>A piece that is far enough from the source found no piece to go on with.</summary>
    OpenEnd,

    /// <summary>The offset crosses itself more often than the work allows; what was found up to then is returned.</summary>
    TooManyCrossings,
}
