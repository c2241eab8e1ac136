namespace Formwright.Curves;

/// <content>Area, curvature pieces, radii.</content>
public sealed partial class Chain
{
    /// <summary>Area to the left of the chain, mm²: counter-clockwise positive. An open chain is closed by its chord.</summary>
    public double SignedAreaMm2 => throw new NotImplementedException();

    /// <summary>Centroid of that area.</summary>
    public Point Centroid => throw new NotImplementedException();

    /// <summary>Monotone runs of the curvature; rises and falls of less than a tolerance are taken into their neighbours.</summary>
    /// <param name="toleranceShare">Share of the whole range of curvature that a rise or fall must exceed to count.</param>
    public IReadOnlyList<CurvaturePiece> CurvaturePieces(double toleranceShare = 0.01) =>
        throw new NotImplementedException();

    /// <summary>The place of the largest curvature to the left; null when the chain never turns left.</summary>
    public ChainPoint? TightestLeft => throw new NotImplementedException();

    /// <summary>The place of the largest curvature to the right; null when the chain never turns right.</summary>
    public ChainPoint? TightestRight => throw new NotImplementedException();
}
