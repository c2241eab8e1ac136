using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Sheets.Body;

/// <summary>A view that stands among the schedules.</summary>
internal sealed record ViewBlock(View View) : Block
{
    public override Size Size
    {
        get
        {
            Box box = View.Bounds();
            return new Size(box.WidthMm, box.HeightMm);
        }
    }

    public override double? NamedScale => View.Scale;

    protected override void DrawAt(Ink ink, Point corner) =>
        ink.Draw(View.TopLeftAt(corner), Placement.Identity);
}
