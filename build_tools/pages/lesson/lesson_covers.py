"""What stands last on a lesson page: what it covers, the curriculum, credits, whether tried."""

from __future__ import annotations

from dataclasses import dataclass, replace

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import N_, _, of_schema
from build_tools.pages.pieces.labelled import Labelled
from build_tools.views.dance.coverage import HEADINGS, met
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import sentence
from build_tools.views.words.unit_in_words import item_credit, rights_in_words, tried_in_words

_HEADINGS = {
    "actions": N_("Actions"),
    "space": N_("Space"),
    "dynamics": N_("Dynamics"),
    "relationships": N_("Relationships"),
}


@dataclass(frozen=True, slots=True)
class CoversView:
    """What the lesson covers, and where it comes from."""

    movement: tuple[Labelled, ...]
    """What pupils meet by doing, under actions, space, dynamics and relationships."""
    looked_for: tuple[str, ...]
    """What every pupil shows by the end of the unit, as far as this lesson looks for it."""
    curriculum: tuple[str, ...]
    """Where the unit meets a published curriculum: nation, stage and its words."""
    credits: tuple[str, ...]
    """Who made what, which edition, and the licence."""
    tried: str
    """Honestly, whether it has been taught, and with whom."""


def covers(unit: Unit, lesson: Lesson) -> CoversView:
    """What the lesson covers; curriculum and credits are those of the unit."""
    known = met(replace(unit, lessons=(lesson,)))
    talk = lesson.look_and_talk
    return CoversView(
        movement=tuple(
            Labelled(_(_HEADINGS[heading]), listed(found))
            for heading, words in HEADINGS.items()
            if (found := [of_schema(word) for word in words if word in known])
        ),
        looked_for=tuple(
            sentence(unit.end_points[name].every_pupil)
            for name in (talk.end_points if talk else ())
            if name in unit.end_points
        ),
        curriculum=tuple(
            f"{of_schema(link.nation)}, {link.stage}: {sentence(link.says)}"
            for link in unit.curriculum
        ),
        credits=(
            *(item_credit(one) for one in (*unit.stimulus.items, *lesson.pictures)),
            *rights_in_words(unit),
        ),
        tried=tried_in_words(unit),
    )
