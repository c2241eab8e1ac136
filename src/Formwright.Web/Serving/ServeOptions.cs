namespace Formwright.Web.Serving;

/// <summary>How the page is served.</summary>
/// <param name="Folder">Folder of the designs; made where it is missing.</param>
/// <param name="Port">Port on the loopback address; 0 takes a free one.</param>
/// <param name="Sharing">That other devices may join; null for this computer alone.</param>
public sealed record ServeOptions(string Folder, int Port, Sharing? Sharing = null)
{
    /// <summary>Port that is tried first (no meaning).</summary>
    public const int UsualPort = 4380;
}
