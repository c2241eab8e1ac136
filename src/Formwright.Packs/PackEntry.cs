namespace Formwright.Packs;

/// <summary>A file that a pack will hold, and how to write it.</summary>
/// <param name="File">What the manifest says of it; size and hash are filled in when it is written.</param>
/// <param name="Write">Writes its bytes.</param>
internal sealed record PackEntry(PackFile File, Action<Stream> Write)
{
    public static PackEntry Plain(string path, string kind, string title, Action<Stream> write) =>
        new(new PackFile(path, kind, title, null, null, null, null, 0, ""), write);
}
