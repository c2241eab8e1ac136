using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>One string, as one of <c>[[strings.string]]</c> or of a built-in set. Mass comes from unit mass, or from a tension at a stated scale and pitch.</summary>
/// <param name="Note">Its note; null to take it from the tuning.</param>
/// <param name="UnitMassGPerM">Mass of one metre, g/m; null where a tension is given.</param>
/// <param name="TensionN">Tension at <see cref="AtScaleMm"/> and <see cref="AtPitchHz"/>, N.</param>
/// <param name="AtScaleMm">Scale for which the tension is stated, mm.</param>
/// <param name="AtPitchHz">Pitch for which the tension is stated, Hz.</param>
/// <param name="DiameterMm">Diameter over all, mm.</param>
/// <param name="ModulusGPa">Modulus of what carries the tension, GPa.</param>
/// <param name="CoreDiameterMm">Diameter of the core of a wound string, mm; null for a plain one.</param>
/// <param name="CoreStrands">Strands of the core; 1 for a solid one.</param>
public sealed record StringDesign(
    NoteName? Note,
    double? UnitMassGPerM,
    double? TensionN,
    double AtScaleMm,
    double AtPitchHz,
    double DiameterMm,
    double ModulusGPa,
    double? CoreDiameterMm,
    int CoreStrands
)
{
    /// <summary>Mass of one metre, kg/m; from a stated tension by μ = T/(2Lf)².</summary>
    public double UnitMassKgPerM
    {
        get
        {
            double v = 2 * AtScaleMm * 1e-3 * AtPitchHz;
            return UnitMassGPerM * 1e-3 ?? TensionN!.Value / (v * v);
        }
    }

    internal static StringDesign Read(TableReader table)
    {
        string note = table.Text("note", "");
        NoteName? read = null;
        if (note.Length > 0)
        {
            if (NoteName.TryRead(note, out NoteName found))
            {
                read = found;
            }
            else
            {
                table.Fault("note", DesignWords.Of.Format("diagnostic.note", note));
            }
        }

        double? mass = table.OptionalNumber("unit_mass", 0.01, 50, "g/m");
        double? tension = table.OptionalNumber("tension", 1, 300, "N");
        if (table.IsPresent && mass is null == tension is null)
        {
            table.Fault(
                mass is null ? "diameter" : "tension",
                DesignWords.Of["diagnostic.mass-or-tension"]
            );
        }

        double? pitch = table.OptionalNumber("at_pitch", 10, 2000, "Hz");
        if (tension is not null && pitch is null)
        {
            table.Fault("tension", DesignWords.Of["diagnostic.tension-pitch"]);
        }

        return new(
            read,
            mass,
            tension,
            table.Length("at_scale", 650, 300, 900),
            pitch ?? double.NaN,
            table.Length("diameter", null, 0.1, 5),
            table.Number("modulus", 4, 0, 250, "GPa"),
            table.OptionalLength("core_diameter", 0.05, 5),
            table.Whole("core_strands", 1, 1, 2000)
        );
    }
}
