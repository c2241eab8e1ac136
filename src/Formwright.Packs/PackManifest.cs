namespace Formwright.Packs;

/// <summary><c>pack.json</c>: every file of a pack, in order of path.</summary>
/// <param name="Instrument">Name of the instrument.</param>
/// <param name="Files">The files.</param>
public sealed record PackManifest(string Instrument, IReadOnlyList<PackFile> Files);
