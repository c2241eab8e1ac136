using System.Collections.Concurrent;
using Formwright.Curves;
using Formwright.Design;
using Formwright.Instrument.Body;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Body;

/// <summary>The examples, with tables added to them, and outlines of closed form.</summary>
internal static class Demo
{
    internal static InstrumentDesign Design(string name = "heron", string more = "")
    {
        string text = File.ReadAllText(Repository.PathOf("examples", $"{name}.toml"));
        DesignReading reading = DesignText.Parse(With(text, more), name);
        Assert.True(reading.Succeeded, string.Join("\n", reading.Diagnostics));
        return reading.Design;
    }

    // A table that the example has already takes the keys; anything else is added at the end.
    private static string With(string text, string more)
    {
        string[] lines = more.Split('\n');
        string head = lines[0].Trim('[', ']');
        if (
            more.Length == 0
            || lines[0].StartsWith("[[", StringComparison.Ordinal)
            || !text.Contains($"\n[{head}]", StringComparison.Ordinal)
        )
        {
            return text + "\n" + more;
        }

        return lines
            .Skip(1)
            .Select(line => line.Split(" = ", 2))
            .Aggregate(
                text,
                (edited, pair) => DesignEdit.Set(edited, $"{head}.{pair[0]}", pair[1])
            );
    }

    /// <summary>The guitar of a design; what it shares with the bare example is taken from that.</summary>
    internal static Guitar Guitar(string name = "heron", string more = "")
    {
        Guitar bare = Bare.GetOrAdd(name, _ => Built(Design(name), null));
        return more.Length == 0 ? bare : Built(Design(name, more), bare);
    }

    private static readonly ConcurrentDictionary<string, Guitar> Bare = new();

    private static Guitar Built(InstrumentDesign design, Guitar? earlier)
    {
        GuitarResult result = Instrument.Guitar.Build(design, earlier);
        Assert.NotNull(result.Guitar);
        return result.Guitar;
    }

    internal static BodyPlan Plan(string name = "heron", string more = "") =>
        BodyPlan.Of(Guitar(name, more));

    /// <summary>A round "guitar": a circle of a radius about (r, 0).</summary>
    internal static Outline Circle(double radius) =>
        new(
            new Chain([
                new EulerSegment(new Point(0, 0), Math.PI / 2, -1 / radius, 0, Math.PI * radius),
            ])
        );
}
