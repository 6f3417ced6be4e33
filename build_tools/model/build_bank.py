"""From the bank's own documents and its units to the bank."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from build_tools.model.bank import (
    Bank,
    BankOutline,
    NearWord,
    Thesaurus,
    Topic,
    UnitOutline,
    Word,
)
from build_tools.model.unit import Unit
from build_tools.source.front_matter import Document

_RECORDING = ".mp3"


def build_bank(documents: Mapping[str, Document], units: Sequence[Unit]) -> Bank:
    """The bank, from its sound documents by file name."""
    bank = documents["bank.yml"].data
    words = documents["vocabulary/words.yml"].data
    safety = documents["safety.md"]
    return Bank(
        name=bank["name"],
        as_of=bank["as_of"],
        about=bank["about"],
        grades=dict(bank.get("grades", {})),
        topics=_topics(documents),
        words={w: Word(w, t["plain"], t.get("in_class"), t.get("under")) for w, t in words.items()},
        safety_title=safety.data["title"],
        safety_notes=safety.body,
        units=tuple(units),
        thesaurus=_thesaurus(documents),
    )


def outline_unit(unit: Unit, shared: Iterable[str] = ()) -> UnitOutline:
    """As much of `unit` as the rules for the whole bank look at.

    `shared` names the pictures of the bank that it shows.
    """
    return UnitOutline(
        slug=unit.slug,
        file=unit.file,
        title=unit.title,
        issued=unit.issued,
        draft=unit.draft,
        years=unit.years,
        topics=unit.topics,
        builds_on=unit.builds_on,
        leads_to=unit.leads_to,
        allow=unit.allow,
        starts_with=_starts_with(unit),
        shared=tuple(sorted(shared)),
        pictured=sum(n for file, n in unit.media.items() if not file.endswith(_RECORDING)),
        recorded=sum(n for file, n in unit.media.items() if file.endswith(_RECORDING)),
    )


def _starts_with(unit: Unit) -> tuple[str, ...]:
    steps = unit.lessons[0].steps if unit.lessons else ()
    return tuple(text for step in steps[:1] for text in (step.say, step.task) if text)


def outline_bank(
    documents: Mapping[str, Document], units: Iterable[UnitOutline], folders: Iterable[str]
) -> BankOutline:
    """The bank as the rules for the whole bank see it; `folders` names those of all units."""
    as_of = documents["bank.yml"].data["as_of"]
    return BankOutline(as_of, _topics(documents), tuple(units), frozenset(folders))


def _thesaurus(documents: Mapping[str, Document]) -> Thesaurus:
    if "vocabulary/near.yml" not in documents:
        return Thesaurus()
    said = documents["vocabulary/near.yml"].data
    return Thesaurus(
        passed_over=tuple(said["passed_over"]),
        of_the_hall=tuple(said["of_the_hall"]),
        in_schools=tuple(said["in_schools"]),
        near=tuple(
            NearWord(
                typed=(typed, *entry.get("also", ())),
                subjects=tuple(entry.get("subjects", ())),
                topics=tuple(entry.get("topics", ())),
                near=tuple(entry.get("near", ())),
            )
            for typed, entry in said["near"].items()
        ),
    )


def _topics(documents: Mapping[str, Document]) -> dict[str, Topic]:
    topics = documents["vocabulary/topics.yml"].data
    return {name: Topic(name, tuple(t["also"])) for name, t in topics.items()}
