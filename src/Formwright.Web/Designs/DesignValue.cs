using System.Collections;
using System.Reflection;
using Formwright.Design;

namespace Formwright.Web.Designs;

/// <summary>
/// The value that a design has for a key of its file: <c>outline.waist.at</c> is <c>Outline.Waist.AtMm</c>. Records of the design are named
/// after the keys, with the unit added; a test goes through all of them.
/// </summary>
public static class DesignValue
{
    private static readonly string[] Endings =
    [
        "",
        "Mm",
        "Deg",
        "Percent",
        "GPa",
        "MPa",
        "N",
        "Kg",
        "G",
        "C",
        "KgPerM3",
        "Hz",
    ];

    /// <summary>The value; null where the design leaves the key open, or has no such key.</summary>
    public static object? Of(InstrumentDesign design, string path)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(path);
        object? at = design;
        foreach (string part in path.Split('.'))
        {
            if (at is null)
            {
                return null;
            }

            int bracket = part.IndexOf('[');
            at = Property(at, bracket < 0 ? part : part[..bracket])?.GetValue(at);
            if (bracket >= 0)
            {
                int index = int.Parse(
                    part[(bracket + 1)..^1],
                    System.Globalization.CultureInfo.InvariantCulture
                );
                at = at is IList list && index < list.Count ? list[index] : null;
            }
        }

        return at;
    }

    /// <summary>Whether a key has a place in the record, open or not.</summary>
    public static bool Knows(InstrumentDesign design, string path)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(path);
        int dot = path.LastIndexOf('.');
        object? owner = dot < 0 ? design : Of(design, path[..dot]);
        return owner is not null && Property(owner, path[(dot + 1)..]) is not null;
    }

    private static PropertyInfo? Property(object owner, string part)
    {
        string name = owner is InstrumentDesign && part == "instrument" ? "Identity" : Pascal(part);
        Type type = owner.GetType();
        return Endings
            .Select(ending => type.GetProperty(name + ending))
            .FirstOrDefault(found => found is not null);
    }

    private static string Pascal(string part) =>
        string.Concat(part.Split('_').Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
}
