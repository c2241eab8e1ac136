namespace Formwright.Design.Sections;

/// <summary>The figures of the height chain that carry a tolerance.</summary>
public enum ChainInput
{
    Ramp,
    NeckOffBoard,
    NeckAfterGlueing,
    FingerboardNut,
    FingerboardJoin,
    FretHeight,
    NutClearance,
    DomeBoard,
    DomeFree,
    DomeStrung,
    BridgeRise,
    BridgeRotation,
    Saddle,
    JoinRotation,
    Creep,
    NeckModulus,
    FingerboardModulus,
    NeckThickness,
    Tension,
}
