using Formwright.Design;
using Formwright.Packs;

namespace Formwright.Web.Designs;

/// <summary>
/// Computes studies behind the page: one at a time, of the latest design that is wanted only. While a hand drags, the machine is the page's:
/// a study waits until the hand rests, or is a quick one now and then.
/// </summary>
/// <param name="gate">Held while something is wanted and while an answer is taken.</param>
/// <param name="take">Takes a study, and whether another is under way; called with the gate held.</param>
/// <param name="failed">Told that the latest design could not be computed; called with the gate held.</param>
/// <param name="told">Called after either, without it.</param>
/// <param name="behind">Does the work.</param>
/// <param name="study">Computes a design, from an earlier study, with so many builds.</param>
/// <param name="time">Tells how long a hand rests.</param>
internal sealed class StudyQueue(
    Lock gate,
    Action<Study, bool> take,
    Action failed,
    Action told,
    Behind behind,
    Func<InstrumentDesign, Study?, long?, Study> study,
    TimeProvider time
)
{
    private const long BuildsWhileDragged = 1000;

    // A hand that has not moved for so long rests; one that goes on sees the other figures follow so often.
    private static readonly TimeSpan HandRests = TimeSpan.FromMilliseconds(40);
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(200);

    private (InstrumentDesign Design, bool IsDragged)? wanted;
    private long movedAt;
    private Study? last;
    private Task work = Task.CompletedTask;

    /// <summary>Asks for the study of a design, in place of what was wanted and not begun.</summary>
    public void Want(InstrumentDesign design, bool isDragged)
    {
        lock (gate)
        {
            wanted = (design, isDragged);
            movedAt = time.GetTimestamp();
            if (work.IsCompleted)
            {
                work = Task.Run(Work);
            }
        }
    }

    /// <summary>Ends when nothing is wanted.</summary>
    public Task WhenDone()
    {
        lock (gate)
        {
            return work;
        }
    }

    private async Task Work()
    {
        while (true)
        {
            bool isAtRest = await RestsAsync();
            InstrumentDesign design;
            lock (gate)
            {
                if (wanted is null)
                {
                    work = Task.CompletedTask;
                    return;
                }

                design = wanted.Value.Design;
                wanted = null;
            }

            bool isDone = behind.Ends(() =>
                last = study(design, last, isAtRest ? null : BuildsWhileDragged)
            );
            lock (gate)
            {
                if (!isDone)
                {
                    // Nothing is taken over from what may be at fault.
                    last = null;
                    if (wanted is null)
                    {
                        failed();
                    }
                }
                else
                {
                    // The many builds of the chance wait until the hand rests.
                    if (!isAtRest && wanted is null)
                    {
                        wanted = (design, true);
                    }

                    take(last!, wanted is not null);
                }
            }

            behind.Ends(told);
        }
    }

    // Counted from the last move, so that whoever lets go waits no longer than that.
    private async Task<bool> RestsAsync()
    {
        long began = time.GetTimestamp();
        while (true)
        {
            TimeSpan left;
            lock (gate)
            {
                if (wanted is not { IsDragged: true })
                {
                    return true;
                }

                left = HandRests - time.GetElapsedTime(movedAt);
            }

            if (left <= TimeSpan.Zero)
            {
                return true;
            }

            if (time.GetElapsedTime(began) >= Patience)
            {
                return false;
            }

            // A timer counts whole ms; a shorter wait would end at once.
            await Task.Delay(TimeSpan.FromMilliseconds(Math.Ceiling(left.TotalMilliseconds)), time);
        }
    }
}
