using System.Globalization;
using System.Text;
using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Jigs.Brackets;
using Formwright.Packs.Report;
using Formwright.Sheets.Brackets;
using Formwright.Words;

namespace Formwright.Packs;

/// <summary>A bracket jig for several designs with the files that belong to it.</summary>
/// <param name="Plan">The jig.</param>
/// <param name="Designs">The designs, in the order given.</param>
public sealed record FamilyJig(JigPlan Plan, IReadOnlyList<InstrumentDesign> Designs)
{
    /// <summary>Its figures.</summary>
    public JigReport Report => JigReport.Of(Plan);

    /// <summary>The slots as they are written into a design, so that later instruments are set on the same board.</summary>
    public string SlotsText
    {
        get
        {
            StringBuilder text = new();
            foreach (SlotLine slot in Plan.Slots)
            {
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"[[jig.slots]]\nfrom_x = {slot.From.X:0.0#}\nfrom_y = {slot.From.Y:0.0#}\nto_x = {slot.To.X:0.0#}\nto_y = {slot.To.Y:0.0#}\n\n"
                );
            }

            return text.ToString();
        }
    }

    /// <summary>Writes sheets, parts, figures and slots into a folder, whole or not at all.</summary>
    /// <param name="folder">Where it goes: a folder that is absent, empty, or holds an earlier pack.</param>
    /// <param name="progress">Told after each file.</param>
    /// <param name="cancel">Asks to stop; nothing is left behind then.</param>
    public PackResult Write(
        string folder,
        IProgress<PackProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        SheetsDesign settings = Designs[0].Sheets;
        using Language spoken = Language.Use(Choices.NameOf(settings.Language));
        PrintScale scale = new(settings.PrintScaleX, settings.PrintScaleY);
        PackEntry[] entries =
        [
            .. PackContents.OfSheets(JigSheets.Numbered(Plan), scale),
            .. PackContents.OfParts(Plan.Parts),
            PackContents.Calibration(Designs[0].Identity.Owner),
            PackEntry.Plain(
                "report.json",
                "report",
                PacksWords.Of["report"],
                to => PackContents.Text(to, ReportJson.Write(Report))
            ),
            PackEntry.Plain(
                "slots.toml",
                "design",
                PacksWords.Of["slots"],
                to => PackContents.Text(to, SlotsText)
            ),
        ];
        string name = string.Join(" · ", Designs.Select(design => design.Identity.Name));
        return PackWriter.Write(name, entries, folder, progress, cancel);
    }
}
