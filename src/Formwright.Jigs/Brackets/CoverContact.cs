namespace Formwright.Jigs.Brackets;

/// <summary>A contact as the covering sees it.</summary>
/// <param name="EnterMm">Arc length at which it starts to hold the rib, mm.</param>
/// <param name="LeaveMm">Arc length at which it ends, mm.</param>
/// <param name="Pose">Which of the rib's places it is.</param>
public readonly record struct CoverContact(double EnterMm, double LeaveMm, int Pose);
