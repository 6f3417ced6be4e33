"""From sound documents to a unit. Documents that fit their schema never fail here."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from build_tools.model.build_dance import build_dance
from build_tools.model.build_lesson import build_lesson
from build_tools.model.build_work import build_works
from build_tools.model.grouped_as_made import with_groupings
from build_tools.model.known_fields import known
from build_tools.model.unit import (
    Ancestor,
    CurriculumLink,
    DrawnFor,
    EndPoint,
    Kit,
    Neighbours,
    Parent,
    Reading,
    SchoolYears,
    Skill,
    Space,
    Stimulus,
    Tried,
    Unit,
)
from build_tools.source.front_matter import Document

Data = Mapping[str, Any]


def build_unit(
    slug: str, unit: Document, lessons: list[Document], media: Mapping[str, int]
) -> Unit:
    """The unit in the folder `slug`, from its documents."""
    data: Data = unit.data
    kit = Kit(data["kit"]["wear"], tuple(data["kit"]["collect"]), data["kit"]["without_props"])
    safety = tuple(data.get("safety", []))
    read = (build_lesson(lesson, kit.collect, safety) for lesson in lessons)
    built = with_groupings(sorted(read, key=lambda one: (one.number, one.file)))
    return Unit(
        slug=slug,
        file=unit.file,
        format=int(data["format"]),
        title=data["title"],
        edition=data["edition"],
        issued=data["issued"],
        publisher=data["publisher"],
        licence=data["licence"],
        language=data["language"],
        credit=data.get("credit"),
        adapted_from=_parent(data["adapted_from"]) if "adapted_from" in data else None,
        read_by=tuple(_reading(one) for one in data.get("read_by", [])),
        draft=data.get("draft", False),
        years=tuple(
            SchoolYears(y["nation"], tuple(_year(n) for n in y["years"])) for y in data["years"]
        ),
        topics=tuple(data["topics"]),
        subjects=tuple(data["subjects"]),
        summary=data["summary"],
        stimulus=_stimulus(data["stimulus"]),
        end_points={
            name: EndPoint(name, **known(EndPoint, e)) for name, e in data["end_points"].items()
        },
        skills=tuple(Skill(**known(Skill, s)) for s in data["skills"]),
        dance=build_dance(data),
        curriculum=tuple(CurriculumLink(**known(CurriculumLink, c)) for c in data["curriculum"]),
        builds_on=_neighbours(data["builds_on"]),
        leads_to=_neighbours(data["leads_to"]),
        words=dict(data.get("words", {})),
        kit=kit,
        space=_space(data["space"]),
        allow=dict(data.get("allow", {})),
        tried=_tried(data["tried"]),
        lessons=built,
        media=dict(media),
        notes=unit.body,
        safety=safety,
    )


def _parent(data: Any) -> Parent:
    earlier = tuple(Ancestor(**known(Ancestor, one)) for one in data.get("earlier", ()))
    return Parent(**{**known(Parent, data), "earlier": earlier})


def _year(written: int | float | str) -> str:
    """A year as it is said; 3.0 is a whole number too, to the schema."""
    return written if isinstance(written, str) else str(int(written))


def _stimulus(data: Data) -> Stimulus:
    return Stimulus(
        kinds=tuple(data["kinds"]),
        what=data["what"],
        show=data["show"],
        where=data["where"],
        minutes=int(data["minutes"]),
        look_for=data["look_for"],
        content_note=data.get("content_note"),
        items=build_works(data.get("items", [])),
    )


def _neighbours(data: Data) -> Neighbours:
    return Neighbours(data["in_words"], tuple(data.get("units", [])))


def _space(data: Data) -> Space:
    drawn: Data | None = data.get("drawn_for")
    own = {name: int(drawn[name]) for name in ("pupils", "width", "depth")} if drawn else None
    return Space(**{**known(Space, data), "drawn_for": DrawnFor(**own) if own else None})


def _tried(data: Data) -> Tried:
    return Tried(data["taught"], data.get("with"), data.get("where"), data.get("changed"))


def _reading(data: Data) -> Reading:
    return Reading(
        data["role"], data["edition"], data["day"], tuple(data["for"]), data.get("found")
    )
