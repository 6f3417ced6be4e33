"""What a pack says of itself, for programs: about.json, and metadata.jsonld by schema.org.

schema.org, LearningResource: learningResourceType, educationalLevel, teaches, timeRequired (an
ISO 8601 duration), and what it has from CreativeWork.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import asdict

from build_tools.model.unit import Ancestor, Parent, Unit
from build_tools.views.words.licences import licence_address

FORMAT = 1


def about(unit: Unit, schemas: Mapping[str, object], version: str) -> bytes:
    """about.json: which unit, which edition, whose, and what it was made with.

    `schemas` says which format the unit is written in, `version` is that of this software.
    """
    parent = unit.adapted_from
    return _json(
        {
            "format": FORMAT,
            "unit": unit.slug,
            "title": unit.title,
            "edition": unit.edition,
            "issued": unit.issued,
            "publisher": unit.publisher,
            "licence": unit.licence,
            "adapted_from": None if parent is None else _parent(parent),
            "schema": dict(schemas),
            "made_with": {"name": "dance unit bank", "version": version},
        }
    )


def says_the_same(raw: bytes, unit: Unit) -> bool:
    """Whether an about.json says of the unit what the unit says, by whatever it was made."""
    told, ours = json.loads(raw), json.loads(about(unit, {}, ""))
    made = ("schema", "made_with")
    same = {name: value for name, value in ours.items() if name not in made}
    return {name: value for name, value in told.items() if name not in made} == same


def metadata(unit: Unit) -> bytes:
    """metadata.jsonld: the unit as a schema.org LearningResource."""
    minutes = sum(lesson.minutes for lesson in unit.lessons)
    found: dict[str, object] = {
        "@context": "https://schema.org",
        "@type": "LearningResource",
        "name": unit.title,
        "description": unit.summary,
        "version": unit.edition,
        "datePublished": unit.issued,
        "inLanguage": unit.language,
        "license": licence_address(unit.licence),
        "publisher": _organization(unit.publisher),
        "creditText": f"{unit.title}, {unit.credit or unit.publisher}, {unit.licence}",
        "learningResourceType": "unit of lessons",
        "educationalLevel": [f"{years.nation}: {', '.join(years.years)}" for years in unit.years],
        "about": [*unit.subjects, "dance"],
        "keywords": list(unit.topics),
        "teaches": [point.every_pupil for point in unit.end_points.values()],
        "timeRequired": f"PT{minutes}M",
        "hasPart": [
            {
                "@type": "LearningResource",
                "name": lesson.title,
                "position": lesson.number,
                "timeRequired": f"PT{lesson.minutes}M",
            }
            for lesson in unit.lessons
        ],
    }
    if unit.credit:
        found["author"] = _person(unit.credit)
    if unit.adapted_from is not None:
        found["isBasedOn"] = _based_on((unit.adapted_from, *unit.adapted_from.earlier))
    return _json(found)


def _based_on(line: Sequence[Ancestor]) -> dict[str, object]:
    """The first of a line of units, each made from the next."""
    one, *earlier = line
    found: dict[str, object] = {
        "@type": "LearningResource",
        "name": one.title,
        "version": one.edition,
        "publisher": _organization(one.publisher),
        "license": licence_address(one.licence),
    }
    if one.credit:
        found["author"] = _person(one.credit)
    if earlier:
        found["isBasedOn"] = _based_on(earlier)
    return found


def _person(name: str) -> dict[str, str]:
    return {"@type": "Person", "name": name}


def _organization(name: str) -> dict[str, str]:
    return {"@type": "Organization", "name": name}


def _parent(parent: Parent) -> dict[str, object]:
    """The parent as the unit's fields write it, without what is not there."""
    fields = asdict(parent)
    fields["earlier"] = [_without_none(one) for one in fields["earlier"]]
    return {name: value for name, value in _without_none(fields).items() if value != []}


def _without_none(fields: dict[str, object]) -> dict[str, object]:
    return {name: value for name, value in fields.items() if value is not None}


def _json(value: object) -> bytes:
    return (json.dumps(value, ensure_ascii=False, indent=2) + "\n").encode()
