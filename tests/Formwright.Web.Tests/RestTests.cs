using Formwright.Design;
using Formwright.Packs;
using Formwright.Web.Designs;

namespace Formwright.Web.Tests;

/// <summary>When a study begins while a hand drags: as soon as the hand rests, or a quick one now and then. Time passes as the test says.</summary>
public sealed class RestTests : IDisposable
{
    private static readonly Lazy<Study> Heron = new(() =>
        Study.Of(DesignText.Parse(DesignModels.TextOf("heron"), "heron").Design!)
    );

    private readonly DesignFolder folder = new(
        Path.Combine(Path.GetTempPath(), $"formwright-rest-{Guid.NewGuid():N}")
    );
    private readonly HandTime time = new();
    private readonly List<(double WidthMm, long? Builds)> begun = [];
    private readonly DesignSession session;

    public RestTests()
    {
        folder.Write("Heron", DesignModels.TextOf("heron"));
        session = new(
            folder,
            "Heron",
            new Behind(new ToldFaults()),
            (design, _, builds) =>
            {
                lock (begun)
                {
                    begun.Add((design.Outline.LowerBout.WidthMm, builds));
                }

                return Heron.Value;
            },
            time
        );
    }

    public void Dispose()
    {
        session.Dispose();
        Directory.Delete(folder.Root, recursive: true);
    }

    [Fact]
    public async Task AStudyBeginsFortyMsAfterTheLastMove()
    {
        await Opened();
        // With no regard to when the drag began: a hand that rests at 65 ms is not looked at every 40 ms.
        Move(370);
        Pass(30);
        Move(371);
        Pass(30);
        Move(372);
        Pass(5);
        Move(373);
        Pass(39);
        Assert.Empty(Begun());
        Pass(1);
        Assert.Equal([(373.0, null)], Begun(atLeast: 1));
        await session.WhenSettled();
        Assert.False(session.State.IsPending);
    }

    [Fact]
    public async Task AHandThatGoesOnSeesAQuickStudyAndTheWholeOneWhenItRests()
    {
        await Opened();
        for (int i = 0; i < 10; i++)
        {
            Move(370 + i);
            Pass(i < 9 ? 20 : 10);
        }

        // 190 ms: none yet.
        Assert.Empty(Begun());
        Move(385);
        Pass(20);
        Move(386);
        Pass(20);
        (double width, long? builds) = Assert.Single(Begun(atLeast: 1));
        Assert.InRange(width, 385, 386);
        Assert.InRange(builds!.Value, 1, 10_000);
        Assert.True(session.State.IsPending);

        Pass(40);
        Assert.Equal((386.0, null), Begun(atLeast: 2)[1]);
        await session.WhenSettled();
        Assert.False(session.State.IsPending);
        Assert.Equal(2, Begun().Length);
    }

    [Fact]
    public async Task WhatIsTypedIsNotWaitedFor()
    {
        await Opened();
        session.Set("outline.lower_bout.width", "371");
        await session.WhenSettled();
        Assert.Equal([(371.0, null)], Begun());
    }

    private async Task Opened()
    {
        await session.WhenSettled();
        lock (begun)
        {
            begun.Clear();
        }
    }

    private void Move(int width) =>
        Assert.Empty(session.Set("outline.lower_bout.width", $"{width}", "one drag"));

    // Whoever waits is let wait before time passes, and after it.
    private void Pass(int ms)
    {
        Settle();
        time.PassMs(ms);
        Settle();
    }

    private void Settle() =>
        Assert.True(
            SpinWait.SpinUntil(
                () => time.IsAwaited || session.WhenSettled().IsCompleted,
                TimeSpan.FromSeconds(30)
            )
        );

    private (double WidthMm, long? Builds)[] Begun(int atLeast = 0)
    {
        (double, long?)[] Now()
        {
            lock (begun)
            {
                return [.. begun];
            }
        }

        SpinWait.SpinUntil(() => Now().Length >= atLeast, TimeSpan.FromSeconds(30));
        return Now();
    }
}
