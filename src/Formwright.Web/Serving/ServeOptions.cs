namespace Formwright.Web.Serving;

/// <summary>How the page is served.</summary>
/// <param name="Folder">Folder of the designs; made where it is missing.</param>
/// <param name="Port">Port on the loopback address; 0 takes a free one.</param>
public sealed record ServeOptions(string Folder, int Port)
{
    /// <summary>Port that is tried first (no meaning).</summary>
    public const int UsualPort = 4380;
}
