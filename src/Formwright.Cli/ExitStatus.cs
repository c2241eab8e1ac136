namespace Formwright.Cli;

/// <summary>How a command ends. Where several apply, the highest is told.</summary>
public enum ExitStatus
{
    /// <summary>Done.</summary>
    Done = 0,

    /// <summary>The design has findings of severity stop.</summary>
    Stopped = 1,

    /// <summary>The input is wrong: the command or a file.</summary>
    WrongInput = 2,

    /// <summary>Something outside failed: disk, permission.</summary>
    OutsideFailure = 3,
}
