"""Developing a motif: each device as a real change that gives new actions with new counts.

A development that changes nothing is a repetition, and one that shares nothing is a contrast:
Smith-Autard, Dance Composition.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction
from functools import lru_cache

from build_tools.model.dance import Action, Dance, Development
from build_tools.movement.devices import (
    CARRY_OUT,
    KEEP_ACTIONS,
    NEED_NOTHING,
    NEEDS,
    OWN,
    WRITTEN,
    Actions,
)
from build_tools.movement.effort import qualities
from build_tools.movement.not_danceable import NotDanceable


def total(actions: Actions) -> Fraction:
    """The counts of all `actions` together."""
    return sum((a.counts for a in actions), Fraction(0))


@lru_cache(maxsize=256)
def actions_of(dance: Dance, name: str) -> Actions:
    """The actions of the motif or development `name`, developed as far as it says.

    Raises KeyError for an unknown name and NotDanceable for a development that cannot be carried
    out or that goes round in a circle.
    """
    return _resolve(dance, name, ())


def _resolve(dance: Dance, name: str, seen: tuple[str, ...]) -> Actions:
    if name in seen:
        raise NotDanceable(f"{' from '.join((*seen, name))} goes round in a circle")
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
    Raises NotDanceable where `misfit` finds something wrong.
    """
    if why := misfit(actions, development, other):
        raise NotDanceable(why)
    if is_left_to_pupils(development):
        return actions
    if development.device == "combination":
        return actions + other
    return CARRY_OUT[development.device](actions, development)


def what_changes(actions: Actions, development: Development, other: Actions = ()) -> frozenset[str]:
    """In which of action, space, dynamics, time and relationships a development differs.

    With `kept`, the law of development: it differs from what it is made from in at least one of
    these, or it is a repetition; and it keeps at least one action, or it is a contrast
    (Smith-Autard, Dance Composition). Where pupils decide, what the device names will differ.
    A mirror counts as a change of space though no sides are written.
    Raises NotDanceable where `misfit` finds something wrong.
    """
    after = develop(actions, development, other)
    if is_left_to_pupils(development) or development.device in _CHANGES_UNWRITTEN:
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
    if is_left_to_pupils(d) or d.device in NEED_NOTHING:
        return None
    field = NEEDS[d.device]
    if not getattr(d, field):
        if d.device == OWN:
            return "the choice in which pupils decide what changes is not said"
        return f"`{WRITTEN.get(field, field)}` is not said, nor the choice in which pupils decide"
    return _counts_misfit(actions, d, other)


def misfit_at(actions: Actions, development: Development) -> tuple[str | int, ...]:
    """The field at which a misfit stands, inside the development; empty where one is missing."""
    d, n = development, len(actions)
    numbered: tuple[tuple[tuple[str | int, ...], tuple[int, ...]], ...] = (
        (("only",), d.only),
        (("order",), d.order),
        (("leave_out",), d.left_out),
        (("keep",), d.kept or ()),
        (("replace", "action"), (d.replaced,) if d.replaced else ()),
        *((("add", at, "after"), (a.after,)) for at, a in enumerate(d.added)),
    )
    for path, numbers in numbered:
        if numbers and max(numbers) > n:
            return path
    field = NEEDS.get(d.device, "")
    return (WRITTEN.get(field, field),) if field and getattr(d, field) else ()


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
        return f"it leaves out every action of the {len(actions)}"
    if d.device == "combination" and not other:
        return "it combines with nothing"
    return None


def is_left_to_pupils(d: Development) -> bool:
    """Whether a choice decides it and nothing of it is written."""
    written = d.device != OWN and getattr(d, NEEDS.get(d.device, "choice"))
    return bool(d.choice) and not written


_CHANGES_UNWRITTEN = {"mirror", *KEEP_ACTIONS}
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
    **dict.fromkeys(KEEP_ACTIONS, "relationships"),
}
"""What a device names, where that is not the action itself."""
_READ: Mapping[str, Callable[[Action], object]] = {
    "action": lambda a: (a.kinds, a.word, a.body_part),
    "space": lambda a: (a.level, a.direction, a.side, a.facing, a.pathway, a.size),
    "dynamics": lambda a: qualities(a.dynamics),
    "time": lambda a: a.counts,
}
