using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>One part of a dotted key, with its place.</summary>
internal readonly record struct KeyPart(string Name, SourceSpan Span)
{
    public static List<KeyPart> PathOf(KeySyntax key)
    {
        List<KeyPart> path = [new(NameOf(key.Key), key.Key?.Span ?? key.Span)];
        foreach (DottedKeyItemSyntax item in key.DotKeys)
        {
            path.Add(new(NameOf(item.Key), item.Key?.Span ?? item.Span));
        }

        return path;
    }

    public static string Dotted(IEnumerable<KeyPart> path) =>
        string.Join('.', path.Select(part => part.Name));

    public static string Join(string path, string key) => path.Length == 0 ? key : $"{path}.{key}";

    private static string NameOf(BareKeyOrStringValueSyntax? key) =>
        key switch
        {
            BareKeySyntax bare => bare.Key?.Text ?? "",
            StringValueSyntax quoted => quoted.Value ?? "",
            _ => "",
        };
}
