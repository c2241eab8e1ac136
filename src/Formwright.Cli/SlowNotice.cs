namespace Formwright.Cli;

/// <summary>
/// Tells a maker what is going on, but only when it takes longer than a second: one line that is written over on a terminal,
/// a line now and then where the output goes to a file.
/// </summary>
internal sealed class SlowNotice : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private readonly Streams streams;
    private readonly Timer timer;
    private readonly Lock gate = new();
    private string now;
    private string shown = "";
    private bool isOver;

    public SlowNotice(Streams streams, string first)
    {
        this.streams = streams;
        now = first;
        TimeSpan beat = TimeSpan.FromSeconds(streams.ErrorIsTerminal ? 0.2 : 2);
        timer = new Timer(_ => Show(), null, Patience, beat);
    }

    /// <summary>What is going on now.</summary>
    public void Say(string text)
    {
        lock (gate)
        {
            now = text;
        }
    }

    public void Dispose()
    {
        timer.Dispose();
        lock (gate)
        {
            isOver = true;
            if (streams.ErrorIsTerminal && shown.Length > 0)
            {
                streams.Error.Write($"\r{new string(' ', shown.Length)}\r");
            }
        }
    }

    private void Show()
    {
        lock (gate)
        {
            if (isOver || now == shown)
            {
                return;
            }

            string line = streams.ErrorIsTerminal
                ? $"\r{now.PadRight(shown.Length)}"
                : now + Environment.NewLine;
            streams.Error.Write(line);
            shown = now;
        }
    }
}
