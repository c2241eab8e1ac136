using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>The sides and corners of a box as they are called on a sheet, y upwards.</summary>
public static class BoxExtensions
{
    extension(Box box)
    {
        public double LeftMm => box.Min.X;

        public double RightMm => box.Max.X;

        public double BottomMm => box.Min.Y;

        public double TopMm => box.Max.Y;

        public Point TopLeft => new(box.Min.X, box.Max.Y);

        public Point TopRight => box.Max;

        public Point BottomLeft => box.Min;

        public Point BottomRight => new(box.Max.X, box.Min.Y);

        public bool IsEmpty => box.Max.X < box.Min.X || box.Max.Y < box.Min.Y;

        /// <summary>A box of its sides.</summary>
        public static Box Of(double leftMm, double bottomMm, double rightMm, double topMm) =>
            new(new(leftMm, bottomMm), new(rightMm, topMm));

        /// <summary>Whether <paramref name="other"/> lies inside, with some slack.</summary>
        public bool Holds(Box other, double slackMm = 0) =>
            other.Min.X >= box.Min.X - slackMm
            && other.Max.X <= box.Max.X + slackMm
            && other.Min.Y >= box.Min.Y - slackMm
            && other.Max.Y <= box.Max.Y + slackMm;

        public bool Overlaps(Box other) =>
            box.Min.X < other.Max.X
            && other.Min.X < box.Max.X
            && box.Min.Y < other.Max.Y
            && other.Min.Y < box.Max.Y;
    }
}
