"""Where the dots of a formation stand, on a floor from -1 to 1 both ways, the front at -1."""

from __future__ import annotations

import math

from build_tools.model.dance import Standing

Place = tuple[float, float]
_SCATTERED: tuple[Place, ...] = (
    (-0.82, -0.6), (-0.3, -0.75), (0.28, -0.5), (0.8, -0.7), (-0.6, -0.05), (-0.08, -0.2),
    (0.5, 0.08), (0.88, 0.3), (-0.85, 0.5), (-0.35, 0.4), (0.15, 0.62), (0.62, 0.75),
)  # fmt: skip
_FACES: dict[str, float] = {"front": 0, "back": 180, "left": 270, "right": 90}


def places(formation: str) -> tuple[Place, ...]:
    """The dots of a formation; as many as show its shape, not as many as there are pupils."""
    if formation == "scattered":
        return _SCATTERED
    if formation == "line":
        return tuple((x / 4, 0.0) for x in range(-3, 4))
    if formation == "two lines":
        return tuple((x / 4, y) for y in (-0.35, 0.35) for x in range(-3, 4))
    if formation == "rows":
        return tuple(
            (x / 6 + side, y)
            for y in (-0.5, 0.0, 0.5)
            for side in (-0.5, 0.5)
            for x in (-1.5, -0.5, 0.5, 1.5)
        )
    if formation == "file":
        return tuple((0.0, y / 4) for y in range(-3, 4))
    if formation == "circle":
        return _ring((0, 0), 10, 0.75)
    if formation == "semicircle":
        turn = [math.pi * n / 8 for n in range(9)]
        return tuple((0.8 * math.cos(a), 0.75 * math.sin(a) - 0.35) for a in turn)
    if formation == "V":
        return tuple((n / 4.5, abs(n) / 3 - 0.7) for n in range(-4, 5))
    if formation == "cluster":
        return ((0.0, 0.0), *_ring((0, 0), 5, 0.22), *_ring((0, 0), 9, 0.42))
    if formation == "pairs":
        return tuple(
            (x + side, y)
            for y in (-0.55, 0.1, 0.7)
            for x in (-0.6, 0.1, 0.75)
            for side in (-0.13, 0.13)
        )
    centres = ((-0.6, -0.45), (0.55, -0.5), (-0.55, 0.5), (0.6, 0.45))
    return tuple(p for centre in centres for p in _ring(centre, 4, 0.24))


def facing(standing: Standing, index: int, place: Place) -> float:
    """Which way the dot at `place` faces, in degrees clockwise from the front."""
    if standing.facing in _FACES:
        return _FACES[standing.facing]
    if standing.facing == "mixed":
        return index * 137 % 360
    if standing.facing == "partner":
        return 90 if index % 2 == 0 else 270
    centre = _centre(standing.formation, place)
    angle = math.degrees(math.atan2(centre[0] - place[0], place[1] - centre[1]))
    return round(angle + (180 if standing.facing == "outwards" else 0), 1) % 360


def _centre(formation: str, place: Place) -> Place:
    if formation != "small groups":
        return (0.0, 0.0)
    group = [
        p for p in places(formation) if abs(p[0] - place[0]) < 0.5 and abs(p[1] - place[1]) < 0.5
    ]
    return (sum(p[0] for p in group) / len(group), sum(p[1] for p in group) / len(group))


def _ring(centre: Place, count: int, radius: float) -> tuple[Place, ...]:
    turn = [2 * math.pi * n / count + math.pi / 4 for n in range(count)]
    return tuple(
        (centre[0] + radius * math.cos(a), centre[1] + radius * math.sin(a) * 1.2) for a in turn
    )
