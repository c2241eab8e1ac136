using System.Text.Json.Serialization;

namespace Formwright.Packs.Report;

[JsonSourceGenerationOptions(
    WriteIndented = true,
    NewLine = "\n",
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(DesignReport))]
[JsonSerializable(typeof(JigReport))]
[JsonSerializable(typeof(PackManifest))]
[JsonSerializable(typeof(OrderReport))]
[JsonSerializable(typeof(TraceDocument))]
internal sealed partial class ReportJsonContext : JsonSerializerContext;
