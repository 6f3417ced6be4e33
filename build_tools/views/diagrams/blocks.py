"""A section as a block: hatched, with its letter; torn at both ends where it is not counted."""

from __future__ import annotations

from build_tools.movement.letters import slug, unmarked
from build_tools.views.diagrams.hatch import hatch_fill
from build_tools.views.diagrams.svg import el, num, text

TINTS = 5
"""How many tints there are; a dance with more letters begins again."""
_TOOTH = 4


def block(
    prefix: str, letter: str, x: float, y: float, width: float, height: float, torn: bool
) -> str:
    """The block of a section, without its letter."""
    d = _torn(x, y, width, height) if torn else _whole(x, y, width, height)
    return el(
        "path",
        d=d,
        class_=f"block letter-{slug(letter)} {tint_class(letter)}",
        fill=hatch_fill(prefix, letter),
        stroke="currentColor",
        stroke_width=1.5,
    )


def tint_class(letter: str) -> str:
    """The class by which a section's tint is known to the styles, the same wherever it is drawn."""
    return f"tint-{(ord(unmarked(letter)) - ord('A')) % TINTS + 1}"


def letter_tag(letter: str, x: float, y: float, size: float) -> str:
    """A section's letter on a patch of paper, its middle at (x, y)."""
    half = size * 0.62
    return el(
        "rect",
        x=x - half,
        y=y - half,
        width=2 * half,
        height=2 * half,
        rx=2,
        class_="paper",
        fill="#FFFDF8",
    ) + text(letter, x, y + size * 0.36, size, anchor="middle", bold=True)


def _whole(x: float, y: float, width: float, height: float) -> str:
    return f"M{num(x)} {num(y)}h{num(width)}v{num(height)}h{num(-width)}z"


def _torn(x: float, y: float, width: float, height: float) -> str:
    """Zigzag at both ends, four teeth high."""
    step = height / 4
    down = "".join(f"l{-_TOOTH if n % 2 == 0 else _TOOTH} {num(step)}" for n in range(4))
    up = "".join(f"l{_TOOTH if n % 2 == 0 else -_TOOTH} {num(-step)}" for n in range(4))
    return f"M{num(x)} {num(y)}h{num(width)}{down}h{num(-width)}{up}z"
