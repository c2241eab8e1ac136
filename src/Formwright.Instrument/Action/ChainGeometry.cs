using Formwright.Instrument.Necks;
using Formwright.Instrument.Strings;

namespace Formwright.Instrument.Action;

/// <summary>Where things stand along and across: what the height chain takes as given.</summary>
public sealed class ChainGeometry(
    StringSet strings,
    IReadOnlyList<double> fretsMm,
    double joinMm,
    IReadOnlyList<double> nutMm,
    IReadOnlyList<double> saddleMm,
    IReadOnlyList<double> domeShares,
    IReadOnlyList<double> bodyMm,
    IReadOnlyList<double> nutShares,
    IReadOnlyList<double> joinShares,
    NeckProfile profile,
    bool followsKink,
    double saddleAheadMm,
    double tieBehindMm,
    double tieHeightMm
)
{
    /// <summary>The strings, bass to treble.</summary>
    public StringSet Strings { get; } = strings;

    /// <summary>Places of nut (entry 0) and frets from the nut, mm.</summary>
    public IReadOnlyList<double> FretsMm { get; } = fretsMm;

    /// <summary>Place of the join, mm.</summary>
    public double JoinMm { get; } = joinMm;

    /// <summary>Compensated place of the nut for each string, mm.</summary>
    public IReadOnlyList<double> NutMm { get; } = nutMm;

    /// <summary>Compensated place of the saddle for each string, mm.</summary>
    public IReadOnlyList<double> SaddleMm { get; } = saddleMm;

    /// <summary>Soundboard's height at each string's saddle place, over that on the centreline.</summary>
    public IReadOnlyList<double> DomeShares { get; } = domeShares;

    /// <summary>Soundboard's own height at each fret past the join on the centreline, mm; 0 before it.</summary>
    public IReadOnlyList<double> BodyMm { get; } = bodyMm;

    /// <summary>Place of each string across the fingerboard at the nut: -1/2 at the bass edge of the frame, 1/2 at the treble edge.</summary>
    public IReadOnlyList<double> NutShares { get; } = nutShares;

    /// <summary>The same at the join.</summary>
    public IReadOnlyList<double> JoinShares { get; } = joinShares;

    /// <summary>The neck.</summary>
    public NeckProfile Profile { get; } = profile;

    /// <summary>Whether the fingerboard's top bends at the join.</summary>
    public bool FollowsKink { get; } = followsKink;

    /// <summary>How far the saddle stands ahead of the bridge's middle, mm.</summary>
    public double SaddleAheadMm { get; } = saddleAheadMm;

    /// <summary>Distance from saddle to tie hole, mm.</summary>
    public double TieBehindMm { get; } = tieBehindMm;

    /// <summary>Tie hole over the soundboard, mm.</summary>
    public double TieHeightMm { get; } = tieHeightMm;

    /// <summary>The fret at which the action is read.</summary>
    public const int ActionFret = 12;

    /// <summary>Place of <see cref="ActionFret"/>, mm.</summary>
    public double ActionFretMm => FretsMm[ActionFret];

    /// <summary>Nut, frets and stations of the neck up to the join, and the join: where the bent neck is computed.</summary>
    public Cantilever Beam { get; } = BeamOf(fretsMm, joinMm, profile, everyFret: true);

    /// <summary>The same with no frets but the one at which the action is read: fewer points, for many builds.</summary>
    public Cantilever SparseBeam { get; } = BeamOf(fretsMm, joinMm, profile, everyFret: false);

    /// <summary>Number of strings.</summary>
    public int Count => Strings.Strings.Count;

    /// <summary>Place of a string among them: 0 the lowest, 1 the highest.</summary>
    public double ShareOf(int index) => (double)index / (Count - 1);

    private static Cantilever BeamOf(
        IReadOnlyList<double> fretsMm,
        double joinMm,
        NeckProfile profile,
        bool everyFret
    )
    {
        const double apart = 1e-6;
        IEnumerable<double> frets = everyFret ? fretsMm : [0, fretsMm[ActionFret]];
        List<double> places = [];
        foreach (
            double x in frets
                .Concat(profile.Places.Select(place => place.AtMm))
                .Where(x => x >= 0 && x < joinMm - apart)
                .Append(joinMm)
                .Order()
        )
        {
            if (places.Count == 0 || x > places[^1] + apart)
            {
                places.Add(x);
            }
        }

        return new(places);
    }
}
