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

    /// <summary>Outlines that are worked out before a list is shown; the others of a long list follow behind it.</summary>
    private const int AtOnce = 24;

    /// <summary>All designs by name, without their findings, and beyond the first ones without their outlines, where those are not known yet.</summary>
    /// <exception cref="IOException">The folder can't be read.</exception>
    public IReadOnlyList<GalleryEntry> Entries() =>
        [
            .. folder
                .Names()
                .Select(Entry)
                .OfType<GalleryEntry>()
                .Select((entry, i) => i < AtOnce ? Draw(entry) : entry),
        ];

    /// <summary>The entry with its outline.</summary>
    public GalleryEntry Draw(GalleryEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entry.IsDrawn || entry.Reading.Design is not { } design
            ? entry
            : Keep(
                entry,
                entry with
                {
                    Outline = BodyOutline.Solve(design.Outline).Outline,
                    IsDrawn = true,
                }
            );
    }

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
        return Keep(entry, whole);
    }

    private GalleryEntry Keep(GalleryEntry before, GalleryEntry after)
    {
        if (known.TryGetValue(before.Name, out var at) && ReferenceEquals(at.Entry, before))
        {
            known.TryUpdate(before.Name, at with { Entry = after }, at);
        }

        return after;
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
            GalleryEntry entry = new(name, reading, null, !reading.Succeeded, null);
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
