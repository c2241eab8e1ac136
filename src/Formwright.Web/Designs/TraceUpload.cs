using Formwright.Trace;

namespace Formwright.Web.Designs;

/// <summary>A trace that someone hands in: bounded, and read as bytes that may hold anything, one at a time.</summary>
public static class TraceUpload
{
    /// <summary>Largest trace that the page takes, bytes. A larger one is read by the command <c>import</c>.</summary>
    public const int MostBytes = 8_000_000;

    private static readonly string[] Endings = [".svg", ".dxf", ".csv"];

    // A hostile drawing costs time within the reader's bounds; it must not cost it several times at once.
    private static readonly SemaphoreSlim Turn = new(1);

    /// <summary>Whether a file's name is that of a trace.</summary>
    public static bool IsTrace(string name) =>
        Endings.Contains(Path.GetExtension(name), StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads at most <see cref="MostBytes"/> and makes the trace fair, away from the page's own thread.</summary>
    /// <param name="from">The file.</param>
    /// <param name="name">Its name, for diagnostics.</param>
    /// <param name="bodyLengthMm">What heel to tail measures, mm, if the maker knows it; it sets the scale.</param>
    public static async Task<TraceOutcome> ReadAsync(Stream from, string name, double? bodyLengthMm)
    {
        ArgumentNullException.ThrowIfNull(from);
        using MemoryStream bytes = new();
        await from.CopyToAsync(bytes);
        TraceOptions options = new()
        {
            Known = bodyLengthMm is { } mm ? new KnownLength(KnownLengthKind.BodyLength, mm) : null,
        };
        await Turn.WaitAsync();
        try
        {
            return await Task.Run(() => Tracing.Run(bytes.ToArray(), name, options));
        }
        finally
        {
            Turn.Release();
        }
    }
}
