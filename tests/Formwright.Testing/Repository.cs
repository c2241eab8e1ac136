namespace Formwright.Testing;

/// <summary>Where the repository stands on this machine, so that tests reach examples and approved outputs.</summary>
public static class Repository
{
    /// <summary>Absolute path of the folder that holds <c>Formwright.slnx</c>.</summary>
    /// <exception cref="InvalidOperationException">The tests run outside a checkout.</exception>
    public static string Root { get; } = FindRoot();

    /// <summary>Absolute path of a file of the repository.</summary>
    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Formwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName
            ?? throw new InvalidOperationException("Formwright.slnx not found above the tests.");
    }
}
