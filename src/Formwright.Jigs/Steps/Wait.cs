namespace Formwright.Jigs.Steps;

/// <summary>How long work lies: common practice throughout; what the tin says goes first.</summary>
/// <param name="Kind">What it waits for: a key of the resources, <c>glue</c>.</param>
/// <param name="ClampHours">Hours in the clamps; 0 where nothing is clamped.</param>
/// <param name="Hours">Hours until the next step.</param>
public sealed record Wait(string Kind, double ClampHours, double Hours)
{
    /// <summary>Wood glue (PVA) at 20 °C: an hour in the clamps, a day until it is planed or loaded (common practice).</summary>
    public static Wait Glue { get; } = new("glue", 1, 24);

    /// <summary>A coat of shellac or varnish and the next, then a day until it is waxed and stood on (common practice).</summary>
    public static Wait Finish { get; } = new("finish", 0, 24);

    /// <summary>Sheets lie in the shop with air all round before they are cut (common practice).</summary>
    public static Wait Rest { get; } = new("rest", 0, 72);

    /// <summary>The wait in the reader's words.</summary>
    public string Text => JigsWords.Of.Format($"wait.{Kind}", Hours, ClampHours);
}
