namespace Formwright.Drawing;

/// <summary>
/// Letters the lengths of views in another unit until it is disposed, also on the threads that this one starts: for a screen, whose reader may
/// have chosen one. Sheets are made without it, in mm.
/// </summary>
public sealed class LetteredLengths : IDisposable
{
    private static readonly AsyncLocal<LetteredLengths?> Now = new();

    private readonly LetteredLengths? before = Now.Value;
    private readonly Func<double, int, string> figure;
    private readonly Func<string, bool, string> text;

    /// <param name="figure">Writes a length, mm, that in mm would have so many decimals.</param>
    /// <param name="text">Writes what stands as a text already; whether that stands for the figure of a dimension.</param>
    public LetteredLengths(Func<double, int, string> figure, Func<string, bool, string> text)
    {
        (this.figure, this.text) = (figure, text);
        Now.Value = this;
    }

    public void Dispose() => Now.Value = before;

    internal static string Figure(double mm, int decimals = 1) =>
        Now.Value?.figure(mm, decimals) ?? Figures.Mm(mm, decimals);

    internal static string OfDimension(string text) => Now.Value?.text(text, true) ?? text;

    internal static string OfLabel(string text) => Now.Value?.text(text, false) ?? text;
}
