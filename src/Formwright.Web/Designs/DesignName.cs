namespace Formwright.Web.Designs;

/// <summary>
/// Names of designs as they come from a page: a plain file name without a path, so that nothing outside the designs folder can be named.
/// </summary>
public static class DesignName
{
    private const int Longest = 60;

    /// <summary>Whether a name may stand for a file of the folder: letters, digits, space, hyphen, underscore and dot inside; at most 60 long.</summary>
    public static bool IsValid(string? name) =>
        name is { Length: > 0 and <= Longest }
        && IsLetterOrDigit(name[0])
        && name.All(c => IsLetterOrDigit(c) || c is ' ' or '_' or '.' or '-')
        && name[^1] is not (' ' or '.');

    private static bool IsLetterOrDigit(char c) => char.IsLetter(c) || char.IsDigit(c);
}
