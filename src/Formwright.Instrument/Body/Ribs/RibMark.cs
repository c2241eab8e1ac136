namespace Formwright.Instrument.Body.Ribs;

/// <summary>A place to mark on a rib.</summary>
public enum RibMark
{
    Tail,
    LowerBout,
    Waist,
    UpperBout,
    Heel,

    /// <summary>Where the bend changes sides: the rib is straight there.</summary>
    Straight,
}
