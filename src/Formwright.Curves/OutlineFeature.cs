namespace Formwright.Curves;

/// <summary>The five features that give an outline, from heel to tail.</summary>
public enum OutlineFeature
{
    Heel,
    UpperBout,
    Waist,
    LowerBout,
    Tail,
}
