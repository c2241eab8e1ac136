namespace Formwright.Design.Sections;

/// <summary>How neck and box are joined.</summary>
public enum HeelMethod
{
    /// <summary>The ribs run into slots of the heel, which is one with the inner block; wedges hold them.</summary>
    Slots,

    /// <summary>The box has its own heel block; the heel is doweled to it.</summary>
    Dowels,
}
