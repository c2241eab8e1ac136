namespace Formwright.Jigs.Stock.Nesting;

/// <summary>The parts to nest, each in all its turns, and the no-fit rows of every two that met so far.</summary>
internal sealed class NestTable
{
    /// <summary>Turns of a part without grain: every 15°. A part with grain takes the first and the one half way round.</summary>
    public const int Turns = 24;

    // A pair takes about twice as long to unite as to look at.
    private const int NoFitWeight = 2;

    // Of many kinds of part every second turn will do: four times fewer pairs of turns to work out, and more nests to look at instead.
    private const int ManyKinds = 6;

    private static readonly int[] AlongGrain = [0, Turns / 2];
    private static readonly int[] EveryTurn = [.. Enumerable.Range(0, Turns)];
    private static readonly int[] EverySecondTurn =
    [
        .. Enumerable.Range(0, Turns / 2).Select(half => 2 * half),
    ];

    private readonly TurnedOutline?[,] turned;
    private readonly NoFit?[]?[] noFits;
    private readonly NestOutline[] outlines;
    private readonly double grow;

    /// <param name="parts">Outlines of the parts.</param>
    /// <param name="kerfMm">Least distance between two parts, mm.</param>
    /// <param name="rowMm">Height of a row, mm: high for a quick look, low for a close nest.</param>
    public NestTable(IReadOnlyList<NestOutline> parts, double kerfMm, double rowMm)
    {
        List<NestOutline> kinds = [];
        KindOf = new int[parts.Count];
        for (int i = 0; i < parts.Count; i++)
        {
            int kind = kinds.FindIndex(parts[i].IsSameAs);
            if (kind < 0)
            {
                kind = kinds.Count;
                kinds.Add(parts[i]);
            }

            KindOf[i] = kind;
        }

        outlines = [.. kinds];
        grow = kerfMm / 2;
        turned = new TurnedOutline?[kinds.Count, Turns];
        noFits = new NoFit?[]?[kinds.Count * Turns];
        RowMm = rowMm;
        TurnStep = kinds.Count > ManyKinds ? 2 : 1;
    }

    /// <summary>Kind of each part: parts of one kind are cut along the same lines.</summary>
    public int[] KindOf { get; }

    /// <summary>Height of a row, mm.</summary>
    public double RowMm { get; }

    /// <summary>From one turn that is looked at to the next.</summary>
    public int TurnStep { get; }

    /// <summary>Pairs of stretches looked at so far: the same on every machine.</summary>
    public long Work { get; set; }

    /// <summary>Turns that a part may take on a piece.</summary>
    public int[] TurnsOf(int part, NestPiece piece) =>
        outlines[KindOf[part]].KeepsGrain && piece.HasGrain ? AlongGrain : EveryTurn;

    /// <summary>Those of them that are looked at, every one or every second.</summary>
    public int[] UsualTurnsOf(int part, NestPiece piece) =>
        outlines[KindOf[part]].KeepsGrain && piece.HasGrain ? AlongGrain
        : TurnStep == 1 ? EveryTurn
        : EverySecondTurn;

    /// <summary>A part in one of its turns.</summary>
    public TurnedOutline Turned(int part, int turn)
    {
        int kind = KindOf[part];
        return turned[kind, turn] ??= new TurnedOutline(
            outlines[kind],
            2 * Math.PI * turn / Turns,
            grow,
            RowMm
        );
    }

    /// <summary>Where one part can't stand beside another; of two that were met the other way round it is the mirror image.</summary>
    public NoFit NoFit(int still, int stillTurn, int moving, int movingTurn)
    {
        int a = (KindOf[still] * Turns) + stillTurn;
        int b = (KindOf[moving] * Turns) + movingTurn;
        NoFit?[] row = noFits[a] ??= new NoFit?[noFits.Length];
        return row[b] ??= noFits[b]?[a]?.Reversed() ?? Unite(still, stillTurn, moving, movingTurn);
    }

    private NoFit Unite(int still, int stillTurn, int moving, int movingTurn)
    {
        NoFit united = Nesting.NoFit.Of(Turned(still, stillTurn), Turned(moving, movingTurn));
        Work += NoFitWeight * united.Work;
        return united;
    }
}
