namespace Formwright.Drawing;

/// <summary>From where a part is seen; it gives the view its name and tells bass from treble.</summary>
public enum ViewFrame
{
    /// <summary>A part of its own: no bass and treble.</summary>
    Part,

    /// <summary>The instrument's frame (x, y): bass left when the neck is up.</summary>
    Front,

    /// <summary>The workboard's frame (x, y_b), the instrument face down: bass right when the neck is up.</summary>
    Workboard,

    /// <summary>Along the centreline (x, z), seen from the treble side.</summary>
    SideView,

    /// <summary>A cut across.</summary>
    Section,
}
