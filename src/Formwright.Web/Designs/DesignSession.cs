using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Instrument.Body;
using Formwright.Packs;

namespace Formwright.Web.Designs;

/// <summary>
/// One open design, shared by every page that shows it. The file is the truth: edits go into its text with comments kept, are written within
/// <see cref="SaveDelay"/>, and what someone else writes to the file shows up here. Safe to use from several threads.
/// </summary>
public sealed class DesignSession : IDisposable
{
    /// <summary>How long after the last edit the text is written. Less than the second that a killed server may lose.</summary>
    public static readonly TimeSpan SaveDelay = TimeSpan.FromMilliseconds(300);

    private const int MostUndo = 500;
    private readonly DesignFolder folder;
    private readonly Lock gate = new();
    private readonly Timer timer;
    private readonly StudyQueue studies;
    private readonly Behind behind;
    private readonly LinkedList<string> undo = new();
    private readonly Stack<string> redo = new();
    private string onDisk;
    private string? running;
    private string? takenBack;
    private bool isDoubtful;

    /// <summary>Opens a design.</summary>
    /// <exception cref="ArgumentException">There is no such design.</exception>
    /// <exception cref="IOException">It can't be read.</exception>
    public DesignSession(DesignFolder folder, string name, Behind behind)
        : this(folder, name, behind, Studied) { }

    // One core is the hand's, however long the stock is nested.
    private static Study Studied(InstrumentDesign design, Study? earlier, long? builds) =>
        Study.Of(design, earlier, builds, Math.Max(1, Environment.ProcessorCount - 1));

    internal DesignSession(
        DesignFolder folder,
        string name,
        Behind behind,
        Func<InstrumentDesign, Study?, long?, Study> study,
        TimeProvider? time = null
    )
    {
        ArgumentNullException.ThrowIfNull(folder);
        (this.folder, this.behind) = (folder, behind);
        Name = name;
        DesignReading reading = DesignText.Load(folder.PathOf(name));
        onDisk = reading.Text;
        DateTime saved = File.GetLastWriteTime(folder.PathOf(name));
        OutlineSolution? outline = reading.Succeeded
            ? BodyOutline.Solve(reading.Design.Outline)
            : null;
        State = new SessionState(
            reading.Text,
            reading,
            reading.Succeeded ? reading : null,
            outline,
            null,
            false,
            saved,
            true,
            null,
            null,
            false,
            false
        );
        timer = new Timer(_ => behind.Ends(Save));
        studies = new StudyQueue(
            gate,
            (taken, isPending) => State = State with { Study = taken, IsPending = isPending },
            () => State = State with { HasFailed = true },
            () => Changed?.Invoke(),
            behind,
            study,
            time ?? TimeProvider.System
        );
        if (reading.Succeeded)
        {
            Want(reading.Design);
        }
    }

    public string Name { get; }

    /// <summary>The present state; replaced whole, never changed.</summary>
    public SessionState State { get; private set; }

    /// <summary>Told after every change of <see cref="State"/>, on any thread.</summary>
    public event Action? Changed;

    /// <summary>Sets keys of the design; a null value removes the key. Nothing changes where the result would not read.</summary>
    /// <param name="changes">Dotted keys and TOML values.</param>
    /// <param name="gesture">Edits of one gesture (a drag) share a name and are undone together; null for an edit of its own.</param>
    /// <returns>What is wrong with the values, empty when they were taken.</returns>
    public IReadOnlyList<Diagnostic> Set(
        IReadOnlyDictionary<string, string?> changes,
        string? gesture = null
    )
    {
        ArgumentNullException.ThrowIfNull(changes);
        lock (gate)
        {
            // The last move of a drag may arrive after its undo.
            if (gesture is not null && gesture == takenBack)
            {
                return [];
            }

            string text = State.Text;
            foreach ((string key, string? value) in changes)
            {
                text = value is null
                    ? DesignEdit.Remove(text, key)
                    : DesignEdit.Set(text, key, value);
            }

            if (text == State.Text)
            {
                return [];
            }

            DesignReading reading = DesignText.Parse(text, Name);
            if (!reading.Succeeded)
            {
                return reading.Diagnostics;
            }

            if (gesture is null || gesture != running)
            {
                Remember(State.Text);
            }

            running = gesture;
            Become(text, reading, isSaved: false);
            timer.Change(SaveDelay, Timeout.InfiniteTimeSpan);
        }

        Changed?.Invoke();
        return [];
    }

    /// <summary>Sets one key.</summary>
    public IReadOnlyList<Diagnostic> Set(string key, string? value, string? gesture = null) =>
        Set(new Dictionary<string, string?> { [key] = value }, gesture);

    /// <summary>Lays another outline over this one; null takes it off.</summary>
    public void Lay(Overlay? overlay)
    {
        lock (gate)
        {
            State = State with { Overlay = overlay };
        }

        Changed?.Invoke();
    }

    /// <summary>Writes down a gap that was found on the workboard; null takes it back.</summary>
    public void Measure(string place, bool isBass, double? mm)
    {
        lock (gate)
        {
            State = State with { Gaps = State.Gaps.With(place, isBass, mm) };
        }

        Changed?.Invoke();
    }

    /// <summary>Takes the last edit back.</summary>
    public void Undo()
    {
        lock (gate)
        {
            if (undo.Last is null)
            {
                return;
            }

            redo.Push(State.Text);
            string text = undo.Last.Value;
            undo.RemoveLast();
            Return(text);
        }

        Changed?.Invoke();
    }

    /// <summary>Makes an edit again that was taken back.</summary>
    public void Redo()
    {
        lock (gate)
        {
            if (redo.Count == 0)
            {
                return;
            }

            undo.AddLast(State.Text);
            Return(redo.Pop());
        }

        Changed?.Invoke();
    }

    /// <summary>Reads the file after someone else may have written it. A text that was not kept yet is not lost: the two clash.</summary>
    public void LookAtDisk()
    {
        lock (gate)
        {
            DesignReading reading = DesignText.Load(folder.PathOf(Name));
            if (
                reading.Text == onDisk
                || (reading.Text.Length == 0 && reading.Diagnostics.Count > 0)
            )
            {
                return;
            }

            onDisk = reading.Text;
            if (State.IsSaved)
            {
                Remember(State.Text);
                Become(reading.Text, reading, isSaved: true);
            }
            else if (reading.Text != State.Text)
            {
                timer.Change(Timeout.Infinite, Timeout.Infinite);
                State = State with { Theirs = reading.Text };
            }
        }

        Changed?.Invoke();
    }

    /// <summary>Ends a clash: keeps this text, or takes theirs (this one can be had back by undo).</summary>
    public void Settle(bool keepOurs)
    {
        lock (gate)
        {
            if (State.Theirs is not { } theirs)
            {
                return;
            }

            if (keepOurs)
            {
                undo.AddLast(theirs);
                State = State with { Theirs = null, CanUndo = true };
            }
            else
            {
                Remember(State.Text);
                Become(theirs, DesignText.Parse(theirs, Name), isSaved: true);
            }
        }

        Save();
    }

    /// <summary>Writes the text now, if it is not on disk.</summary>
    public void Save()
    {
        lock (gate)
        {
            if (State.IsSaved || State.Theirs is not null)
            {
                return;
            }

            try
            {
                string path = folder.PathOf(Name);
                string there = File.Exists(path) ? File.ReadAllText(path) : onDisk;
                if (there != onDisk && there != State.Text)
                {
                    onDisk = there;
                    State = State with { Theirs = there };
                }
                else
                {
                    folder.Write(Name, State.Text);
                    onDisk = State.Text;
                    State = State with { IsSaved = true, SavedAt = DateTime.Now, SaveFault = null };
                }
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                State = State with { SaveFault = fault.Message };
                timer.Change(TimeSpan.FromSeconds(2), Timeout.InfiniteTimeSpan);
            }
        }

        Changed?.Invoke();
    }

    public void Dispose()
    {
        Save();
        timer.Dispose();
    }

    private void Remember(string text)
    {
        undo.AddLast(text);
        redo.Clear();
        if (undo.Count > MostUndo)
        {
            undo.RemoveFirst();
        }
    }

    private void Return(string text)
    {
        takenBack = running ?? takenBack;
        running = null;
        Become(text, DesignText.Parse(text, Name), isSaved: text == onDisk);
        timer.Change(SaveDelay, Timeout.InfiniteTimeSpan);
    }

    /// <summary>Does work for a page that shows this design; when it fails the next page that opens has everything computed anew.</summary>
    /// <returns>Whether it came to its end.</returns>
    internal async Task<bool> DoBehind(Func<Task> work)
    {
        bool isDone = await behind.Ends(work);
        isDoubtful |= !isDone;
        return isDone;
    }

    /// <summary>A page opens: what failed is tried again.</summary>
    public void TryAgain()
    {
        lock (gate)
        {
            if ((isDoubtful || State.HasFailed) && State.Design is { } design)
            {
                isDoubtful = false;
                Want(design);
            }
        }
    }

    /// <summary>Ends when everything is computed.</summary>
    public Task WhenSettled() => studies.WhenDone();

    // The outline is solved at once, since a hand may be dragging it; everything else follows behind.
    private void Become(string text, DesignReading reading, bool isSaved)
    {
        OutlineSolution? outline = State.Outline;
        if (reading.Succeeded && reading.Design.Outline != State.Design?.Outline)
        {
            outline = BodyOutline.Solve(reading.Design.Outline);
        }

        State = State with
        {
            Text = text,
            Reading = reading,
            Good = reading.Succeeded ? reading : State.Good,
            Outline = outline,
            IsSaved = isSaved,
            Theirs = null,
            CanUndo = undo.Count > 0,
            CanRedo = redo.Count > 0,
        };
        if (reading.Succeeded)
        {
            Want(reading.Design, running is not null);
        }
    }

    private void Want(InstrumentDesign design, bool isDragged = false)
    {
        State = State with { IsPending = true, HasFailed = false };
        studies.Want(design, isDragged);
    }
}
