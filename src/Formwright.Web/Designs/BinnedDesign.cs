namespace Formwright.Web.Designs;

/// <summary>A design in the bin.</summary>
/// <param name="File">Its file's name there, without its ending.</param>
/// <param name="Name">What it was called.</param>
/// <param name="At">When it was moved there.</param>
public sealed record BinnedDesign(string File, string Name, DateTime At);
