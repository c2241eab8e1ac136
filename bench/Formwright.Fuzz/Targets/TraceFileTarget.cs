using System.Text;
using Formwright.Curves;
using Formwright.Design.Reading;
using Formwright.Trace.Files;
using Formwright.Trace.Geometry;

namespace Formwright.Fuzz.Targets;

/// <summary>
/// A reader of trace files: whatever the bytes, it ends in curves of finite places or in diagnostics of one line each, never in both and
/// never in an exception. What is wrong with the time shows in the slowest case.
/// </summary>
internal abstract class TraceFileTarget : IFuzzTarget
{
    public abstract string Name { get; }

    public abstract IReadOnlyList<byte[]> Seeds { get; }

    public abstract IReadOnlyList<string> Pieces { get; }

    public int MostChanges => 12;

    public string Try(byte[] input, Random random)
    {
        TraceReading reading = TraceReader.Read(input, "f");
        if (reading.Succeeded == reading.Diagnostics.Count > 0)
        {
            throw new BrokenPromiseException("curves and faults, or neither");
        }

        foreach (Diagnostic diagnostic in reading.Diagnostics)
        {
            OneLine(diagnostic);
        }

        if (!reading.Succeeded)
        {
            return "faults";
        }

        foreach (Diagnostic note in reading.File.Notes)
        {
            OneLine(note);
        }

        if (!(reading.File.Unit.MmPerUnit > 0 && double.IsFinite(reading.File.Unit.MmPerUnit)))
        {
            throw new BrokenPromiseException("a unit that is none");
        }

        foreach (TracedCurve curve in reading.File.Curves)
        {
            foreach (Piece piece in curve.Pieces)
            {
                Finite(piece.Start);
                Finite(piece.At(random.NextDouble()));
                Finite(piece.End);
            }
        }

        return "curves";
    }

    protected static byte[][] Texts(params string[] texts) =>
        [.. texts.Select(Encoding.UTF8.GetBytes)];

    private static void Finite(Point place)
    {
        if (
            !(
                Math.Abs(place.X) <= 2 * TraceLimits.MaxCoordinate
                && Math.Abs(place.Y) <= 2 * TraceLimits.MaxCoordinate
            )
        )
        {
            throw new BrokenPromiseException($"a place at {place}");
        }
    }

    private static void OneLine(Diagnostic diagnostic)
    {
        string text = diagnostic.ToString();
        if (diagnostic.Line < 1 || diagnostic.Column < 1 || text.Length > 1000)
        {
            throw new BrokenPromiseException($"a diagnostic out of place: {text}");
        }

        if (text.Any(char.IsControl))
        {
            throw new BrokenPromiseException("a diagnostic that steers a terminal");
        }
    }
}
