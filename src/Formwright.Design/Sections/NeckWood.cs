namespace Formwright.Design.Sections;

/// <summary>Woods of neck and fingerboard whose stiffness is known here; any other is given by its modulus.</summary>
public enum NeckWood
{
    SpanishCedar,
    Mahogany,
    SugarMaple,
    WhiteAsh,
    YellowBirch,
    BlackWalnut,
    IndianRosewood,
    Ebony,
}
