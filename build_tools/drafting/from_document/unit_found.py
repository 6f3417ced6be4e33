"""The unit file of a draft from what stands in a file round its lessons."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from build_tools.drafting.answers import USUAL_KINDS, Refused, years
from build_tools.drafting.asked import BankFacts
from build_tools.drafting.from_document.leftover import Leftover, put, under
from build_tools.drafting.from_document.rights_found import RightsFound
from build_tools.drafting.from_document.splitting import Stretch
from build_tools.drafting.from_document.steps_found import unread_table
from build_tools.drafting.plan import Fields, still
from build_tools.drafting.unit_fields import curriculum, metres
from build_tools.model.unit import SchoolYears
from build_tools.word_files.blocks import Heading, Paragraph, Picture, Table

_TITLE, _SUMMARY = 60, 220
_LEAST_SUMMARY = 10
_ADAPTED = ", adapted"
_USUAL_LICENCE = "CC-BY-SA-4.0"
_DANCE = (
    "The dance is not in the word-processor file: write its sections, motifs and counts; one "
    "section of a minute stands in their place."
)
_WHOSE = (
    "Say under `credit` who wrote the word-processor file, and make sure that it may be shared "
    "under the licence above."
)


@dataclass(slots=True)
class UnitFound:
    """What a file says of the whole unit, and what of it could not be placed."""

    fields: Fields = field(default_factory=dict)
    years: tuple[SchoolYears, ...] = ()
    left: Leftover = field(default_factory=Leftover)


def unit_found(found: Sequence[Stretch]) -> UnitFound:
    """What stands before the first lesson, and in every stretch that is none."""
    unit = UnitFound()
    for n, stretch in enumerate(found):
        if stretch.is_lesson:
            continue
        if stretch.heading:
            if n < _first_lesson(found) and "title" not in unit.fields:
                put(unit.fields, "title", stretch.heading, "a heading", unit.left, most=_TITLE,
                    least=3)  # fmt: skip
            else:
                unit.left.keep_heading(stretch.heading)
        _around(unit, stretch, before=n < _first_lesson(found))
    return unit


def unit_fields_of(
    unit: UnitFound, facts: BankFacts, asked: tuple[SchoolYears, ...], rights: RightsFound | None
) -> Fields:
    """Every field of unit.md; what the file does not say is an open place."""
    unit.left.still(_DANCE)
    title = str(unit.fields.get("title") or still("the unit's title"))
    found: Fields = {
        "format": 2,
        "title": _adapted(title) if rights else title,
        "edition": "0.1.0",
        "issued": facts.as_of,
        "publisher": facts.name,
        "licence": rights.licence if rights else _USUAL_LICENCE,
        "language": "en-GB",
    }
    if rights:
        found["adapted_from"] = _adapted_from(title, rights)
    else:
        found["credit"] = still("who wrote the word-processor file")
        unit.left.still(_WHOSE)
    return {
        **found,
        "draft": True,
        "years": [
            {"nation": y.nation, "years": [int(n) if n.isdigit() else n for n in y.years]}
            for y in asked
        ],
        "topics": list(facts.topics),
        "subjects": [still("a school subject it links to")],
        "summary": unit.fields.get("summary") or still("what the dance will be, in one sentence"),
        "stimulus": {
            "kinds": list(USUAL_KINDS),
            "what": still("what the dance starts from"),
            "show": still("what you show or do with it, step by step"),
            "where": still("where you show it"),
            "minutes": 5,
            "look_for": still("the one thing pupils look or listen for in it"),
        },
        "end_points": {
            name: {
                "every_pupil": still(f"{name.replace('-', ' ')}: what every pupil shows"),
                "looks_like": still(f"{name.replace('-', ' ')}: what you see when it is there"),
                "getting_there": still(f"{name.replace('-', ' ')}: what you see on the way"),
                "going_further": still(f"{name.replace('-', ' ')}: what you see beyond it"),
            }
            for name in ("first-end-point", "second-end-point", "third-end-point")
        },
        "skills": [],
        "dance": {
            "form": "A",
            "front": still("where the front is, and where watchers sit"),
            "sound": {
                "kind": "silence",
                "what": still("what is heard"),
                "follows": "dancers follow each other",
            },
        },
        "sections": {
            "A": {
                "idea": still("what the dance is about, in a line"),
                "timed": {"seconds": 60, "ends_on": still("the cue that ends it")},
                "start": _standing("starts"),
                "end": _standing("ends"),
            }
        },
        "motifs": {},
        "ending": [{"who": "everyone", "does": still("how the dance ends")}],
        "curriculum": curriculum(asked),
        "builds_on": {"in_words": still("what pupils have done before")},
        "leads_to": {"in_words": still("what pupils can go on to after this unit")},
        "kit": {
            "wear": still("what pupils wear, with what goes on their feet"),
            "collect": [],
            "without_props": still("how to do it with nothing to get"),
        },
        "space": {
            "hall": still(f"a hall: {metres(asked)} square metres or more for each pupil"),
            "half_hall": still("how to do it in half a hall"),
            "classroom": still("how to do it in a classroom"),
        },
        "tried": {"taught": False},
    }


def _standing(does: str) -> Fields:
    place = still(f"where in the hall the dance {does}")
    return {"formation": "scattered", "facing": "front", "place": place}


def _first_lesson(found: Sequence[Stretch]) -> int:
    return next(n for n, one in enumerate(found) if one.is_lesson)


def _around(unit: UnitFound, stretch: Stretch, *, before: bool) -> None:
    where = under(stretch.heading) if stretch.heading else "before the first lesson"
    for one in stretch.inside:
        match one:
            case Heading():
                unit.left.keep_heading(one.text)
                where = under(one.text)
            case Table():
                for line in unread_table(one):
                    unit.left.keep(f"{where}, a table", line)
            case Picture():
                unit.left.keep(f"{where}, a picture in words", one.alt)
            case Paragraph():
                _line(unit, one, where, before=before)


def _line(unit: UnitFound, one: Paragraph, where: str, *, before: bool) -> None:
    if one.kind == "title" and "title" not in unit.fields:
        put(unit.fields, "title", one.text, "the title", unit.left, most=_TITLE, least=3)
        return
    if before and not unit.years:
        unit.years = _years_in(one.text)
    if (
        before
        and one.kind == "text"
        and not unit.fields.get("summary")
        and (len(one.text) >= _LEAST_SUMMARY)
    ):
        put(unit.fields, "summary", one.text, where, unit.left, most=_SUMMARY,
            least=_LEAST_SUMMARY)  # fmt: skip
    else:
        unit.left.keep(where, one.text)


def _years_in(text: str) -> tuple[SchoolYears, ...]:
    """The school years that a line says, as in Years 3 and 4 (England), ages 7 to 9."""
    said = text.partition(", ages ")[0].partition(" · ")[0]
    if not said.casefold().startswith(("year", "reception", "p", "england", "scotland", "wales")):
        return ()
    words, _, nation = said.partition(" (")
    try:
        return years(f"{nation.rstrip(') ')}: {words}" if nation else words)
    except Refused:
        return ()


def _adapted(title: str) -> str:
    return title if len(title) + len(_ADAPTED) > _TITLE else f"{title}{_ADAPTED}"


def _adapted_from(title: str, rights: RightsFound) -> Fields:
    found: Fields = {
        "title": title,
        "publisher": rights.publisher,
        "edition": rights.edition,
        "licence": rights.licence,
    }
    if rights.credit:
        found["credit"] = rights.credit
    found["changes"] = still("what was changed in it")
    return found
