namespace Formwright.Packs;

/// <summary>How far a pack has come.</summary>
/// <param name="Done">Files written.</param>
/// <param name="Total">Files in all.</param>
/// <param name="Path">The file written last.</param>
public readonly record struct PackProgress(int Done, int Total, string Path);
