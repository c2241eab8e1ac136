using Formwright.Design;
using Formwright.Web.Components.Board;
using Formwright.Web.Designs;
using Formwright.Web.Reading;
using Microsoft.Extensions.Logging.Abstractions;

namespace Formwright.Web.Tests;

public sealed class DesignListsTests : IDisposable
{
    private static readonly Reader English = Reader.Parse("en.mm.point.light");
    private readonly DesignFolder folder = new(
        Path.Combine(Path.GetTempPath(), $"formwright-lists-{Guid.NewGuid():N}")
    );
    private readonly DesignSession session;

    public DesignListsTests()
    {
        English.Apply();
        folder.Write("Heron", DesignModels.TextOf("heron"));
        session = new(
            folder,
            "Heron",
            new Behind(NullLogger<Behind>.Instance),
            (_, _, _) => throw new InvalidOperationException("Nothing is to be worked out here.")
        );
    }

    public void Dispose()
    {
        session.Dispose();
        Directory.Delete(folder.Root, recursive: true);
    }

    [Fact]
    public void WhatTheToolChoseIsWrittenOutUnchanged()
    {
        InstrumentDesign before = session.State.Design!;
        Add("rosette.rings");
        Add("back.bars");
        InstrumentDesign after = session.State.Design!;
        Assert.Equal(before.Rosette.Rings, after.Rosette.Rings);
        Assert.Equal(before.Back.Bars, after.Back.Bars);
        Assert.Equal(before.Rosette.Rings.Count, DesignLists.Count(View, "rosette.rings"));
        Assert.Equal(before.Back.Bars.Count, DesignLists.Count(View, "back.bars"));
    }

    [Theory]
    [InlineData("rosette.rings")]
    [InlineData("back.bars")]
    [InlineData("harmonic_bars")]
    [InlineData("braces")]
    [InlineData("stock.sheet")]
    [InlineData("stock.hardware")]
    public void AnEntryIsAddedAndTakenAway(string list)
    {
        if (DesignLists.Count(View, list) == 0)
        {
            Add(list);
        }

        int count = DesignLists.Count(View, list);
        string before = session.State.Text;
        Add(list);
        Assert.Equal(count + 1, DesignLists.Count(View, list));
        Assert.Empty(session.Set($"{list}[{count}]", null));
        Assert.Equal(count, DesignLists.Count(View, list));
        // A blank may stay where it stood.
        Assert.Equal(before, session.State.Text, ignoreAllWhiteSpace: true);
    }

    [Fact]
    public void ACopyOfABarStandsBesideIt()
    {
        Add("harmonic_bars");
        Assert.Equal([88.0, 206, 226], session.State.Design!.HarmonicBars.Select(bar => bar.AtMm));
    }

    private BoardView View => new(session, session.State, English);

    private void Add(string list) => Assert.Empty(session.Set(DesignLists.Added(View, list)));
}
