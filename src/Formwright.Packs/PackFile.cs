namespace Formwright.Packs;

/// <summary>One file of a pack.</summary>
/// <param name="Path">Path within the pack, with forward slashes.</param>
/// <param name="Kind">What it is: <c>sheet</c>, <c>tiled-sheet</c>, <c>preview</c>, <c>part</c>, <c>nest</c>, <c>cut-list</c>, <c>order-of-work</c>, <c>report</c>, <c>design</c>.</param>
/// <param name="Title">Its title in the language of the sheets.</param>
/// <param name="Part">Id of the part it draws, for a part.</param>
/// <param name="Quantity">How many are cut, for a part.</param>
/// <param name="Material">What it is cut from, for a part.</param>
/// <param name="ThicknessMm">Thickness of the stock, mm, for a part.</param>
/// <param name="Bytes">Size.</param>
/// <param name="Sha256">SHA-256 of its bytes, hexadecimal.</param>
public sealed record PackFile(
    string Path,
    string Kind,
    string Title,
    string? Part,
    int? Quantity,
    string? Material,
    double? ThicknessMm,
    long Bytes,
    string Sha256
);
