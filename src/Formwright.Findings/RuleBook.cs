using System.Reflection;

namespace Formwright.Findings;

/// <summary>All rules of a class that declares them as public static readonly fields; the documentation is made from it.</summary>
public static class RuleBook
{
    /// <summary>The rules declared by <paramref name="declaringTypes"/>, in order of code.</summary>
    public static IReadOnlyList<Rule> Of(params Type[] declaringTypes) =>
        [
            .. declaringTypes
                .SelectMany(type => type.GetFields(BindingFlags.Public | BindingFlags.Static))
                .Where(field => field.FieldType == typeof(Rule))
                .Select(field => (Rule)field.GetValue(null)!)
                .OrderBy(rule => rule.Code, StringComparer.Ordinal),
        ];
}
