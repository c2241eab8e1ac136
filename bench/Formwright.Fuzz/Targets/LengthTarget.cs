using System.Text;
using Formwright.Design;

namespace Formwright.Fuzz.Targets;

/// <summary>Lengths as people write them: a finite length or a fault, and a written length reads back.</summary>
internal sealed class LengthTarget : IFuzzTarget
{
    public string Name => "lengths";

    public IReadOnlyList<byte[]> Seeds { get; } =
    [
        .. new[] { "12.5", "12,5 mm", "1 3/4 in", "-3/4\"", "1½ in", "0.65 m" }.Select(
            Encoding.UTF8.GetBytes
        ),
    ];

    public IReadOnlyList<string> Pieces { get; } =
    [
        "0",
        "9",
        "1e9",
        ",",
        ".",
        "/",
        "⁄",
        " ",
        "-",
        "−",
        "+",
        "½",
        "⅞",
        "\"",
        "″",
        "mm",
        "in",
        "cm",
        "pulgadas",
        "parsec",
        "٣",
        "NaN",
        "∞",
    ];

    public int MostChanges => 4;

    public string Try(byte[] input, Random random)
    {
        LengthFault fault = Lengths.Read(Encoding.UTF8.GetString(input), out double mm);
        if (fault != LengthFault.None)
        {
            return double.IsNaN(mm)
                ? fault.ToString()
                : throw new BrokenPromiseException("a fault and a length");
        }

        if (!double.IsFinite(mm))
        {
            throw new BrokenPromiseException("an endless length");
        }

        if (Math.Abs(mm) > 1e6)
        {
            return "far";
        }

        WrittenLength written =
            random.Next(2) == 0
                ? LengthFormat.InchFraction(mm)
                : LengthFormat.Millimetres(mm, random.Next(7));
        if (
            Lengths.Read(written.Text, out double back) != LengthFault.None
            || Math.Abs(back - mm - written.ErrorMm) > 1e-9 * Math.Max(1, Math.Abs(mm))
        )
        {
            throw new BrokenPromiseException($"{mm} is written {written.Text} and read {back}");
        }

        return "a length";
    }
}
