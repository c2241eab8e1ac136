using AngleSharp.Dom;
using Bunit;
using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Web.Components.Parts;
using Formwright.Web.Reading;

namespace Formwright.Web.Tests;

public sealed class LengthInputTests
{
    private static readonly KeySpec Width = DesignText
        .Keys()
        .First(spec => spec.Path == "outline.waist.width");
    private static readonly KeySpec Radius = DesignText
        .Keys()
        .First(spec => spec.Path == "outline.waist.radius");

    [Theory]
    [InlineData("en.mm.point.light", "12.5", null)]
    [InlineData("en.mm.point.light", "123.5", "123.5")]
    [InlineData("en.mm.point.light", "123,5", "123.5")]
    [InlineData("es.mm.comma.light", "123,5", "123.5")]
    [InlineData("es.mm.comma.light", "123.5", "123.5")]
    [InlineData("en.mm.point.light", "123.4567", "123.4567")]
    [InlineData("en.mm.point.light", "9 1/4 in", "\"9 1/4 in\"")]
    [InlineData("en.mm.point.light", "1,234.5", null)]
    [InlineData("en.mm.point.light", "12e1", null)]
    [InlineData("en.in.point.light", "9 1/4", "\"9 1/4 in\"")]
    [InlineData("es.in.comma.light", "9,25", "\"9.25 in\"")]
    [InlineData("en.in.point.light", "235 mm", "235")]
    [InlineData("en.mm.point.light", "23.5 cm", "\"23.5 cm\"")]
    public void WhatIsTypedGoesIntoTheFileAsItIsMeant(string reader, string typed, string? toml)
    {
        using BunitContext context = new();
        List<string?> set = [];
        IElement input = Render(context, Width, reader, 236, set).Find("input");
        input.Change(typed);
        Assert.Equal(toml is null ? [] : [toml], set);
    }

    [Fact]
    public void OutOfRangeKeepsWhatWasTypedAndSaysTheRange()
    {
        using BunitContext context = new();
        List<string?> set = [];
        IRenderedComponent<LengthInput> shown = Render(
            context,
            Width,
            "en.mm.point.light",
            236,
            set
        );
        shown.Find("input").Change("2");
        Assert.Empty(set);
        Assert.Equal("2", shown.Find("input").GetAttribute("value"));
        string fault = shown.Find("[role=alert]").TextContent;
        Assert.Contains("20", fault);
        Assert.Contains("1000", fault);
        Assert.Contains(Width.Text, fault);
        shown.Find("input").KeyDown("Escape");
        Assert.Equal("236", shown.Find("input").GetAttribute("value"));
    }

    [Theory]
    [InlineData("en.mm.point.light", 236.4567, "236.4567")]
    [InlineData("es.mm.comma.light", 236.4567, "236,4567")]
    [InlineData("en.in.point.light", 234.95, "9 1/4")]
    [InlineData("en.in.point.light", 236, "9.29134")]
    public void TheWholeValueIsShown(string reader, double mm, string shown)
    {
        using BunitContext context = new();
        Assert.Equal(
            shown,
            Render(context, Width, reader, mm, []).Find("input").GetAttribute("value")
        );
    }

    [Theory]
    [InlineData("en.mm.point.light", "ArrowUp", false, "236.1")]
    [InlineData("en.mm.point.light", "ArrowDown", true, "235")]
    public void ArrowsStep(string reader, string key, bool shift, string toml)
    {
        using BunitContext context = new();
        List<string?> set = [];
        Render(context, Width, reader, 236, set)
            .Find("input")
            .KeyDown(
                new Microsoft.AspNetCore.Components.Web.KeyboardEventArgs
                {
                    Key = key,
                    ShiftKey = shift,
                }
            );
        Assert.Equal([toml], set);
    }

    [Fact]
    public void EmptyLeavesAnOpenKeyOpenAndIsRefusedForOneThatMustBeGiven()
    {
        using BunitContext context = new();
        List<string?> set = [];
        Render(context, Radius, "en.mm.point.light", 80, set).Find("input").Change("");
        Assert.Equal([null], set);
        set.Clear();
        IRenderedComponent<LengthInput> width = Render(
            context,
            Width,
            "en.mm.point.light",
            236,
            set
        );
        width.Find("input").Change("");
        Assert.Empty(set);
        Assert.NotEmpty(width.FindAll("[role=alert]"));
    }

    private static IRenderedComponent<LengthInput> Render(
        BunitContext context,
        KeySpec spec,
        string reader,
        double? mm,
        List<string?> set
    )
    {
        Reader who = Reader.Parse(reader);
        who.Apply();
        return context.Render<LengthInput>(parameters =>
            parameters
                .AddCascadingValue(who)
                .Add(input => input.Spec, spec)
                .Add(input => input.ValueMm, mm)
                .Add(input => input.Label, "Waist, width")
                .Add(
                    input => input.Set,
                    toml =>
                    {
                        set.Add(toml);
                        return null;
                    }
                )
        );
    }
}
