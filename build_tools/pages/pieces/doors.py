"""The ways between the pages of one unit: what is behind each, in a sentence."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.page_words.words import N_, _
from build_tools.pages.frame.frame import Link


@dataclass(frozen=True, slots=True)
class Door:
    """A way to a further page of the unit."""

    words: str
    """What the page is called."""
    href: str
    """Where it is, seen from any page of the unit."""
    about: str
    """What is behind it."""


READY = Door(
    N_("Get ready"),
    "ready.html",
    N_("What to show, what to collect, and how the unit works."),
)
PARTS = Door(
    N_("The dance in full"),
    "parts.html",
    N_("Each part: who dances what, where they stand, how it ends."),
)
MOVES = Door(N_("Every move"), "moves.html", N_("Each move drawn, and how pupils change it."))
ASSESS = Door(
    N_("Plan and assess"),
    "assess.html",
    N_("What every pupil shows by the end, words and curriculum."),
)
SIGN = Door(
    N_("Before you sign"),
    "sign.html",
    N_("What only a person can judge: a list to print and read it by."),
)
"""Not for who teaches: only the page Plan and assess leads there."""


def said(door: Door) -> Door:
    """One of these doors in the language of the page."""
    return Door(_(door.words), door.href, _(door.about))


def doors(unit: Unit, here: Door | None = None) -> tuple[Door, ...]:
    """The further pages of the unit, but for the one that is `here`."""
    found = (READY, PARTS, *((MOVES,) if unit.dance.motifs else ()), ASSESS)
    return tuple(said(door) for door in found if door is not here)


def to_counts(dance: Dance) -> Link:
    """The way to what is heard: counts, or only cues where nobody counts."""
    counted = any(section.counts is not None for section in dance.sections.values())
    return Link(
        _("Play the counts") if counted else _("The cues, and who gives them"), "counts.html"
    )


def to_unit(unit: Unit) -> Link:
    """The way back to the unit's own page."""
    return Link(unit.title, "index.html")
