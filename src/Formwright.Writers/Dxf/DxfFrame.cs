using Formwright.Curves;

namespace Formwright.Writers;

/// <summary>
/// What a DXF R2000 file must hold around its entities: header, the nine tables, the two layout blocks, the root
/// dictionary (DXF reference for AutoCAD 2000, sections HEADER, TABLES, BLOCKS, OBJECTS).
/// </summary>
internal static class DxfFrame
{
    // Handles that others point to; those of DxfText.NextHandle follow them.
    private const string ModelRecord = "F1";
    private const string PaperRecord = "F2";

    public static void Write(DxfText text, Box bounds, string[] layers, Action entities)
    {
        text.Add(999, "Formwright, millimetres");
        Header(text, bounds);
        Tables(text, bounds, layers);
        Section(
            text,
            "BLOCKS",
            () =>
            {
                Block(text, "*Model_Space", ModelRecord);
                Block(text, "*Paper_Space", PaperRecord);
            }
        );
        Section(text, "ENTITIES", entities);
        Section(
            text,
            "OBJECTS",
            () =>
            {
                text.Add(0, "DICTIONARY").Add(5, "F3").Add(330, "0").Add(100, "AcDbDictionary");
                text.Add(281, 1).Add(3, "ACAD_GROUP").Add(350, "F4");
                text.Add(0, "DICTIONARY").Add(5, "F4").Add(330, "F3");
                text.Add(100, "AcDbDictionary").Add(281, 1);
            }
        );
        text.Add(0, "EOF");
    }

    /// <summary>Head of an entity of model space on a layer.</summary>
    public static void Entity(DxfText text, string kind, string layer, string subclass)
    {
        text.Add(0, kind).Add(5, text.NextHandle()).Add(330, ModelRecord);
        text.Add(100, "AcDbEntity").Add(8, layer).Add(100, subclass);
    }

    private static void Header(DxfText text, Box bounds) =>
        Section(
            text,
            "HEADER",
            () =>
            {
                text.Add(9, "$ACADVER").Add(1, "AC1015");
                text.Add(9, "$DWGCODEPAGE").Add(3, "ANSI_1252");
                text.Add(9, "$HANDSEED").Add(5, "FFFFFF");
                text.Add(9, "$INSUNITS").Add(70, 4);
                text.Add(9, "$MEASUREMENT").Add(70, 1);
                text.Add(9, "$LUNITS").Add(70, 2);
                text.Add(9, "$EXTMIN").AddPoint(10, bounds.Min.X, bounds.Min.Y);
                text.Add(9, "$EXTMAX").AddPoint(10, bounds.Max.X, bounds.Max.Y);
            }
        );

    private static void Tables(DxfText text, Box bounds, string[] layers) =>
        Section(
            text,
            "TABLES",
            () =>
            {
                Table(text, "VPORT", "E1", 1, () => ViewPort(text, bounds));
                Table(
                    text,
                    "LTYPE",
                    "E2",
                    3,
                    () =>
                    {
                        LineType(text, "ByBlock", "");
                        LineType(text, "ByLayer", "");
                        LineType(text, "Continuous", "Solid line");
                    }
                );
                Table(
                    text,
                    "LAYER",
                    "E3",
                    layers.Length + 1,
                    () =>
                    {
                        Layer(text, "0", 7);
                        for (int i = 0; i < layers.Length; i++)
                        {
                            Layer(text, layers[i], 1 + (i % 6));
                        }
                    }
                );
                Table(text, "STYLE", "E4", 1, () => TextStyle(text));
                Table(text, "VIEW", "E5", 0, () => { });
                Table(text, "UCS", "E6", 0, () => { });
                Table(
                    text,
                    "APPID",
                    "E7",
                    1,
                    () => Record(text, "APPID", "E7", "AcDbRegAppTableRecord", "ACAD").Add(70, 0)
                );
                Table(text, "DIMSTYLE", "E8", 0, () => { });
                Table(
                    text,
                    "BLOCK_RECORD",
                    "E9",
                    2,
                    () =>
                    {
                        BlockRecord(text, "*Model_Space", ModelRecord);
                        BlockRecord(text, "*Paper_Space", PaperRecord);
                    }
                );
            }
        );

    private static void Section(DxfText text, string name, Action body)
    {
        text.Add(0, "SECTION").Add(2, name);
        body();
        text.Add(0, "ENDSEC");
    }

    private static void Table(DxfText text, string name, string handle, int count, Action body)
    {
        text.Add(0, "TABLE").Add(2, name).Add(5, handle).Add(330, "0");
        text.Add(100, "AcDbSymbolTable").Add(70, count);
        if (name == "DIMSTYLE")
        {
            text.Add(100, "AcDbDimStyleTable");
        }

        body();
        text.Add(0, "ENDTAB");
    }

    private static DxfText Record(
        DxfText text,
        string kind,
        string table,
        string subclass,
        string name
    ) =>
        text.Add(0, kind)
            .Add(5, text.NextHandle())
            .Add(330, table)
            .Add(100, "AcDbSymbolTableRecord")
            .Add(100, subclass)
            .Add(2, name);

    private static void ViewPort(DxfText text, Box bounds)
    {
        Record(text, "VPORT", "E1", "AcDbViewportTableRecord", "*Active").Add(70, 0);
        text.Add(10, 0.0).Add(20, 0.0).Add(11, 1.0).Add(21, 1.0);
        text.Add(12, bounds.Centre.X).Add(22, bounds.Centre.Y);
        text.AddPoint(16, 0, 0);
        text.Add(40, Math.Max(1, 1.1 * Math.Max(bounds.HeightMm, bounds.WidthMm / 1.5)));
        text.Add(41, 1.5);
    }

    private static void LineType(DxfText text, string name, string about) =>
        Record(text, "LTYPE", "E2", "AcDbLinetypeTableRecord", name)
            .Add(70, 0)
            .Add(3, about)
            .Add(72, 65)
            .Add(73, 0)
            .Add(40, 0.0);

    private static void Layer(DxfText text, string name, int colour) =>
        Record(text, "LAYER", "E3", "AcDbLayerTableRecord", name)
            .Add(70, 0)
            .Add(62, colour)
            .Add(6, "Continuous");

    private static void TextStyle(DxfText text) =>
        Record(text, "STYLE", "E4", "AcDbTextStyleTableRecord", "Standard")
            .Add(70, 0)
            .Add(40, 0.0)
            .Add(41, 1.0)
            .Add(50, 0.0)
            .Add(71, 0)
            .Add(42, 2.5)
            .Add(3, "txt")
            .Add(4, "");

    private static void BlockRecord(DxfText text, string name, string handle) =>
        text.Add(0, "BLOCK_RECORD")
            .Add(5, handle)
            .Add(330, "E9")
            .Add(100, "AcDbSymbolTableRecord")
            .Add(100, "AcDbBlockTableRecord")
            .Add(2, name);

    private static void Block(DxfText text, string name, string record)
    {
        string begin = text.NextHandle();
        string end = text.NextHandle();
        text.Add(0, "BLOCK").Add(5, begin).Add(330, record).Add(100, "AcDbEntity").Add(8, "0");
        text.Add(100, "AcDbBlockBegin").Add(2, name).Add(70, 0).AddPoint(10, 0, 0).Add(3, name);
        text.Add(1, "");
        text.Add(0, "ENDBLK").Add(5, end).Add(330, record).Add(100, "AcDbEntity").Add(8, "0");
        text.Add(100, "AcDbBlockEnd");
    }
}
