using System.Globalization;
using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>
/// Model geometry placed on the sheet: scaled, turned and moved, never mirrored unless it is called a mirrored template.
/// </summary>
/// <param name="Items">What is drawn, in model mm.</param>
/// <param name="Frame">From where it is seen.</param>
public sealed record View(IReadOnlyList<Item> Items, ViewFrame Frame = ViewFrame.Part) : Item
{
    /// <summary>Turns a frame whose x runs from nut to tail so that the neck is up: right is y (or y_b), up is -x.</summary>
    public const double NeckUp = -Math.PI / 2;

    private readonly double scale = 1;
    private readonly double heights = 1;

    /// <summary>Name of the view, instead of that of its frame; empty for none.</summary>
    public string? Label { get; init; }

    /// <summary>Its label, or the name of its frame; empty for none.</summary>
    public string Name => Label ?? Words.Of($"view.{Frame}");

    /// <summary>Sheet point on which <see cref="Origin"/> stands.</summary>
    public Point At { get; init; }

    /// <summary>Model point that stands on <see cref="At"/>.</summary>
    public Point Origin { get; init; }

    public override double? NamedScale => Scale;

    /// <summary>Sheet mm per model mm: 1 full size, 0.5 for 1:2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a positive finite number.</exception>
    public double Scale
    {
        get => scale;
        init => scale = Positive(value);
    }

    /// <summary>How many times true the model's y is drawn; the label says so where it is not 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a positive finite number.</exception>
    public double Heights
    {
        get => heights;
        init => heights = Positive(value);
    }

    /// <summary>Turn on the sheet, counter-clockwise.</summary>
    public double RotationRad { get; init; }

    /// <summary>Mirrors the model's y. Only for a template that is to be turned over; the label says so.</summary>
    public bool MirroredTemplate { get; init; }

    public Placement Placement =>
        Placement.Of(At, Origin, Scale, RotationRad, Heights, MirroredTemplate);

    /// <summary>The box around all that it draws, in sheet mm.</summary>
    public Box Bounds()
    {
        Ink ink = new();
        return ink.Measure(() => Draw(ink, Placement.Identity));
    }

    /// <summary>The same view, moved so that all that it draws has its middle in the middle of a box.</summary>
    public View CentredIn(Box area)
    {
        Vector step = area.Centre - Bounds().Centre;
        return this with { At = At + step };
    }

    /// <summary>The same view, moved so that the box around it has its upper left corner there.</summary>
    public View TopLeftAt(Point corner)
    {
        Vector step = corner - Bounds().TopLeft;
        return this with { At = At + step };
    }

    /// <summary>The same view at the largest scale of ISO 5455 (1:1, 1:2, 1:5, 1:10, 1:20, 2:1, 5:1, 10:1) that fits the box, in its middle.</summary>
    /// <param name="area">Where it must fit, sheet mm.</param>
    /// <param name="largest">No larger than this.</param>
    public View FittedIn(Box area, double largest = 1)
    {
        double[] scales = [10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05];
        View? fitting = scales
            .Where(s => s <= largest)
            .Select(s => this with { Scale = s })
            .FirstOrDefault(v =>
                v.Bounds() is var box
                && box.WidthMm <= area.WidthMm
                && box.HeightMm <= area.HeightMm
            );
        return (fitting ?? this with { Scale = scales[^1] }).CentredIn(area);
    }

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        Placement own = placement.After(Placement);
        string name = Name;
        Box box = ink.Measure(() =>
        {
            foreach (Item item in Items)
            {
                ink.Draw(item, own);
            }
        });
        if (Label != "" && !box.IsEmpty)
        {
            box = box.With(ink.Measure(() => DrawLabel(ink, name, box.TopLeft)));
        }

        ink.Add(new DrawnView(name, Scale, box));
    }

    /// <summary>A scale as it is written: full size, 1:2, 2:1.</summary>
    public static string ScaleText(double scale) =>
        scale == 1 ? Words.Of("scale.full")
        : scale < 1 ? $"1:{Number(1 / scale)}"
        : $"{Number(scale)}:1";

    private void DrawLabel(Ink ink, string name, Point corner)
    {
        string about =
            Heights == 1
                ? ScaleText(Scale)
                : Words.Format("scale.heights", ScaleText(Scale), Number(Heights));
        if (MirroredTemplate)
        {
            about = $"{about} · {Words.Of("view.mirrored")}";
        }

        Point at = corner + new Vector(0, 4.5);
        if (name.Length > 0)
        {
            ink.Text(name, at, TextStyle.Heading);
            at += new Vector(TextStyle.Heading.WidthMm(name) + 3, 0);
        }

        ink.Text(about, at, TextStyle.Body);
    }

    private static string Number(double value) =>
        Math.Round(value, 3).ToString("0.###", CultureInfo.CurrentCulture);

    private static double Positive(double value) =>
        double.IsFinite(value) && value > 0
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A scale is positive.");
}
