namespace Formwright.Instrument.Necks;

/// <summary>A section of several stiff parts by the transformed-section method (Gere and Timoshenko, <i>Mechanics of Materials</i>).</summary>
/// <param name="BendingStiffnessNmm2">EI about the neutral axis, N·mm².</param>
/// <param name="AxialStiffnessN">EA, N.</param>
/// <param name="AxisBelowFaceMm">Neutral axis below the neck's face (the face under the fingerboard), mm.</param>
public readonly record struct CompositeSection(
    double BendingStiffnessNmm2,
    double AxialStiffnessN,
    double AxisBelowFaceMm
);
