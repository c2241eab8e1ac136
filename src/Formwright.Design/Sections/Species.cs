namespace Formwright.Design.Sections;

/// <summary>Wood species with a row in the species table. A maker's own figures for a piece of wood replace the row's.</summary>
public enum Species
{
    SitkaSpruce,
    EngelmannSpruce,
    EuropeanSpruce,
    WesternRedcedar,
    PortOrfordCedar,
    Cypress,
    SpanishCedar,
    Mahogany,
    SugarMaple,
    YellowBirch,
    WhiteAsh,
    BlackWalnut,
    IndianRosewood,
    AfricanEbony,
}
