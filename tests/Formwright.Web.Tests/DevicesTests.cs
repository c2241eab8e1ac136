using Formwright.Web.Serving;

namespace Formwright.Web.Tests;

public sealed class DevicesTests
{
    private readonly Clock clock = new();

    [Fact]
    public void ACodeServesOnceHoweverItIsTyped()
    {
        using Devices devices = new(clock);
        string code = devices.NewCode();
        string? secret = devices.Join(" " + code.ToLowerInvariant().Replace('-', ' '), "tablet");
        Assert.NotNull(secret);
        Assert.Equal("tablet", devices.Find(secret)!.Name);
        Assert.Null(devices.Code);
        Assert.Null(devices.Join(code, "another"));
        Assert.Single(devices.Joined);
    }

    [Fact]
    public void FiveWrongTriesWithdrawTheCode()
    {
        using Devices devices = new(clock);
        string code = devices.NewCode();
        for (int i = 0; i < Devices.MostTries; i++)
        {
            Assert.Null(devices.Join("WRNG-WRNG", "guess"));
        }

        Assert.Null(devices.Code);
        Assert.Null(devices.Join(code, "late"));
        Assert.NotNull(devices.Join(devices.NewCode(), "asked again"));
    }

    [Fact]
    public void ACodeGrowsOld()
    {
        using Devices devices = new(clock);
        string code = devices.NewCode();
        clock.Now += Devices.CodeLasts;
        Assert.Null(devices.Join(code, "late"));
    }

    [Fact]
    public void ADeviceThatIsSentAwayIsUnknownAndWhatItHasOpenEnds()
    {
        using Devices devices = new(clock);
        string secret = devices.Join(devices.NewCode(), "tablet")!;
        string other = devices.Join(devices.NewCode(), "phone")!;
        Device tablet = devices.Find(secret)!;
        devices.Revoke(tablet.Id);
        Assert.True(tablet.Gone.IsCancellationRequested);
        Assert.Null(devices.Find(secret));
        Assert.Equal("phone", devices.Find(other)!.Name);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("0000000000000000000000000000000000000000000000000000000000000000")]
    public void NoOtherSecretIsADevice(string? secret)
    {
        using Devices devices = new(clock);
        Assert.NotNull(devices.Join(devices.NewCode(), "tablet"));
        Assert.Null(devices.Find(secret));
    }

    private sealed class Clock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2024, 3, 1, 10, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
