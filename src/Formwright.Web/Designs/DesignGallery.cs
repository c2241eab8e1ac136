using System.Collections.Concurrent;
using Formwright.Design;
using Formwright.Findings;
using Formwright.Instrument.Body;
using Formwright.Packs;

namespace Formwright.Web.Designs;

/// <summary>The designs of the folder as the list shows them. Outlines come at once, findings as they are computed; a file is computed again only when it changed.</summary>
public sealed class DesignGallery(DesignFolder folder)
{
    private readonly ConcurrentDictionary<
        string,
        (DateTime Written, long Bytes, GalleryEntry Entry)
    > known = new(StringComparer.Ordinal);

    /// <summary>All designs by name, without their findings where those are not known yet.</summary>
    /// <exception cref="IOException">The folder can't be read.</exception>
    public IReadOnlyList<GalleryEntry> Entries() =>
        [.. folder.Names().Select(Entry).OfType<GalleryEntry>()];

    /// <summary>The entry with the number of its findings. What was computed for it is not kept: a list of many designs would hold too much.</summary>
    public GalleryEntry Complete(GalleryEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        if (entry.ToSeeTo is not null || entry.Reading.Design is not { } design)
        {
            return entry;
        }

        int count = Study.Of(design).Findings.Count(finding => finding.Severity != Severity.Note);
        GalleryEntry whole = entry with { ToSeeTo = count };
        if (known.TryGetValue(entry.Name, out var at) && ReferenceEquals(at.Entry, entry))
        {
            known.TryUpdate(entry.Name, at with { Entry = whole }, at);
        }

        return whole;
    }

    private GalleryEntry? Entry(string name)
    {
        try
        {
            FileInfo file = new(folder.PathOf(name));
            if (
                known.TryGetValue(name, out var at)
                && at.Written == file.LastWriteTimeUtc
                && at.Bytes == file.Length
            )
            {
                return at.Entry;
            }

            DesignReading reading = DesignText.Load(file.FullName);
            GalleryEntry entry = new(
                name,
                reading,
                reading.Succeeded ? BodyOutline.Solve(reading.Design.Outline).Outline : null,
                null
            );
            known[name] = (file.LastWriteTimeUtc, file.Length, entry);
            return entry;
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            // Gone or locked between the list and the look.
            return null;
        }
    }
}
