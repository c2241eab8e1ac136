namespace Formwright.Instrument.Action;

/// <summary>The figure that is solved for while the others stay.</summary>
public enum Unknown
{
    /// <summary>The ramp.</summary>
    Ramp,

    /// <summary>The dome's height; free and strung move with it.</summary>
    Dome,

    /// <summary>The saddle heights of the outermost strings.</summary>
    Saddle,

    /// <summary>The fingerboard's thickness, the same more or less everywhere.</summary>
    Fingerboard,

    /// <summary>The fingerboard's thickness at the nut only.</summary>
    FingerboardNut,

    /// <summary>The fingerboard's thickness at the join only.</summary>
    FingerboardJoin,

    /// <summary>The fingerboard's thickness, bass and treble edge apart.</summary>
    FingerboardSides,

    /// <summary>The action, bass and treble alike more or less.</summary>
    Action,
}
