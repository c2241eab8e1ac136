namespace Formwright.Drawing;

/// <summary>What the drawing office would send back.</summary>
public enum SheetFlawKind
{
    /// <summary>A text lies on another.</summary>
    TextOnText,

    /// <summary>A text lies across an outline.</summary>
    TextOnOutline,

    /// <summary>A thinner line runs through a text that does not clear it.</summary>
    TextOnLine,

    /// <summary>What clears the ground under a text takes a piece out of an outline.</summary>
    OutlineCleared,

    /// <summary>A text is lettered below 2.5 mm, which a cheap printer and an arm's length don't allow.</summary>
    TextSmall,

    /// <summary>A text stands on the title block, in the strip of the 100 mm bar, or close to the frame.</summary>
    TextOffArea,

    /// <summary>A text leaves the frame.</summary>
    TextOutsideFrame,

    /// <summary>A view leaves the frame or lies on the title block.</summary>
    ViewOutsideFrame,

    /// <summary>A dimension of no length.</summary>
    EmptyDimension,

    /// <summary>A character that the face does not have.</summary>
    MissingCharacter,

    /// <summary>A text that was cut because its field is too small.</summary>
    TextCut,
}
