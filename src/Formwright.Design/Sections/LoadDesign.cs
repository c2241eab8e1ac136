using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[load]</c>: what the strings' pull does to body and bridge, as the maker knows it from earlier instruments.</summary>
/// <param name="Bridge">Where the bridge's rise and rotation come from: stated where either is given, unless the file says otherwise; stated figures also serve where the plate can't be computed.</param>
/// <param name="JoinRotationDeg">Rotation of the body at the join, nut forward, degrees.</param>
/// <param name="Creep">Share by which the neck's rise grows until the instrument has settled.</param>
/// <param name="BridgeRiseMm">Rise of the soundboard under the bridge's middle, mm; 0 where <c>dome.strung</c> is given.</param>
/// <param name="BridgeRotationDeg">Rotation of the bridge, its top towards the nut, degrees.</param>
/// <param name="TensionLeastN">Least total tension that bar and bridge are made for, N.</param>
/// <param name="TensionMostN">Greatest total tension that bar and bridge are made for, N.</param>
public sealed record LoadDesign(
    BridgeSource Bridge,
    double JoinRotationDeg,
    double Creep,
    double BridgeRiseMm,
    double BridgeRotationDeg,
    double TensionLeastN,
    double TensionMostN
)
{
    internal static LoadDesign Read(TableReader table, DomeDesign dome)
    {
        double rise = table.Length("bridge_rise", 0.2, -5, 5);
        if (dome.StrungMm is not null)
        {
            rise = 0;
            if (table.Has("bridge_rise"))
            {
                table.Fault("bridge_rise", DesignWords.Of["diagnostic.rise-or-strung"]);
            }
        }

        bool isStated = table.Has("bridge_rise") || table.Has("bridge_rotation");
        LoadDesign load = new(
            table.Choice("bridge", isStated ? BridgeSource.Stated : BridgeSource.Plate),
            table.Number("join_rotation", 0.05, -1, 1, "°"),
            table.Number("creep", 0.2, 0, 3, ""),
            rise,
            table.Number("bridge_rotation", 0.5, -5, 5, "°"),
            table.Number("tension_least", 220, 0, 2000, "N"),
            table.Number("tension_most", 450, 0, 2000, "N")
        );
        table.InOrder("tension_least", load.TensionLeastN, "tension_most", load.TensionMostN);
        return load;
    }
}
