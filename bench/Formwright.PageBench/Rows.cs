using System.Globalization;

namespace Formwright.PageBench;

/// <summary>The table of what was measured.</summary>
internal sealed class Rows
{
    private readonly List<(string What, string Measured, string Aim)> rows = [];

    public void Add(string what, IReadOnlyList<double> milliseconds, string aim)
    {
        double[] sorted = [.. milliseconds.Order()];
        rows.Add(
            (
                what,
                sorted.Length == 0
                    ? "nothing measured"
                    : string.Create(
                        CultureInfo.InvariantCulture,
                        $"{sorted[0]:0} at best, {At(sorted, 0.5):0} median, {At(sorted, 0.95):0} ms at the 95th percentile of {sorted.Length}"
                    ),
                aim
            )
        );
    }

    public void Add(string what, string measured, string aim) => rows.Add((what, measured, aim));

    public void Print(TextWriter to)
    {
        to.WriteLine("| what | measured | aim |");
        to.WriteLine("|---|---|---|");
        foreach ((string what, string measured, string aim) in rows)
        {
            to.WriteLine($"| {what} | {measured} | {aim} |");
        }
    }

    private static double At(double[] sorted, double share) =>
        sorted[Math.Min(sorted.Length - 1, (int)Math.Ceiling(share * sorted.Length) - 1)];
}
