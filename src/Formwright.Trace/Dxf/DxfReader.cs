using Formwright.Curves;
using Formwright.Design.Reading;
using Formwright.Trace.Files;
using Formwright.Trace.Geometry;

namespace Formwright.Trace.Dxf;

/// <summary>
/// Reads the curves of an ASCII DXF, R12 to 2018: LINE, ARC, CIRCLE, ELLIPSE, LWPOLYLINE, POLYLINE with bulges, SPLINE, and INSERT of
/// blocks of them. Only model space; a plan drawing is seen from above (extrusion ±z).
/// </summary>
internal sealed class DxfReader
{
    private const int MaxInserts = 20_000;

    private readonly string file;
    private readonly DxfGroups groups;
    private readonly CurveSink sink;
    private readonly Dictionary<string, (Point Base, List<DxfRecord> Entities)> blocks = new(
        StringComparer.OrdinalIgnoreCase
    );
    private readonly List<DxfRecord> entities = [];
    private readonly List<Diagnostic> notes = [];
    private readonly HashSet<string> noted = new(StringComparer.Ordinal);
    private int? insUnits;
    private int? measurement;
    private int records;
    private int inserts;

    private DxfReader(ReadOnlyMemory<byte> bytes, string file)
    {
        this.file = file;
        groups = new DxfGroups(bytes, file);
        sink = new CurveSink(file);
    }

    internal static TraceFile Read(ReadOnlyMemory<byte> bytes, string file)
    {
        if (bytes.Span[..Math.Min(bytes.Length, 64)].IndexOf("Binary DXF"u8) >= 0)
        {
            throw new TraceFault(file, 1, 1, "fault.dxf-binary");
        }

        return new DxfReader(bytes, file).Run();
    }

    private TraceFile Run()
    {
        bool hasEnd = false;
        while (!hasEnd && groups.Next())
        {
            if (groups.Is("SECTION"))
            {
                Section();
            }

            hasEnd = groups.Is("EOF");
        }

        if (!hasEnd)
        {
            throw new TraceFault(file, Math.Max(1, groups.Line), 1, "fault.dxf-cut");
        }

        TraceUnit unit = DxfUnits.Of(insUnits, measurement);
        Affine map = Affine.Scale(unit.MmPerUnit, unit.MmPerUnit);
        foreach (DxfRecord entity in entities)
        {
            Draw(entity, map, entity.Layer, 0);
        }

        return new TraceFile(file, TraceLayout.Drawing, unit, sink.Curves, notes);
    }

    private void Section()
    {
        groups.MustNext();
        switch (groups.Text)
        {
            case "HEADER":
                Header();
                break;
            case "BLOCKS":
                Blocks();
                break;
            case "ENTITIES":
                Records(entities, "ENDSEC");
                break;
            default:
                do
                {
                    groups.MustNext();
                } while (!groups.Is("ENDSEC"));
                break;
        }
    }

    private void Header()
    {
        groups.MustNext();
        while (!groups.Is("ENDSEC"))
        {
            string variable = groups.Code == 9 ? groups.Text : "";
            groups.MustNext();
            if (groups.Code == 70 && variable == "$INSUNITS")
            {
                insUnits = groups.Whole();
            }
            else if (groups.Code == 70 && variable == "$MEASUREMENT")
            {
                measurement = groups.Whole();
            }
        }
    }

    private void Blocks()
    {
        groups.MustNext();
        while (!groups.Is("ENDSEC"))
        {
            if (!groups.Is("BLOCK"))
            {
                groups.MustNext();
                continue;
            }

            DxfRecord block = Record();
            List<DxfRecord> within = [];
            Records(within, "ENDBLK");
            blocks[block.Name] = (block.Place(), within);
            groups.MustNext();
        }
    }

    /// <summary>Reads records up to one of a kind, which is left as the present group.</summary>
    private void Records(List<DxfRecord> into, string end)
    {
        groups.MustNext();
        while (!groups.Is(end))
        {
            if (groups.Code != 0)
            {
                groups.MustNext();
                continue;
            }

            DxfRecord record = Record();
            groups.MustNext();
            if (record.Kind == "POLYLINE")
            {
                while (groups.Is("VERTEX"))
                {
                    record.Parts.Add(Record());
                    groups.MustNext();
                }
            }

            into.Add(record);
        }
    }

    /// <summary>Reads the record whose kind is the present group; afterwards the next record's kind is held.</summary>
    private DxfRecord Record()
    {
        DxfRecord record = new(groups.Text, groups.Line);
        if (++records > TraceLimits.MaxPieces)
        {
            throw new TraceFault(
                file,
                groups.Line,
                1,
                "fault.too-many-pieces",
                TraceLimits.MaxPieces
            );
        }

        bool isKnown =
            record.Kind
            is "LINE"
                or "ARC"
                or "CIRCLE"
                or "ELLIPSE"
                or "LWPOLYLINE"
                or "POLYLINE"
                or "VERTEX"
                or "SPLINE"
                or "INSERT"
                or "BLOCK";
        int values = 0;
        groups.MustNext();
        while (groups.Code != 0)
        {
            if (groups.Code == 8)
            {
                record.Layer = groups.Text;
            }
            else if (groups.Code == 2)
            {
                record.Name = groups.Text;
            }
            else if (isKnown && IsNumber(groups.Code))
            {
                if (++values > 8 * TraceLimits.MaxPieces)
                {
                    throw new TraceFault(
                        file,
                        groups.Line,
                        1,
                        "fault.too-many-pieces",
                        TraceLimits.MaxPieces
                    );
                }

                record.Add(groups.Code, groups.Number());
            }

            groups.MustNext();
        }

        groups.Hold();
        return record;
    }

    /// <summary>Codes 10 to 59 and 210 to 239 are reals, 60 to 79 whole numbers.</summary>
    private static bool IsNumber(int code) => code is (>= 10 and < 80) or (>= 210 and < 240);

    private void Draw(DxfRecord entity, Affine map, string layer, int depth)
    {
        // Paper space.
        if (entity[67] == 1)
        {
            return;
        }

        if (entity.Kind == "INSERT")
        {
            Insert(entity, map, layer, depth);
            return;
        }

        List<Piece>? pieces = DxfEntities.Of(entity, file, out bool isClosed);
        if (pieces is null)
        {
            Note(entity, "note.left-out");
            return;
        }

        if (Math.Abs(entity[210]) > 1e-6 || Math.Abs(entity[220]) > 1e-6)
        {
            Note(entity, "note.tilted");
            return;
        }

        sink.Add(pieces, isClosed, map, layer, entity.Line, 1);
    }

    private void Insert(DxfRecord insert, Affine map, string layer, int depth)
    {
        if (depth >= TraceLimits.MaxDepth)
        {
            throw new TraceFault(file, insert.Line, 1, "fault.too-deep", TraceLimits.MaxDepth);
        }

        if (!blocks.TryGetValue(insert.Name, out var block))
        {
            Note(insert, "note.missing-block");
            return;
        }

        int columns = (int)Math.Clamp(insert[70, 1], 1, MaxInserts);
        int rows = (int)Math.Clamp(insert[71, 1], 1, MaxInserts);
        Affine mirror = insert[230, 1] < 0 ? Affine.Scale(-1, 1) : Affine.Identity;
        Affine turn = Affine.Turn(insert[50] * Math.PI / 180);
        Affine scale = Affine.Scale(insert[41, 1], insert[42, 1]);
        Affine home = Affine.Move(-block.Base.X, -block.Base.Y);
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++)
            {
                if (++inserts > MaxInserts)
                {
                    throw new TraceFault(file, insert.Line, 1, "fault.too-many-pieces", MaxInserts);
                }

                Affine place = map.After(mirror)
                    .After(Affine.Move(insert[10], insert[20]))
                    .After(turn)
                    .After(Affine.Move(column * insert[44], row * insert[45]))
                    .After(scale)
                    .After(home);
                foreach (DxfRecord entity in block.Entities)
                {
                    // Layer 0 within a block means the layer of the insert.
                    Draw(
                        entity,
                        place,
                        entity.Layer is "0" or "" ? layer : entity.Layer,
                        depth + 1
                    );
                }
            }
        }
    }

    private void Note(DxfRecord entity, string key)
    {
        if (entity.Kind is "SEQEND" or "VIEWPORT" or "ATTRIB" or "ATTDEF")
        {
            return;
        }

        if (notes.Count < TraceReading.MaxDiagnostics && noted.Add(key + entity.Kind))
        {
            notes.Add(TraceDiagnostic.Of(file, entity.Line, 1, key, entity.Kind));
        }
    }
}
