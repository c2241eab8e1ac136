namespace Formwright.Instrument.Strings;

/// <summary>
/// What one string sounds when fretted, against equal temperament, for given places of nut and saddle. The open string is in tune.
/// </summary>
/// <remarks>
/// Fretted at k, the vibrating length is that from fret to saddle. Pressing it down makes the string longer between nut and saddle, which raises its
/// tension by EA ΔL/L (the string grips at nut and saddle: an upper bound), and its stiffness shortens what swings (<see cref="VibratingString.ClampedRise"/>).
/// Heights are over the fret plane. Left out, as it is a few hundredths of the stretch: the mass that the stretch takes off each metre.
/// </remarks>
/// <param name="Wire">The string.</param>
/// <param name="ScaleMm">Scale L, mm.</param>
/// <param name="NutHeightMm">Underside over the fret plane at the nut, mm.</param>
/// <param name="SaddleHeightMm">Underside over the fret plane at the saddle, mm.</param>
public sealed record FrettedString(
    InstrumentString Wire,
    double ScaleMm,
    double NutHeightMm,
    double SaddleHeightMm
)
{
    private static readonly double CentsPerLog = 1200 / Math.Log(2);
    private static readonly double Second = 4 + (Math.PI * Math.PI / 2);

    /// <summary>Error in cents at fret k (positive: sharp).</summary>
    /// <param name="fretMm">Place of the fret from the nut, mm.</param>
    /// <param name="fret">Its number k.</param>
    /// <param name="nutMm">How far the nut stands towards the saddle, mm.</param>
    /// <param name="saddleMm">How far the saddle stands past the scale, mm.</param>
    public double Cents(double fretMm, int fret, double nutMm, double saddleMm) =>
        Evaluate(fretMm, fret, nutMm, saddleMm).Cents;

    /// <summary>The error with its slopes against the places of nut and saddle, in cents per mm.</summary>
    internal (double Cents, double PerNut, double PerSaddle) Evaluate(
        double fretMm,
        int fret,
        double nutMm,
        double saddleMm
    )
    {
        double saddleAt = ScaleMm + saddleMm;
        double open = saddleAt - nutMm;
        double length = saddleAt - fretMm;
        double behind = fretMm - nutMm;
        double rise = SaddleHeightMm - NutHeightMm;
        double toNut = Math.Sqrt((behind * behind) + (NutHeightMm * NutHeightMm));
        double toSaddle = Math.Sqrt((length * length) + (SaddleHeightMm * SaddleHeightMm));
        double straight = Math.Sqrt((open * open) + (rise * rise));
        double longer = toNut + toSaddle - straight;
        double longerPerSaddle = (length / toSaddle) - (open / straight);
        double longerPerNut = -(behind / toNut) + (open / straight);

        double t0 = Wire.TensionN;
        double k = Wire.StretchStiffnessN / t0;
        double q = 1 + (k * longer / open);
        double qPerSaddle = k * (longerPerSaddle - (longer / open)) / open;
        double qPerNut = k * (longerPerNut + (longer / open)) / open;

        double r0 = Wire.BendingStiffnessNmm2 / t0;
        (double s0, double s0PerLength, _) = Stiffness(r0, open);
        (double s, double sPerLength, double sPerRatio) = Stiffness(r0 / q, length);
        double ratioPerQ = -r0 / (q * q);

        double log = Math.Log(open / length * s / s0) + (0.5 * Math.Log(q));
        double perSaddle =
            (1 / open)
            - (1 / length)
            + (0.5 * qPerSaddle / q)
            + ((sPerLength + (sPerRatio * ratioPerQ * qPerSaddle)) / s)
            - (s0PerLength / s0);
        double perNut =
            (-1 / open)
            + (0.5 * qPerNut / q)
            + (sPerRatio * ratioPerQ * qPerNut / s)
            + (s0PerLength / s0);
        return (
            (CentsPerLog * log) - (FretScale.CentsPerFret * fret),
            CentsPerLog * perNut,
            CentsPerLog * perSaddle
        );
    }

    // 1 + 2√r/l + (4 + π²/2) r/l² with its slopes; r = EI/T.
    private static (double Value, double PerLength, double PerRatio) Stiffness(double r, double l)
    {
        double root = Math.Sqrt(r);
        double value = 1 + (2 * root / l) + (Second * r / (l * l));
        double perLength = -((2 * root) + (2 * Second * r / l)) / (l * l);
        double perRatio = r > 0 ? (1 / (root * l)) + (Second / (l * l)) : 0;
        return (value, perLength, perRatio);
    }
}
