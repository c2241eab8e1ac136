namespace Formwright.Design.Sections;

/// <summary>What tooling is cut from.</summary>
public enum StockMaterial
{
    Plywood,

    /// <summary>Thin stiff sheet for templates and gauges: plywood, plastic or card.</summary>
    Template,

    Cork,

    /// <summary>A board of hard wood, or thick plywood, that is planed to its thickness.</summary>
    Block,

    /// <summary>A board of solid wood that is planed to its thickness.</summary>
    Solid,
}
