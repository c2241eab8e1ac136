namespace Formwright.Jigs.Spine;

/// <summary>What a spine of so many layers lets the ramp move.</summary>
/// <param name="Layers">Layers.</param>
/// <param name="WarpMm">Added to the drop at the nut, mm.</param>
/// <param name="Holds">Whether it stays within the ramp's tolerance.</param>
public sealed record LayersWarp(int Layers, double WarpMm, bool Holds);
