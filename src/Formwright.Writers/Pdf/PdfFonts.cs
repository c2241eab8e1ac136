using Formwright.Drawing;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Formwright.Writers;

/// <summary>Gives PDFsharp the face that ships, and no other.</summary>
internal sealed class PdfFonts : IFontResolver
{
    private const string Family = "Barlow Semi Condensed ";
    private static readonly Lock Gate = new();

    /// <summary>The font of a weight whose capitals are <paramref name="heightMm"/> high, in points.</summary>
    public static XFont Font(Weight weight, double heightMm)
    {
        lock (Gate)
        {
            if (GlobalFontSettings.FontResolver is null)
            {
                GlobalFontSettings.FontResolver = new PdfFonts();
            }
        }

        double em = Typeface.Of(weight).EmMm(heightMm) * PdfWriter.PointsPerMm;
        return new XFont(
            Family + weight,
            em,
            XFontStyleEx.Regular,
            new XPdfFontOptions(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset)
        );
    }

    public byte[]? GetFont(string faceName) =>
        Enum.TryParse(faceName, out Weight weight) ? Typeface.Of(weight).File.ToArray() : null;

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        familyName.StartsWith(Family, StringComparison.OrdinalIgnoreCase)
            ? new FontResolverInfo(familyName[Family.Length..])
            : null;
}
