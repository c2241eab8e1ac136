namespace Formwright.Design.Sections;

/// <summary>Paper that the maker's printer takes, for tiled sheets (ISO 216).</summary>
public enum PaperSize
{
    A4,
    A3,
}
