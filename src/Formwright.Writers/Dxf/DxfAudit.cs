using System.Globalization;

namespace Formwright.Writers;

/// <summary>
/// A strict audit of our own DXF files. It reads the text alone and knows nothing of the writer: pairs of group code and
/// value, sections in order, unit mm, finite numbers, single handles, known layers and entity kinds, closed flags without
/// a repeated vertex, no pieces without length.
/// </summary>
public static class DxfAudit
{
    private static readonly string[] Sections =
    [
        "HEADER",
        "TABLES",
        "BLOCKS",
        "ENTITIES",
        "OBJECTS",
    ];
    private static readonly HashSet<string> Kinds = ["LWPOLYLINE", "CIRCLE", "ARC", "LINE", "TEXT"];

    private readonly record struct Pair(int Line, int Code, string Value);

    /// <summary>All faults; empty for a file that may be sent to a machine.</summary>
    public static IReadOnlyList<DxfFault> Of(string dxf)
    {
        ArgumentNullException.ThrowIfNull(dxf);
        List<DxfFault> faults = [];
        List<Pair> pairs = Read(dxf, faults);
        CheckFrame(pairs, faults);
        CheckHandles(pairs, faults);
        HashSet<string> layers = LayersOf(pairs);
        foreach (List<Pair> entity in EntitiesOf(pairs))
        {
            CheckEntity(entity, layers, faults);
        }

        return faults;
    }

    private static List<Pair> Read(string dxf, List<DxfFault> faults)
    {
        string[] lines = dxf.Split('\n');
        List<Pair> pairs = new(lines.Length / 2);
        for (int i = 0; i + 1 < lines.Length; i += 2)
        {
            string value = lines[i + 1].TrimEnd('\r');
            if (
                !int.TryParse(
                    lines[i],
                    NumberStyles.Integer,
                    CultureInfo.InvariantCulture,
                    out int code
                )
            )
            {
                faults.Add(new(i + 1, $"'{lines[i]}' is no group code"));
                return pairs;
            }

            pairs.Add(new(i + 2, code, value));
            if (IsReal(code) && !double.IsFinite(Real(value)))
            {
                faults.Add(new(i + 2, $"'{value}' is no finite number"));
            }

            if (value.Any(c => c is < ' ' or > '~'))
            {
                faults.Add(new(i + 2, "a character beyond ASCII"));
            }
        }

        return pairs;
    }

    private static void CheckFrame(List<Pair> pairs, List<DxfFault> faults)
    {
        string[] found =
        [
            .. pairs
                .Zip(pairs.Skip(1))
                .Where(two => two.First is { Code: 0, Value: "SECTION" } && two.Second.Code == 2)
                .Select(two => two.Second.Value),
        ];
        if (!found.SequenceEqual(Sections))
        {
            faults.Add(new(1, $"sections {string.Join(", ", found)}"));
        }

        int ends = pairs.Count(pair => pair is { Code: 0, Value: "ENDSEC" });
        if (ends != Sections.Length || pairs is not [.., { Code: 0, Value: "EOF" }])
        {
            faults.Add(new(pairs.Count * 2, "a section or the file does not end"));
        }

        if (Header(pairs, "$ACADVER") != "AC1015" || Header(pairs, "$INSUNITS") != "4")
        {
            faults.Add(new(1, "not R2000 in millimetres"));
        }
    }

    private static string? Header(List<Pair> pairs, string name)
    {
        int at = pairs.FindIndex(pair => pair.Code == 9 && pair.Value == name);
        return at >= 0 && at + 1 < pairs.Count ? pairs[at + 1].Value : null;
    }

    private static void CheckHandles(List<Pair> pairs, List<DxfFault> faults)
    {
        HashSet<string> handles = [];
        string seed = Header(pairs, "$HANDSEED") ?? "0";
        foreach (Pair pair in pairs.Where(pair => pair.Code == 5 && pair.Value != seed))
        {
            bool number = long.TryParse(
                pair.Value,
                NumberStyles.HexNumber,
                CultureInfo.InvariantCulture,
                out long handle
            );
            if (!number || handle <= 0 || !handles.Add(pair.Value))
            {
                faults.Add(new(pair.Line, $"handle {pair.Value} is no number, or stands twice"));
            }
        }

        foreach (Pair pair in pairs.Where(pair => pair.Code is 330 or 350 && pair.Value != "0"))
        {
            if (!handles.Contains(pair.Value))
            {
                faults.Add(new(pair.Line, $"owner {pair.Value} is not in the file"));
            }
        }
    }

    private static HashSet<string> LayersOf(List<Pair> pairs)
    {
        HashSet<string> layers = [];
        for (int i = 0; i < pairs.Count; i++)
        {
            if (pairs[i] is { Code: 0, Value: "LAYER" })
            {
                int name = pairs.FindIndex(i + 1, pair => pair.Code == 2);
                if (name >= 0)
                {
                    layers.Add(pairs[name].Value);
                }
            }
        }

        return layers;
    }

    private static IEnumerable<List<Pair>> EntitiesOf(List<Pair> pairs)
    {
        int from = pairs.FindIndex(pair => pair is { Code: 2, Value: "ENTITIES" });
        List<Pair>? entity = null;
        for (int i = from + 1; from >= 0 && i < pairs.Count; i++)
        {
            if (pairs[i].Code == 0)
            {
                if (entity is not null)
                {
                    yield return entity;
                }

                if (pairs[i].Value == "ENDSEC")
                {
                    yield break;
                }

                entity = [];
            }

            entity?.Add(pairs[i]);
        }
    }

    private static void CheckEntity(
        List<Pair> entity,
        HashSet<string> layers,
        List<DxfFault> faults
    )
    {
        (int line, _, string kind) = entity[0];
        if (!Kinds.Contains(kind))
        {
            faults.Add(new(line, $"{kind} is not used in cut files"));
        }

        if (!entity.Any(pair => pair.Code == 8 && layers.Contains(pair.Value)))
        {
            faults.Add(new(line, "no layer of the layer table"));
        }

        if (kind is "CIRCLE" or "ARC" or "TEXT" && !(First(entity, 40) > 0))
        {
            faults.Add(new(line, $"{kind} has no size"));
        }

        if (kind == "LWPOLYLINE")
        {
            CheckPolyline(entity, line, faults);
        }
    }

    private static void CheckPolyline(List<Pair> entity, int line, List<DxfFault> faults)
    {
        List<(double X, double Y, double Bulge)> vertices = [];
        foreach (Pair pair in entity)
        {
            double value = IsReal(pair.Code) ? Real(pair.Value) : 0;
            if (pair.Code == 10)
            {
                vertices.Add((value, double.NaN, 0));
            }
            else if (pair.Code is 20 or 42 && vertices.Count > 0)
            {
                vertices[^1] =
                    pair.Code == 20
                        ? vertices[^1] with
                        {
                            Y = value,
                        }
                        : vertices[^1] with
                        {
                            Bulge = value,
                        };
            }
        }

        bool closed = First(entity, 70) == 1;
        if (First(entity, 90) != vertices.Count)
        {
            faults.Add(new(line, $"{vertices.Count} vertices, not as many as it says"));
        }

        int least = closed && vertices.All(v => v.Bulge == 0) ? 3 : 2;
        if (vertices.Count < least)
        {
            faults.Add(new(line, $"only {vertices.Count} vertices"));
        }

        for (int i = 0; i < (closed ? vertices.Count : vertices.Count - 1); i++)
        {
            (double x, double y, _) = vertices[i];
            (double nextX, double nextY, _) = vertices[(i + 1) % vertices.Count];
            if (!(Math.Abs(nextX - x) + Math.Abs(nextY - y) > 1e-7))
            {
                faults.Add(
                    new(
                        line,
                        i == vertices.Count - 1
                            ? "closed, and its first vertex repeated"
                            : $"no length after vertex {i}"
                    )
                );
            }
        }

        if (
            !closed
            && vertices.Count > 2
            && vertices[0].X == vertices[^1].X
            && vertices[0].Y == vertices[^1].Y
        )
        {
            faults.Add(new(line, "it closes, but is not flagged closed"));
        }
    }

    private static double First(List<Pair> entity, int code)
    {
        int at = entity.FindIndex(pair => pair.Code == code);
        return at < 0 ? double.NaN : Real(entity[at].Value);
    }

    private static bool IsReal(int code) => code is (>= 10 and <= 59) or (>= 140 and <= 147);

    private static double Real(string value) =>
        double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
            ? number
            : double.NaN;
}
