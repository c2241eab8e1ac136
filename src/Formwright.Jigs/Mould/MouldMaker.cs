using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Mould;

/// <summary>Makes the mould of a guitar.</summary>
public static class MouldMaker
{
    private const double ToleranceMm = 0.01;

    /// <summary>Layers, rebate, fasteners and findings.</summary>
    public static MouldPlan Of(Guitar guitar)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        MouldDesign design = guitar.Design.Mould;
        List<Finding> findings = [.. Check(guitar)];
        OutlineOffsets offsets = new(guitar.Outline, guitar.JoinMm, ToleranceMm);
        ArcPath? wall = Band(offsets, design, 0, design.WallMm);
        if (wall is null)
        {
            findings.Add(
                MouldRules.EndsCutTooFar.Broken(
                    Math.Max(design.HeelCutMm, design.TailCutMm),
                    guitar.Outline.WidthAt(guitar.Design.Outline.UpperBout.AtMm) / 2,
                    design.HeelCutMm > design.TailCutMm ? "mould.heel_cut" : "mould.tail_cut"
                )
            );
            return new MouldPlan(design.LayersMm, [], [], 0, 0, findings)
            {
                StackMm = MouldFigures.Stack(design),
            };
        }

        List<Fastener> half =
            design.Rebate.WidthMm < design.WallMm ? FastenerRow.Of(guitar, offsets) : [];
        findings.AddRange(CheckHoles(half, guitar));
        ArcPath? rebate =
            design.Rebate is { WidthMm: > 0, DepthMm: > 0 } && design.Rebate.WidthMm < design.WallMm
                ? Band(offsets, design, 0, design.Rebate.WidthMm)
                : null;
        double boards = guitar.Design.Workboard.ThicknessMm + guitar.Design.Workboard.PackedMm;
        MouldBolt bolt = MouldFigures.Bolt(design, boards);
        ArcPath inner = offsets.Between(0, design.HeelCutMm, design.TailCutMm)!;
        MouldPlan plan = new(
            design.LayersMm,
            [.. Layers(guitar, wall, rebate, half)],
            [.. half.Select(Mirrored), .. half],
            bolt.LeastMm,
            boards + design.LayersMm.Take(2).Sum() - 2,
            findings
        )
        {
            StackMm = MouldFigures.Stack(design),
            Bolt = bolt,
            Play = MouldFigures.Play(design, half, inner),
            Cutting = MouldFigures.Cutting(guitar),
        };
        return plan with { Findings = [.. findings, .. MouldChecks.Of(guitar, plan, half)] };
    }

    // A closed band along the outline between two distances outside it, its ends cut parallel to the centreline (bass side, y_b positive).
    private static ArcPath? Band(
        OutlineOffsets offsets,
        MouldDesign design,
        double innerMm,
        double outerMm
    )
    {
        ArcPath? inner = offsets.Between(innerMm, design.HeelCutMm, design.TailCutMm);
        ArcPath? outer = offsets.Between(outerMm, design.HeelCutMm, design.TailCutMm);
        return inner is null || outer is null
            ? null
            : new ContourBuilder().Along(inner).Back(outer).Close();
    }

    private static IEnumerable<Part> Layers(
        Guitar guitar,
        ArcPath wall,
        ArcPath? rebate,
        List<Fastener> half
    )
    {
        MouldDesign design = guitar.Design.Mould;
        int top = design.LayersMm.Count - 1;
        for (int layer = 0; layer <= top; layer++)
        {
            List<Hole> holes = [];
            foreach (Fastener fastener in half)
            {
                if (fastener.Kind == HoleKind.Bolt || layer < 2)
                {
                    bool takesNut = layer == top && fastener.Kind == HoleKind.Bolt;
                    double nut = design.Fasteners.NutLengthMm;
                    if (!takesNut || nut < design.LayersMm[layer])
                    {
                        holes.Add(new Hole(fastener.Kind, fastener.Centre, fastener.DiameterMm));
                    }

                    if (takesNut)
                    {
                        holes.Add(
                            new Hole(
                                HoleKind.CaptiveNut,
                                fastener.Centre,
                                design.Fasteners.NutDiameterMm,
                                nut < design.LayersMm[layer] ? nut : null
                            )
                        );
                    }
                }
            }

            Pocket[] pockets =
                layer == 0 && rebate is not null
                    ? [new Pocket(rebate, design.Rebate.DepthMm, FromBelow: true)]
                    : [];
            string level =
                layer == 0 ? "bottom"
                : layer == top ? "top"
                : $"middle";
            string id = level == "middle" && top > 2 ? $"mould-middle{layer}" : $"mould-{level}";
            Part bass = new(
                $"{id}-bass",
                "material.plywood",
                design.LayersMm[layer],
                1,
                wall,
                [],
                pockets,
                holes,
                [.. JointMark(guitar, wall, layer)]
            );
            yield return ToTreble(bass, $"{id}-treble");
            yield return bass;
        }
    }

    // A saw line across the wall, from just outside its inner face; the layer is sawn there and joined, or cut from two boards.
    private static IEnumerable<Mark> JointMark(Guitar guitar, ArcPath wall, int layer)
    {
        if (MouldChecks.JointOf(guitar.Design.Mould, layer) is { } joint)
        {
            double x = guitar.JoinMm + joint;
            double inner = guitar.Outline.WidthAt(joint) / 2;
            double outer = wall.Vertices.Max(vertex => vertex.Position.Y);
            if (inner > 0)
            {
                yield return new Mark(
                    "mark.joint",
                    new Point(x, inner),
                    new Point(x, Math.Min(outer, inner + guitar.Design.Mould.WallMm))
                );
            }
        }
    }

    private static Part ToTreble(Part bass, string id) =>
        bass with
        {
            Id = id,
            Outside = ArcPaths.Mirrored(bass.Outside),
            Pockets =
            [
                .. bass.Pockets.Select(pocket =>
                    pocket with
                    {
                        Edge = ArcPaths.Mirrored(pocket.Edge),
                    }
                ),
            ],
            Holes =
            [
                .. bass.Holes.Select(hole =>
                    hole with
                    {
                        Centre = new Point(hole.Centre.X, -hole.Centre.Y),
                    }
                ),
            ],
            Marks =
            [
                .. bass.Marks.Select(mark =>
                    mark with
                    {
                        From = new Point(mark.From.X, -mark.From.Y),
                        To = new Point(mark.To.X, -mark.To.Y),
                    }
                ),
            ],
        };

    private static Fastener Mirrored(Fastener fastener) =>
        fastener with
        {
            Centre = new Point(fastener.Centre.X, -fastener.Centre.Y),
        };

    private static IEnumerable<Finding> Check(Guitar guitar)
    {
        MouldDesign mould = guitar.Design.Mould;
        SoundboardDesign soundboard = guitar.Design.Soundboard;
        if (mould.Rebate.DepthMm > soundboard.EdgeThicknessMm)
        {
            yield return MouldRules.RebateTooDeep.Broken(
                mould.Rebate.DepthMm,
                soundboard.EdgeThicknessMm,
                "mould.rebate.depth"
            );
        }

        if (soundboard.OverhangMm > mould.Rebate.WidthMm)
        {
            yield return MouldRules.OverhangWiderThanRebate.Broken(
                soundboard.OverhangMm,
                mould.Rebate.WidthMm,
                "mould.rebate.width"
            );
        }

        if (mould.Rebate.WidthMm >= mould.WallMm)
        {
            yield return MouldRules.RebateWiderThanWall.Broken(
                mould.Rebate.WidthMm,
                mould.WallMm,
                "mould.rebate.width"
            );
        }

        if (mould.Rebate.DepthMm >= mould.LayersMm[0])
        {
            yield return MouldRules.RebateDeeperThanLayer.Broken(
                mould.Rebate.DepthMm,
                mould.LayersMm[0],
                "mould.rebate.depth"
            );
        }
    }

    private static IEnumerable<Finding> CheckHoles(List<Fastener> half, Guitar guitar)
    {
        for (int i = 0; i < half.Count; i++)
        {
            Fastener hole = half[i];
            Place place = new(hole.Centre.X, -hole.Centre.Y);
            double least = MouldRules.EdgeDiameters * hole.DiameterMm;
            string field =
                hole.Kind == HoleKind.Bolt
                    ? "mould.fasteners.bolt_diameter"
                    : "mould.fasteners.dowel_diameter";
            string kind = JigsWords.Of[$"hole.{hole.Kind}"];
            if (hole.EdgeDistanceMm < least)
            {
                yield return MouldRules.HoleTooNearEdge.Broken(
                    hole.EdgeDistanceMm,
                    least,
                    field,
                    place,
                    kind
                );
            }

            if (i > 0)
            {
                double apart = hole.Centre.DistanceTo(half[i - 1].Centre);
                double leastApart =
                    MouldRules.SpacingDiameters * Math.Max(hole.DiameterMm, half[i - 1].DiameterMm);
                if (apart < leastApart)
                {
                    yield return MouldRules.HolesTooClose.Broken(
                        apart,
                        leastApart,
                        "mould.fasteners.bolts",
                        place
                    );
                }
            }
        }
    }
}
