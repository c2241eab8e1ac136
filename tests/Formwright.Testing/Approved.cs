namespace Formwright.Testing;

/// <summary>
/// Approved outputs: a text is compared byte for byte with the file that a person looked at and approved.
/// Set <c>FORMWRIGHT_APPROVE=1</c> to write the files anew, then look at the difference before you commit it.
/// </summary>
public static class Approved
{
    /// <summary>Compares <paramref name="actual"/> with <c>tests/{project}/approved/{name}</c>.</summary>
    /// <exception cref="InvalidOperationException">They differ, or nothing was approved yet.</exception>
    public static void Check(string project, string name, string actual) =>
        CheckFile(Repository.PathOf("tests", project, "approved", name), actual);

    /// <summary>Compares <paramref name="actual"/> with any approved file, such as a page of the documentation.</summary>
    /// <exception cref="InvalidOperationException">They differ, or nothing was approved yet.</exception>
    public static void CheckFile(string approved, string actual)
    {
        string name = Path.GetFileName(approved);
        if (Environment.GetEnvironmentVariable("FORMWRIGHT_APPROVE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(approved)!);
            File.WriteAllText(approved, actual);
            return;
        }

        string expected = File.Exists(approved) ? File.ReadAllText(approved) : "";
        if (expected == actual)
        {
            return;
        }

        string received = Path.Combine(AppContext.BaseDirectory, "received", name);
        Directory.CreateDirectory(Path.GetDirectoryName(received)!);
        File.WriteAllText(received, actual);
        throw new InvalidOperationException(
            $"{name} differs from its approved output; received: {received}"
        );
    }
}
