using System.Collections.Concurrent;

namespace Formwright.Web.Designs;

/// <summary>The open designs of a folder, one session each however many pages show it, and the watch over their files.</summary>
public sealed class DesignSessions : IDisposable
{
    private readonly ConcurrentDictionary<string, Lazy<DesignSession>> open = new(
        StringComparer.Ordinal
    );
    private readonly FileSystemWatcher watcher;
    private readonly Behind behind;

    public DesignSessions(DesignFolder folder, Behind behind)
    {
        ArgumentNullException.ThrowIfNull(folder);
        (Folder, this.behind) = (folder, behind);
        watcher = new FileSystemWatcher(folder.Root, "*.toml") { EnableRaisingEvents = true };
        watcher.Changed += (_, change) => behind.Ends(() => LookAt(change.Name));
        watcher.Created += (_, change) => behind.Ends(() => LookAt(change.Name));
        watcher.Renamed += (_, change) => behind.Ends(() => LookAt(change.Name));
    }

    public DesignFolder Folder { get; }

    /// <summary>The session of a design, or null where there is no such design.</summary>
    public DesignSession? Open(string name) =>
        Folder.Exists(name)
            ? open.GetOrAdd(
                name,
                each => new Lazy<DesignSession>(() => new DesignSession(Folder, each, behind))
            ).Value
            : null;

    /// <summary>Writes what is not kept yet and forgets the session, before its file is renamed or binned.</summary>
    public void Close(string name)
    {
        if (open.TryRemove(name, out Lazy<DesignSession>? session) && session.IsValueCreated)
        {
            session.Value.Dispose();
        }
    }

    public void Dispose()
    {
        watcher.Dispose();
        foreach (string name in open.Keys)
        {
            Close(name);
        }
    }

    private void LookAt(string? file)
    {
        string? name = Path.GetFileNameWithoutExtension(file);
        if (
            name is not null
            && open.TryGetValue(name, out Lazy<DesignSession>? session)
            && session.IsValueCreated
        )
        {
            try
            {
                session.Value.LookAtDisk();
            }
            catch (Exception fault)
                when (fault is IOException or ArgumentException or UnauthorizedAccessException)
            {
                // The file is being replaced or is gone: the next change, or the next save, settles it.
                return;
            }
        }
    }
}
