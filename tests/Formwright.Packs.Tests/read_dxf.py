"""Reads DXF files with ezdxf and prints, as JSON, what an independent reader sees: audit errors, areas by layer, circles."""

import json
import math
import sys

import ezdxf
from ezdxf.math import bulge_to_arc


def area(polyline):
    points = list(polyline.get_points("xyb"))
    total = 0.0
    for i, (x1, y1, bulge) in enumerate(points):
        x2, y2, _ = points[(i + 1) % len(points)]
        total += (x1 * y2 - x2 * y1) / 2
        if bulge:
            _, start, end, radius = bulge_to_arc((x1, y1), (x2, y2), bulge)
            angle = (end - start) % (2 * math.pi)
            segment = radius * radius * (angle - math.sin(angle)) / 2
            total += segment if bulge > 0 else -segment
    return abs(total)


result = {}
for path in sys.argv[1:]:
    document = ezdxf.readfile(path)
    space = document.modelspace()
    result[path] = {
        "version": document.dxfversion,
        "units": document.units,
        "errors": [str(error.message) for error in document.audit().errors],
        "areas": sorted(
            [[line.dxf.layer, line.closed, area(line)] for line in space.query("LWPOLYLINE") if line.closed],
            key=lambda item: (item[0], -item[2]),
        ),
        "circles": [[c.dxf.center.x, c.dxf.center.y, 2 * c.dxf.radius] for c in space.query("CIRCLE")],
    }
print(json.dumps(result))
