"""Who goes to which place: a short way for all together, always the same.

Everybody in turn takes the nearest free place, those with the most to lose first; then any two
change over where that makes the way of both together shorter, until no change does. Ways are
reckoned to a millionth of a metre, so that a hall turned round gives the same choices.
"""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.paths.hall import Point, fine, metres

_ROUNDS = 12
"""Most rounds of changing over; three or four are usual."""


def nearest_places(here: Sequence[Point], places: Sequence[Point]) -> list[int]:
    """For each of `here`, the number of its place; there are as many of each."""
    many = len(here)
    far = [[fine(metres(one, place)) for place in places] for one in here]
    taken = _greedy(far)
    for _ in range(_ROUNDS):
        changed = False
        for one in range(many):
            mine = far[one]
            for other in range(one + 1, many):
                a, b = taken[one], taken[other]
                theirs = far[other]
                if mine[b] + theirs[a] < mine[a] + theirs[b] - 1e-9:
                    taken[one], taken[other] = b, a
                    changed = True
        if not changed:
            break
    return taken


def _greedy(far: list[list[float]]) -> list[int]:
    free = set(range(len(far)))
    taken = [0] * len(far)
    for one in sorted(range(len(far)), key=lambda n: (-min(far[n]), n)):
        place = min(free, key=lambda p: (far[one][p], p))
        taken[one] = place
        free.remove(place)
    return taken
