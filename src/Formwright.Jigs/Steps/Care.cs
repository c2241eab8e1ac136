namespace Formwright.Jigs.Steps;

/// <summary>A caution: its text and its source stand in the resources.</summary>
public enum Care
{
    Dust,
    Router,
    Bandsaw,
    Drill,
    EdgeTools,
    Finish,
}
