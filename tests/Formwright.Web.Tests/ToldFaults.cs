using System.Collections.Concurrent;
using Formwright.Web.Designs;
using Microsoft.Extensions.Logging;

namespace Formwright.Web.Tests;

/// <summary>Keeps the faults that are told, in place of the server's standard error.</summary>
internal sealed class ToldFaults : ILogger<Behind>
{
    private readonly ConcurrentQueue<string> told = new();

    public IReadOnlyCollection<string> All => told;

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => true;

    public void Log<TState>(
        LogLevel logLevel,
        EventId eventId,
        TState state,
        Exception? exception,
        Func<TState, Exception?, string> formatter
    )
    {
        Assert.Equal(LogLevel.Error, logLevel);
        told.Enqueue($"{formatter(state, exception)} {exception?.Message}");
    }
}
