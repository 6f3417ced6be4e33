"""What follows in a unit from the rest of it, as long as nothing else is written.

Of a section: that its parts dance together, how many a group has by its roles, where it starts by
where the one before ends, and how long the one piece of sound is that says no length. Between
sections: which they are, by the form. Elsewhere: what most units say. Nothing follows from whose a
unit is or whom it is for, since that changes when another school adapts it: credits, licences and
what a curriculum says are always written. Nor does anything follow that a valid file could always
leave out, such as who makes a sound: it has its meaning already.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from fractions import Fraction
from functools import cache
from typing import Any

from build_tools.shapes.shape import Shape, shape_of

Data = Mapping[str, Any]
_FOLLOWS = "dancers follow the sound"
_MADE_BY = "teacher then pupils"
_NO_MATTER = 512
_STANDING = ("formation", "facing", "place")
"""Of where dancers stand, what is always said; the rest may be left open."""


def unit_in_full(data: Any) -> Any:
    """The fields of a unit with those that follow from the rest."""
    if not isinstance(data, dict):
        return data
    made = dict(data)
    for name, full in _PARTS.items():
        if name in data:
            made[name] = full(data[name], data)
    return made


def _each(value: Any, change: Any) -> Any:
    """Each part of a list, or each under its name, that has fields, changed."""
    if isinstance(value, list):
        return [change(one) if isinstance(one, dict) else one for one in value]
    if isinstance(value, dict):
        return {n: change(one) if isinstance(one, dict) else one for n, one in value.items()}
    return value


def _motifs(value: Any, _: Data) -> Any:
    return _each(value, lambda one: {"from": _MADE_BY, **one})


def _dance(value: Any, _: Data) -> Any:
    return _with_sound(value) if isinstance(value, dict) else value


def _with_sound(value: Data) -> dict[str, Any]:
    """Fields with a sound in them that says whom it leads."""
    sound = value.get("sound")
    if not isinstance(sound, dict):
        return dict(value)
    return {**value, "sound": {"follows": _FOLLOWS, **sound}}


def _sections(value: Any, data: Data) -> Any:
    if not isinstance(value, dict):
        return value
    made = dict(value)
    for letter, own in value.items():
        if isinstance(own, dict):
            made[letter] = _section(own, value)
    before: Any = None
    for letter in dict.fromkeys(_letters(data)):
        section = made.get(letter)
        if isinstance(section, dict):
            made[letter] = section = _stands(section, before)
            before = section.get("end")
    return made


def _letters(data: Data) -> list[str]:
    """The letters of the form in order."""
    dance = data.get("dance")
    form = dance.get("form") if isinstance(dance, dict) else None
    return form.split(" ") if isinstance(form, str) else []


def _stands(section: Data, before: Any) -> dict[str, Any]:
    """A section with where it starts and ends, `before` being where the one before it ends."""
    made = dict(section)
    returns = "returns" in section
    for name, usual in (("start", before), ("end", None)):
        usual = made.get("start") if name == "end" else usual
        if not isinstance(usual, dict):
            continue
        if name not in section and not returns:
            made[name] = {n: _word(n, one) for n, one in usual.items() if _may_follow(n, one)}
        elif isinstance(own := section.get(name), dict):
            made[name] = {**{n: _word(n, usual[n]) for n in _STANDING if n in usual}, **own}
    return made


def _word(name: str, value: Any) -> Any:
    """A word of a list as it follows; of one that is none is told where it stands, not here too."""
    words = _words(name)
    return value if not words or value in words else words[0]


@cache
def _words(name: str) -> tuple[Any, ...]:
    shape = _shape(name)
    return shape.words if shape and name in _STANDING else ()


def _shape(name: str) -> Shape | None:
    section = shape_of("unit").fields["sections"].each
    return section.fields["start"].fields.get(name) if section else None


def _may_follow(name: str, value: Any) -> bool:
    """Whether it is no number that is none, of which is told where it stands, not here too."""
    shape = _shape(name)
    if shape is None or shape.takes != "number" or not isinstance(value, str):
        return True
    return bool(shape.pattern) and re.search(shape.pattern, value) is not None


def _section(own: Data, sections: Data) -> dict[str, Any]:
    made = _with_sound(own)
    first = sections.get(str(own.get("returns"))) if "returns" in own else None
    counts = own.get("counts", first.get("counts") if isinstance(first, dict) else None)
    if "danced" in own:
        made["danced"] = _each(own["danced"], lambda one: {"as": "unison", **one})
    if "heard" in own:
        uncounted = "timed" in own or "improvised" in own
        # where the section itself lacks its counts, that alone is told
        made["heard"] = _heard(own["heard"], counts if counts or uncounted else _NO_MATTER)
    if isinstance(groups := own.get("groups"), dict) and "size" not in groups:
        places = [n for n in _places(groups.get("roles")) if isinstance(n, int)]
        made["groups"] = {"size": max(places), **groups} if places else groups
    return made


def _places(roles: Any) -> Iterator[Any]:
    for at in roles.values() if isinstance(roles, dict) else ():
        yield from at if isinstance(at, list) else ()


def _heard(value: Any, counts: Any) -> Any:
    """Pieces of sound; the one without a length has what is left of `counts`."""
    if not isinstance(value, list) or not all(isinstance(one, dict) for one in value):
        return value
    made = [dict(one) for one in value]
    without = [one for one in made if "counts" not in one and "seconds" not in one]
    written = [_number(one["counts"]) for one in made if "counts" in one]
    whole = _number(counts)
    timed = any("seconds" in one for one in made)
    if len(without) == 1 and not timed and whole is not None and None not in written:
        left = whole - sum(n for n in written if n is not None)
        if left > 0:
            without[0]["counts"] = _said(left)
    return made


def _number(written: Any) -> Fraction | None:
    """Counts as a fraction; None where they are none."""
    if isinstance(written, bool) or not isinstance(written, int | str):
        return None
    try:
        return sum((Fraction(part) for part in str(written).split(" ")), Fraction(0))
    except (ValueError, ZeroDivisionError):
        return None


def _said(number: Fraction) -> int | str:
    whole, left = divmod(number, 1)
    if not left:
        return int(whole)
    return f"{whole} {left}" if whole else f"{left}"


def _transitions(value: Any, data: Data) -> Any:
    """Joins that say between which sections they are: in the order of the form."""
    if not isinstance(value, list):
        return value
    dance = data.get("dance")
    decided = isinstance(dance, dict) and "order" in dance
    letters = [] if decided else _letters(data)
    made = []
    for number, own in enumerate(value):
        if not isinstance(own, dict):
            made.append(own)
            continue
        full = dict(own)
        if number + 1 < len(letters):
            full = {"from": letters[number], "to": letters[number + 1], **full}
        if "heard" in own:
            full["heard"] = _heard(own["heard"], own.get("counts"))
        made.append(full)
    return made


_PARTS = {
    "dance": _dance,
    "sections": _sections,
    "motifs": _motifs,
    "transitions": _transitions,
}
