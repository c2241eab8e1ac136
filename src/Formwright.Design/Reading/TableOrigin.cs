namespace Formwright.Design.Reading;

/// <summary>How a table came to be (TOML 1.0, "Table" and "Inline table": it decides what may be added to it later).</summary>
internal enum TableOrigin
{
    /// <summary>Made in passing by a longer heading: <c>[a.b]</c> makes <c>a</c>.</summary>
    Passing,

    /// <summary>Opened by its own heading, <c>[a]</c> or <c>[[a]]</c>.</summary>
    Heading,

    /// <summary>Made by a dotted key: <c>a.b = 1</c> makes <c>a</c>.</summary>
    Dotted,

    /// <summary>Written <c>{ … }</c>; closed for good.</summary>
    Inline,
}
