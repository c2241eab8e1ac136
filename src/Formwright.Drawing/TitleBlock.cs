namespace Formwright.Drawing;

/// <summary>The fields of a title block after ISO 7200:2004. An empty field keeps its place.</summary>
/// <param name="Title">Title (mandatory).</param>
/// <param name="IdentificationNumber">Identification number (mandatory).</param>
public sealed record TitleBlock(string Title, string IdentificationNumber)
{
    public static TitleBlock Empty { get; } = new("", "");

    /// <summary>Legal owner: the workshop.</summary>
    public string Owner { get; init; } = "";

    /// <summary>Date of issue, as it is to be written.</summary>
    public string Date { get; init; } = "";

    public int SheetNumber { get; init; } = 1;

    public int SheetCount { get; init; } = 1;

    /// <summary>Who approved it.</summary>
    public string Approval { get; init; } = "";

    /// <summary>Who made it.</summary>
    public string Creator { get; init; } = "";

    public string DocumentType { get; init; } = "";

    public string Revision { get; init; } = "";

    /// <summary>Scale; null takes that of the views.</summary>
    public string? Scale { get; init; }
}
