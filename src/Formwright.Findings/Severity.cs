namespace Formwright.Findings;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Good to know; nothing is wrong.</summary>
    Note,

    /// <summary>The instrument can be built, but the maker should look.</summary>
    Warn,

    /// <summary>As it stands it can't be built or won't work; commands end with status 1.</summary>
    Stop,
}
