"""An invented outline for the test files, in plain Python: ten pieces of evenly changing bend, integrated by Simpson's rule.

It stands apart from the C# code on purpose: nothing of it is used here.
"""
import math
import random

LENGTHS = [79, 68, 58, 66, 40, 82, 53, 71, 144, 56]
BENDS = [4.9, 6.4, 10.2, 14.7, -14.7, -9.5, 4.1, 9.4, 8.8, 3.8, 3.0]  # 1/m


def _end(lengths, bends, keep=None):
    x = y = 0.0
    theta = math.pi / 2
    steps = 400
    for length, a, b in zip(lengths, bends, bends[1:]):
        h = length / steps
        for i in range(steps):
            def angle(s):
                return theta - (a * s + (b - a) * s * s / (2 * length)) / 1000
            s = i * h
            x += h / 6 * (math.cos(angle(s)) + 4 * math.cos(angle(s + h / 2)) + math.cos(angle(s + h)))
            y += h / 6 * (math.sin(angle(s)) + 4 * math.sin(angle(s + h / 2)) + math.sin(angle(s + h)))
            if keep is not None:
                keep.append((x, y, angle(s + h)))
        theta -= (a + b) * length / 2000
    return y, theta + math.pi / 2


def half():
    """Places (u, y, tangent angle) every 0.1 to 0.4 mm from heel to tail, closed on the centreline by its last two bends."""
    bends = list(BENDS)
    for _ in range(40):
        y, t = _end(LENGTHS, bends)
        if abs(y) < 1e-11 and abs(t) < 1e-13:
            break
        jac = []
        for k in (8, 9):
            probe = list(bends)
            probe[k] += 1e-4
            y1, t1 = _end(LENGTHS, probe)
            jac.append(((y1 - y) / 1e-4, (t1 - t) / 1e-4))
        (a, c), (b, d) = jac
        det = a * d - b * c
        bends[8] += (-y * d + t * b) / det
        bends[9] += (y * c - t * a) / det
    places = [(0.0, 0.0, math.pi / 2)]
    _end(LENGTHS, bends, places)
    return places


def sampled(step, seed=None, sigma=0.0, bump=None):
    """Every so many mm: (u, y), with noise and a raised-cosine bump (arc, length, height) across the curve."""
    rng = random.Random(seed)
    places = half()
    out = []
    wanted = 0.0
    s = 0.0
    for i, (x, y, t) in enumerate(places):
        if i:
            s += math.hypot(x - places[i - 1][0], y - places[i - 1][1])
        if s + 1e-9 >= wanted or i == len(places) - 1:
            off = rng.gauss(0, sigma) if sigma else 0.0
            if bump and abs(s - bump[0]) < bump[1] / 2:
                off += bump[2] / 2 * (1 + math.cos(2 * math.pi * (s - bump[0]) / bump[1]))
            # The outside is to the left of the way from heel to tail.
            out.append((x - off * math.sin(t), y + off * math.cos(t)))
            wanted += step
    return out


def whole(step, **kind):
    """Treble side from heel to tail, then the bass side back (without noise of its own)."""
    treble = sampled(step, **kind)
    bass = [(x, -y) for x, y in sampled(step)]
    return treble + bass[-2:0:-1]
