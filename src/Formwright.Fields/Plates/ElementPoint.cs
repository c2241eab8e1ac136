using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>A place where an element's energy is sampled.</summary>
/// <param name="Part">Which of its three parts.</param>
/// <param name="Place">Where.</param>
/// <param name="Weight">Area, mm², or length, mm, that it stands for.</param>
internal readonly record struct ElementPoint(int Part, Point Place, double Weight);
