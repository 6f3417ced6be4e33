"""Partners who face each other end as far apart as is said, and pass only where that is said.

Where nothing is written of a section's end, it ends as it starts. Partners four steps apart who
each go four steps towards the other and two back meet, pass, and are not four steps apart at the
end: the next part starts somewhere else, and in the hall two children walk into each other.

Bad:
    meet: {actions: [{travel: 4, direction: forwards}, {stillness: 4}], …}
    start: {formation: pairs, facing: partner, place: "Opposite your partner, eight steps apart"}
    end: {formation: pairs, facing: partner, place: "Opposite your partner, eight steps apart"}
    danced: [{what: [meet], as: unison}]
Good:
    meet: {actions: [{travel: 4, direction: forwards, size: small},
        {travel: 4, direction: backwards, size: small}], …}
    start: {formation: pairs, facing: partner, place: "Opposite your partner, eight steps apart"}
    end: {formation: pairs, facing: partner, place: "Opposite your partner, eight steps apart"}
    danced: [{what: [meet], as: unison}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.body.ages import AtAge, at_age
from build_tools.model.dance import Section
from build_tools.model.same_words import same_words
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.sentences.staying_in_place import same_place
from build_tools.views.dance.between_partners import Between, between_partners
from build_tools.views.dance.on_the_floor import middle_age
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "lengths of steps for the age as in build_tools/body/ages.json; that a step and a bit do not "
    "matter is common practice, no source"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")
_MATTERS = 0.8
"""Metres: a step and a bit."""
_PASS = Saying(
    """
    pass|cross|swap|through|past|round
    change ~2 place|side
    each =other's|=others
    """
)
"""That they come past one another, or to where the other stood."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section whose partners end elsewhere, or meet or pass unsaid."""
    body = at_age(middle_age(unit))
    for letter, section in unit.dance.sections.items():
        found = between_partners(unit.dance, section, body)
        if found is None:
            continue
        met = _met(section, found, body)
        changed = abs(found.at_last - found.at_first)
        ends = _ends(section, found) if changed > _MATTERS and _ends_as_it_starts(section) else ""
        if met or ends:
            yield Finding(
                unit.file,
                ("sections", letter, "danced"),
                f"in section {letter} partners start {found.at_first:.1f} metres apart, and each "
                f"goes {_steps(found)}: {', and '.join(one for one in (met, ends) if one)}",
                "; ".join(one for one in (ends and _SAY_THE_END, met and _SAY_THE_SIDE) if one),
            )


_SAY_THE_END = (
    "say in `place` under `end` how far apart they are then, or let them go back as far as they "
    "came"
)
_SAY_THE_SIDE = (
    "let them start farther apart or take fewer steps, or say that they pass, and on which side"
)


def _met(section: Section, found: Between, body: AtAge) -> str:
    """That they pass, or come nearer than an arm; what floor and field tell is another rule's."""
    if _says_so(section) or (found.least >= 0 and section.start.apart is not None):
        return ""
    if found.least < 0:
        return "they meet and pass"
    near = found.least < body.arm <= found.at_first
    return f"they come within {found.least:.1f} metres of one another" if near else ""


def _steps(found: Between) -> str:
    forth = f"{how_many(_whole(found.forth), 'step')} towards the other"
    return f"{forth} and {_whole(found.back)} back" if found.back else forth


def _whole(steps: float) -> int:
    return round(steps)


def _ends(section: Section, found: Between) -> str:
    change = found.at_first - found.at_last
    nearer = "nearer" if change > 0 else "farther apart"
    return f"they end {abs(change):.1f} metres {nearer}, not `{section.end.place.strip()}`"


def _ends_as_it_starts(section: Section) -> bool:
    start, end = section.start, section.end
    alike = same_words(start.place) == same_words(end.place) or same_place(end.place) is not None
    return alike and end.formation == "pairs" and end.facing == "partner"


def _says_so(section: Section) -> bool:
    said = (section.idea, section.end.place, *(one.who or "" for one in section.danced))
    return _PASS.in_any(said)
