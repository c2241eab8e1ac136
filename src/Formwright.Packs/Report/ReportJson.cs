using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization;

namespace Formwright.Packs.Report;

/// <summary>Writes the report as JSON, and the schema that documents it.</summary>
public static class ReportJson
{
    private static readonly JsonSerializerOptions Options = new(ReportJsonContext.Default.Options)
    {
        TypeInfoResolver = ReportJsonContext.Default,
        // Plain text for people: é and ² as themselves; the report is a file, never put into a page as it is.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new RoundedNumber() },
    };

    /// <summary>The report as indented JSON; figures are rounded to 1e-6 of their unit, the last newline included.</summary>
    public static string Write(DesignReport report) =>
        JsonSerializer.Serialize(report, Options) + "\n";

    /// <summary>The figures of a bracket jig as indented JSON.</summary>
    public static string Write(JigReport report) =>
        JsonSerializer.Serialize(report, Options) + "\n";

    /// <summary>The order of work as indented JSON.</summary>
    public static string Write(OrderReport order) =>
        JsonSerializer.Serialize(order, Options) + "\n";

    /// <summary>The manifest of a pack as indented JSON.</summary>
    public static string Write(PackManifest manifest) =>
        JsonSerializer.Serialize(manifest, Options) + "\n";

    /// <summary>What a command about traces prints, as indented JSON.</summary>
    public static string Write(TraceDocument document) =>
        JsonSerializer.Serialize(document, Options) + "\n";

    /// <summary>JSON Schema of the report, with what each figure is.</summary>
    public static string Schema() => Schema(typeof(DesignReport), "Formwright report");

    /// <summary>JSON Schema of what the commands about traces print.</summary>
    public static string TraceSchema() => Schema(typeof(TraceDocument), "Formwright trace");

    private static string Schema(Type type, string title)
    {
        JsonSchemaExporterOptions exporter = new()
        {
            TreatNullObliviousAsNonNullable = true,
            TransformSchemaNode = (context, node) =>
            {
                object? description = context
                    .PropertyInfo?.AttributeProvider?.GetCustomAttributes(
                        typeof(System.ComponentModel.DescriptionAttribute),
                        true
                    )
                    .FirstOrDefault();
                if (
                    description
                        is System.ComponentModel.DescriptionAttribute { Description: { } text }
                    && node is JsonObject value
                )
                {
                    value.Insert(0, "description", text);
                }

                return node;
            },
        };
        JsonObject schema = (JsonObject)
            ReportJsonContext.Default.Options.GetJsonSchemaAsNode(type, exporter);
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", title);
        return schema.ToJsonString(
                new JsonSerializerOptions { WriteIndented = true, Encoder = Options.Encoder }
            ) + "\n";
    }

    // 1e-6 of a unit: below what anyone measures, above what a rebuilt compiler may change.
    private sealed class RoundedNumber : JsonConverter<double>
    {
        public override double Read(
            ref Utf8JsonReader reader,
            Type typeToConvert,
            JsonSerializerOptions options
        ) => reader.GetDouble();

        public override void Write(
            Utf8JsonWriter writer,
            double value,
            JsonSerializerOptions options
        )
        {
            if (double.IsFinite(value))
            {
                double rounded = Math.Round(value, 6);
                writer.WriteNumberValue(rounded == 0 ? 0 : rounded);
            }
            else
            {
                writer.WriteNullValue();
            }
        }
    }
}
