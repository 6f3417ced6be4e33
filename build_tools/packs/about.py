"""What a pack says of itself, for programs: about.json, and metadata.jsonld by schema.org.

schema.org, LearningResource: learningResourceType, educationalLevel, teaches, timeRequired (an
ISO 8601 duration), and what it has from CreativeWork.
"""

from __future__ import annotations

import json
from collections.abc import Mapping

from build_tools.model.unit import Parent, Unit
from build_tools.packs.licences import licence_address

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
        "publisher": {"@type": "Organization", "name": unit.publisher},
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
        found["author"] = {"@type": "Person", "name": unit.credit}
    if unit.adapted_from is not None:
        parent = unit.adapted_from
        found["isBasedOn"] = {
            "@type": "LearningResource",
            "name": parent.title,
            "version": parent.edition,
            "publisher": {"@type": "Organization", "name": parent.publisher},
            "license": licence_address(parent.licence),
        }
    return _json(found)


def _parent(parent: Parent) -> dict[str, str]:
    return {
        "title": parent.title,
        "publisher": parent.publisher,
        "edition": parent.edition,
        "licence": parent.licence,
    }


def _json(value: object) -> bytes:
    return (json.dumps(value, ensure_ascii=False, indent=2) + "\n").encode()
