using Formwright.Design.Sections;

namespace Formwright.Jigs.Stock;

/// <summary>One sheet or board with the parts that are cut from it.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Stock">What it is.</param>
/// <param name="MarginMm">Edge that is not used, mm.</param>
/// <param name="KerfMm">Least distance between two parts, mm.</param>
/// <param name="Parts">What lies on it.</param>
/// <param name="UsedLengthMm">From its start to the furthest part and the cut behind it, mm: no more of it is taken.</param>
/// <param name="Offcuts">What is left, largest first.</param>
public sealed record SheetNest(
    int Number,
    StockSheetDesign Stock,
    double MarginMm,
    double KerfMm,
    IReadOnlyList<PlacedPart> Parts,
    double UsedLengthMm,
    IReadOnlyList<Offcut> Offcuts
)
{
    /// <summary>Name of its files.</summary>
    public string Id => $"nest-{Number}";

    /// <summary>Area of the parts, openings left out, mm².</summary>
    public double PartsAreaMm2 => Parts.Sum(placed => PartArea.Mm2(placed.Part));

    /// <summary>Share of the whole sheet that the parts take.</summary>
    public double UsedFraction => PartsAreaMm2 / (Stock.LengthMm * Stock.WidthMm);

    /// <summary>Share of what is taken of it that the parts take.</summary>
    public double CutFraction => PartsAreaMm2 / (UsedLengthMm * Stock.WidthMm);

    /// <summary>Price of what is taken of it; null where its price is not known.</summary>
    public double? PriceOfUsed => Stock.Price * UsedLengthMm / Stock.LengthMm;
}
