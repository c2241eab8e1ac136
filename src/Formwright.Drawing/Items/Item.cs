namespace Formwright.Drawing;

/// <summary>Anything that can be drawn, in a view (in model mm) or straight on the sheet (in sheet mm). Letters and arrows are always in sheet mm.</summary>
public abstract record Item
{
    /// <summary>A name that the marks of this item carry, so that the page can light it up; null takes that of the view.</summary>
    public string? Key { get; init; }

    /// <summary>The scale that the title block names for it; null where it has none.</summary>
    public virtual double? NamedScale => null;

    /// <summary>Draws itself; <paramref name="placement"/> takes its own mm to sheet mm.</summary>
    public abstract void Draw(Ink ink, Placement placement);
}
