using System.Globalization;
using System.Reflection;
using System.Resources;

namespace Formwright.Words;

/// <summary>
/// The texts of one assembly, from its embedded <c>Words.resx</c> (English) and <c>Words.es.resx</c> (Spanish).
/// The language is <see cref="CultureInfo.CurrentUICulture"/>, figures follow <see cref="CultureInfo.CurrentCulture"/>.
/// </summary>
public sealed class Wording
{
    private readonly ResourceManager resources;

    private Wording(ResourceManager resources) => this.resources = resources;

    /// <summary>The texts of <paramref name="assembly"/>, whose resource is <c>{assembly name}.Words</c>.</summary>
    /// <param name="assembly">An assembly that embeds <c>Words.resx</c> at its root.</param>
    /// <param name="rootNamespace">Root namespace where it differs from the assembly's name.</param>
    public static Wording Of(Assembly assembly, string? rootNamespace = null)
    {
        ArgumentNullException.ThrowIfNull(assembly);
        return new Wording(
            new ResourceManager($"{rootNamespace ?? assembly.GetName().Name}.Words", assembly)
        );
    }

    /// <summary>The text of a key in the reader's language.</summary>
    /// <exception cref="KeyNotFoundException">The key stands in no resource: a mistake of the caller.</exception>
    public string this[string key] =>
        resources.GetString(key, CultureInfo.CurrentUICulture)
        ?? throw new KeyNotFoundException($"No text for '{key}' in {resources.BaseName}.");

    /// <summary>The text of a key with its places {0}, {1} … filled in, figures in the reader's culture.</summary>
    /// <exception cref="KeyNotFoundException">The key stands in no resource.</exception>
    public string Format(string key, params object?[] values) =>
        string.Format(CultureInfo.CurrentCulture, this[key], values);

    /// <summary>Whether a key has a text.</summary>
    public bool Has(string key) =>
        resources.GetString(key, CultureInfo.CurrentUICulture) is not null;

    /// <summary>All keys that stand in the resource of exactly <paramref name="culture"/>; the tests compare languages with it.</summary>
    public IReadOnlyCollection<string> Keys(CultureInfo culture)
    {
        ResourceSet? set = resources.GetResourceSet(
            culture,
            createIfNotExists: true,
            tryParents: false
        );
        return set is null
            ? []
            :
            [
                .. set.Cast<System.Collections.DictionaryEntry>()
                    .Select(entry => (string)entry.Key),
            ];
    }
}
