namespace Formwright.Design.Sections;

/// <summary>Fan layouts to start from; <c>[[braces]]</c> adds to them, or stands alone with <see cref="None"/>.</summary>
public enum BraceLayout
{
    /// <summary>Only the braces that the file lists.</summary>
    None,

    /// <summary>Five, spread wide.</summary>
    FanFive,

    /// <summary>Seven and two closing bars at the tail.</summary>
    FanSeven,

    /// <summary>Seven, run closer on the treble side, and a slanting bar under the bridge's treble half.</summary>
    SkewedSeven,

    /// <summary>Two families of low bars that cross.</summary>
    Lattice,
}
