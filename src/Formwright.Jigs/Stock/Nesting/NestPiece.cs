namespace Formwright.Jigs.Stock.Nesting;

/// <summary>What can be used of one piece of stock: inside its margin, and half a kerf more all round for outlines that are grown by as much.</summary>
/// <param name="LengthMm">Along the piece, mm.</param>
/// <param name="WidthMm">Across, mm.</param>
/// <param name="HasGrain">Its grain runs along it.</param>
internal readonly record struct NestPiece(double LengthMm, double WidthMm, bool HasGrain)
{
    public double AreaMm2 => LengthMm * WidthMm;
}
