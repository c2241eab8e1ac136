using System.Globalization;
using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;
using Formwright.Words;

namespace Formwright.Findings;

/// <summary>All rules of classes that declare them as public static readonly fields; the documentation is made from it.</summary>
public static partial class RuleBook
{
    private static readonly Wording Words = Wording.Of(typeof(RuleBook).Assembly);

    /// <summary>The rules declared by <paramref name="declaringTypes"/>, in order of code.</summary>
    public static IReadOnlyList<Rule> Of(params Type[] declaringTypes) =>
        [
            .. declaringTypes
                .SelectMany(type => type.GetFields(BindingFlags.Public | BindingFlags.Static))
                .Where(field => field.FieldType == typeof(Rule))
                .Select(field => (Rule)field.GetValue(null)!)
                .OrderBy(rule => rule.Code, StringComparer.Ordinal),
        ];

    /// <summary>The rules declared anywhere in an assembly, in order of code.</summary>
    public static IReadOnlyList<Rule> Of(Assembly assembly)
    {
        ArgumentNullException.ThrowIfNull(assembly);
        return Of([.. assembly.GetTypes().Where(type => !type.ContainsGenericParameters)]);
    }

    /// <summary>A page of Markdown on every rule, in the reader's language.</summary>
    public static string Markdown(IEnumerable<Rule> rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        StringBuilder page = new();
        page.Append(
            CultureInfo.InvariantCulture,
            $"# {Words["page.title"]}\n\n{Words["page.intro"]}\n"
        );
        foreach (Rule rule in rules.OrderBy(rule => rule.Code, StringComparer.Ordinal))
        {
            string severity = Words[$"severity.{rule.Severity.ToString().ToLowerInvariant()}"];
            string unit = rule.Unit.Length == 0 ? "" : $" · {rule.Unit}";
            page.Append(
                CultureInfo.InvariantCulture,
                $"\n## {rule.Title}\n\n`{rule.Code}` · {severity}{unit}\n\n"
            );
            Item(page, "page.message", rule, "message");
            Item(page, "page.source", rule, "source");
            Item(page, "page.cure", rule, "cure");
        }

        return page.ToString();
    }

    private static void Item(StringBuilder page, string label, Rule rule, string part)
    {
        string text = Place()
            .Replace(
                rule.Words[$"{rule.Code}.{part}"],
                place =>
                    place.Groups["number"].Value switch
                    {
                        "0" => $"*{Words["page.measured"]}*",
                        "1" => $"*{Words["page.limit"]}*",
                        _ => "*…*",
                    }
            );
        page.Append(CultureInfo.InvariantCulture, $"- {Words[label]}: {text}\n");
    }

    [GeneratedRegex(@"\{(?<number>\d+)[^}]*\}")]
    private static partial Regex Place();
}
