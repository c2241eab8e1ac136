using System.Collections.Frozen;
using System.Globalization;
using Formwright.Design.Reading;
using Formwright.Design.Sections;

namespace Formwright.Instrument.Wood;

/// <summary>The species table, read from the embedded <c>species.tsv</c>.</summary>
public static class SpeciesTable
{
    private static readonly FrozenDictionary<Species, SpeciesFigures> Rows = Read();

    /// <summary>The row of a species.</summary>
    public static SpeciesFigures Of(Species species) => Rows[species];

    /// <summary>All rows, in the order of the enum.</summary>
    public static IReadOnlyList<SpeciesFigures> All { get; } =
    [.. Enum.GetValues<Species>().Select(Of)];

    private static FrozenDictionary<Species, SpeciesFigures> Read()
    {
        using Stream stream =
            typeof(SpeciesTable).Assembly.GetManifestResourceStream("species.tsv")
            ?? throw new InvalidOperationException("species.tsv is not embedded.");
        using StreamReader reader = new(stream);
        string[] lines = reader
            .ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        string[] head = lines[0].Split('\t');
        Dictionary<string, Dictionary<string, string>> cells = lines
            .Skip(1)
            .Select(line => head.Zip(line.Split('\t')).ToDictionary(c => c.First, c => c.Second))
            .ToDictionary(row => row["species"]);
        return Enum.GetValues<Species>()
            .ToFrozenDictionary(each => each, each => RowOf(each, cells));
    }

    private static SpeciesFigures RowOf(
        Species species,
        Dictionary<string, Dictionary<string, string>> cells
    )
    {
        Dictionary<string, string> row = cells[Choices.NameOf(species)];
        double saturation = Number(row, "fibre_saturation_percent");
        double share = saturation / (saturation - Number(row, "shrunk_to_percent")) / 100;
        double radial = Number(row, "radial_shrinkage_percent") * share;
        double tangential = Number(row, "tangential_shrinkage_percent") * share;
        bool published = row["radial_per_percent"].Length > 0;
        return new SpeciesFigures(
            species,
            row["kind"] == "softwood",
            Number(row, "density_kg_m3"),
            row["density_source"],
            1000 * Number(row, "bending_modulus_gpa"),
            row["modulus_source"],
            radial,
            tangential,
            row["shrinkage_source"],
            published
                ? Number(row, "radial_per_percent")
                : Movement.CoefficientOf(radial, saturation),
            published
                ? Number(row, "tangential_per_percent")
                : Movement.CoefficientOf(tangential, saturation),
            published,
            RatiosOf(row, cells),
            row["ratio_source"]
        );
    }

    // A row without ratios of its own takes those of Sitka spruce (conifers) or sugar maple, and its source says so.
    private static ElasticRatios RatiosOf(
        Dictionary<string, string> row,
        Dictionary<string, Dictionary<string, string>> cells
    )
    {
        Dictionary<string, string> lender = cells[
            row["kind"] == "softwood" ? "sitka-spruce" : "sugar-maple"
        ];
        double Ratio(string key) => Number(row[key].Length > 0 ? row : lender, key);
        return new ElasticRatios(
            Ratio("et_el"),
            Ratio("er_el"),
            Ratio("glr_el"),
            Ratio("glt_el"),
            Ratio("nu_lr"),
            Ratio("nu_lt")
        );
    }

    private static double Number(Dictionary<string, string> row, string key) =>
        double.Parse(row[key], CultureInfo.InvariantCulture);
}
