"""The teams of a class that dance in turn, of whole groups, the same through all of a unit.

Also how many groups sit where nearly all of a class can dance at once. In the browser it is done
for the class of the day by `site_overrides/sums/floor-teams.js`; generated classes hold the two
together.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from build_tools.paths.class_in_groups import class_in_groups

MOST_TURNS = 4
"""Teams that dance turn about; with more, most would sit. Common practice, no source."""
MOST_WAITING = 4
"""Nearly all dance at once where no more than one in so many sits. Common practice, no source."""

Team = tuple[int, ...]
"""The sizes of a team's groups, the larger first."""


@dataclass(frozen=True, slots=True)
class Sharing:
    """A way for a class to have its turns."""

    teams: tuple[Team, ...]
    """Who dances together, where the class dances in teams; else none."""
    waiting: int
    """How many groups sit, others each time, where nearly all dance at once; else 0."""
    dancing: tuple[int, ...]
    """How many pupils may dance at once, each number that comes of it, the largest first."""
    asked: tuple[int, ...]
    """For how many it is asked whether they have room, as `_asked` says."""

    @property
    def spots(self) -> int:
        """For how many pupils the places of a team are laid; 0 where there are no teams."""
        return self.asked[0] if self.teams else 0


@dataclass(frozen=True, slots=True)
class Whole:
    """The groups of a class that stay together."""

    usual: int
    """How many the dance has in a group."""
    sizes: Team
    """How many are in each, the larger first."""
    columns: tuple[Team, ...] = ()
    """Those of each column from the left, where the groups of a column belong together."""


def whole_groups(pupils: int, sizes: Iterable[int]) -> Whole:
    """The largest groups of the dance of which there are a few."""
    known = sorted({*sizes, 1}, reverse=True)
    for size in known:
        groups = class_in_groups(pupils, size, known)
        if len(groups) >= MOST_TURNS or size == 1:
            break
    return Whole(size, tuple(sorted((len(group) for group in groups), reverse=True)))


def sharings(whole: Whole) -> Iterator[Sharing]:
    """All at once; nearly all, as few as may be sitting; then two teams, three and four."""
    groups, pupils, columns = whole.sizes, sum(whole.sizes), whole.columns
    yield Sharing((), 0, (pupils,), _asked(whole, {(len(groups), pupils)}))
    for waiting in range(1, 1 if columns else len(groups) + 1):
        sitting = _sums(groups, waiting)
        if sitting[-1] * MOST_WAITING > pupils:
            break
        dancing = tuple(pupils - many for many in sitting)
        yield Sharing(
            (), waiting, dancing, _asked(whole, {(len(groups) - waiting, one) for one in dancing})
        )
    for many in range(2, min(MOST_TURNS, len(columns or groups)) + 1):
        teams = neighbours(columns, many) if columns else teams_of(groups, many)
        dancing = tuple(sorted({sum(team) for team in teams}, reverse=True))
        asked = _asked(whole, {(len(team), sum(team)) for team in teams})
        yield Sharing(teams, 0, dancing, asked)


def _asked(whole: Whole, dancing: set[tuple[int, int]]) -> tuple[int, ...]:
    """So many groups and pupils as whole groups: where a five stands is not asked of a hall.

    One more or one fewer finds a place in the group; two more need their own.
    """
    near = all(abs(size - whole.usual) <= 1 for size in whole.sizes)
    asked = {groups * whole.usual if near else pupils for groups, pupils in dancing}
    return tuple(sorted(asked, reverse=True))


def teams_of(groups: Sequence[int], many: int) -> tuple[Team, ...]:
    """So many teams of whole groups, as even as they go; the one with more pupils first.

    Each group, the larger first, goes to the team that has the fewest pupils yet.
    """
    teams: list[list[int]] = [[] for _ in range(many)]
    for size in sorted(groups, reverse=True):
        min(teams, key=sum).append(size)
    return tuple(tuple(team) for team in sorted(teams, key=sum, reverse=True))


def neighbours(columns: Sequence[Team], many: int) -> tuple[Team, ...]:
    """So many teams of columns that stand side by side, from the left, as even as they go."""
    least, more = divmod(len(columns), many)
    ends = [least * n + min(n, more) for n in range(many + 1)]
    return tuple(
        tuple(size for column in columns[start:end] for size in column)
        for start, end in pairwise(ends)
    )


def _sums(groups: Sequence[int], many: int) -> list[int]:
    """How many pupils so many of the groups may be, each sum once, the smallest first."""
    found = {(0, 0)}
    for size, there in Counter(groups).items():
        found = {
            (taken + more, total + more * size)
            for taken, total in found
            for more in range(min(there, many - taken) + 1)
        }
    return sorted(total for taken, total in found if taken == many)
