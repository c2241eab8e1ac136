using System.Text;
using Formwright.Design.Reading;

namespace Formwright.Design;

/// <summary>Reads design files. All faults come out at once, each with its place; nothing throws for what a maker wrote.</summary>
public static class DesignText
{
    /// <summary>Largest design file that is read, bytes.</summary>
    public const int MaxBytes = 1_000_000;

    /// <summary>Most diagnostics that are given; the last one then says how many more there are.</summary>
    public const int MaxDiagnostics = 200;

    private static readonly Lazy<ILookup<string, string>> KeysByName = new(() =>
        Keys()
            .Select(spec => KeySpec.WithoutMarks(spec.Path))
            .ToLookup(path => path[(path.LastIndexOf('.') + 1)..])
    );

    /// <summary>Reads the text of a design.</summary>
    /// <param name="text">TOML text, with or without a byte order mark.</param>
    /// <param name="file">Name for diagnostics.</param>
    public static DesignReading Parse(string text, string file)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(file);
        if (text.Length > MaxBytes)
        {
            return Refused(file, "diagnostic.too-large", MaxBytes);
        }

        List<Diagnostic> diagnostics = [];
        string plain = WithoutMark(text);
        if (new SyntaxReader(file, diagnostics).Read(plain) is not { } document)
        {
            return Failed(diagnostics, text);
        }

        TomlTable tree = new TomlTreeBuilder(file, diagnostics).Build(document);
        ReadingContext context = new(file, diagnostics);
        TableReader root = TableReader.Root(context, tree);
        InstrumentDesign design = InstrumentDesign.Read(root);
        root.ReportUnknownAndMissing();
        if (diagnostics.Count > 0)
        {
            return Failed(diagnostics, text);
        }

        return new DesignReading(
            design,
            [],
            text,
            context.Places.ToDictionary(
                place => place.Key,
                place => new TextPlace(place.Value.Start.Line + 1, place.Value.Start.Column + 1),
                StringComparer.Ordinal
            )
        )
        {
            Values = context.Values,
        };
    }

    /// <summary>Reads a design from disk. A missing, too large or non-text file is a diagnostic.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="IOException">A file that is there could not be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The person may not read the file.</exception>
    public static DesignReading Load(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        if (Directory.Exists(path))
        {
            return Refused(path, "diagnostic.folder", path);
        }

        byte[] bytes;
        try
        {
            bytes = ReadAtMost(path, MaxBytes + 1);
        }
        catch (Exception missing)
            when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refused(path, "diagnostic.no-file", path);
        }

        return Read(bytes, path);
    }

    /// <summary>Reads a design from bytes. Too many, or bytes that are no text, are a diagnostic.</summary>
    /// <param name="bytes">UTF-8 text.</param>
    /// <param name="file">Name for diagnostics.</param>
    public static DesignReading Read(ReadOnlySpan<byte> bytes, string file)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (bytes.Length > MaxBytes)
        {
            return Refused(file, "diagnostic.too-large", MaxBytes);
        }

        try
        {
            return Parse(new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes), file);
        }
        catch (DecoderFallbackException)
        {
            return Refused(file, "diagnostic.not-text");
        }
    }

    /// <summary>Every key that a design file can hold, in the order of the sections.</summary>
    public static IReadOnlyList<KeySpec> Keys()
    {
        List<KeySpec> specs = [];
        ReadingContext context = new("", [], specs);
        InstrumentDesign.Read(
            TableReader.Root(context, new TomlTable(default, TableOrigin.Passing))
        );
        return specs;
    }

    /// <summary>Paths of the keys whose last part is <paramref name="name"/>.</summary>
    internal static IEnumerable<string> KeysNamed(string name) => KeysByName.Value[name];

    /// <summary>The text without a byte order mark.</summary>
    internal static string WithoutMark(string text) => text.StartsWith('\uFEFF') ? text[1..] : text;

    private static byte[] ReadAtMost(string path, int most)
    {
        // Not by the file's stated length: a device states none, and a sparse file states far more than anyone wants to read.
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        byte[] buffer = new byte[most];
        int length = stream.ReadAtLeast(buffer, most, throwOnEndOfStream: false);
        return buffer[..length];
    }

    private static DesignReading Refused(string file, string message, params object?[] values) =>
        Failed([new Diagnostic(file, 1, 1, "", DesignWords.Of.Format(message, values))], "");

    private static DesignReading Failed(List<Diagnostic> diagnostics, string text)
    {
        List<Diagnostic> sorted = [.. diagnostics.OrderBy(d => d.Line).ThenBy(d => d.Column)];
        if (sorted.Count > MaxDiagnostics)
        {
            Diagnostic next = sorted[MaxDiagnostics];
            string more = DesignWords.Of.Format("diagnostic.more", MaxDiagnostics);
            sorted.RemoveRange(MaxDiagnostics, sorted.Count - MaxDiagnostics);
            sorted.Add(next with { Key = "", Message = more });
        }

        return new DesignReading(null, sorted, text, new Dictionary<string, TextPlace>());
    }
}
