using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>
/// The words bass and treble on both sides of the centreline. On the front treble is towards +y; on the workboard,
/// where the instrument lies face down, treble is towards -y_b.
/// </summary>
/// <param name="Frame">Front or workboard.</param>
/// <param name="XMm">Where along the centreline.</param>
/// <param name="AcrossMm">Distance from the centreline to the middle of each word.</param>
public sealed record BassTreble(ViewFrame Frame, double XMm, double AcrossMm) : Item
{
    public TextStyle Style { get; init; } = TextStyle.Body;

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        double treble = Frame switch
        {
            ViewFrame.Front => AcrossMm,
            ViewFrame.Workboard => -AcrossMm,
            _ => throw new InvalidOperationException($"{Frame} has no bass and treble side."),
        };
        Letter("treble", treble);
        Letter("bass", -treble);

        void Letter(string word, double y) =>
            ink.Text(
                Words.Of(word),
                placement.Apply(new Point(XMm, y)),
                Style,
                Align.Centre,
                Rise.Middle,
                clear: true
            );
    }
}
