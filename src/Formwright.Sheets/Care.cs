using Formwright.Drawing;

namespace Formwright.Sheets;

/// <summary>The cautions that several sheets share.</summary>
internal static class Care
{
    /// <summary>Where a machine cuts: router, bandsaw, and the dust of both.</summary>
    public static Cautions AtTheMachine(double widthMm, TextStyle? style = null) =>
        new([SheetsWords.Of["caution.router"], SheetsWords.Of["caution.dust"]], widthMm)
        {
            Style = style ?? TextStyle.Body,
        };

    /// <summary>Where strings pull.</summary>
    public static Cautions UnderTension(double widthMm) =>
        new([SheetsWords.Of["caution.string-tension"]], widthMm);

    /// <summary>Where bone, shell or frets are filed.</summary>
    public static Cautions WithBone(double widthMm) =>
        new([SheetsWords.Of["caution.bone-dust"]], widthMm);

    /// <summary>Where wood is sawn, planed or sanded by hand.</summary>
    public static Cautions WithDust(double widthMm, TextStyle? style = null) =>
        new([SheetsWords.Of["caution.dust"]], widthMm) { Style = style ?? TextStyle.Body };
}
