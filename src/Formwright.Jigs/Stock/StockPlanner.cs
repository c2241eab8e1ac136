using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Stock.Nesting;

namespace Formwright.Jigs.Stock;

/// <summary>Nests parts on stock.</summary>
public static class StockPlanner
{
    /// <summary>Pairs of stretches that the search for one kind of stock looks at unless told otherwise; tuned so that more hardly saves stock.</summary>
    public const long UsualEffort = 300_000_000;

    private const int MostOfAKind = 60;

    /// <summary>The plan. The same design gives the same plan, on every machine.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="parts">Every part.</param>
    /// <param name="hardware">What is bought ready made.</param>
    /// <param name="effort">How long to look for a better nest, in pairs of stretches for each kind of stock.</param>
    /// <param name="cores">On how many cores at most, 1 or more; -1 for all. The plan is the same.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative effort, or no core.</exception>
    public static StockPlan Of(
        StockDesign stock,
        IEnumerable<Part> parts,
        IEnumerable<HardwareItem> hardware,
        long effort = UsualEffort,
        int cores = -1
    )
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(hardware);
        ArgumentOutOfRangeException.ThrowIfNegative(effort);
        Part[] all = [.. parts];
        List<SheetNest> sheets = [];
        List<Finding> findings = [];
        int least = 0;
        StockGroup[] groups = [.. StockGroup.Of(stock, all)];
        Chosen?[] nests = new Chosen?[groups.Length];
        Parallel.For(
            0,
            groups.Length,
            new ParallelOptions { MaxDegreeOfParallelism = cores },
            i => nests[i] = groups[i].Sheets.Count > 0 ? Choose(stock, groups[i], effort) : null
        );
        foreach ((StockGroup group, Chosen? nest) in groups.Zip(nests))
        {
            if (nest is { } chosen)
            {
                sheets.AddRange(Sheets(stock, group, chosen, sheets.Count));
                least += Least(stock, group, chosen);
                if (NotEnough(stock, group, chosen) is { } finding)
                {
                    findings.Add(finding);
                }
            }
        }

        HardwareRow[] rows = [.. hardware.Select(item => Priced(stock, item))];
        return new StockPlan(
            sheets,
            [.. all.Select((part, i) => Row(part, i + 1, sheets))],
            rows,
            StockCost.Of(sheets, rows),
            stock.Currency,
            least,
            findings
        );
    }

    private sealed record Chosen(
        IReadOnlyList<StockSheetDesign> Pieces,
        NestTable Table,
        NestLayout Layout
    );

    // What is at hand goes first, small pieces before large ones; then one kind is bought, the one that costs least in all.
    private static Chosen Choose(StockDesign stock, StockGroup group, long effort)
    {
        StockSheetDesign[] atHand =
        [
            .. group
                .Sheets.Where(sheet => sheet.Count > 0)
                .OrderBy(sheet => sheet.LengthMm * sheet.WidthMm)
                .SelectMany(sheet => Enumerable.Repeat(sheet, sheet.Count)),
        ];
        StockSheetDesign[] kinds = [.. group.Sheets.Where(sheet => sheet.Count == 0)];
        int most = Math.Min(group.Parts.Count, MostOfAKind);
        StockSheetDesign[][] choices =
            kinds.Length == 0
                ? [atHand]
                :
                [
                    .. kinds.Select(kind =>
                        (StockSheetDesign[])[.. atHand, .. Enumerable.Repeat(kind, most)]
                    ),
                ];
        NestOutline[] outlines = [.. group.Parts.Select(each => NestOutline.Of(each.Part))];
        Chosen? best = null;
        foreach (StockSheetDesign[] pieces in choices)
        {
            (NestTable table, NestLayout layout) = NestSearch.Of(
                outlines,
                stock.KerfMm,
                [.. pieces.Select(sheet => StockGroup.PieceOf(sheet, stock))],
                effort / choices.Length
            );
            Chosen next = new(pieces, table, layout);
            if (best is null || Worth(next).CompareTo(Worth(best)) < 0)
            {
                best = next;
            }
        }

        return best!;
    }

    private static (int, double, double) Worth(Chosen chosen) =>
        (
            chosen.Layout.Left.Count(),
            chosen
                .Pieces.Where((_, i) => chosen.Layout.SpotsOn(i).Any())
                .Sum(sheet => sheet.Price ?? 0),
            chosen.Layout.Value
        );

    private static IEnumerable<SheetNest> Sheets(
        StockDesign stock,
        StockGroup group,
        Chosen chosen,
        int before
    )
    {
        int number = before;
        for (int i = 0; i < chosen.Pieces.Count; i++)
        {
            NestSpot[] spots = [.. chosen.Layout.SpotsOn(i)];
            if (spots.Length == 0)
            {
                continue;
            }

            StockSheetDesign sheet = chosen.Pieces[i];
            PlacedPart[] placed =
            [
                .. spots
                    .Select(spot => Placed(stock, group, chosen.Table, spot))
                    .OrderBy(each => each.Number),
            ];
            // Its end is grown by half a kerf and so is its start: what is left is the cut behind the last part.
            double used = Math.Min(sheet.LengthMm, stock.MarginMm + chosen.Layout.UsedMm[i]);
            yield return new SheetNest(
                ++number,
                sheet,
                stock.MarginMm,
                stock.KerfMm,
                placed,
                used,
                OffcutFinder.Of(stock, sheet, placed, used)
            );
        }
    }

    private static PlacedPart Placed(
        StockDesign stock,
        StockGroup group,
        NestTable table,
        NestSpot spot
    )
    {
        (int number, Part part) = group.Parts[spot.Part];
        TurnedOutline outline = table.Turned(spot.Part, spot.Turn);
        double start = stock.MarginMm - (stock.KerfMm / 2);
        Vector corner = new(start + spot.XMm, start + (spot.Row * table.RowMm));
        return new PlacedPart(part, number, outline.AngleRad, outline.Shift + corner);
    }

    // Area over what the largest of the sheets in use offers: no nest on such sheets takes fewer.
    private static int Least(StockDesign stock, StockGroup group, Chosen chosen)
    {
        double area = chosen
            .Layout.SpotOf.Where((_, part) => chosen.Layout.PieceOf[part] >= 0)
            .Sum(spot => PartArea.Mm2(group.Parts[spot.Part].Part));
        double offered = chosen
            .Pieces.Where((_, i) => chosen.Layout.SpotsOn(i).Any())
            .Select(sheet => StockGroup.PieceOf(sheet, stock).AreaMm2)
            .DefaultIfEmpty(0)
            .Max();
        return offered > 0 ? (int)Math.Ceiling(area / offered) : 0;
    }

    // Parts that would fit a sheet by themselves but found none free: how many more of the largest would do is found by nesting on them.
    private static Finding? NotEnough(StockDesign stock, StockGroup group, Chosen chosen)
    {
        StockSheetDesign largest = group.Sheets.MaxBy(sheet => sheet.LengthMm * sheet.WidthMm)!;
        NestPiece piece = StockGroup.PieceOf(largest, stock);
        int[] left =
        [
            .. chosen.Layout.Left.Where(part =>
                chosen
                    .Table.TurnsOf(part, piece)
                    .Select(turn => chosen.Table.Turned(part, turn))
                    .Any(turned =>
                        turned.WidthMm <= piece.LengthMm && turned.HeightMm <= piece.WidthMm
                    )
            ),
        ];
        if (left.Length == 0)
        {
            return null;
        }

        int[] turns = new int[group.Parts.Count];
        Array.Fill(turns, -1);
        NestPiece[] more = [.. Enumerable.Repeat(piece, left.Length)];
        NestLayout extra = new NestPlacer(chosen.Table, more).Place(left, turns)!;
        return StockRules.NotEnough.Broken(
            left.Length,
            0,
            "stock.sheet",
            null,
            string.Join(", ", left.Select(part => group.Parts[part].Part.Name).Distinct()),
            extra.PieceOf.Where(at => at >= 0).Distinct().Count(),
            JigsWords.Of[group.Material],
            largest.ThicknessMm,
            largest.LengthMm,
            largest.WidthMm
        );
    }

    private static HardwareRow Priced(StockDesign stock, HardwareItem item)
    {
        StockHardwareDesign? known = stock.Hardware.FirstOrDefault(each =>
            each.Kind == item.Kind && Math.Abs(each.DiameterMm - item.DiameterMm) < 0.01
        );
        return new HardwareRow(item, known?.Price, known?.IsBuiltIn ?? false);
    }

    private static CutListRow Row(Part part, int number, List<SheetNest> sheets)
    {
        Box box = NestOutline.Of(part).BoxTurned(0);
        return new CutListRow(
            number,
            part,
            Math.Max(box.WidthMm, box.HeightMm),
            Math.Min(box.WidthMm, box.HeightMm),
            [
                .. sheets.SelectMany(sheet =>
                    sheet.Parts.Where(placed => placed.Number == number).Select(_ => sheet.Number)
                ),
            ]
        );
    }
}
