using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;

namespace Formwright.Sheets;

/// <summary>Title blocks.</summary>
internal static class Titles
{
    /// <summary>The title block of a sheet: the instrument's own fields and the sheet's title.</summary>
    public static TitleBlock Of(Guitar guitar, string titleKey, string typeKey = "document.drawing")
    {
        IdentityDesign identity = guitar.Design.Identity;
        return new TitleBlock($"{identity.Name} · {SheetsWords.Of[titleKey]}", identity.Number)
        {
            Owner = identity.Owner,
            Date = identity.Date,
            Revision = identity.Revision,
            DocumentType = SheetsWords.Of[typeKey],
        };
    }
}
