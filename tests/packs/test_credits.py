"""What a pack says of whose work is in it, in words and for programs."""

from __future__ import annotations

import json
from dataclasses import replace
from typing import Any

import pytest

from build_tools.model.unit import Ancestor, Parent, Unit
from build_tools.model.work import Work
from build_tools.packs.about import about, metadata
from build_tools.packs.credits import credits_text
from build_tools.packs.licences import licence_text
from build_tools.shapes.schemas import schema
from build_tools.views.words.licences import licence_address
from tests.support.sound_bank import real_unit

LICENCES = schema("shared")["$defs"]["licence"]["enum"]
# The heading and the address that each publisher gives its licence: creativecommons.org/licenses
# and nationalarchives.gov.uk/doc/open-government-licence/version/3
PUBLISHED = {
    "CC0-1.0": ("CC0 1.0 Universal", "https://creativecommons.org/publicdomain/zero/1.0/"),
    "CC-BY-4.0": ("Attribution 4.0", "https://creativecommons.org/licenses/by/4.0/"),
    "CC-BY-SA-4.0": ("ShareAlike 4.0", "https://creativecommons.org/licenses/by-sa/4.0/"),
    "CC-BY-ND-4.0": ("NoDerivatives 4.0", "https://creativecommons.org/licenses/by-nd/4.0/"),
    "CC-BY-NC-4.0": ("NonCommercial 4.0", "https://creativecommons.org/licenses/by-nc/4.0/"),
    "CC-BY-NC-SA-4.0": (
        "NonCommercial-ShareAlike 4.0",
        "https://creativecommons.org/licenses/by-nc-sa/4.0/",
    ),
    "CC-BY-NC-ND-4.0": (
        "NonCommercial-NoDerivatives 4.0",
        "https://creativecommons.org/licenses/by-nc-nd/4.0/",
    ),
    "OGL-UK-3.0": (
        "Open Government Licence",
        "https://www.nationalarchives.gov.uk/doc/open-government-licence/version/3/",
    ),
}
# schema.org, LearningResource (v29): each property, and the type that has it.
PROPERTIES = {
    "LearningResource": {"educationalLevel", "learningResourceType", "teaches"},
    "CreativeWork": {
        "about",
        "author",
        "creditText",
        "datePublished",
        "hasPart",
        "inLanguage",
        "isBasedOn",
        "keywords",
        "license",
        "position",
        "publisher",
        "timeRequired",
        "version",
    },
    "Thing": {"name", "description"},
}


def adapted() -> Unit:
    grandparent = Ancestor("Pools", "A coast school", "1.0.0", "CC-BY-4.0", "R. Reed")
    parent = Parent(
        "The pool", "A bay school", "2.1.0", "CC-BY-SA-4.0", "T. Teal",
        changes="A third lesson", earlier=(grandparent,),
    )  # fmt: skip
    unit = real_unit()
    song = Work(
        "Sea song", "A choir", "CC-BY-NC-4.0", "Its own pages", "Cut to a minute", None, "Words"
    )
    stimulus = replace(unit.stimulus, items=(song,))
    return replace(unit, credit="S. Sand", adapted_from=parent, stimulus=stimulus)


@pytest.mark.parametrize("licence", LICENCES)
def test_every_licence_of_the_schema_has_its_text_and_address(licence: str) -> None:
    heading, address = PUBLISHED[licence]
    text = licence_text(licence)
    assert heading in " ".join(text[:200].split())
    assert len(text) > 5000
    assert licence_address(licence) == address


def test_each_work_is_credited_in_five_parts() -> None:
    """Title, author, source, licence (Creative Commons, Recommended practices for attribution)
    and changes (CC BY 4.0, 3(a)(1)(B))."""
    own, parent, earlier, song = credits_text(adapted()).removesuffix("\n").split("\n\n")
    assert own.splitlines()[0] == f"Title: {real_unit().title}"
    assert "Author: S. Sand" in own.splitlines()
    assert parent.splitlines() == [
        "Adapted from",
        "Title: The pool",
        "Edition: 2.1.0",
        "Publisher: A bay school",
        "Author: T. Teal",
        "Licence: CC-BY-SA-4.0 (https://creativecommons.org/licenses/by-sa/4.0/)",
        "Changes: A third lesson",
    ]
    assert earlier.splitlines()[:2] == ["Before that, from", "Title: Pools"]
    assert song.splitlines() == [
        "In this unit",
        "Title: Sea song",
        "Author: A choir",
        "Source: Its own pages",
        "Licence: CC-BY-NC-4.0 (https://creativecommons.org/licenses/by-nc/4.0/)",
        "Changes: Cut to a minute",
    ]


def test_about_says_which_unit_and_where_it_comes_from() -> None:
    told = json.loads(about(adapted(), {"format": 1, "sha512": "00"}, "9.9.9"))
    assert told == {
        "format": 1,
        "unit": "rock-pool",
        "title": real_unit().title,
        "edition": real_unit().edition,
        "issued": real_unit().issued,
        "publisher": real_unit().publisher,
        "licence": "CC-BY-SA-4.0",
        "adapted_from": {
            "title": "The pool",
            "publisher": "A bay school",
            "edition": "2.1.0",
            "licence": "CC-BY-SA-4.0",
            "credit": "T. Teal",
            "changes": "A third lesson",
            "earlier": [
                {
                    "title": "Pools",
                    "publisher": "A coast school",
                    "edition": "1.0.0",
                    "licence": "CC-BY-4.0",
                    "credit": "R. Reed",
                }
            ],
        },
        "schema": {"format": 1, "sha512": "00"},
        "made_with": {"name": "dance unit bank", "version": "9.9.9"},
    }


def nodes(value: Any) -> list[dict[str, Any]]:
    """Every JSON object in `value`."""
    if isinstance(value, list):
        return [node for one in value for node in nodes(one)]
    if isinstance(value, dict):
        return [value, *(node for one in value.values() for node in nodes(one))]
    return []


def test_metadata_uses_the_properties_that_schema_org_gives_a_learning_resource() -> None:
    found = json.loads(metadata(adapted()))
    assert found["@context"] == "https://schema.org"
    known = {"@type", "@context"} | set().union(*PROPERTIES.values())
    for node in nodes(found):
        assert node["@type"] in ("LearningResource", "Person", "Organization")
        people = node["@type"] != "LearningResource"
        assert set(node) <= ({"@type", "name"} if people else known), node


def test_metadata_says_what_the_unit_says() -> None:
    unit = adapted()
    found = json.loads(metadata(unit))
    minutes = [lesson.minutes for lesson in unit.lessons]
    # ISO 8601-1, 5.5.2: a duration in minutes
    assert found["timeRequired"] == f"PT{sum(minutes)}M"
    assert [one["timeRequired"] for one in found["hasPart"]] == [f"PT{n}M" for n in minutes]
    assert found["license"] == PUBLISHED["CC-BY-SA-4.0"][1]
    assert found["educationalLevel"] == ["England: 3, 4"]
    assert found["teaches"] == [point.every_pupil for point in unit.end_points.values()]
    assert found["author"]["name"] == "S. Sand"
    assert found["isBasedOn"]["name"] == "The pool"
    assert found["isBasedOn"]["isBasedOn"]["name"] == "Pools"
    plain = json.loads(metadata(real_unit()))
    assert not {"author", "isBasedOn"} & plain.keys()
