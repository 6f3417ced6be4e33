"""How much a drawing makes a browser draw, with everything that it shows again counted again.

An upper bound: rules of styles count for every part that they may be about, and nothing is taken
off for what is hidden or lies outside.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from functools import reduce

from build_tools.pictures.drawings.allowed import (
    FILTERED,
    GRADIENTS,
    NUMBERS,
    ONLY_REFERRED_TO,
    PATHS,
    SHAPES,
    TEXTS,
)
from build_tools.pictures.drawings.styles import (
    Declaration,
    declarations_in,
    numbers_in,
    places_in,
    rules_in,
)
from build_tools.pictures.drawings.tree import Element, all_in
from build_tools.pictures.limits import (
    MOST_AGAIN,
    MOST_CORNERS,
    MOST_DASHES,
    MOST_LAYERS,
    MOST_LETTERS,
    MOST_SHAPES,
    MOST_SHOWN_POINTS,
    MOST_USES,
)
from build_tools.pictures.trouble import PictureError

_PAINTS = ("fill", "stroke")
_MARKERS = ("marker", "marker-start", "marker-mid", "marker-end")
_LAYERS = ("mask", "clip-path", "filter")
_SEE_THROUGH = ("opacity", "mix-blend-mode", "isolation")
_DASHES = "stroke-dasharray"
_INHERITED = frozenset({*_PAINTS, *_MARKERS})
_COUNTED = _INHERITED | {*_LAYERS, *_SEE_THROUGH, _DASHES}
_SOLID = frozenset({"", "1", "1.0", "100%", "normal", "auto"})
_COUNTABLE = 10**12
_MOST_NESTED = 12
"""References that follow one another."""
_MOST_TOLD = 60
"""Ways of drawing that one part may take over from those around it."""

Told = tuple[str, str]
"""A property, and the id that it refers to; for dashes how long they are."""


@dataclass(frozen=True, slots=True)
class Cost:
    """Shapes, points of paths, letters, layers, dashes and points of photographs drawn.

    `again` are those of the shapes that stand elsewhere and are shown again by a `use`.
    """

    shapes: int = 0
    again: int = 0
    corners: int = 0
    letters: int = 0
    layers: int = 0
    dashes: int = 0
    photo_points: int = 0

    def plus(self, other: Cost) -> Cost:
        """Both together."""
        return Cost(
            self.shapes + other.shapes,
            self.again + other.again,
            self.corners + other.corners,
            self.letters + other.letters,
            self.layers + other.layers,
            self.dashes + other.dashes,
            self.photo_points + other.photo_points,
        )

    def times(self, number: int) -> Cost:
        """The same so many times."""
        return Cost(
            self.shapes * number,
            self.again * number,
            self.corners * number,
            self.letters * number,
            self.layers * number,
            self.dashes * number,
            self.photo_points * number,
        )


def refuse_costly(root: Element, photo_points: Mapping[str, int]) -> None:
    """Raise where drawing takes too much; `photo_points` by the address of each photograph."""
    elements = list(all_in(root))
    if sum(one.name == "use" for one in elements) > MOST_USES:
        raise PictureError(f"the drawing shows parts again more than {MOST_USES} times")
    cost = _Counting(root, elements, photo_points).of(root, frozenset(), ())
    for much, most, what in (
        (cost.shapes, MOST_SHAPES, "shapes"),
        (cost.again, MOST_AGAIN, "shapes that are shown again"),
        (cost.corners, MOST_CORNERS, "points of paths"),
        (cost.letters, MOST_LETTERS, "letters"),
        (cost.layers, MOST_LAYERS, "masks, filters, clips and see-through groups"),
        (cost.dashes, MOST_DASHES, "dashes"),
        (cost.photo_points, MOST_SHOWN_POINTS, "points of photographs"),
    ):
        if much > most:
            told = f"{much:,}" if much < _COUNTABLE else "without end"
            raise PictureError(f"the drawing has {what} to draw: {told}, more than {most:,}")


@dataclass(slots=True)
class _Counting:
    root: Element
    elements: list[Element]
    photo_points: Mapping[str, int]
    _by_id: dict[str, Element] = field(default_factory=dict)
    _rules: dict[str, dict[Declaration, None]] = field(default_factory=dict)
    _around: dict[int, frozenset[Told]] = field(default_factory=dict)
    """What each part takes over from those around it, where it is written."""
    _known: dict[tuple[int, frozenset[Told]], Cost] = field(default_factory=dict)

    def __post_init__(self) -> None:
        for one in self.elements:
            if "id" in one.attributes:
                self._by_id.setdefault(one.attributes["id"], one)
            if one.name == "style":
                for rule in rules_in(one.words()):
                    counted = {each: None for each in rule.declarations if each.name in _COUNTED}
                    for selector in rule.selectors:
                        self._rules.setdefault(_key(selector), {}).update(counted)
        self._note_around(self.root, frozenset())

    def of(self, element: Element, taken_over: frozenset[Told], road: tuple[str, ...]) -> Cost:
        """What drawing the element takes, where it stands or is shown again.

        `taken_over` is what it draws with unless it says otherwise; `road` are the references that
        led here.
        """
        known = (id(element), taken_over)
        if known not in self._known:
            self._known[known] = self._count(element, taken_over, road)
        return self._known[known]

    def _count(self, element: Element, taken_over: frozenset[Told], road: tuple[str, ...]) -> Cost:
        own = list(self._declared(element))
        taken_over |= _handed_on(own)
        if len(taken_over) > _MOST_TOLD:
            raise PictureError("its styles say too many things of one part", element.line)
        cost = Cost(layers=sum(_is_layer(one) for one in own) + (element.name in FILTERED))
        for one in own:
            if one.name in _LAYERS:
                cost = cost.plus(_sum(self._shown(to, road) for to in places_in(one.value)))
        if element.name in SHAPES or element.name == "text":
            cost = cost.plus(self._shape(element, taken_over, road))
        if element.name in TEXTS:
            cost = cost.plus(Cost(letters=len(element.words())))
        href = element.attributes.get("href", "")
        if element.name == "image":
            cost = cost.plus(Cost(shapes=1, photo_points=self.photo_points.get(href, 0)))
        if element.name == "use" and href:
            shown = self._shown(href[1:], road, taken_over)
            cost = cost.plus(replace(shown, again=shown.shapes))
        drawn = (one for one in element.elements() if one.name not in ONLY_REFERRED_TO)
        return cost.plus(_sum(self.of(one, taken_over, road) for one in drawn))

    def _shape(self, element: Element, taken_over: frozenset[Told], road: tuple[str, ...]) -> Cost:
        attributes = element.attributes
        corners = 1 + sum(1 for name in PATHS for _ in numbers_in(attributes.get(name, ""))) // 2
        cost = Cost(shapes=1, corners=corners)
        for name, told in taken_over:
            if name == _DASHES:
                cost = cost.plus(Cost(dashes=_dashes(element, told)))
            else:
                cost = cost.plus(self._shown(told, road).times(corners if name in _MARKERS else 1))
        return cost

    def _shown(
        self, place: str, road: tuple[str, ...], taken_over: frozenset[Told] = frozenset()
    ) -> Cost:
        """What the part with the id `place` adds where it is referred to."""
        target = self._by_id.get(place)
        if target is None:
            return Cost()
        if place in road:
            raise PictureError(f"the part `{place[:40]}` shows itself again", target.line)
        if len(road) == _MOST_NESTED:
            raise PictureError(f"more than {_MOST_NESTED} parts refer to one another in a row")
        on = (*road, place)
        cost = self.of(target, taken_over | self._around[id(target)], on)
        href = target.attributes.get("href", "")
        if href and target.name in GRADIENTS | {"pattern", "filter"}:
            cost = cost.plus(self._shown(href[1:], on))
        return cost

    def _note_around(self, element: Element, around: frozenset[Told]) -> None:
        self._around[id(element)] = around
        on = around | _handed_on(self._declared(element))
        for one in element.elements():
            self._note_around(one, on)

    def _declared(self, element: Element) -> Iterator[Declaration]:
        attributes = element.attributes
        for name, value in attributes.items():
            if name in _COUNTED:
                yield Declaration(name, value)
        yield from declarations_in(attributes.get("style", ""))
        if self._rules:
            keys = ["*", element.name, f"#{attributes.get('id', '')}"]
            keys += [f".{one}" for one in attributes.get("class", "").split()]
            for key in keys:
                yield from self._rules.get(key, ())


def _key(selector: str) -> str:
    """What a part must be, or have as its class or its id, to be chosen: the last that is said."""
    last = selector.split()[-1]
    return last[max(last.rfind("."), last.rfind("#"), 0) :]


def _handed_on(declared: Iterable[Declaration]) -> frozenset[Told]:
    """What the parts within one take over from it."""
    found: set[Told] = set()
    for one in declared:
        if one.name in _INHERITED:
            found |= {(one.name, place) for place in places_in(one.value)}
        elif one.name == _DASHES:
            found.add((_DASHES, one.value))
    return frozenset(found)


def _is_layer(one: Declaration) -> bool:
    if one.name in _LAYERS:
        return one.value not in ("", "none")
    return one.name in _SEE_THROUGH and one.value not in _SOLID


def _dashes(shape: Element, dashes: str) -> int:
    """How many dashes the shape's line has at most: it is no longer than twice all its numbers."""
    each = list(numbers_in(dashes))
    if not any(each):
        return 0
    told = (shape.attributes.get(name, "") for name in NUMBERS)
    length = 2 * sum(number for value in told for number in numbers_in(value))
    return int(length * len(each) / sum(each))


def _sum(costs: Iterable[Cost]) -> Cost:
    return reduce(Cost.plus, costs, Cost())
