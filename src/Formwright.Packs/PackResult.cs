namespace Formwright.Packs;

/// <summary>What came of writing a pack.</summary>
/// <param name="Folder">The folder that holds it, null where nothing was written.</param>
/// <param name="Manifest">What is in it.</param>
/// <param name="Fault">Why nothing was written: one line for the maker.</param>
public sealed record PackResult(string? Folder, PackManifest? Manifest, string? Fault);
