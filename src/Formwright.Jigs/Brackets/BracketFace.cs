namespace Formwright.Jigs.Brackets;

/// <summary>Which end of a bracket touches the ribs.</summary>
public enum BracketFace
{
    Front,
    Rear,
}
