using System.Globalization;
using System.Text;
using Formwright.Design;
using Formwright.Instrument.Body;
using Formwright.Trace;
using Formwright.Web.Designs;

namespace Formwright.Web.Tests;

public sealed class TraceUploadTests
{
    [Theory]
    [InlineData("x.svg", true)]
    [InlineData("x.DXF", true)]
    [InlineData("x.csv", true)]
    [InlineData("x.toml", false)]
    [InlineData("svg", false)]
    public void ATraceIsToldByItsEnding(string name, bool isTrace) =>
        Assert.Equal(isTrace, TraceUpload.IsTrace(name));

    [Fact]
    public async Task ACleanTableOfWidthsBecomesAnOutlineToLayOver()
    {
        Curves.Outline heron = BodyOutline
            .Solve(DesignText.Parse(DesignModels.TextOf("heron"), "heron").Design!.Outline)
            .Outline!;
        StringBuilder table = new("station,half_width\n");
        for (double u = 0; u <= 488; u += 4)
        {
            table.AppendLine(
                CultureInfo.InvariantCulture,
                $"{u:0.###},{heron.WidthAt(u) / 2:0.###}"
            );
        }

        using MemoryStream bytes = new(Encoding.UTF8.GetBytes(table.ToString()));
        TraceOutcome outcome = await TraceUpload.ReadAsync(bytes, "heron.csv", null);
        Assert.True(outcome.Succeeded, string.Join(' ', outcome.Diagnostics));
        Overlay overlay = Overlay.Of("heron.csv", outcome.Result);
        Assert.Equal(488, overlay.Fair.BodyLengthMm, 0.5);
        Assert.Equal(368, overlay.Fair.WidthAt(356), 0.5);
    }

    [Fact]
    public async Task ABumpOfATraceIsShownWhereItIs()
    {
        Curves.Outline heron = BodyOutline
            .Solve(DesignText.Parse(DesignModels.TextOf("heron"), "heron").Design!.Outline)
            .Outline!;
        StringBuilder table = new("station,half_width\n");
        for (double u = 0; u <= 488; u += 2)
        {
            // Half a cosine, 1 mm proud over 40 mm at station 300.
            double share = (u - 300) / 40;
            double bump = Math.Abs(share) < 0.5 ? (1 + Math.Cos(2 * Math.PI * share)) / 2 : 0;
            table.AppendLine(
                CultureInfo.InvariantCulture,
                $"{u:0.###},{(heron.WidthAt(u) / 2) + bump:0.####}"
            );
        }

        using MemoryStream bytes = new(Encoding.UTF8.GetBytes(table.ToString()));
        TraceOutcome outcome = await TraceUpload.ReadAsync(bytes, "bumped.csv", null);
        Assert.True(outcome.Succeeded, string.Join(' ', outcome.Diagnostics));
        Bump worst = Overlay.Of("bumped.csv", outcome.Result).Bumps[0];
        Assert.True(worst.IsProud);
        Assert.Equal(300, worst.UMm, 5.0);
        Assert.Equal(1, worst.HeightMm, 0.15);
    }

    [Theory]
    [InlineData(
        "bomb.svg",
        "<!DOCTYPE s [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;\">]><svg>&b;</svg>"
    )]
    [InlineData(
        "outside.svg",
        "<!DOCTYPE s [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><svg><text>&x;</text></svg>"
    )]
    [InlineData("deep.svg", "<svg><path d=\"M0 0L1e308 1e308L-1e308 nan\"/></svg>")]
    [InlineData("empty.csv", "")]
    [InlineData("numbers.csv", "1,1e999\n2,-1e999\n3,nan\n")]
    [InlineData("broken.dxf", "0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n")]
    [InlineData("binary.dxf", "\u001a\0\u0001\u0002SECTION")]
    public async Task WhatIsHandedInMayHoldAnything(string name, string text)
    {
        using MemoryStream bytes = new(Encoding.UTF8.GetBytes(text));
        TraceOutcome outcome = await TraceUpload.ReadAsync(bytes, name, 488);
        Assert.False(outcome.Succeeded);
        Assert.NotEmpty(outcome.Diagnostics);
        Assert.DoesNotContain("root:", string.Join(' ', outcome.Diagnostics));
    }
}
