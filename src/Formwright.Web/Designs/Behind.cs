using Microsoft.Extensions.Logging;

namespace Formwright.Web.Designs;

/// <summary>
/// Work behind the page. Nobody waits for it, so what goes wrong in it is told on the server's standard error, and whoever began it learns that
/// it came to nothing; whatever else goes on behind the page goes on.
/// </summary>
/// <param name="log">Where a fault is told.</param>
public sealed partial class Behind(ILogger<Behind> log)
{
    /// <summary>Does a piece of work.</summary>
    /// <returns>Whether it came to its end.</returns>
    public async Task<bool> Ends(Func<Task> work)
    {
        ArgumentNullException.ThrowIfNull(work);
        try
        {
            await work();
            return true;
        }
        catch (Exception fault)
        {
            Tell(log, fault);
            return false;
        }
    }

    /// <summary>Does a piece of work at once.</summary>
    /// <returns>Whether it came to its end.</returns>
    public bool Ends(Action work)
    {
        ArgumentNullException.ThrowIfNull(work);
        // Ends at once, since nothing is waited for.
        return Ends(() =>
            {
                work();
                return Task.CompletedTask;
            })
            .GetAwaiter()
            .GetResult();
    }

    [LoggerMessage(1, LogLevel.Error, "Work behind the page failed.")]
    private static partial void Tell(ILogger log, Exception fault);
}
