"""Which of the old is which of the new, in lists whose things have moved, come and gone."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Mapping, Sequence
from difflib import SequenceMatcher
from typing import Any

Pair = tuple[int | None, int | None]
ALIKE = 0.5
_FEW, _NEAR = 2_500, 8
"""So many pairs are all compared; in longer lists only those that stand so near one another."""


def paired(
    old: Sequence[Any],
    new: Sequence[Any],
    key: Callable[[Any], Hashable],
    likeness: Callable[[Any, Any], float],
) -> list[Pair]:
    """Pairs of places: those with the same `key` first, then the likest of what is left.

    A place without a partner is paired with None. In the order of the new list, then what went.
    """
    partner: dict[int, int] = {}
    free = list(range(len(old)))
    for n, thing in enumerate(new):
        same = next((o for o in free if key(old[o]) == key(thing)), None)
        if same is not None:
            partner[n] = same
            free.remove(same)
    left = [n for n in range(len(new)) if n not in partner]
    all_pairs = len(free) * len(left) <= _FEW
    near = [(o, n) for o in free for n in left if all_pairs or abs(o - n) <= _NEAR]
    scored = sorted(
        ((likeness(old[o], new[n]), -abs(o - n), -n, o, n) for o, n in near), reverse=True
    )
    for score, _, _, o, n in scored:
        if score >= ALIKE and o in free and n not in partner:
            partner[n] = o
            free.remove(o)
    pairs: list[Pair] = [(partner.get(n), n) for n in range(len(new))]
    return [*pairs, *((o, None) for o in free)]


def moved(pairs: Sequence[Pair]) -> list[int]:
    """The new places of things that changed places among those that stayed; as few as can be."""
    both = [(o, n) for o, n in pairs if o is not None and n is not None]
    olds = [o for o, _ in both]
    matcher = SequenceMatcher(None, sorted(olds), olds, autojunk=False)
    stay = {olds[b.b + i] for b in matcher.get_matching_blocks() for i in range(b.size)}
    return [n for o, n in both if o not in stay]


def likeness_of_texts(old: str, new: str) -> float:
    """How alike two texts are, from 0 to 1, by their words; 0 where that is less than `ALIKE`."""
    matcher = SequenceMatcher(None, old.split(), new.split(), autojunk=False)
    return matcher.ratio() if matcher.quick_ratio() >= ALIKE else 0.0


def likeness_of_fields(old: Mapping[str, Any], new: Mapping[str, Any]) -> float:
    """How alike two mappings are: the share of their fields that say the same."""
    names = old.keys() | new.keys()
    same = [name for name in names if old.get(name) == new.get(name)]
    return len(same) / max(len(names), 1)
