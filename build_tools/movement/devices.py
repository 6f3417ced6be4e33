"""The devices themselves: for each, the change it makes to a motif's actions.

Devices after Blom and Chaplin, The Intimate Act of Choreography, 1982, pp. 102-104; retrograde
and accumulation as in Marchant's composition tools (Washington University in St Louis).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from build_tools.model.dance import Action, Development

Actions = tuple[Action, ...]

_SIDES = {"left": "right", "right": "left"}
_WAYS_BACK = {"forwards": "backwards", "backwards": "forwards"}
KEEP_ACTIONS = ("change of formation", "change of number of dancers", "change of relationship")
"""Devices that change how dancers stand to one another and leave the actions as they are."""
OWN = "own variation"
"""The device that pupils pick: what it changes is theirs to say, and the counts stay."""


def retrograde(actions: Actions) -> Actions:
    """Last action first, each undone: a rise becomes a fall, a way forwards a way backwards."""
    return tuple(_undone(a) for a in reversed(actions))


def mirror(actions: Actions) -> Actions:
    """Left for right, and right for left."""
    return tuple(
        replace(
            a,
            side=_SIDES.get(a.side or "", a.side),
            facing=_SIDES.get(a.facing or "", a.facing),
        )
        for a in actions
    )


def accumulate(actions: Actions) -> Actions:
    """1, 1 2, 1 2 3 and so on: each time round adds the next action."""
    return tuple(a for n in range(1, len(actions) + 1) for a in actions[:n])


def _undone(action: Action) -> Action:
    """An action like a film run backwards.

    What goes over the floor, or turns, goes back the way it came. A part of the body keeps its way,
    and what goes towards somebody still goes there: no word says the other way of either.
    """
    direction, side = action.direction, action.side
    goes = bool({"travel", "jump", "transfer"} & set(action.kinds)) and action.towards is None
    if goes:
        direction = _WAYS_BACK.get(direction or "", direction)
    aside = goes and (direction == "sideways" or action.step == "side-step")
    if aside or "turn" in action.kinds:
        side = _SIDES.get(side or "", side)
    return replace(
        action, level=_swap(action.level), size=_swap(action.size), direction=direction, side=side
    )


def _swap(range_: str | None) -> str | None:
    if range_ is None or " to " not in range_:
        return range_
    first, _, last = range_.partition(" to ")
    return f"{last} to {first}"


def _setting(field: str) -> Callable[[Actions, Development], Actions]:
    """A device that gives the chosen actions one new value and leaves counts alone.

    Steps of another size go as far as that size says.
    """

    def changed(a: Action, value: Any) -> Action:
        found = replace(a, **{field: value}, chosen=a.chosen - {field})
        return replace(found, in_all=None) if field == "size" else found

    def carry_out(actions: Actions, d: Development) -> Actions:
        return tuple(
            changed(a, getattr(d, field)) if not d.only or n in d.only else a
            for n, a in enumerate(actions, start=1)
        )

    return carry_out


def _recount(actions: Actions, d: Development) -> Actions:
    return tuple(replace(a, counts=c) for a, c in zip(actions, d.counts, strict=True))


def _replace_one(actions: Actions, d: Development) -> Actions:
    return tuple(
        d.replacement if n == d.replaced and d.replacement else a
        for n, a in enumerate(actions, start=1)
    )


def _embellish(actions: Actions, d: Development) -> Actions:
    found: list[Action] = []
    for n in range(len(actions) + 1):
        if n:
            found.append(actions[n - 1])
        found += [a.action for a in d.added if a.after == n]
    return tuple(found)


def _fragment(actions: Actions, d: Development) -> Actions:
    first, last = d.kept or (1, len(actions))
    return actions[first - 1 : last]


def _unchanged(actions: Actions, _d: Development) -> Actions:
    return actions


CARRY_OUT: Mapping[str, Callable[[Actions, Development], Actions]] = {
    "repetition": lambda actions, d: actions * (d.times or 1),
    "retrograde": lambda actions, _d: retrograde(actions),
    "change of speed": _recount,
    "change of rhythm": _recount,
    "change of size": _setting("size"),
    "change of level": _setting("level"),
    "change of direction": _setting("direction"),
    "change of facing": _setting("facing"),
    "change of pathway": _setting("pathway"),
    "change of dynamics": _setting("dynamics"),
    "change of body part": _setting("body_part"),
    "mirror": lambda actions, _d: mirror(actions),
    "change of order": lambda actions, d: tuple(actions[n - 1] for n in d.order),
    "replacing an action": _replace_one,
    "leaving out": lambda actions, d: tuple(
        a for n, a in enumerate(actions, start=1) if n not in d.left_out
    ),
    "embellishment": _embellish,
    "fragmentation": _fragment,
    "accumulation": lambda actions, _d: accumulate(actions),
    **dict.fromkeys((*KEEP_ACTIONS, OWN), _unchanged),
}
NEED_NOTHING = {"retrograde", "mirror", "accumulation"}
"""Devices that need nothing said."""
NEEDS: Mapping[str, str] = {
    "repetition": "times",
    "change of speed": "counts",
    "change of rhythm": "counts",
    "change of size": "size",
    "change of level": "level",
    "change of direction": "direction",
    "change of facing": "facing",
    "change of pathway": "pathway",
    "change of dynamics": "dynamics",
    "change of body part": "body_part",
    "change of order": "order",
    "replacing an action": "replaced",
    "leaving out": "left_out",
    "embellishment": "added",
    "fragmentation": "kept",
    "combination": "joined_to",
    "change of formation": "formation",
    "change of number of dancers": "dancers",
    "change of relationship": "relationship",
    OWN: "choice",
}
"""For every other device, the field that says what it changes."""
SET_ONE = frozenset(
    f"change of {field.replace('_', ' ')}"
    for field in ("size", "level", "direction", "facing", "pathway", "dynamics", "body_part")
)
"""Devices that give actions one new value each, all of them or only some."""
WRITTEN = {
    "replaced": "replace",
    "left_out": "leave_out",
    "added": "add",
    "kept": "keep",
    "joined_to": "and",
}
"""The fields whose names in the file differ from the model's."""
DEVICES: tuple[str, ...] = (*CARRY_OUT, "combination")
