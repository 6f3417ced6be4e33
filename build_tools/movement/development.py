"""Developing a motif: each device as a real change that gives new actions with new counts.

Devices after Blom and Chaplin, The Intimate Act of Choreography, 1982, pp. 102-104; retrograde
and accumulation as in Marchant's composition tools (Washington University in St Louis).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache

from build_tools.model.dance import Action, Dance, Development
from build_tools.movement.effort import qualities

Actions = tuple[Action, ...]

_SIDES = {"left": "right", "right": "left"}
_KEEP_ACTIONS = ("change of formation", "change of number of dancers", "change of relationship")


def total(actions: Actions) -> Fraction:
    """The counts of all `actions` together."""
    return sum((a.counts for a in actions), Fraction(0))


@lru_cache(maxsize=256)
def actions_of(dance: Dance, name: str) -> Actions:
    """The actions of the motif or development `name`, developed as far as it says.

    Raises KeyError for an unknown name and ValueError for a development that cannot be carried
    out or that goes round in a circle.
    """
    return _resolve(dance, name, ())


def _resolve(dance: Dance, name: str, seen: tuple[str, ...]) -> Actions:
    if name in seen:
        raise ValueError(f"{' from '.join((*seen, name))} goes round in a circle")
    if name in dance.motifs:
        return dance.motifs[name].actions
    development = dance.developments[name]
    source = _resolve(dance, development.of, (*seen, name))
    other = _resolve(dance, development.joined_to, (*seen, name)) if development.joined_to else ()
    return develop(source, development, other)


def roots(dance: Dance, name: str) -> frozenset[str]:
    """The motifs that `name` comes from, itself if it is a motif. Unknown names have none."""
    found: set[str] = set()
    waiting, seen = [name], set()
    while waiting:
        here = waiting.pop()
        if here in seen:
            continue
        seen.add(here)
        if here in dance.motifs:
            found.add(here)
        elif here in dance.developments:
            d = dance.developments[here]
            waiting += [d.of, *([d.joined_to] if d.joined_to else [])]
    return frozenset(found)


def develop(actions: Actions, development: Development, other: Actions = ()) -> Actions:
    """Carry out `development` on `actions`; `other` is what a combination adds.

    Where pupils decide how it is changed, the actions and counts stay as they are.
    Raises ValueError where `misfit` finds something wrong.
    """
    if why := misfit(actions, development, other):
        raise ValueError(why)
    if _left_to_pupils(development):
        return actions
    if development.device == "combination":
        return actions + other
    return _DEVICES[development.device](actions, development)


def what_changes(actions: Actions, development: Development, other: Actions = ()) -> frozenset[str]:
    """In which of action, space, dynamics, time and relationships a development differs.

    With `kept`, the law of development: it differs from what it is made from in at least one of
    these, or it is a repetition; and it keeps at least one action, or it is a contrast
    (Smith-Autard, Dance Composition). Where pupils decide, what the device names will differ.
    A mirror counts as a change of space though no sides are written.
    Raises ValueError where `misfit` finds something wrong.
    """
    after = develop(actions, development, other)
    if _left_to_pupils(development) or development.device in _CHANGE_UNWRITTEN:
        return frozenset({_DIMENSIONS.get(development.device, "action")})
    if len(actions) != len(after):
        return frozenset({"action"})
    pairs = tuple(zip(actions, after, strict=True))
    return frozenset(
        dimension
        for dimension, read in _READ.items()
        if any(read(before) != read(now) for before, now in pairs)
    )


def kept(before: Actions, after: Actions) -> Actions:
    """The actions of `before` that are still in `after`, however their manner has changed."""
    return tuple(a for a in before if any(_same_move(a, b) for b in after))


def _same_move(first: Action, second: Action) -> bool:
    """Whether two actions are one move: of one kind, and called the same where both are named."""
    if first.kind != second.kind:
        return False
    if first.word is None or second.word is None:
        return True
    return first.word.casefold() == second.word.casefold()


def misfit(actions: Actions, development: Development, other: Actions = ()) -> str | None:
    """Why `development` cannot be carried out on `actions`, in the reader's words, or None."""
    d, n = development, len(actions)
    numbers = (
        *d.only,
        *d.order,
        *d.left_out,
        *(d.kept or ()),
        *(a.after for a in d.added),
        *((d.replaced,) if d.replaced else ()),
    )
    if numbers and max(numbers) > n:
        return f"it names action {max(numbers)}, but `{d.of}` has {n}"
    if _left_to_pupils(d) or d.device in _NEED_NOTHING:
        return None
    field = _NEEDS[d.device]
    if not getattr(d, field):
        return f"`{_WRITTEN.get(field, field)}` is not said, nor the choice in which pupils decide"
    return _counts_misfit(actions, d, other)


def _counts_misfit(actions: Actions, d: Development, other: Actions) -> str | None:
    if d.device in ("change of speed", "change of rhythm") and len(d.counts) != len(actions):
        return f"it gives counts for {len(d.counts)} actions, but `{d.of}` has {len(actions)}"
    if d.device == "change of rhythm" and sum(d.counts) != total(actions):
        return (
            f"its counts add up to {sum(d.counts)}, but `{d.of}` has {total(actions)}, and a "
            "change of rhythm keeps the total"
        )
    if d.device == "change of order" and len(d.order) != len(actions):
        return f"it orders {len(d.order)} actions, but `{d.of}` has {len(actions)}"
    if d.device == "fragmentation" and d.kept and d.kept[0] > d.kept[1]:
        return f"it keeps actions {d.kept[0]} to {d.kept[1]}, which runs backwards"
    if d.device == "leaving out" and len(d.left_out) >= len(actions):
        return f"it leaves out all {len(actions)} actions"
    if d.device == "combination" and not other:
        return "it combines with nothing"
    return None


def _left_to_pupils(d: Development) -> bool:
    return bool(d.choice) and not getattr(d, _NEEDS.get(d.device, "choice"))


def retrograde(actions: Actions) -> Actions:
    """Last action first. A rise becomes a fall, growing becomes shrinking; directions stay."""
    return tuple(replace(a, level=_swap(a.level), size=_swap(a.size)) for a in reversed(actions))


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


def _swap(range_: str | None) -> str | None:
    if range_ is None or " to " not in range_:
        return range_
    first, _, last = range_.partition(" to ")
    return f"{last} to {first}"


def _setting(field: str) -> Callable[[Actions, Development], Actions]:
    """A device that gives the chosen actions one new value and leaves counts alone."""

    def carry_out(actions: Actions, d: Development) -> Actions:
        return tuple(
            replace(a, **{field: getattr(d, field)}) if not d.only or n in d.only else a
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


_DEVICES: Mapping[str, Callable[[Actions, Development], Actions]] = {
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
    **dict.fromkeys(_KEEP_ACTIONS, _unchanged),
}
_NEED_NOTHING = {"retrograde", "mirror", "accumulation"}
_NEEDS: Mapping[str, str] = {
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
}
_WRITTEN = {
    "replaced": "replace",
    "left_out": "leave_out",
    "added": "add",
    "kept": "keep",
    "joined_to": "and",
}
"""The fields whose names in the file differ from the model's."""
DEVICES: tuple[str, ...] = (*_DEVICES, "combination")
_CHANGE_UNWRITTEN = {"mirror", *_KEEP_ACTIONS}
"""Devices that change something though the written actions may stay just as they are."""
_DIMENSIONS: Mapping[str, str] = {
    "change of speed": "time",
    "change of rhythm": "time",
    "change of dynamics": "dynamics",
    **dict.fromkeys(
        (f"change of {field}" for field in ("size", "level", "direction", "facing", "pathway")),
        "space",
    ),
    "mirror": "space",
    **dict.fromkeys(_KEEP_ACTIONS, "relationships"),
}
"""What a device names, where that is not the action itself."""
_READ: Mapping[str, Callable[[Action], object]] = {
    "action": lambda a: (a.kinds, a.word, a.body_part),
    "space": lambda a: (a.level, a.direction, a.side, a.facing, a.pathway, a.size),
    "dynamics": lambda a: qualities(a.dynamics),
    "time": lambda a: a.counts,
}
