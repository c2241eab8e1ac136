namespace Formwright.Design.Reading;

/// <summary>Kinds of value in a design file.</summary>
public enum KeyKind
{
    /// <summary>A length: a number in mm, or text with a unit (<c>"3/4 in"</c>).</summary>
    Length,

    /// <summary>A list of lengths.</summary>
    Lengths,

    /// <summary>A plain number in the key's unit.</summary>
    Number,

    /// <summary>A list of plain numbers in the key's unit.</summary>
    Numbers,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>Free text.</summary>
    Text,

    /// <summary>true or false.</summary>
    Flag,
}
