using Formwright.Curves;
using Formwright.Web.Components.Board;

namespace Formwright.Web.Tests;

public sealed class HoleTargetTests
{
    // 40 pixels of the screen, in its mm.
    private const double FingertipMm = 40 * 25.4 / 96;

    [Fact]
    public void AFingertipHasItsRoomUnlessANeighbourIsNear()
    {
        HoleTarget alone = Target(0, 0, 1.2);
        HoleTarget one = Target(50, 0, 1.2);
        HoleTarget other = Target(57, 0, 1.2);
        HoleTarget[] all = [alone, one, other];
        Assert.True(2 * alone.Reach(all, 1) >= FingertipMm);
        Assert.True(2 * alone.Reach(all, 0.85) * 0.85 >= FingertipMm);
        Assert.Equal(3.5, one.Reach(all, 1), 9);
        Assert.Equal(3.5, other.Reach(all, 1), 9);
        // Nor is it ever smaller than the hole.
        Assert.Equal(12, Target(0, 30, 12).Reach(all, 1), 9);
    }

    private static HoleTarget Target(double x, double y, double radius) =>
        new(default, 8, new Point(x, y), radius);
}
