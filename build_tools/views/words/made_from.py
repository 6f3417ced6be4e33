"""How one motif is made from another, in words that its moves tell: half as fast, with a wait."""

from __future__ import annotations

from fractions import Fraction

from build_tools.model.dance import Addition, Dance, Development
from build_tools.movement.development import actions_of
from build_tools.page_words.words import _
from build_tools.views.words.plain_words import (
    action_label,
    development_in_words,
    listed,
    name_in_words,
)


def made_from_in_words(dance: Dance, development: Development) -> str:
    """Marble, half as fast; meet, with “wait” before it. What pupils decide is left open."""
    d = development
    how = "" if d.choice else _speed(dance, d) or _added(dance, d)
    return f"{name_in_words(d.of)}, {how}" if how else development_in_words(d, dance.sides)


def _speed(dance: Dance, d: Development) -> str:
    """Slower or faster, by how much where it is the same of every move."""
    if d.device != "change of speed":
        return ""
    moves = zip(actions_of(dance, d.of), actions_of(dance, d.name), strict=True)
    times = {new.counts / old.counts for old, new in moves if old.counts}
    if len(times) == 1:
        return _as_fast(times.pop())
    slower, faster = any(one > 1 for one in times), any(one < 1 for one in times)
    if slower and faster:
        return _("some of it slower, some of it faster")
    some = 1 in times
    if slower:
        return _("some of it slower") if some else _("slower")
    return _("some of it faster") if some else _("faster")


def _as_fast(times: Fraction) -> str:
    if times == 1:
        return ""
    if times == 2:
        return _("half as fast")
    if times == Fraction(1, 2):
        return _("twice as fast")
    if times < 1:
        return _("faster")
    if times.denominator > 1:
        return _("slower")
    return _("slower, on {times} times the counts", times=times)


def _added(dance: Dance, d: Development) -> str:
    """Which moves are added, and where: those with the same word in one go."""
    if d.device != "embellishment" or not d.added:
        return ""
    places: dict[str, list[str]] = {}
    for one in d.added:
        places.setdefault(action_label(one.action), []).append(_place(dance, d, one))
    said = [
        _("“{move}” {places}", move=word, places=listed(where)) for word, where in places.items()
    ]
    return _("with {moves}", moves=listed(said))


def _place(dance: Dance, d: Development, one: Addition) -> str:
    before = actions_of(dance, d.of)
    if one.after == 0:
        return _("before it")
    if one.after == len(before):
        return _("after it")
    return _("after “{move}”", move=action_label(before[one.after - 1]))
