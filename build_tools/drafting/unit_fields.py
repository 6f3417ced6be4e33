"""The unit file of a draft."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.drafting.asked import Asked, BankFacts
from build_tools.drafting.dance_fields import dance_fields
from build_tools.drafting.plan import Fields, Plan, still
from build_tools.model.school_years import ages
from build_tools.model.unit import SchoolYears

_STAGES = {
    "England": (("R", "early years foundation stage"), ("12", "key stage 1"),
                ("3456", "key stage 2"), ("789", "key stage 3")),
    "Northern Ireland": (("12", "foundation stage"), ("34", "key stage 1"),
                         ("567", "key stage 2"), ("8910", "key stage 3")),
}  # fmt: skip
_SAYS = {
    "key stage 1": '"perform dances using simple movement patterns"',
    "key stage 2": '"perform dances using a range of movement patterns"',
}
_ENGLAND = "(Department for Education, 2013)"
_MOST_LINKS = 8
_ELEVEN = 11
_PRIMARY, _SECONDARY = 3, 5
"""Square metres for each pupil (One Dance UK, as restated in Safe Practice in PE)."""


def unit_fields(asked: Asked, facts: BankFacts, made: Plan) -> Fields:
    """Every field of unit.md, in the order of the schema."""
    return {
        "format": 2,
        "title": asked.title,
        "edition": "0.1.0",
        "issued": facts.as_of,
        "publisher": facts.name,
        "licence": "CC-BY-SA-4.0",
        "language": "en-GB",
        "draft": True,
        "years": [
            {"nation": y.nation, "years": [int(n) if n.isdigit() else n for n in y.years]}
            for y in asked.years
        ],
        "topics": list(facts.topics),
        "subjects": [still("a school subject it links to")],
        "summary": still("what the dance will be, in one sentence"),
        "stimulus": {
            "kinds": list(asked.kinds),
            "what": asked.stimulus,
            "show": still("what you show or do with the stimulus, step by step"),
            "where": "In the classroom, before lesson 1.",
            "minutes": 5,
            "look_for": still("the one thing pupils look or listen for in the stimulus"),
            "content_note": still("what in it could upset a pupil and what you do"),
        },
        "end_points": _end_points(),
        "skills": [
            {
                "skill": "Move about the hall without touching anyone, and stop on a signal.",
                "catch_up": "Walk for eight counts, be still for eight. Do it four times.",
            },
            {
                "skill": "Move on the beat to a count of eight.",
                "catch_up": "Clap eight, then step eight on the spot. Count aloud together.",
            },
        ],
        **dance_fields(asked, made),
        "curriculum": curriculum(asked.years),
        "builds_on": {"in_words": still("what pupils have done before")},
        "leads_to": {"in_words": still("what pupils can go on to after this unit")},
        "words": words(made),
        "safety": [
            "Your school's risk assessment comes first.",
            "Check the floor is dry and clear.",
            "Turn once, eyes open, with space all round.",
        ],
        "kit": {
            "wear": "School PE kit. Bare feet only if the floor is clean and safe; otherwise soft "
            "indoor shoes.",
            "collect": [
                "One hand drum",
                *(f"Word cards for {making.part}" for making in made.makings if making.motif),
                f"Letter cards: {', '.join(made.letters)}",
            ],
            "without_props": "Nothing but a beat is needed. Clap it, or tap a book.",
        },
        "space": {
            "hall": f"A clear hall, about {metres(asked.years)} square metres for each pupil.",
            "half_hall": "Half the class dances while half counts aloud and watches. Then swap.",
            "classroom": "Dance on the spot beside the tables, and let arms show where you go.",
        },
        "tried": {"taught": False},
    }


def unit_notes(asked: Asked, made: Plan) -> str:
    """The notes below the fields."""
    parts = len(made.letters)
    made_of = {
        "section-a-lesson": "Each making lesson makes one part of the dance, with its own motif.",
        "one-theme": "One motif is made first. Each later part is the same motif, changed in one "
        "way.",
        "pupils-order": "Pupils make the parts, or the moves, and then decide their order.",
        "existing-dance": "Pupils learn a dance that is there already, and add a version of their "
        "own.",
        "within-rules": "One motif is made first. Then pupils make the dance up as they go, within "
        "a few rules.",
    }[asked.pattern]
    lines = [
        "### How the unit works",
        "",
        f"{made_of} The dance has {parts} part{'' if parts == 1 else 's'}. The whole is run "
        "twice before anyone watches.",
        "",
        "You never need to dance. Read the words, tap the beat and look. No part needs any "
        "touching. The unit is new and has not yet been taught.",
    ]
    if any(_ENGLAND in str(link["says"]) for link in curriculum(asked.years)):
        lines += [
            "",
            "Contains public sector information licensed under the Open Government Licence v3.0.",
        ]
    return "\n".join(lines) + "\n"


def words(made: Plan) -> dict[str, str]:
    """The words pupils meet in the whole unit, each in plain words."""
    found: dict[str, str] = {}
    for number in range(len(made.makings)):
        found |= lesson_words(made, number)
    return found


def lesson_words(made: Plan, number: int) -> dict[str, str]:
    """The words that the making lesson at index `number` brings in."""
    making = made.makings[number]
    found: dict[str, str] = {}
    if number == 0:
        found["motif"] = "a short set of moves that we keep and come back to"
    if making.device:
        found[making.device.name] = making.device.plain
    if making.improvised:
        found["improvise"] = "make it up as you go, inside a few rules"
    return found


def _end_points() -> Fields:
    return {
        "in-time": {
            "every_pupil": "starts, moves and stops with the others",
            "looks_like": "Everyone is still, then goes, on the same count or the same sign.",
            "getting_there": "Goes and stops with the others, a little early or late.",
            "going_further": "Keeps the time with nobody in front to copy.",
        },
        "show-the-idea": {
            "every_pupil": still("what every pupil shows of the idea by the end"),
            "looks_like": still("what you see when the idea is there"),
            "getting_there": still("what you see of the idea on the way"),
            "going_further": still("what you see of the idea beyond that"),
        },
        "see-and-say": {
            "every_pupil": "says what they saw in a dance, then one thing to make clearer",
            "looks_like": "The talk names a move, a count or a shape.",
            "getting_there": "Says which part they liked, and points to it.",
            "going_further": "Sets what they saw beside an earlier dance and says what changed.",
        },
    }


def curriculum(asked: Sequence[SchoolYears]) -> list[Fields]:
    """A link to the curriculum for each stage of these school years."""
    found: list[Fields] = []
    for one in asked:
        stages = dict.fromkeys(_stage(one.nation, year) for year in one.years)
        for stage in stages:
            says = _SAYS.get(stage) if one.nation == "England" else None
            found.append(
                {
                    "nation": one.nation,
                    "stage": stage,
                    "says": f"{says} {_ENGLAND}"
                    if says
                    else still(f"the words or code of the curriculum for {stage}"),
                    "met_by": still(f"what in this unit meets it for {stage}"),
                }
            )
    return found[:_MOST_LINKS]


def _stage(nation: str, year: str) -> str:
    """The stage of a school year. Sources: CCEA, NI Curriculum Primary, 2007; rest from memory."""
    for years, stage in _STAGES.get(nation, ()):
        if year in years:
            return stage
    if nation == "Scotland":
        number = int(year[1:]) if year[0] == "P" else 0
        if year == "P1":
            return "early level"
        if number:
            return "first level" if number <= 4 else "second level"
        return "third level"
    if year == "R" or int(year) <= 2:
        return "progression step 1" if year == "R" else "progression step 2"
    return "progression step 3" if int(year) <= 6 else "progression step 4"


def metres(asked: Sequence[SchoolYears]) -> int:
    """The square metres for each pupil of these school years."""
    span = ages(asked)
    return _SECONDARY if span and span[0] >= _ELEVEN else _PRIMARY
