"""Every development can be danced on its motif as it is written.

A change of speed gives counts for each action, a new order names each action, a fragment lies
within the motif. Where the numbers do not fit, the teacher finds out in the hall.

Bad:
    gust: {actions: [{travel: 2}, {jump: 2}, {turn: 2}], …}
    gust-slow: {of: gust, device: change of speed, counts: [4, 4]}
Good:
    gust: {actions: [{travel: 2}, {jump: 2}, {turn: 2}], …}
    gust-slow: {of: gust, device: change of speed, counts: [4, 2, 4]}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance, Development
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.development import actions_of, misfit, misfit_at
from build_tools.movement.devices import Actions
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import sources
from build_tools.views.words.plain_words import action_label, listed

GRADE: Grade = "error"
SOURCE = "Blom and Chaplin, The Intimate Act of Choreography, 1982, pp. 102-104"
NEEDS = ("unknown-name", "name-used-twice")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each circle, and for each development that does not fit its source."""
    dance = unit.dance
    circles: set[str] = set()
    for name, development in dance.developments.items():
        came_from = sources(dance, name)
        if name in came_from:
            if name not in circles:
                circle = [name, *sorted(n for n in came_from if name in sources(dance, n))]
                circles.update(circle)
                yield _circle(unit, name, circle)
            continue
        try:
            source = actions_of(dance, development.of)
            other = actions_of(dance, development.joined_to) if development.joined_to else ()
        except ValueError:
            continue  # the fault lies in what it comes from, which has its own finding
        if why := misfit(source, development, other):
            yield Finding(
                unit.file,
                ("developments", name, *misfit_at(source, development)),
                f"`{name}` ({development.device}) does not work: {why}",
                _help(dance, development, source),
            )


def _circle(unit: Unit, name: str, circle: list[str]) -> Finding:
    others = [n for n in circle[1:] if n != name]
    back = f" by way of {listed([f'`{n}`' for n in others])}" if others else ""
    return Finding(
        unit.file,
        ("developments", name, "of"),
        f"`{name}` is made from itself{back}, so it starts from no motif",
        "write a motif in `of`",
    )


def _help(dance: Dance, development: Development, source: Actions) -> str:
    moves = ", ".join(f"{n} {action_label(a)} {figures(a.counts)}" for n, a in enumerate(source, 1))
    kind = "motif" if development.of in dance.motifs else "development"
    return f"fit it to the {kind} `{development.of}` (each action with its counts: {moves})"
