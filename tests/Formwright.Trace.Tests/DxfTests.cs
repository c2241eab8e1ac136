using Formwright.Curves;
using Formwright.Trace.Files;
using Formwright.Trace.Geometry;
using Formwright.Trace.Joining;
using Xunit;

namespace Formwright.Trace.Tests;

/// <summary>DXF files written by ezdxf (files/make_dxf.py), R12 to 2018.</summary>
public class DxfTests
{
    [Theory]
    [InlineData(
        "line-arc-r12.dxf",
        (2 * 200) + (2 * Math.PI * 50),
        (200 * 100) + (Math.PI * 2500),
        false
    )]
    [InlineData(
        "circle-block-inch.dxf",
        2 * Math.PI * 7.5 * 25.4,
        Math.PI * 7.5 * 7.5 * 25.4 * 25.4,
        true
    )]
    // Perimeter of the ellipse with semi-axes (10, 6): 51.0539977268; ten times as large.
    [InlineData("ellipse-2010.dxf", 510.539977268, Math.PI * 6000, true)]
    [InlineData("lwpolyline-2018-cm.dxf", 2 * Math.PI * 80, Math.PI * 6400, true)]
    [InlineData(
        "polyline-r12.dxf",
        (2 * 200) + (2 * Math.PI * 25),
        20_000 - ((4 - Math.PI) * 625),
        false
    )]
    [InlineData("spline-rational-2007.dxf", 2 * Math.PI * 90, Math.PI * 8100, true)]
    public void Closed_curves_have_their_length_and_area(
        string name,
        double length,
        double area,
        bool isStated
    )
    {
        TraceFile file = Given.Read(name);
        Trail trail = SvgTests.Only(file);
        Assert.True(trail.IsClosed);
        // Chords of at most 1 mm, within 0.005 mm of the curve.
        Assert.Equal(length, SvgTests.Length(trail), 1e-4 * length);
        Assert.Equal(area, SvgTests.Area(trail), 1e-4 * area);
        Assert.Equal(isStated, file.Unit.IsStated);
        Assert.Empty(file.Notes);
    }

    [Fact]
    public void Arcs_are_kept_as_arcs()
    {
        TraceFile file = Given.Read("line-arc-r12.dxf");
        Assert.Equal(
            [50.0, 50],
            file.Curves.SelectMany(c => c.Pieces)
                .OfType<RoundPiece>()
                .Select(a => Math.Round(a.RadiusMm, 9))
        );
    }

    [Fact]
    public void A_block_is_placed_turned_and_scaled()
    {
        Trail trail = SvgTests.Only(Given.Read("circle-block-inch.dxf"));
        Assert.Equal(40 * 25.4, trail.Box.Centre.X, 1e-6);
        Assert.Equal(-7 * 25.4, trail.Box.Centre.Y, 1e-6);
    }

    [Fact]
    public void A_cubic_spline_is_what_Cox_and_de_Boor_say()
    {
        // Open uniform knots 0 0 0 0 1 2 2 2 2: halfway the basis is 0, 1/4, 1/2, 1/4, 0.
        TraceFile file = Given.Read("spline-2013.dxf");
        Piece spline = Assert.IsType<SplinePiece>(Assert.Single(file.Curves).Pieces[0]);
        Assert.Equal(new Point(0, 0), spline.At(0));
        Assert.Equal(240, spline.At(1).X, 1e-9);
        Point middle = spline.At(0.5);
        Assert.Equal((40.0 / 4) + (110.0 / 2) + (190.0 / 4), middle.X, 1e-9);
        Assert.Equal((90.0 / 4) + (120.0 / 2) + (80.0 / 4), middle.Y, 1e-9);
        Point reversed = spline.Reversed().At(0.5);
        Assert.Equal(middle.X, reversed.X, 1e-9);
        Assert.Equal(middle.Y, reversed.Y, 1e-9);
    }

    [Fact]
    public void A_digitised_outline_with_a_bump_among_other_things()
    {
        TraceFile file = Given.Read("outline-2000.dxf");
        Assert.Contains(
            file.Notes,
            note => note.Message.Contains("TEXT", StringComparison.Ordinal)
        );
        TraceResult trace = Given.Run(file);
        // The script's own figures: heel up at (300, 700), 0.02 mm of noise on one side, 0.3 mm over 20 mm at 520 mm of arc.
        Assert.Equal(
            -0.5 * Math.PI,
            Math.IEEERemainder(trace.Alignment.AngleRad, 2 * Math.PI),
            1e-3
        );
        Assert.Equal(300, trace.Alignment.HeelInFile.X, 0.05);
        Assert.Equal(700, trace.Alignment.HeelInFile.Y, 0.05);
        Bump bump = Assert.Single(trace.Bumps);
        Assert.Equal(0.3, bump.HeightMm, 0.05);
        Assert.Equal(520, bump.ArcMm, 5.0);
        Assert.Equal(TraceSide.Treble, bump.Side);
        Assert.Equal(717, trace.Fair.HalfPerimeterMm, 0.3);
    }

    [Fact]
    public void Shuffled_lines_without_a_unit_are_joined_and_scaled_by_a_known_length()
    {
        TraceFile file = Given.Read("outline-lines-r12.dxf");
        Assert.False(file.Unit.IsStated);
        double body = Given.Run(Given.Read("outline-2000.dxf")).Fair.BodyLengthMm;
        TraceResult trace = Given.Run(
            file,
            new TraceOptions { Known = new KnownLength(KnownLengthKind.BodyLength, body) }
        );
        Assert.Equal(10, trace.ScaleFactor, 0.01);
        Assert.Equal(717, trace.Fair.HalfPerimeterMm, 0.3);
        Assert.Empty(trace.Bumps);
    }

    [Fact]
    public void A_layer_can_be_chosen()
    {
        TraceFile file = Given.Read("outline-2000.dxf");
        TraceOutcome hole = Tracing.Run(file, new TraceOptions { Layer = "hole" });
        Assert.Equal(84 * Math.PI, 2 * hole.Result!.Fair.HalfPerimeterMm, 0.05);
        TraceOutcome none = Tracing.Run(file, new TraceOptions { Layer = "NOPE" });
        Assert.Contains("TRACE", Assert.Single(none.Diagnostics).Message, StringComparison.Ordinal);
    }
}
