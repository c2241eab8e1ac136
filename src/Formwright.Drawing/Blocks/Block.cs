using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A text block, table or plot: as large on the sheet as it says, hung by its upper left corner.</summary>
public abstract record Block : Item
{
    /// <summary>Its upper left corner.</summary>
    public Point TopLeft { get; init; }

    /// <summary>How much of the sheet it takes.</summary>
    public abstract Size Size { get; }

    /// <summary>The sheet that it takes, when it stands straight on the sheet.</summary>
    public Box Box =>
        Box.Of(TopLeft.X, TopLeft.Y - Size.HeightMm, TopLeft.X + Size.WidthMm, TopLeft.Y);

    public sealed override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        DrawAt(ink, placement.Apply(TopLeft));
    }

    /// <summary>Draws itself with its upper left corner on a point of the sheet.</summary>
    protected abstract void DrawAt(Ink ink, Point corner);
}
