namespace Formwright.Instrument.Strings;

/// <summary>The formulas of a stretched string.</summary>
public static class VibratingString
{
    /// <summary>Tension T = μ (2 L f)², N.</summary>
    /// <param name="unitMassKgPerM">Mass of a metre μ, kg/m.</param>
    /// <param name="lengthMm">Vibrating length L, mm.</param>
    /// <param name="frequencyHz">Frequency f, Hz.</param>
    public static double TensionN(double unitMassKgPerM, double lengthMm, double frequencyHz)
    {
        double v = 2 * Guard.Positive(lengthMm) * 1e-3 * Guard.Positive(frequencyHz);
        return Guard.Positive(unitMassKgPerM) * v * v;
    }

    /// <summary>Speed of a wave along the string √(T/μ), m/s.</summary>
    public static double WaveSpeedMPerS(double tensionN, double unitMassKgPerM) =>
        Math.Sqrt(Guard.Positive(tensionN) / Guard.Positive(unitMassKgPerM));

    /// <summary>Frequency f = √(T/μ)/(2L) of a limp string, Hz.</summary>
    public static double FrequencyHz(double tensionN, double unitMassKgPerM, double lengthMm) =>
        WaveSpeedMPerS(tensionN, unitMassKgPerM) / (2 * Guard.Positive(lengthMm) * 1e-3);

    /// <summary>Inharmonicity B = π² EI/(T L²), which is π³ E d⁴/(64 T L²) for a round string (Fletcher, JASA 36, 1964).</summary>
    /// <param name="bendingStiffnessNmm2">Bending stiffness EI, N·mm².</param>
    /// <param name="tensionN">Tension T, N.</param>
    /// <param name="lengthMm">Length L, mm.</param>
    public static double Inharmonicity(
        double bendingStiffnessNmm2,
        double tensionN,
        double lengthMm
    ) =>
        Math.PI
        * Math.PI
        * Guard.Between(bendingStiffnessNmm2, 0, double.MaxValue)
        / (Guard.Positive(tensionN) * Guard.Positive(lengthMm) * lengthMm);

    /// <summary>Bending stiffness EI = π E d⁴/64 of a round string, N·mm².</summary>
    /// <param name="modulusMPa">Modulus E, MPa.</param>
    /// <param name="diameterMm">Diameter d, mm.</param>
    public static double BendingStiffnessNmm2(double modulusMPa, double diameterMm) =>
        Math.PI * modulusMPa * Math.Pow(Guard.Positive(diameterMm), 4) / 64;

    /// <summary>Partial n of a stiff string on hinged ends, n f₀ √(1 + B n²), Hz (Fletcher 1964).</summary>
    public static double PartialHz(double limpHz, double inharmonicity, int n) =>
        n * limpHz * Math.Sqrt(1 + (inharmonicity * n * n));

    /// <summary>
    /// How much stiffness raises the lowest frequency of a string with clamped ends:
    /// 1 + (2/L) √(EI/T) + (4 + π²/2) EI/(T L²) (Morse, <i>Vibration and Sound</i>, as used by Varieschi and Gower, Am. J. Phys. 78, 2010).
    /// </summary>
    public static double ClampedRise(double bendingStiffnessNmm2, double tensionN, double lengthMm)
    {
        double r = bendingStiffnessNmm2 / tensionN;
        return 1
            + (2 * Math.Sqrt(r) / lengthMm)
            + ((4 + (Math.PI * Math.PI / 2)) * r / (lengthMm * lengthMm));
    }
}
