"""The count line: the one ruler that sections, motifs and lessons all stand on."""

from __future__ import annotations

from build_tools.views.diagrams.svg import SMALL, Number, line, num, path, text

LIGHT, HEAVY = 4, 8
"""Lengths of the ticks for one unit and for a heavy unit."""
HEIGHT = 24
"""How much room a ruler with its numbers needs below its line."""


def ruler(
    x: Number,
    y: Number,
    units: int,
    per_unit: Number,
    heavy: int,
    numbers: bool = True,
    start: int = 0,
) -> str:
    """A ruler to the right from (x, y): a light tick a unit, a heavy tick and number every
    `heavy` units, counted on from `start`.
    """
    long = float(units) * float(per_unit)
    left = float(x)
    at = [left + n * float(per_unit) for n in range(units + 1)]
    light = "".join(f"M{num(p)} {num(y)}v{LIGHT}" for n, p in enumerate(at) if (start + n) % heavy)
    strong = "".join(
        f"M{num(p)} {num(y)}v{HEAVY}" for n, p in enumerate(at) if (start + n) % heavy == 0
    )
    parts = [line(left, y, left + long, y, 1.5), path(light, 1), path(strong, 2)]
    if numbers:
        parts += [
            text(
                str(start + n),
                at[n],
                float(y) + HEAVY + SMALL,
                SMALL,
                anchor="end" if n == units else "middle",
                kind="quiet",
            )
            for n in range(1, units + 1)
            if (start + n) % heavy == 0
        ]
    return "".join(parts)
