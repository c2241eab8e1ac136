namespace Formwright.Fuzz.Targets;

/// <summary>SVG files of all segment kinds, shapes, units and references.</summary>
internal sealed class SvgTarget : TraceFileTarget
{
    public override string Name => "svg";

    public override IReadOnlyList<byte[]> Seeds { get; } =
        Texts(
            """
            <svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="100mm" viewBox="0 0 200 100">
            <path id="a" d="M10 10 L90,10 h5 v20 H20 V5 C1 2 3 4 5 6 s1-1 2 2 Q9 9 8 7 t1 1 A5 6 30 0 1 40 40 a3,3 0 1,0 4 4 z m1 1 l2 2"/>
            </svg>
            """,
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="10in" viewBox="-5 -5 100 50" preserveAspectRatio="xMidYMid slice">
            <defs><symbol id="s" viewBox="0 0 10 10"><circle cx="5" cy="5" r="4"/></symbol><g id="g"><rect x="1" y="2" width="30" height="20" rx="3"/></g></defs>
            <use xlink:href="#g" transform="translate(3,4) rotate(30 1 2) scale(2) skewX(5) skewY(1e-1) matrix(1 0 0 1 0 0)"/>
            <use href="#s" x="3" width="40" height="40"/>
            <g style="display:none"><line x1="0" y1="0" x2="9" y2="9"/></g>
            <ellipse cx="20" cy="20" rx="9" ry="4"/><polyline points="0,0 5,5 10 0"/><polygon points="0 0 1 0 1 1"/>
            </svg>
            """,
            """
            <svg><script>alert(1)</script><style>path{fill:none}</style><image href="http://x/y.png"/><text x="1">t</text>
            <svg x="1" y="1" width="50%" height="50%" viewBox="0 0 1 1"><path d="M0 0L1 1"/></svg></svg>
            """
        );

    public override IReadOnlyList<string> Pieces { get; } =
    [
        "<g>",
        "</g>",
        "<svg>",
        "</svg>",
        "<use href=\"#a\"/>",
        "<use href=\"#g\"/>",
        "<path d=\"",
        "<!DOCTYPE svg [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]>",
        "<!ENTITY x SYSTEM \"file:///etc/passwd\">",
        "&a;",
        "&#x1b;",
        "&#0;",
        "<![CDATA[",
        "]]>",
        "<!--",
        "-->",
        "<?x ?>",
        "M0,0",
        "A1e9 1e9 0 1 1 1e-9 0",
        "a0 0 0 0 0 1 1",
        "z",
        "m",
        "1e308",
        "-1e-320",
        "NaN",
        "1e",
        ".5.5",
        "+-1",
        "transform=\"",
        "rotate(",
        "scale(0)",
        "scale(1e200)",
        "matrix(0 0 0 0 0 0)",
        "viewBox=\"0 0 0 0\"",
        "width=\"100%\"",
        "width=\"1e300mm\"",
        "em",
        "pt",
        "\"",
        "'",
        "=",
        "/>",
        "id=\"a\"",
        "xml:space=\"preserve\"",
        "\u0085",
        "é",
    ];
}
