namespace Formwright.Fuzz;

/// <summary>A reader answered, but not as it promises to.</summary>
internal sealed class BrokenPromiseException(string what) : Exception(what);
