"""Every figure of every action of the published units on one page, to be looked at.

    .venv/bin/python -m tests.support.figure_sheet FILE.html [--unnamed]

Unnamed, each figure has a number only, so that a reader can say what it does from its picture.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from html import escape
from pathlib import Path

from build_tools.body.poses import BODIES
from build_tools.model.dance import Action
from build_tools.movement.development import actions_of
from build_tools.views.dance.moves_before import moves_before
from build_tools.views.diagrams.body_figure import body_figure
from tests.support.sound_bank import real_bank

_FRAME = Path(__file__).parents[2] / "site_overrides/frame"
STYLE = "".join((_FRAME / name).read_text(encoding="utf-8") for name in ("colours.css", "look.css"))
_OWN = """
body { max-width: none; columns: 2; } figure { margin: 0; }
h3 { margin: 0.3rem 0 0; font-size: 0.9rem; }
.row { display: flex; flex-wrap: wrap; gap: 0.6rem 1rem; align-items: end; }
.row .drawing { width: auto; height: 8.2rem; }
.row figcaption { max-width: 11rem; line-height: 1.15; font-size: 0.75rem; }
"""


def danced() -> Iterator[tuple[str, str, tuple[Action, ...]]]:
    """Each motif and development of each published unit: the unit, its name, its actions."""
    for unit in real_bank().units:
        dance = unit.dance
        for name in (*dance.motifs, *dance.developments):
            yield unit.title, name, tuple(actions_of(dance, name))


def sheet(named: bool = True, bodies: tuple[str, ...] = BODIES) -> str:
    """The page: a row for each motif and body; a move that was drawn already is not again."""
    seen: set[tuple[Action, Action | None, str]] = set()
    rows, number = [], 0
    for unit, name, actions in danced():
        for body in bodies:
            cells = []
            for action, before in zip(actions, moves_before(actions), strict=True):
                if (action, before, body) not in seen:
                    seen.add((action, before, body))
                    number += 1
                    figure = body_figure(action, before, body)
                    told = f"{number} <b>{escape(action.word or '')}</b> {escape(figure.title)}"
                    size = f" {len(figure.svg)} B"
                    caption = told + size if named else str(number)
                    cells.append(f"<figure>{figure.svg}<figcaption>{caption}</figcaption></figure>")
            if cells:
                title = f"<h3>{escape(unit)}: {name}, {body}</h3>" if named else ""
                rows.append(f'{title}<div class="row">{"".join(cells)}</div>')
    return f"<!doctype html><meta charset=utf-8><style>{STYLE}{_OWN}</style>{''.join(rows)}"


if __name__ == "__main__":
    Path(sys.argv[1]).write_text(sheet("--unnamed" not in sys.argv), encoding="utf-8")
