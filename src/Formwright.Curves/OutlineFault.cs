namespace Formwright.Curves;

/// <summary>Why an outline can't be made of its features. The figures that go with it are named where there are any (mm).</summary>
public enum OutlineFault
{
    /// <summary>A length, station or width that is not a sensible size (0 or less, or beyond 10 m).</summary>
    SizeOutOfRange,

    /// <summary>The station does not lie after the one before it.</summary>
    StationOutOfOrder,

    /// <summary>The station lies at or beyond the tail.</summary>
    BeyondTail,

    /// <summary>The waist is not narrower than a bout; the limit is the narrower bout.</summary>
    WaistNotNarrower,

    /// <summary>A flat is not narrower than the bout beside it, which is the limit.</summary>
    FlatTooWide,

    /// <summary>No fair curve leaves the flat straight: it is too wide for the bout beside it.</summary>
    FlatOutOfReach,

    /// <summary>A flat and a radius are asked for at the same end.</summary>
    FlatAndRadius,

    /// <summary>The curve has another bout or waist between this feature and the next, at the measured station.</summary>
    ExtraTurn,

    /// <summary>The fixed radius lets no fair curve through; the limit is the radius of the fair curve without it.</summary>
    RadiusOutOfReach,

    /// <summary>The fair curve through all features has no bout (or no waist) here: it bends the other way, with the measured radius.</summary>
    NoTurn,

    /// <summary>The curve between this feature and the next would loop, cross itself or run off: they stand too near for their widths.</summary>
    Loop,

    /// <summary>A remark, the outline is there: it is hollow on the centreline at this end and reaches beyond it; the measured figure is the hollow's radius.</summary>
    HollowEnd,

    /// <summary>The curve would cross the centreline between this feature and the next.</summary>
    CrossesCentreline,

    /// <summary>No curve was found between this feature and the next within the allowed work.</summary>
    NotFound,
}
