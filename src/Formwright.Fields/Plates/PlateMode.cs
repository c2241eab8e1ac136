namespace Formwright.Fields.Plates;

/// <summary>A way in which a plate rings.</summary>
/// <param name="FrequencyHz">Frequency without air and strings, Hz.</param>
/// <param name="Shape">Its shape, 1 at the vertex that moves most.</param>
/// <param name="MassKg">Modal mass: kinetic energy is MassKg · (velocity where the shape is 1)² / 2.</param>
/// <param name="SweptMm2">∫ shape dA, mm²: the air it moves per mm where the shape is 1; its sign is that of the shape.</param>
/// <param name="Residual">How exactly the discrete equations are met, relative.</param>
public sealed record PlateMode(
    double FrequencyHz,
    PlateShape Shape,
    double MassKg,
    double SweptMm2,
    double Residual
);
