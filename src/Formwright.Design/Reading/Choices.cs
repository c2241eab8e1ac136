using System.Text;

namespace Formwright.Design.Reading;

/// <summary>How the names of an enum are written in a design file.</summary>
public static class Choices
{
    /// <summary><c>CorkOverlay</c> is <c>cork-overlay</c>.</summary>
    public static string NameOf<T>(T value)
        where T : struct, Enum
    {
        StringBuilder name = new();
        foreach (char letter in value.ToString())
        {
            if (char.IsUpper(letter) && name.Length > 0)
            {
                name.Append('-');
            }

            name.Append(char.ToLowerInvariant(letter));
        }

        return name.ToString();
    }
}
