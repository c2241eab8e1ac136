namespace Formwright.Fields.Plates;

/// <summary>How an edge of a plate is held.</summary>
public readonly record struct EdgeSupport(RimSupport Bending, InPlaneSupport InPlane)
{
    public static readonly EdgeSupport Free = new(RimSupport.Free, InPlaneSupport.Free);

    public static readonly EdgeSupport Hinged = new(RimSupport.Hinged, InPlaneSupport.AlongRim);

    public static readonly EdgeSupport Clamped = new(RimSupport.Clamped, InPlaneSupport.AlongRim);
}
