namespace Formwright.Web.Tests;

/// <summary>Time that passes when the test says so.</summary>
internal sealed class HandTime : TimeProvider
{
    private readonly Lock gate = new();
    private readonly List<Alarm> alarms = [];
    private long now;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    /// <summary>Whether somebody waits for it to pass.</summary>
    public bool IsAwaited
    {
        get
        {
            lock (gate)
            {
                return alarms.Count > 0;
            }
        }
    }

    public override long GetTimestamp() => Interlocked.Read(ref now);

    public void PassMs(int ms)
    {
        long until = GetTimestamp() + (ms * TimeSpan.TicksPerMillisecond);
        while (true)
        {
            Alarm? next;
            lock (gate)
            {
                next = alarms.Where(each => each.At <= until).MinBy(each => each.At);
                Interlocked.Exchange(ref now, next?.At ?? until);
                if (next is null)
                {
                    return;
                }

                alarms.Remove(next);
            }

            next.Ring();
        }
    }

    public override ITimer CreateTimer(
        TimerCallback callback,
        object? state,
        TimeSpan dueTime,
        TimeSpan period
    )
    {
        Alarm made = new(this, () => callback(state));
        made.Change(dueTime, period);
        return made;
    }

    private sealed class Alarm(HandTime time, Action ring) : ITimer
    {
        public long At { get; private set; }

        public void Ring() => ring();

        public bool Change(TimeSpan dueTime, TimeSpan period)
        {
            lock (time.gate)
            {
                time.alarms.Remove(this);
                if (dueTime != Timeout.InfiniteTimeSpan)
                {
                    At = time.GetTimestamp() + dueTime.Ticks;
                    time.alarms.Add(this);
                }
            }

            return true;
        }

        public void Dispose() => Change(Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);

        public ValueTask DisposeAsync()
        {
            Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
