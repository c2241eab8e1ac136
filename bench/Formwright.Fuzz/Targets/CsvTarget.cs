namespace Formwright.Fuzz.Targets;

/// <summary>Tables as people and spreadsheets write them.</summary>
internal sealed class CsvTarget : TraceFileTarget
{
    public override string Name => "csv";

    public override IReadOnlyList<byte[]> Seeds { get; } =
        Texts(
            "x;y\n0,0;0,0\n10,5;20,25\n30;40\n50;0\n",
            "station (mm),half width (mm)\n0,0\n20,83.3\n40,111\n488,0\n",
            "# a remark\nu\tbass\ttreble\n0\t0\t0\n20\t83.31\t83.32\n40\t111\t111\n",
            "0 0\n1 1\n2 3\n\n5 5\n6 7\n8 8\n",
            "\"x\",\"y\"\r\n\"1,5\",\"2,5\"\r\n\"3,5\",\"4,5\"\r\n"
        );

    public override IReadOnlyList<string> Pieces { get; } =
    [
        ";",
        ",",
        "\t",
        " ",
        "\n",
        "\r",
        "\"",
        "#",
        "1.234,5",
        "1,234.5",
        "12,5",
        "-0",
        "+1",
        "1e5",
        "1e999",
        "NaN",
        "∞",
        "−3",
        "mm",
        "in",
        "cm",
        "(in)",
        "x",
        "y",
        "width",
        "half width",
        "ancho",
        "estación",
        "bass",
        "treble",
        "\uFEFF",
        "\u00A0",
        "\u2028",
        "=1+1",
        "\u001b[31m",
    ];
}
