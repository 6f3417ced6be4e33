"""A small copy of a picture, for a card: the same to the eye at that size, in fewer bytes."""

from __future__ import annotations

import io
import re
from collections import Counter
from collections.abc import Sequence

from build_tools.pictures.drawings.tree import Element, all_in, as_text
from build_tools.pictures.publishable import cleaned, read_clean_drawing

_WIDEST = 560
"""Points across of a photograph's copy: a card's width on a screen of 1.5 points to the pixel."""
_QUALITY = 72
_NUMBER = re.compile(r"(?<![\w#])-?\d*\.\d+")
_MEASURES = (
    "d",
    "points",
    "x",
    "y",
    "x1",
    "y1",
    "x2",
    "y2",
    "cx",
    "cy",
    "r",
    "rx",
    "ry",
    "width",
    "height",
)
_PASSED_ON = ("fill", "stroke", "stroke-width", "stroke-linecap", "stroke-linejoin")
"""Attributes that a group passes on to what is in it."""
_OF_STROKES = {
    "stroke-linecap": ("butt", ("circle", "ellipse", "rect", "polygon")),
    "stroke-linejoin": ("miter", ("circle", "ellipse", "line")),
}
"""Attributes of strokes: what they are unsaid, and on which elements they are not to be seen."""
_DOUBLED = re.compile(r"#([0-9a-fA-F])\1([0-9a-fA-F])\2([0-9a-fA-F])\3")
_ONE_LINE = re.compile(r"M[-\d. ]+[Ll][-\d. ]+\Z")
"""A path of one straight line, which has no inside to fill."""
_LARGE = 400
"""Units across from which a whole number is fine enough for a card."""


def small_picture(name: str, data: bytes) -> bytes:
    """A small copy of the sound picture `data`; a drawing stays a drawing, a photograph is JPEG."""
    if name.endswith(".svg"):
        return _small_drawing(data)
    return _small_photograph(cleaned(name, data))


def _small_photograph(data: bytes) -> bytes:
    from PIL import Image

    with Image.open(io.BytesIO(data)) as picture:
        plain = Image.new("RGB", picture.size, "white")
        whole = picture.convert("RGBA")
        plain.paste(whole, mask=whole.getchannel("A"))
        plain.thumbnail((_WIDEST, _WIDEST), Image.Resampling.LANCZOS)
        out = io.BytesIO()
        plain.save(out, "JPEG", quality=_QUALITY, optimize=True)
    return out.getvalue()


def _small_drawing(data: bytes) -> bytes:
    root = read_clean_drawing(data)
    if _width(root) >= _LARGE:
        _round(root)
    for name, (usual, unseen_on) in _OF_STROKES.items():
        _say_once(root, name, usual, unseen_on)
    _short_colours(root)
    _tighten(root)
    return as_text(root).encode()


def _width(root: Element) -> float:
    box = root.attributes.get("viewBox", "").split()
    try:
        return float(box[2]) if len(box) == 4 else 0
    except ValueError:
        return 0


def _short_colours(root: Element) -> None:
    for one in all_in(root):
        for name in ("fill", "stroke"):
            found = _DOUBLED.fullmatch(one.attributes.get(name, ""))
            if found:
                one.attributes[name] = f"#{found[1]}{found[2]}{found[3]}"


def _round(element: Element) -> None:
    """Set measures in whole units; inside what is scaled they stay as they are."""
    if "transform" in element.attributes or element.name in ("defs", "symbol", "text"):
        return
    for name in _MEASURES:
        if name in element.attributes and element.name != "svg":
            value = element.attributes[name]
            element.attributes[name] = _NUMBER.sub(lambda m: _whole(m.group()), value)
    for one in element.elements():
        _round(one)


def _whole(number: str) -> str:
    value = float(number)
    # what is thinner than a unit would be gone
    return number if abs(value) < 1 else str(round(value))


def _say_once(root: Element, name: str, usual: str, unseen_on: Sequence[str]) -> None:
    """Say on the whole drawing what most strokes say of `name`; the others say what they are."""
    strokes = [one for one in all_in(root) if one.attributes.get("stroke", "none") != "none"]
    seen = [one for one in strokes if one.name not in unseen_on]
    said = Counter(one.attributes.get(name, usual) for one in seen)
    if not said or name in root.attributes or any(one.name == "g" for one in strokes):
        return
    most = said.most_common(1)[0][0]
    for one in all_in(root):
        own = one.attributes.pop(name, usual)
        if one in seen and own != most:
            one.attributes[name] = own
    root.attributes[name] = most


def _tighten(element: Element) -> None:
    """Leave out titles and spaces, join like strokes, and say once what neighbours share."""
    if element.name == "text":
        return
    inside: list[Element | str] = []
    for one in element.inside:
        if isinstance(one, str) or one.name in ("title", "desc"):
            continue
        _tighten(one)
        if one.name == "path" and _ONE_LINE.match(one.attributes.get("d", "")):
            one.attributes["fill"] = "none"
        before = inside[-1] if inside else None
        if isinstance(before, Element) and _joined(before, one):
            before.attributes["d"] += one.attributes["d"]
        else:
            inside.append(one)
    element.inside = list(_grouped(inside))


def _joined(before: Element, one: Element) -> bool:
    """Whether two strokes that are not filled, and hide nothing of each other, can be one."""
    if before.name != "path" or one.name != "path" or before.inside or one.inside:
        return False
    if (
        one.attributes.get("fill") != "none"
        or {"opacity", "stroke-opacity"} & one.attributes.keys()
    ):
        return False
    alike = {name: value for name, value in before.attributes.items() if name != "d"}
    same = alike == {name: value for name, value in one.attributes.items() if name != "d"}
    begins_anew = one.attributes.get("d", "").startswith("M")
    return same and begins_anew and not {"id", "transform", "class"} & alike.keys()


def _grouped(inside: list[Element | str]) -> list[Element | str]:
    found: list[Element | str] = []
    for one in inside:
        shared = _shared(one)
        before = found[-1] if found else None
        ours = isinstance(before, Element) and before.name == "g" and before.line < 0
        if isinstance(before, Element) and ours and shared and before.attributes == shared:
            assert isinstance(one, Element)
            before.inside.append(_without(one, shared))
        elif shared and isinstance(one, Element):
            found.append(Element("g", shared, -1, [_without(one, shared)]))
        else:
            found.append(one)
    return [_alone(one) for one in found]


def _shared(one: Element | str) -> dict[str, str]:
    if isinstance(one, str) or one.name in ("g", "defs", "use", "text", "image"):
        return {}
    return {name: one.attributes[name] for name in _PASSED_ON if name in one.attributes}


def _without(one: Element, shared: dict[str, str]) -> Element:
    left = {name: value for name, value in one.attributes.items() if name not in shared}
    return Element(one.name, left, one.line, one.inside)


def _alone(one: Element | str) -> Element | str:
    """A group of ours with one element in it says it on the element itself."""
    if isinstance(one, str) or one.line >= 0 or len(one.inside) != 1:
        return one
    (only,) = one.elements()
    return Element(only.name, {**only.attributes, **one.attributes}, only.line, only.inside)
