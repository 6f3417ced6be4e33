"""What one unit covers: small, and kept without the unit, so that all can be seen together."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from build_tools.model.unit import Unit
from build_tools.movement.devices import DEVICES
from build_tools.views.dance.coverage import HEADINGS as DANCED
from build_tools.views.dance.coverage import devices_done, met
from build_tools.views.finding.choices import FORM_WORDS, form_values
from build_tools.views.written.works import works

YearOf = tuple[str, str]
"""A nation and one of its school years, as written there."""
SOUNDS = ("recorded", "drum", "voice", "pupils live", "silence")
STIMULI = ("see", "hear", "touch", "do", "think about")
HEADINGS: Mapping[str, tuple[str, ...]] = {
    **DANCED,
    "devices": DEVICES,
    "forms": FORM_WORDS,
    "sound": SOUNDS,
    "stimulus": STIMULI,
}
"""Every word that a unit can cover, under its heading: the words of the schemas."""


@dataclass(frozen=True, slots=True)
class Link:
    """A published text that a unit says it meets."""

    nation: str
    stage: str
    says: str


@dataclass(frozen=True, slots=True)
class Covers:
    """What one unit covers. It depends on the unit alone."""

    slug: str
    title: str
    issued: str
    licence: str
    parts: tuple[str, ...]
    """The licence of each part that it shows or plays, by its SPDX id."""
    years: tuple[YearOf, ...]
    words: Mapping[str, tuple[str, ...]]
    """Under each of `HEADINGS`, its words in their order there."""
    links: tuple[Link, ...]
    topics: tuple[str, ...]
    lessons: int
    builds_on: tuple[str, ...]
    """Units that it names as coming before it, by their folders."""
    leads_to: tuple[str, ...]


def covers(unit: Unit) -> Covers:
    """What `unit` covers: of movement what pupils do, of sound and stimulus what it names."""
    sections = unit.dance.sections.values()
    found = {
        **{heading: met(unit) for heading in DANCED},
        "devices": devices_done(unit),
        "forms": tuple(value.words for value in form_values(unit)),
        "sound": (unit.dance.sound.kind, *(section.sound.kind for section in sections)),
        "stimulus": unit.stimulus.kinds,
    }
    links = dict.fromkeys(Link(one.nation, one.stage, one.says) for one in unit.curriculum)
    return Covers(
        slug=unit.slug,
        title=unit.title,
        issued=unit.issued,
        licence=unit.licence,
        parts=tuple(item.licence for item in works(unit)),
        years=tuple(dict.fromkeys((one.nation, y) for one in unit.years for y in one.years)),
        words={
            heading: tuple(word for word in known if word in found[heading])
            for heading, known in HEADINGS.items()
        },
        links=tuple(links),
        topics=unit.topics,
        lessons=len(unit.lessons),
        builds_on=unit.builds_on.units,
        leads_to=unit.leads_to.units,
    )
