using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Where a view came to lie on its sheet.</summary>
/// <param name="Name">Its label.</param>
/// <param name="Scale">Sheet mm per model mm.</param>
/// <param name="Box">The box around all that it drew, its label too.</param>
public sealed record DrawnView(string Name, double Scale, Box Box);
