using Formwright.Design;
using Formwright.Design.Sections;

namespace Formwright.Instrument.Action;

/// <summary>Which figures of chain and design an unknown stands for, how far they may move, and whether the bench has settled them.</summary>
/// <param name="model">The chain.</param>
/// <param name="design">The design.</param>
/// <param name="limits">What can be made.</param>
/// <param name="domePerHeight">Dome under the saddle for one mm of <c>dome.height</c>.</param>
internal sealed class UnknownFigures(
    ChainModel model,
    InstrumentDesign design,
    SolveLimits limits,
    double domePerHeight
)
{
    /// <summary>The chain with the unknown moved, mm; the dome as it stands under the saddle.</summary>
    public ChainModel Moved(Unknown unknown, double move)
    {
        ChainFigures f = model.Figures;
        return model with
        {
            Figures = unknown switch
            {
                Unknown.Ramp => f with { RampMm = f.RampMm + move },
                Unknown.Dome => f with
                {
                    DomeBoardMm = f.DomeBoardMm + move,
                    DomeFreeMm = f.DomeFreeMm + move,
                    DomeStrungMm = f.DomeStrungMm + move,
                },
                Unknown.FingerboardNut => f with { FingerboardNutMm = f.FingerboardNutMm + move },
                Unknown.FingerboardJoin => f with
                {
                    FingerboardJoinMm = f.FingerboardJoinMm + move,
                },
                Unknown.Fingerboard => f with
                {
                    FingerboardNutMm = f.FingerboardNutMm + move,
                    FingerboardJoinMm = f.FingerboardJoinMm + move,
                },
                _ => f with
                {
                    ActionBassMm = f.ActionBassMm + move,
                    ActionTrebleMm = f.ActionTrebleMm + move,
                },
            },
        };
    }

    /// <summary>Whether the bench has settled it.</summary>
    public bool IsMeasured(Unknown unknown)
    {
        MeasuredDesign m = design.Measured;
        bool projected = m.ProjectionMm is not null;
        bool nut = projected || m.FingerboardNutMm is not null;
        bool join = projected || m.FingerboardJoinMm is not null;
        return unknown switch
        {
            Unknown.Ramp => projected || m.RampMm is not null || m.NeckFreeMm is not null,
            Unknown.Dome => projected
                || m.DomeBoardMm is not null
                || m.DomeFreeMm is not null
                || m.DomeStrungMm is not null,
            Unknown.FingerboardNut => nut,
            Unknown.FingerboardJoin => join,
            Unknown.Fingerboard or Unknown.FingerboardSides => nut || join,
            _ => false,
        };
    }

    /// <summary>How far it may move down and up, mm.</summary>
    public (double Least, double Most) Room(Unknown unknown)
    {
        ChainFigures f = model.Figures;
        double nut = f.FingerboardNutMm;
        double join = f.FingerboardJoinMm;
        (double least, double most) = unknown switch
        {
            Unknown.Ramp => (limits.RampMm.Least - f.RampMm, limits.RampMm.Most - f.RampMm),
            Unknown.Dome => (
                (limits.DomeMm.Least - design.Dome.HeightMm) * domePerHeight,
                (limits.DomeMm.Most - design.Dome.HeightMm) * domePerHeight
            ),
            Unknown.FingerboardNut => (
                limits.FingerboardMm.Least - nut,
                limits.FingerboardMm.Most - nut
            ),
            Unknown.FingerboardJoin => (
                limits.FingerboardMm.Least - join,
                limits.FingerboardMm.Most - join
            ),
            Unknown.Fingerboard => (
                limits.FingerboardMm.Least - Math.Min(nut, join),
                limits.FingerboardMm.Most - Math.Max(nut, join)
            ),
            _ => (
                limits.ActionMm.Least - Math.Min(f.ActionBassMm, f.ActionTrebleMm),
                limits.ActionMm.Most - Math.Max(f.ActionBassMm, f.ActionTrebleMm)
            ),
        };

        // Out of its limits at both ends as it is: no move brings all of it back.
        return least <= most ? (least, most) : (0, 0);
    }

    /// <summary>Its keys in the design file, moved by what is asked and by what can be made.</summary>
    public SolvedFigure[] Keys(Unknown unknown, double change, double nearest)
    {
        SolvedFigure Of(string key, double before, double share = 1) =>
            new(key, before, before + (share * change), before + (share * nearest));
        double perDome = unknown == Unknown.Dome ? 1 / domePerHeight : 1;
        List<SolvedFigure> keys = unknown switch
        {
            Unknown.Ramp => [Of("neck.ramp", design.Neck.RampMm)],
            Unknown.Dome => [Of("dome.height", design.Dome.HeightMm, perDome)],
            Unknown.Action =>
            [
                Of("action.bass", design.Action.BassMm),
                Of("action.treble", design.Action.TrebleMm),
            ],
            _ => [],
        };
        if (unknown == Unknown.Dome)
        {
            Add("dome.free", design.Dome.FreeMm);
            Add("dome.strung", design.Dome.StrungMm);
        }

        if (unknown is Unknown.Fingerboard or Unknown.FingerboardNut)
        {
            keys.Add(Of("fingerboard.thickness_nut", design.Fingerboard.ThicknessNutMm));
            Add("fingerboard.thickness_nut_treble", design.Fingerboard.ThicknessNutTrebleMm);
        }

        if (unknown is Unknown.Fingerboard or Unknown.FingerboardJoin)
        {
            keys.Add(Of("fingerboard.thickness_join", design.Fingerboard.ThicknessJoinMm));
            Add("fingerboard.thickness_join_treble", design.Fingerboard.ThicknessJoinTrebleMm);
        }

        return [.. keys];

        void Add(string key, double? before)
        {
            if (before is { } mm)
            {
                keys.Add(Of(key, mm, perDome));
            }
        }
    }
}
