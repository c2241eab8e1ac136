namespace Formwright.Jigs.Brackets;

/// <summary>What holds the brackets to the board.</summary>
/// <param name="Bolts">Bolts, one for each bracket, each with a nut and two washers.</param>
/// <param name="DiameterMm">Nominal diameter, mm.</param>
/// <param name="LengthMm">Shortest length under the head, mm.</param>
/// <param name="HoleMm">Width of the slots: the clearance hole of the bolt, ISO 273 medium series, mm.</param>
public sealed record JigHardware(int Bolts, double DiameterMm, double LengthMm, double HoleMm);
