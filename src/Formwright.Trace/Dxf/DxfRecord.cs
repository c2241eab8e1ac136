using Formwright.Curves;

namespace Formwright.Trace.Dxf;

/// <summary>One record of a DXF: its kind and its groups, numbers already read.</summary>
internal sealed class DxfRecord(string kind, int line)
{
    private readonly List<(int Code, double Value)> numbers = [];

    internal string Kind { get; } = kind;

    internal int Line { get; } = line;

    internal string Layer { get; set; } = "";

    /// <summary>The name of the block that an INSERT or a BLOCK names.</summary>
    internal string Name { get; set; } = "";

    internal IReadOnlyList<(int Code, double Value)> Numbers => numbers;

    /// <summary>Records that belong to this one: the vertices of a POLYLINE.</summary>
    internal List<DxfRecord> Parts { get; } = [];

    internal void Add(int code, double value) => numbers.Add((code, value));

    /// <summary>The first value of a code.</summary>
    internal double this[int code, double whenAbsent = 0]
    {
        get
        {
            foreach ((int each, double value) in numbers)
            {
                if (each == code)
                {
                    return value;
                }
            }

            return whenAbsent;
        }
    }

    internal bool Has(int code) => numbers.Any(pair => pair.Code == code);

    internal int Flags => (int)Math.Clamp(this[70], int.MinValue, int.MaxValue);

    internal Point Place(int code = 10) => new(this[code], this[code + 10]);

    /// <summary>All values of a code, in order.</summary>
    internal IEnumerable<double> All(int code) =>
        numbers.Where(pair => pair.Code == code).Select(pair => pair.Value);

    /// <summary>All places of a code (x) and the code ten above it (y).</summary>
    internal List<Point> Places(int code)
    {
        List<Point> places = [];
        foreach ((int each, double value) in numbers)
        {
            if (each == code)
            {
                places.Add(new(value, 0));
            }
            else if (each == code + 10 && places.Count > 0)
            {
                places[^1] = places[^1] with { Y = value };
            }
        }

        return places;
    }
}
