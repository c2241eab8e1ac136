using Formwright.Curves;
using Formwright.Fields;

namespace Formwright.Sheets.Body;

/// <summary>
/// A plate's shape sampled on a grid and linear between, for lines of equal height on a picture. Beyond the rim and in the soundhole it goes
/// on as the mean of its neighbours, so that no line runs along an edge; what is drawn there is to be cut off.
/// </summary>
internal sealed class SampledShape : IHeightField
{
    private const double Beyond = -1e4;

    private readonly double[,] heights;
    private readonly Point corner;
    private readonly double stepMm;

    public SampledShape(IHeightField shape, Func<Point, bool> isOnPlate, double stepMm)
    {
        this.stepMm = stepMm;
        Peak = shape.Peak;
        Box box = shape.Region.Bounds.Grown(2 * stepMm);
        corner = box.Min;
        Region = Region.Of([
            box.Min,
            new Point(box.Max.X, box.Min.Y),
            box.Max,
            new Point(box.Min.X, box.Max.Y),
        ]);
        int along = (int)Math.Ceiling(box.WidthMm / stepMm) + 1;
        int across = (int)Math.Ceiling(box.HeightMm / stepMm) + 1;
        heights = new double[along + 1, across + 1];
        for (int i = 0; i <= along; i++)
        {
            for (int j = 0; j <= across; j++)
            {
                Point place = corner + new Vector(i * stepMm, j * stepMm);
                heights[i, j] = isOnPlate(place) ? shape.HeightAt(place) : double.NaN;
            }
        }

        while (Filled()) { }
    }

    public Region Region { get; }

    public HeightPeak Peak { get; }

    // Beyond the grid far below every height: the search for lines takes what lies outside as lower.
    public double HeightAt(Point place) => Region.Contains(place) ? Between(place) : Beyond;

    public HeightSample At(Point place)
    {
        double h = stepMm / 4;
        Vector slope = new(
            (Between(place + new Vector(h, 0)) - Between(place - new Vector(h, 0))) / (2 * h),
            (Between(place + new Vector(0, h)) - Between(place - new Vector(0, h))) / (2 * h)
        );
        return new(HeightAt(place), slope, 0, 0, 0);
    }

    private double Between(Point place)
    {
        double x = (place.X - corner.X) / stepMm;
        double y = (place.Y - corner.Y) / stepMm;
        int i = Math.Clamp((int)x, 0, heights.GetLength(0) - 2);
        int j = Math.Clamp((int)y, 0, heights.GetLength(1) - 2);
        double s = Math.Clamp(x - i, 0, 1);
        double t = Math.Clamp(y - j, 0, 1);
        return (heights[i, j] * (1 - s) * (1 - t))
            + (heights[i + 1, j] * s * (1 - t))
            + (heights[i, j + 1] * (1 - s) * t)
            + (heights[i + 1, j + 1] * s * t);
    }

    // One ring further into what is not plate; false when all is filled.
    private bool Filled()
    {
        double[,] before = (double[,])heights.Clone();
        bool any = false;
        for (int i = 0; i < before.GetLength(0); i++)
        {
            for (int j = 0; j < before.GetLength(1); j++)
            {
                if (!double.IsNaN(before[i, j]))
                {
                    continue;
                }

                double sum = 0;
                int count = 0;
                for (int k = Math.Max(0, i - 1); k <= Math.Min(before.GetLength(0) - 1, i + 1); k++)
                {
                    for (
                        int l = Math.Max(0, j - 1);
                        l <= Math.Min(before.GetLength(1) - 1, j + 1);
                        l++
                    )
                    {
                        if (!double.IsNaN(before[k, l]))
                        {
                            sum += before[k, l];
                            count++;
                        }
                    }
                }

                if (count > 0)
                {
                    heights[i, j] = sum / count;
                    any = true;
                }
            }
        }

        return any;
    }
}
