using System.Text.RegularExpressions;

namespace Formwright.Web.Designs;

/// <summary>
/// Names of designs as they come from a page: a plain file name without a path, so that nothing outside the designs folder can be named.
/// </summary>
public static partial class DesignName
{
    /// <summary>Whether a name may stand for a file of the folder: letters, digits, space, hyphen, underscore and dot inside; at most 60 long.</summary>
    public static bool IsValid(string? name) => name is not null && Pattern().IsMatch(name);

    [GeneratedRegex(
        @"^[\p{L}\p{Nd}](?:[\p{L}\p{Nd} _.\-]{0,58}[\p{L}\p{Nd}_\-])?\z",
        RegexOptions.CultureInvariant | RegexOptions.NonBacktracking
    )]
    private static partial Regex Pattern();
}
