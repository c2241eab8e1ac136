namespace Formwright.Design.Sections;

/// <summary>Language of the sheets.</summary>
public enum SheetLanguage
{
    En,
    Es,
}
