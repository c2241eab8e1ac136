using Formwright.Curves;
using Formwright.Design.Reading;
using Formwright.Trace.Files;
using Formwright.Trace.Geometry;

namespace Formwright.Trace.Svg;

/// <summary>
/// Reads the curves of an SVG (1.1 and 2): paths with all segment kinds, basic shapes, groups, transforms, nested views,
/// local <c>use</c>. Scripts, texts and pictures are passed over; nothing is run and nothing is fetched.
/// </summary>
internal sealed class SvgReader
{
    private const int MaxUses = 10_000;

    private readonly string file;
    private readonly CurveSink sink;
    private readonly List<Diagnostic> notes = [];
    private readonly Dictionary<string, SvgNode> byId = new(StringComparer.Ordinal);
    private readonly HashSet<string> noted = new(StringComparer.Ordinal);
    private int uses;

    private SvgReader(string file)
    {
        this.file = file;
        sink = new CurveSink(file);
    }

    internal static TraceFile Read(ReadOnlyMemory<byte> bytes, string file)
    {
        SvgNode root = SvgTree.Read(bytes, file);
        SvgReader reader = new(file);
        reader.Index(root);
        return reader.Run(root);
    }

    private TraceFile Run(SvgNode root)
    {
        SvgLength? width = SvgLength.Read(root["width"]) is { IsShare: false } w ? w : null;
        SvgLength? height = SvgLength.Read(root["height"]) is { IsShare: false } h ? h : null;
        Vector view = View(root, out Point origin, out bool hasView);
        bool isStated = width is { IsReal: true } || height is { IsReal: true };
        Vector px = hasView ? PxPerUnit(root, view, width?.Px(0), height?.Px(0)) : new(1, 1);
        Vector mm = px * SvgLength.MmPerPx;
        if (!double.IsFinite(mm.X + mm.Y) || mm.X <= 0 || mm.Y <= 0)
        {
            throw new TraceFault(file, root.Line, root.Column, "fault.svg-size");
        }

        // SVG counts y downwards; here it points up.
        Affine page = Affine.Scale(mm.X, -mm.Y).After(Affine.Move(-origin.X, -origin.Y));
        foreach (SvgNode child in root.Children)
        {
            Draw(child, page, view, "", 0);
        }

        TraceUnit unit = new(mm.X, isStated, isStated ? "unit.svg" : "unit.svg-px");
        return new TraceFile(file, TraceLayout.Drawing, unit, sink.Curves, notes);
    }

    /// <summary>px in one unit of the view box, along x and y.</summary>
    private static Vector PxPerUnit(SvgNode root, Vector view, double? wide, double? high)
    {
        double across = (wide ?? high * view.X / view.Y ?? view.X) / view.X;
        double down = (high ?? wide * view.Y / view.X ?? view.Y) / view.Y;
        string aspect = root["preserveAspectRatio"] ?? "";
        if (aspect.Contains("none", StringComparison.Ordinal))
        {
            return new(across, down);
        }

        double both = aspect.Contains("slice", StringComparison.Ordinal)
            ? Math.Max(across, down)
            : Math.Min(across, down);
        return new(both, both);
    }

    private Vector View(SvgNode node, out Point origin, out bool hasView)
    {
        origin = default;
        hasView = false;
        if (node["viewBox"] is not { } text)
        {
            return new Vector(
                SvgLength.Read(node["width"])?.Px(100) ?? 100,
                SvgLength.Read(node["height"])?.Px(100) ?? 100
            );
        }

        SvgNumbers at = new(text);
        if (
            at.TryNumber(out double x)
            && at.TryNumber(out double y)
            && at.TryNumber(out double width)
            && at.TryNumber(out double height)
            && width > 0
            && height > 0
        )
        {
            origin = new(x, y);
            hasView = true;
            return new(width, height);
        }

        throw new TraceFault(file, node.Line, node.Column, "fault.svg-view", text);
    }

    private void Draw(SvgNode node, Affine map, Vector view, string name, int depth)
    {
        if (depth > TraceLimits.MaxDepth * 4)
        {
            throw new TraceFault(
                file,
                node.Line,
                node.Column,
                "fault.too-deep",
                TraceLimits.MaxDepth * 4
            );
        }

        if (IsHidden(node))
        {
            return;
        }

        if (node["transform"] is { } transform)
        {
            map = map.After(
                SvgTransform.Read(transform)
                    ?? throw new TraceFault(
                        file,
                        node.Line,
                        node.Column,
                        "fault.svg-transform",
                        transform
                    )
            );
        }

        name = node["id"] ?? name;
        switch (node.Name)
        {
            case "g" or "a" or "switch":
                foreach (SvgNode child in node.Children)
                {
                    Draw(child, map, view, name, depth + 1);
                }

                break;
            case "svg":
                Nested(node, map, view, name, depth);
                break;
            case "use":
                Use(node, map, view, name, depth);
                break;
            case "path":
                Path(node, map, name);
                break;
            case "rect" or "circle" or "ellipse" or "line" or "polyline" or "polygon":
                List<Piece> pieces =
                    SvgShapes.Of(node, view, out bool isClosed)
                    ?? throw new TraceFault(
                        file,
                        node.Line,
                        node.Column,
                        "fault.svg-shape",
                        node.Name
                    );
                sink.Add(pieces, isClosed, map, name, node.Line, node.Column);
                break;
            case "script":
                Note(node, "note.script");
                break;
            case "text" or "image" or "foreignObject":
                Note(node, "note.left-out");
                break;
        }
    }

    private void Path(SvgNode node, Affine map, string name)
    {
        int fault = SvgPath.Read(node["d"] ?? "", out var subpaths);
        if (fault >= 0)
        {
            throw new TraceFault(file, node.Line, node.Column, "fault.svg-path", fault + 1);
        }

        foreach ((List<Piece> pieces, bool isClosed) in subpaths)
        {
            sink.Add(pieces, isClosed, map, name, node.Line, node.Column);
        }
    }

    private void Nested(SvgNode node, Affine map, Vector view, string name, int depth)
    {
        double x = SvgLength.Read(node["x"])?.Px(view.X) ?? 0;
        double y = SvgLength.Read(node["y"])?.Px(view.Y) ?? 0;
        double wide = SvgLength.Read(node["width"])?.Px(view.X) ?? view.X;
        double high = SvgLength.Read(node["height"])?.Px(view.Y) ?? view.Y;
        map = map.After(Affine.Move(x, y));
        Vector inner = View(node, out Point origin, out bool hasView);
        if (hasView)
        {
            double scale = Math.Min(wide / inner.X, high / inner.Y);
            // The usual alignment: in the middle of what is left over.
            Affine middle = Affine.Move(
                (wide - (scale * inner.X)) / 2,
                (high - (scale * inner.Y)) / 2
            );
            map = map.After(middle)
                .After(Affine.Scale(scale, scale))
                .After(Affine.Move(-origin.X, -origin.Y));
        }

        foreach (SvgNode child in node.Children)
        {
            Draw(child, map, hasView ? inner : new Vector(wide, high), name, depth + 1);
        }
    }

    private void Use(SvgNode node, Affine map, Vector view, string name, int depth)
    {
        string href = node["href"] ?? "";
        if (!href.StartsWith('#'))
        {
            Note(node, "note.outside");
            return;
        }

        if (!byId.TryGetValue(href[1..], out SvgNode? target))
        {
            Note(node, "note.missing-use");
            return;
        }

        if (++uses > MaxUses)
        {
            throw new TraceFault(file, node.Line, node.Column, "fault.too-many-elements", MaxUses);
        }

        map = map.After(
            Affine.Move(
                SvgLength.Read(node["x"])?.Px(view.X) ?? 0,
                SvgLength.Read(node["y"])?.Px(view.Y) ?? 0
            )
        );
        if (target.Name == "symbol")
        {
            Nested(target, map, view, name, depth + 1);
        }
        else
        {
            Draw(target, map, view, name, depth + 1);
        }
    }

    private void Index(SvgNode root)
    {
        Stack<SvgNode> open = new([root]);
        while (open.TryPop(out SvgNode? node))
        {
            if (node["id"] is { } id)
            {
                byId.TryAdd(id, node);
            }

            foreach (SvgNode child in node.Children)
            {
                open.Push(child);
            }
        }
    }

    private static bool IsHidden(SvgNode node)
    {
        string style = (node["style"] ?? "").Replace(" ", "", StringComparison.Ordinal);
        return node["display"] == "none"
            || node["visibility"] is "hidden" or "collapse"
            || style.Contains("display:none", StringComparison.Ordinal)
            || style.Contains("visibility:hidden", StringComparison.Ordinal);
    }

    private void Note(SvgNode node, string key)
    {
        // One note of a kind is enough; a drawing may hold thousands of texts.
        if (notes.Count < TraceReading.MaxDiagnostics && noted.Add(key + node.Name))
        {
            notes.Add(TraceDiagnostic.Of(file, node.Line, node.Column, key, node.Name));
        }
    }
}
