using Formwright.Curves;
using Formwright.Fields.Sparse;

namespace Formwright.Fields.Plates;

/// <summary>
/// A plate as finite elements (Kirchhoff's thin plate by <see cref="HctTriangle"/>, plane stress by quadratic triangles, braces as
/// Euler-Bernoulli beams), ready to be loaded or to ring.
/// </summary>
/// <remarks>
/// <para>Order: on smooth plates the error of deflections and eigenvalues falls with the fourth power of the edge length, curved rims
/// included. On straight rims the elements are conforming: frequencies are never too low.</para>
/// <para>Left out: shear across the thickness; glue and its creep; the give of linings, ribs and blocks (the rim is free, hinged or
/// clamped); the air beyond the box resonance, radiation, damping; strings as springs; tension already in the wood (stress stiffening)
/// and large deflections; the offset of the middle surface where the thickness changes; rotary inertia; sideways bending of braces.
/// A dome is in only if <see cref="Plate.DomeSlope"/> is given.</para>
/// <para>Not safe for use from several threads at once; deterministic.</para>
/// </remarks>
public sealed partial class PlateModel
{
    private readonly Plate plate;
    private readonly PlateTriangles triangles;
    private readonly PlateLocator locator;
    private readonly double[][] slaves;
    private readonly Lazy<Region> region;
    private SparseFactor? factor;

    private PlateModel(Plate plate, PlateMesh mesh)
    {
        this.plate = plate;
        Mesh = mesh;
        region = new(RegionOfMesh);
        triangles = new(mesh);
        locator = new(triangles);
        Unknowns = new(mesh, plate.IsCoupled, SupportAt);
        var assembly = new PlateAssembly(plate, triangles);
        slaves = new double[triangles.Count * 3][];
        int[][] numbers = new int[triangles.Count][];
        for (int e = 0; e < triangles.Count; e++)
        {
            numbers[e] = Unknowns.Numbers(e);
            FindSlaves(e);
        }

        var pattern = SymmetricPattern.FromGroups(Unknowns.Count, numbers);
        Stiffness = new(pattern);
        Mass = new(pattern);
        for (int e = 0; e < triangles.Count; e++)
        {
            Into(Stiffness, e, assembly.Stiffness[e], numbers[e]);
            Into(Mass, e, assembly.Mass[e], numbers[e]);
        }

        Order = NestedDissection.Order(pattern, Unknowns.X, Unknowns.Y);
        AreaMm2 = assembly.AreaMm2;
        MassKg = assembly.MassKg;
        StrayBraceMm = assembly.StrayBraceMm;
    }

    public PlateMesh Mesh { get; }

    /// <summary>The plate without its holes; curved edges as fine polylines.</summary>
    public Region Region => region.Value;

    /// <summary>Free unknowns.</summary>
    public int UnknownCount => Unknowns.Count;

    /// <summary>Area of the plate without its holes, mm².</summary>
    public double AreaMm2 { get; }

    /// <summary>Mass of plate, braces and patches, kg.</summary>
    public double MassKg { get; }

    /// <summary>Length of braces that lies off the plate, over a hole or beyond the rim, and was left out, mm.</summary>
    public double StrayBraceMm { get; }

    internal PlateUnknowns Unknowns { get; }

    internal SymmetricMatrix Stiffness { get; }

    internal SymmetricMatrix Mass { get; }

    internal EliminationOrder Order { get; }

    /// <summary>Meshes a plate with about as many unknowns as asked and builds its model.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="unknowns">Wanted number of unknowns, 200 or more; 5,000 is enough for the first ten modes of a soundboard.</param>
    /// <exception cref="ArgumentException">The plate can't be meshed: its rim crosses itself or a hole; or its thickness is not positive.</exception>
    public static PlateModel Of(Plate plate, int unknowns = 5000) =>
        new(plate, PlateMesh.Of(plate, unknowns));

    /// <summary>The model of a plate on a given mesh.</summary>
    public static PlateModel On(Plate plate, PlateMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(plate);
        ArgumentNullException.ThrowIfNull(mesh);
        return new(plate, mesh);
    }

    /// <summary>Deflections under several sets of loads; the matrix is factored once.</summary>
    /// <exception cref="InvalidOperationException">Nothing holds the plate against such loads.</exception>
    public IReadOnlyList<PlateShape> Deflect(IReadOnlyList<IReadOnlyList<PlateLoad>> loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        factor ??= StaticFactor();
        double[][] solved = factor.Solve([.. loads.Select(LoadVector)]);
        return [.. solved.Select(unknowns => new PlateShape(this, unknowns))];
    }

    /// <summary>Deflection under loads.</summary>
    /// <inheritdoc cref="Deflect(IReadOnlyList{IReadOnlyList{PlateLoad}})"/>
    public PlateShape Deflect(params IReadOnlyList<PlateLoad> loads) => Deflect([loads])[0];

    /// <summary>How a bridge answers a force, a couple and a pull on it.</summary>
    /// <inheritdoc cref="Deflect(IReadOnlyList{IReadOnlyList{PlateLoad}})"/>
    public BridgeInfluence Influence(PlateSpot bridge)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        IReadOnlyList<PlateShape> shapes = Deflect([
            [new(bridge, 1)],
            [new(bridge, 0, new Vector(1, 0))],
            [new(bridge, 0, default, new Vector(-1, 0))],
        ]);
        return new(shapes[0].Mean(bridge), shapes[1].Mean(bridge), shapes[2].Mean(bridge));
    }

    /// <summary>The lowest modes.</summary>
    /// <param name="count">How many.</param>
    public PlateModes Modes(int count = 20)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(count);
        bool held = Unknowns.IsBendingHeld && (!plate.IsCoupled || Unknowns.IsInPlaneHeld);
        double shift = held ? 0 : -FreeScale();
        int extra = held ? 0 : 6;
        EigenPairs pairs = ShiftInvert.Lowest(Stiffness, Mass, Order, count + extra, shift);
        // Derived: a rigid movement has λ = 0 but for rounding, the first true mode at least a share of the shift.
        int rigid = pairs.Values.Count(value => value < -1e-5 * shift);
        var modes = new List<PlateMode>();
        for (int i = rigid; i < Math.Min(rigid + count, pairs.Values.Length); i++)
        {
            modes.Add(ModeOf(pairs.Values[i], pairs.Vectors[i], pairs.Residuals[i]));
        }

        return new([.. modes], rigid, pairs.Converged, pairs.Missed);
    }
}
