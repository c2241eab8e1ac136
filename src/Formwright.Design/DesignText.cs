using Formwright.Design.Reading;

namespace Formwright.Design;

/// <summary>Reads design files. All faults come out at once, each with its place; nothing throws for what a maker wrote.</summary>
public static class DesignText
{
    /// <summary>Largest design file that is read, bytes.</summary>
    public const int MaxBytes = 1_000_000;

    /// <summary>Reads the text of a design.</summary>
    /// <param name="text">TOML 1.0 text.</param>
    /// <param name="file">Name for diagnostics.</param>
    public static DesignReading Parse(string text, string file)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(file);
        List<Diagnostic> diagnostics = [];
        if (text.Length > MaxBytes)
        {
            diagnostics.Add(
                new Diagnostic(
                    file,
                    1,
                    1,
                    "",
                    DesignWords.Of.Format("diagnostic.too-large", MaxBytes)
                )
            );
            return new DesignReading(null, diagnostics, "");
        }

        TomlTable tree = new TomlTreeBuilder(file, diagnostics).Build(text);
        if (diagnostics.Count > 0 && tree.Entries.Count == 0)
        {
            return new DesignReading(null, diagnostics, text);
        }

        TableReader root = new(new ReadingContext(file, diagnostics, null), tree, "", "", true);
        InstrumentDesign design = InstrumentDesign.Read(root);
        root.ReportUnknownKeys();
        return diagnostics.Count == 0
            ? new DesignReading(design, [], text)
            : new DesignReading(
                null,
                [.. diagnostics.OrderBy(d => d.Line).ThenBy(d => d.Column)],
                text
            );
    }

    /// <summary>Reads a design from disk. A missing, unreadable, too large or non-text file is a diagnostic.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="IOException">The disk failed while a file that exists was read.</exception>
    public static DesignReading Load(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        string? fault = null;
        FileInfo info = new(path);
        if (Directory.Exists(path) || !info.Exists)
        {
            fault = DesignWords.Of.Format("diagnostic.no-file", path);
        }
        else if (info.Length > MaxBytes)
        {
            fault = DesignWords.Of.Format("diagnostic.too-large", MaxBytes);
        }

        if (fault is not null)
        {
            return new DesignReading(null, [new Diagnostic(path, 1, 1, "", fault)], "");
        }

        try
        {
            System.Text.UTF8Encoding strict = new(false, throwOnInvalidBytes: true);
            return Parse(strict.GetString(File.ReadAllBytes(path)).TrimStart('\uFEFF'), path);
        }
        catch (System.Text.DecoderFallbackException)
        {
            string message = DesignWords.Of["diagnostic.not-text"];
            return new DesignReading(null, [new Diagnostic(path, 1, 1, "", message)], "");
        }
    }

    /// <summary>Every key that a design file can hold, in the order of the sections.</summary>
    public static IReadOnlyList<KeySpec> Keys()
    {
        List<KeySpec> specs = [];
        ReadingContext context = new("", [], specs);
        InstrumentDesign.Read(new TableReader(context, new TomlTable(default), "", "", true));
        return specs;
    }
}
