using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Stock;

/// <summary>Area of parts.</summary>
internal static class PartArea
{
    /// <summary>Area of one piece, openings left out, mm².</summary>
    public static double Mm2(Part part) =>
        ArcPaths.AreaMm2(part.Outside) - part.Insides.Sum(ArcPaths.AreaMm2);
}
