"""Writing SVG: elements, numbers, and how wide text is. Units are the drawing's own."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from html import escape

Number = int | float | Fraction
TEXT = 14
"""The usual size of text; at a phone's width one unit is about one pixel."""
SMALL = 13
PLAIN = "ink"
"""The class of what has the colour of words, which needs no class of its own."""
_NARROW = set("iljtfrI.,:;'!|()[] -")
_WIDE = set("mwMW—…")
_BOLD = 1.07


def num(value: Number) -> str:
    """A number with two decimals at most and no needless zeros."""
    text = f"{float(value):.2f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def el(name: str, *children: str, **attributes: str | Number) -> str:
    """One element. Attribute names take `_` for `-`; a trailing `_` is dropped."""
    written = "".join(f' {_name(key)}="{_value(value)}"' for key, value in attributes.items())
    inside = "".join(children)
    return f"<{name}{written}>{inside}</{name}>" if inside else f"<{name}{written}/>"


def _name(key: str) -> str:
    return key.rstrip("_").replace("_", "-")


def _value(value: str | Number) -> str:
    return escape(value) if isinstance(value, str) else num(value)


def drawing(title: str, width: Number, height: Number, *children: str, kind: str) -> str:
    """A whole drawing with its title; `kind` is its class for the style sheet.

    Ink and round ends are said once, here: every shape and word inside inherits them.
    """
    return el(
        "svg",
        el("title", escape(title)),
        *children,
        viewBox=f"0 0 {num(width)} {num(height)}",
        role="img",
        class_=f"drawing {kind}",
        fill="currentColor",
        stroke_linecap="round",
        stroke_linejoin="round",
    )


def text(
    words: str,
    x: Number,
    y: Number,
    size: Number = TEXT,
    anchor: str = "start",
    bold: bool = False,
    kind: str = "ink",
    squeeze: Number | None = None,
) -> str:
    """A line of text with its baseline at `y`, squeezed into `squeeze` units if it is wider."""
    attributes: dict[str, str | Number] = {"x": x, "y": y, "font_size": size}
    if kind != PLAIN:
        attributes["class_"] = kind
    if anchor != "start":
        attributes["text_anchor"] = anchor
    if bold:
        attributes["font_weight"] = 700
    if squeeze is not None and text_width(words, size, bold) > squeeze:
        attributes |= {"textLength": squeeze, "lengthAdjust": "spacingAndGlyphs"}
    return el("text", escape(words), **attributes)


def words_along(
    told: Sequence[tuple[float, str]], y: Number, size: Number, anchor: str = "middle"
) -> str:
    """Words on one baseline, each at its own x; letters that stand alone share one list of them."""
    alone = [(x, words) for x, words in told if len(words) == 1]
    longer = [(x, words) for x, words in told if len(words) > 1]
    placed: dict[str, str | Number] = {"x": " ".join(_half(x) for x, _ in alone)} if alone else {}
    return el(
        "text",
        escape("".join(words for _, words in alone)),
        *(el("tspan", escape(words), x=_half(x)) for x, words in longer),
        **placed,
        y=y,
        font_size=size,
        text_anchor=anchor,
    )


def _half(value: float) -> str:
    return num(round(value * 2) / 2)


def line(
    x1: Number, y1: Number, x2: Number, y2: Number, width: Number = 1, kind: str = "ink"
) -> str:
    """A straight stroke."""
    return path(f"M{num(x1)} {num(y1)}L{num(x2)} {num(y2)}", width, kind)


def path(d: str, width: Number = 1, kind: str = "ink", dash: str = "") -> str:
    """A stroke along `d`."""
    extra: dict[str, str | Number] = {"class_": kind} if kind != PLAIN else {}
    if dash:
        extra["stroke_dasharray"] = dash
    return el("path", d=d, fill="none", stroke="currentColor", stroke_width=width, **extra)


def text_width(words: str, size: Number = TEXT, bold: bool = False) -> float:
    """About how wide `words` are in the bundled face, a little on the safe side."""
    ems = sum(
        0.34 if c in _NARROW else 0.82 if c in _WIDE else 0.66 if c.isupper() else 0.55
        for c in words
    )
    return ems * float(size) * (_BOLD if bold else 1)


def wrapped(words: str, width: Number, size: Number = TEXT, most: int = 3) -> list[str]:
    """`words` broken into lines no wider than `width`; what needs more than `most` is cut."""
    lines: list[str] = [""]
    for word in words.split():
        longer = f"{lines[-1]} {word}".strip()
        if lines[-1] and text_width(longer, size) > width:
            lines.append(word)
        else:
            lines[-1] = longer
    if len(lines) <= most:
        return lines
    return [*lines[: most - 1], lines[most - 1].rstrip(".,;:") + " …"]
