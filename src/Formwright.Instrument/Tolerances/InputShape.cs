namespace Formwright.Instrument.Tolerances;

/// <summary>How a figure spreads about its value.</summary>
public enum InputShape
{
    /// <summary>Anywhere between -a and +a alike; u = a/√3 (JCGM 100, 4.3.7).</summary>
    Rectangular,

    /// <summary>Normal of deviation u.</summary>
    Normal,

    /// <summary>Sum of two equal rectangular ones; u = a/√6 (JCGM 100, 4.3.9).</summary>
    Triangular,

    /// <summary>A sine seen at a random moment; u = a/√2 (JCGM 101, 6.4.6).</summary>
    Arcsine,
}
