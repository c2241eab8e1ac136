namespace Formwright.Trace.Svg;

/// <summary>An element of an SVG as far as it matters here: its attributes, its children, its place in the file.</summary>
internal sealed class SvgNode(string name, int line, int column)
{
    internal string Name { get; } = name;

    internal int Line { get; } = line;

    internal int Column { get; } = column;

    internal Dictionary<string, string> Attributes { get; } = new(StringComparer.Ordinal);

    internal List<SvgNode> Children { get; } = [];

    internal string? this[string attribute] => Attributes.GetValueOrDefault(attribute);
}
