"""The dance as a strip of soft tints with ink outlines, each part with its name inside.

Widths are lengths. A part that is not counted has a scalloped edge, so that shape and name carry
what the tint says, on paper and where a reader's own colours hold.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass

from build_tools.model.dance import Dance, Section
from build_tools.page_words.words import N_, _
from build_tools.views.dance.dance_line import LinePart, dance_line, width_in_counts
from build_tools.views.diagrams.blocks import tint_class
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.score import score_in_words
from build_tools.views.diagrams.svg import drawing, el, num, path, text, text_width
from build_tools.views.words.plain_words import listed

_SIDE = 2
_TOP = 6
_SCALLOP = 16
_SIZES = (1, 0.93)
"""How large a name may be set, as parts of its usual size; the first that fits."""
_SO_FAR = (N_("{parts} there already"), N_("{parts} new today"), N_("{parts} still to come"))
_AROUND = 7
"""Units between a name and the outlines beside it, both together."""


@dataclass(frozen=True, slots=True)
class StripLook:
    """How a strip is drawn: its width and the height of a block, in the drawing's own units.

    `size` is that of names; where a name has no room even in two lines, the letter stands for it.
    """

    width: int = 350
    height: int = 50
    size: int = 14


@dataclass(frozen=True, slots=True)
class Grown:
    """How far the dance has grown: letters made before, letters new today, pairs joined so far."""

    before: Collection[str]
    today: Collection[str]
    joined: Collection[tuple[str, str]]


def named_strip(dance: Dance, look: StripLook | None = None, grown: Grown | None = None) -> Figure:
    """The dance in order. With `grown`, letters stand for names and what comes later is dashed."""
    look = look or StripLook()
    parts = dance_line(dance).parts
    widths = [float(width_in_counts(part, dance.tempo)) for part in parts]
    widths = _with_room(parts, widths, look, grown)
    joins, shapes, names, x = [], [], [], float(_SIDE)
    for place, (part, width) in enumerate(zip(parts, widths, strict=True)):
        if part.section is not None:
            shape, name = _block(part.section, x, width, look, grown)
            shapes.append(shape)
            names.append(name)
        elif width and _is_joined(parts, place, grown):
            joins.append(f"M{num(x)} {num(_TOP + look.height - 5)}h{num(width)}")
        x += width
    title = strip_says(dance, grown)
    height = _TOP + look.height + 2
    svg = drawing(
        title,
        look.width,
        height,
        path("".join(joins), 4) if joins else "",
        el("g", *shapes, stroke="currentColor", stroke_width=1.5, fill="#fff"),
        el("g", *names, text_anchor="middle", font_weight=700),
        kind="named-strip",
    )
    return Figure(title, svg, score_in_words(dance_line(dance)))


def _with_room(
    parts: Sequence[LinePart], counts: Sequence[float], look: StripLook, grown: Grown | None
) -> list[float]:
    """Widths by length; a part too short for its name takes of the others."""
    least = [
        0.0 if part.section is None else _least_width(part.section, look, grown) for part in parts
    ]
    whole = float(look.width - 2 * _SIDE)
    if sum(least) > whole:
        least = [0.0] * len(parts)
    short: set[int] = set()
    while True:
        left = whole - sum(least[n] for n in short)
        long = sum(one for n, one in enumerate(counts) if n not in short) or 1
        widths = [
            round(least[n] if n in short else one * left / long, 1) for n, one in enumerate(counts)
        ]
        more = {n for n, width in enumerate(widths) if width < least[n] - 0.1} - short
        if not more:
            return widths
        short |= more


def _least_width(section: Section, look: StripLook, grown: Grown | None) -> float:
    name = section.letter if grown is not None else section.name or section.letter
    size = look.size * _SIZES[-1]
    widest = min(max(text_width(line, size, bold=True) for line in lines) for lines in _cuts(name))
    return widest + _AROUND


def strip_says(dance: Dance, grown: Grown | None = None) -> str:
    """What the strip shows, in words."""
    if grown is None:
        parts = listed([_called(dance, one) for one in dance.form])
        return _("The dance, part by part: {parts}", parts=parts)
    made = [one for one in dance.form if one in grown.before and one not in grown.today]
    new = [one for one in dance.form if one in grown.today]
    later = [one for one in dance.form if one not in grown.before and one not in grown.today]
    told = [
        _(words, parts=listed([_called(dance, one) for one in dict.fromkeys(letters)]))
        for letters, words in zip((made, new, later), _SO_FAR, strict=True)
        if letters
    ]
    return _("The dance so far: {parts}", parts="; ".join(told))


def _called(dance: Dance, letter: str) -> str:
    return dance.sections[letter].name or letter


def _is_joined(parts: Sequence[LinePart], place: int, grown: Grown | None) -> bool:
    around = [part.section for part in (parts[place - 1], parts[(place + 1) % len(parts)])]
    letters = tuple(section.letter for section in around if section is not None)
    return grown is None or letters in grown.joined


def _block(
    section: Section, x: float, width: float, look: StripLook, grown: Grown | None
) -> tuple[str, str]:
    """Its outline, and its name."""
    later = grown is not None and section.letter not in (*grown.before, *grown.today)
    today = grown is not None and section.letter in grown.today
    scalloped = section.counts is None
    outline = (_scalloped if scalloped else _straight)(x, width, look.height)
    extra: dict[str, str | float] = {"stroke_dasharray": "5 4"} if later else {}
    if today:
        extra["stroke_width"] = 3.5
    if later:
        extra["fill"] = "none"
    else:
        extra["class_"] = tint_class(section.letter)
    shape = el("path", d=outline, **extra)
    name = section.letter if grown is not None else section.name or section.letter
    return shape, _name(section.letter, name, x, width, look, scalloped)


def _name(letter: str, name: str, x: float, width: float, look: StripLook, scalloped: bool) -> str:
    lines, size = _set(name, width - _AROUND + 0.5, look)
    if not lines:
        lines, size = [letter], look.size
    middle = _TOP + look.height / 2 + (3 if scalloped else 0)
    first = middle - (len(lines) - 1) * size * 0.56 + size * 0.35
    return "".join(
        text(line, x + width / 2, first + n * size * 1.12, size) for n, line in enumerate(lines)
    )


def _set(name: str, width: float, look: StripLook) -> tuple[list[str], float]:
    """The name in up to three lines, as large as it fits; no lines where it does not fit."""
    for size in (look.size * part for part in _SIZES):
        for lines in _cuts(name):
            if len(lines) * size * 1.12 > look.height - 4:
                continue
            if all(text_width(line, size, bold=True) <= width for line in lines):
                return lines, size
    return [], look.size


def _cuts(name: str) -> list[list[str]]:
    words = name.split()
    two = [[" ".join(words[:n]), " ".join(words[n:])] for n in range(1, len(words))]
    return [[name], *two, *([words] if len(words) == 3 else [])]


def _straight(x: float, width: float, height: float) -> str:
    return f"M{num(x)} {_TOP}h{num(width)}v{num(height)}h{num(-width)}z"


def _scalloped(x: float, width: float, height: float) -> str:
    """Round bumps along the top, as many as the width holds."""
    bumps = max(2, round(width / _SCALLOP))
    step = width / bumps
    top = "".join(f"q{num(round(step / 2, 1))} -8 {num(round(step, 1))} 0" for _n in range(bumps))
    return f"M{num(x)} {_TOP + 3}{top}V{num(_TOP + height)}H{num(x)}z"
