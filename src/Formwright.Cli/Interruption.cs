using System.Runtime.InteropServices;

namespace Formwright.Cli;

/// <summary>While it lives, Ctrl+C and a polite request to end become a cancellation, so that what was begun is cleared away.</summary>
internal sealed class Interruption : IDisposable
{
    private readonly CancellationTokenSource source = new();
    private readonly PosixSignalRegistration[] signals;

    public Interruption() =>
        signals = [
            PosixSignalRegistration.Create(PosixSignal.SIGINT, Cancel),
            PosixSignalRegistration.Create(PosixSignal.SIGTERM, Cancel),
        ];

    public CancellationToken Token => source.Token;

    public void Dispose()
    {
        foreach (PosixSignalRegistration signal in signals)
        {
            signal.Dispose();
        }

        source.Dispose();
    }

    private void Cancel(PosixSignalContext context)
    {
        context.Cancel = true;
        source.Cancel();
    }
}
