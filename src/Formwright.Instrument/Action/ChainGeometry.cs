using Formwright.Instrument.Necks;
using Formwright.Instrument.Strings;

namespace Formwright.Instrument.Action;

/// <summary>Where things stand along and across: what the height chain takes as given.</summary>
/// <param name="Strings">The strings, bass to treble.</param>
/// <param name="FretsMm">Places of nut (entry 0) and frets from the nut, mm.</param>
/// <param name="JoinMm">Place of the join, mm.</param>
/// <param name="NutMm">Compensated place of the nut for each string, mm.</param>
/// <param name="SaddleMm">Compensated place of the saddle for each string, mm.</param>
/// <param name="DomeShares">Soundboard's height at each string's saddle place, over that on the centreline.</param>
/// <param name="BodyMm">Soundboard's own height at each fret past the join on the centreline, mm; 0 before it.</param>
/// <param name="NutShares">Place of each string across the fingerboard at the nut: -1/2 at the bass edge of the frame, 1/2 at the treble edge.</param>
/// <param name="JoinShares">The same at the join.</param>
/// <param name="Profile">The neck.</param>
/// <param name="FollowsKink">Whether the fingerboard's top bends at the join.</param>
/// <param name="SaddleAheadMm">How far the saddle stands ahead of the bridge's middle, mm.</param>
/// <param name="TieBehindMm">Distance from saddle to tie hole, mm.</param>
/// <param name="TieHeightMm">Tie hole over the soundboard, mm.</param>
public sealed record ChainGeometry(
    StringSet Strings,
    IReadOnlyList<double> FretsMm,
    double JoinMm,
    IReadOnlyList<double> NutMm,
    IReadOnlyList<double> SaddleMm,
    IReadOnlyList<double> DomeShares,
    IReadOnlyList<double> BodyMm,
    IReadOnlyList<double> NutShares,
    IReadOnlyList<double> JoinShares,
    NeckProfile Profile,
    bool FollowsKink,
    double SaddleAheadMm,
    double TieBehindMm,
    double TieHeightMm
)
{
    /// <summary>The fret at which the action is read.</summary>
    public const int ActionFret = 12;

    /// <summary>Place of <see cref="ActionFret"/>, mm.</summary>
    public double ActionFretMm => FretsMm[ActionFret];

    /// <summary>Nut, frets and stations of the neck up to the join, and the join: where the bent neck is computed.</summary>
    public Cantilever Beam { get; } = BeamOf(FretsMm, JoinMm, Profile, everyFret: true);

    /// <summary>The same with no frets but the one at which the action is read: fewer points, for many builds.</summary>
    public Cantilever SparseBeam { get; } = BeamOf(FretsMm, JoinMm, Profile, everyFret: false);

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
