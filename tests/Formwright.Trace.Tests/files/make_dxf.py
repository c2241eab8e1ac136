"""Writes the DXF files of the tests with ezdxf. Run with Debian's python3-ezdxf: /usr/bin/python3 make_dxf.py"""
import math
import ezdxf
from ezdxf.math import BSpline, rational_bspline_from_arc
import outline


def new(version, units=None):
    doc = ezdxf.new(version)
    if units is not None and version != "R12":
        doc.header["$INSUNITS"] = units
    return doc, doc.modelspace()


# A stadium of LINE and ARC, drawn out of order: straight 200, radius 50.
doc, msp = new("R12")
msp.add_line((0, 0), (200, 0))
msp.add_arc((0, 50), 50, 90, 270)
msp.add_line((200, 100), (0, 100))
msp.add_arc((200, 50), 50, 270, 90)
doc.saveas("line-arc-r12.dxf")

# A circle of radius 30 in a block that is placed turned, moved and scaled by 5/2; inches.
doc, msp = new("R2000", 1)
block = doc.blocks.new("ROUND", base_point=(10, 20))
block.add_circle((10, 20), 3)
msp.add_blockref("ROUND", (40, -7), dxfattribs={"xscale": 2.5, "yscale": 2.5, "rotation": 30})
doc.saveas("circle-block-inch.dxf")

# An ellipse of semi-axes 100 and 60, turned by 20 degrees; mm.
doc, msp = new("R2010", 4)
major = (100 * math.cos(math.radians(20)), 100 * math.sin(math.radians(20)))
msp.add_ellipse((5, 7), major_axis=major, ratio=0.6)
doc.saveas("ellipse-2010.dxf")

# A circle of radius 80 as an LWPOLYLINE of two half circles, seen from behind (extrusion 0,0,-1); cm.
doc, msp = new("R2018", 5)
msp.add_lwpolyline([(-8, 0, 1), (8, 0, 1)], format="xyb", close=True, dxfattribs={"extrusion": (0, 0, -1)})
doc.saveas("lwpolyline-2018-cm.dxf")

# A rounded rectangle 200 x 100, radius 25, as an old POLYLINE with bulges.
doc, msp = new("R12")
q = math.tan(math.pi / 8)
msp.add_polyline2d(
    [(25, 0, 0), (175, 0, q), (200, 25, 0), (200, 75, q), (175, 100, 0), (25, 100, q), (0, 75, 0), (0, 25, q)],
    format="xyb",
    close=True,
)
doc.saveas("polyline-r12.dxf")

# A full circle of radius 90 as a rational B-spline.
doc, msp = new("R2007", 4)
spline = rational_bspline_from_arc(center=(0, 0), radius=90, start_angle=0, end_angle=360)
msp.add_spline(dxfattribs={}).apply_construction_tool(spline)
doc.saveas("spline-rational-2007.dxf")

# A plain cubic B-spline.
doc, msp = new("R2013", 4)
tool = BSpline([(0, 0), (40, 90), (110, 120), (190, 80), (240, 0)], order=4)
msp.add_open_spline([(p.x, p.y) for p in tool.control_points], degree=3)
doc.saveas("spline-2013.dxf")

# The invented outline as it comes off a digitiser: 0.02 mm of noise, a bump of 0.3 mm over 20 mm on the treble side, turned by 90
# degrees (heel up), with a centreline, a soundhole and a frame around it.
doc, msp = new("R2000", 4)
points = outline.whole(0.7, seed=11, sigma=0.02, bump=(520, 20, 0.3))
msp.add_lwpolyline([(y + 300, -u + 700) for u, y in points], close=True, dxfattribs={"layer": "TRACE"})
msp.add_line((300, 720), (300, 200), dxfattribs={"layer": "AXIS"})
msp.add_circle((300, 552), 42, dxfattribs={"layer": "HOLE"})
msp.add_lwpolyline([(0, 0), (600, 0), (600, 800), (0, 800)], close=True, dxfattribs={"layer": "FRAME"})
msp.add_text("invented outline", dxfattribs={"layer": "TEXT"})
doc.saveas("outline-2000.dxf")

# The same without noise, in lines of R12: no unit, halves apart, the pieces shuffled.
doc, msp = new("R12")
lines = []
treble = outline.sampled(4)
for side in (1, -1):
    places = [(u * 0.1, side * y * 0.1) for u, y in treble]
    lines += list(zip(places, places[1:]))
order = list(range(len(lines)))
outline.random.Random(5).shuffle(order)
for i in order:
    a, b = lines[i]
    msp.add_line(a, b) if i % 2 else msp.add_line(b, a)
doc.saveas("outline-lines-r12.dxf")
