"""Reads a DXF file with ezdxf: prints audit errors, units, and what each entity measures."""

import json
import math
import sys

import ezdxf
from ezdxf.lldxf.encoding import decode_dxf_unicode
from ezdxf.math import bulge_to_arc


def flatten(polyline):
    """Its vertices, and 400 points on each arc (ezdxf's own path holds arcs as cubics, 0.01 mm off)."""
    corners = list(polyline.get_points("xyb"))
    ends = corners[1:] + (corners[:1] if polyline.closed else corners[-1:])
    points = []
    for (x, y, bulge), (next_x, next_y, _) in zip(corners, ends):
        points.append((x, y))
        if bulge:
            centre, start, end, radius = bulge_to_arc((x, y), (next_x, next_y), bulge)
            sweep = (end - start) % math.tau
            steps = range(1, 400) if bulge > 0 else range(399, 0, -1)
            for k in steps:
                angle = start + sweep * k / 400
                points.append(
                    (centre.x + radius * math.cos(angle), centre.y + radius * math.sin(angle))
                )
    return points


document = ezdxf.readfile(sys.argv[1])
audit = document.audit()
entities = []
for entity in document.modelspace():
    row = {"kind": entity.dxftype(), "layer": entity.dxf.layer, "handle": entity.dxf.handle}
    if entity.dxftype() == "CIRCLE":
        row.update(x=entity.dxf.center.x, y=entity.dxf.center.y, radius=entity.dxf.radius)
    elif entity.dxftype() == "LWPOLYLINE":
        points = flatten(entity)
        area = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(points, points[1:] + points[:1])) / 2
        row.update(closed=entity.closed, area=area, count=len(entity))
        row.update(left=min(p[0] for p in points), right=max(p[0] for p in points))
    elif entity.dxftype() == "TEXT":
        row.update(text=decode_dxf_unicode(entity.plain_text()), height=entity.dxf.height)
    entities.append(row)
print(
    json.dumps(
        {
            "version": document.dxfversion,
            "units": document.units,
            "errors": [str(e.message) for e in audit.errors],
            "fixes": [str(e.message) for e in audit.fixes],
            "layers": sorted(layer.dxf.name for layer in document.layers),
            "entities": entities,
        }
    )
)
