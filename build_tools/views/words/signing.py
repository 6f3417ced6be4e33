"""What only a person can judge in a unit, and who read it for that, in words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from build_tools.model.unit import Reading, Unit
from build_tools.page_words.words import N_, _
from build_tools.views.words.days import day_in_words
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital, sentence


@dataclass(frozen=True, slots=True)
class Aspect:
    """One thing that a unit is read for."""

    name: str
    """As `read_by` of a unit writes it."""
    title: str
    """What it is called."""
    question: str
    """What who signs has to answer."""
    how: str
    """How to find the answer."""


ASPECTS = (
    Aspect(
        "imagination",
        N_("imagination"),
        N_("Is there something here that nobody has danced before?"),
        N_("Name the moment. If you cannot, the unit is sound and could be any other."),
    ),
    Aspect(
        "truth",
        N_("truth to the stimulus"),
        N_("Would it be another dance if it started from something else?"),
        N_("Say of each part which line, picture or fact it comes from."),
    ),
    Aspect(
        "choices",
        N_("the worth of the pupils’ choices"),
        N_("Does it matter to the dance which way they decide?"),
        N_("Dance it both ways. Who was told nothing should see which was chosen."),
    ),
    Aspect(
        "watching",
        N_("whether one would watch it"),
        N_("Would you watch the whole dance, and want to see it again?"),
        N_("Run it in your head from the first count to the last. Mark where you would look away."),
    ),
    Aspect(
        "walked",
        N_("counts and ways, walked"),
        N_("Has somebody clapped and walked every part, at its tempo, in its metres?"),
        N_("Do the ways arrive on time? Does the quickest move suit a body of that age?"),
    ),
    Aspect(
        "clarity",
        N_("words for who has never taught dance"),
        N_("Could a teacher new to dance say these lines and know what to look for?"),
        N_("Read what you say aloud to somebody who does not dance, once."),
    ),
    Aspect(
        "growth",
        N_("what grows from lesson to lesson"),
        N_("Is each lesson worth its slot?"),
        N_("Say what pupils can do at its end that they could not do at its start."),
    ),
    Aspect(
        "inclusion",
        N_("a part for everyone"),
        N_("Is each other way, sitting, on wheels, by sign or without touch, as good a dance?"),
        N_("Dance one of them yourself, through the hardest part."),
    ),
    Aspect(
        "safety",
        N_("safety"),
        N_("Would you let your own class do this in your own hall?"),
        N_(
            "Look at what is near faces, quick to the floor, backwards or crossing. Your school’s "
            "risk assessment and your employer’s policy come first, whatever is signed here."
        ),
    ),
    Aspect(
        "honesty",
        N_("honesty and credit"),
        N_(
            "Is every fact true, everything borrowed credited, and nothing claimed that nobody "
            "tried?"
        ),
        N_(
            "Look each fact up. Where a dance or a story belongs to living people, ask if they "
            "were asked."
        ),
    ),
)
"""What no rule looks at, in the order in which a unit is read for it."""

NOBODY = N_(
    "Nobody has signed for this unit yet. That the rules find nothing means that nothing known is "
    "broken, never that a unit is good."
)


def of_this_edition(unit: Unit, reading: Reading) -> bool:
    """Whether what was read is the unit as it stands."""
    return reading.edition == unit.edition


def reading_in_words(unit: Unit, reading: Reading) -> str:
    """Who read the unit for what and when; of another edition, that it was another."""
    titles = {aspect.name: aspect.title for aspect in ASPECTS}
    read_for = listed([_(titles[name]) for name in reading.read_for])
    day = day_in_words(reading.day)
    said = [
        _("{role}, on {day}, for {what}.", role=capital(reading.role), day=day, what=read_for),
        _("Read at this edition.")
        if of_this_edition(unit, reading)
        else _("Read at {edition}; this is {now}.", edition=reading.edition, now=unit.edition),
    ]
    if reading.found:
        said.append(_("What they found: {found}", found=sentence(reading.found)))
    return " ".join(said)


def readings_in_words(unit: Unit) -> tuple[str, ...]:
    """Each reading, the last one first; or that there is none."""
    readings: Sequence[Reading] = sorted(unit.read_by, key=lambda one: one.day, reverse=True)
    return tuple(reading_in_words(unit, one) for one in readings) or (_(NOBODY),)


def not_read_for(unit: Unit) -> tuple[str, ...]:
    """What nobody has read this edition for, by its title; all of it where nobody read it."""
    read = {name for one in unit.read_by if of_this_edition(unit, one) for name in one.read_for}
    return tuple(_(aspect.title) for aspect in ASPECTS if aspect.name not in read)
