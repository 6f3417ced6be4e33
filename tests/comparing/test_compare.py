"""Two editions compared: each edit made by code has its sentence, and nothing else has one."""

from __future__ import annotations

import copy
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import cache
from typing import Any

import pytest

from build_tools.comparing.change import Change, Weight, WrittenUnit
from build_tools.comparing.compare import compare
from build_tools.comparing.edition_number import called_for, newer
from build_tools.unit_editions.unit_texts import text_of_folder
from tests.support.built_sites import CONTENT

SLUGS = ("rock-pool", "seeds-on-the-move", "weaving-shed")


@cache
def written(slug: str) -> WrittenUnit:
    found = text_of_folder(CONTENT / "units" / slug)
    assert isinstance(found, WrittenUnit)
    return found


def unit(slug: str = "rock-pool") -> WrittenUnit:
    """A published unit, free to be changed."""
    return copy.deepcopy(written(slug))


def top(text: WrittenUnit) -> dict[str, Any]:
    assert isinstance(text.fields, dict)
    return text.fields


def lesson(text: WrittenUnit, number: int) -> dict[str, Any]:
    fields = text.lessons[number][0]
    assert isinstance(fields, dict)
    return fields


def step(text: WrittenUnit, number: int, place: int) -> dict[str, Any]:
    found: dict[str, Any] = lesson(text, number)["steps"][place - 1]
    return found


def sentences(edit: Callable[[WrittenUnit], object], slug: str = "rock-pool") -> list[Change]:
    new = unit(slug)
    edit(new)
    return list(compare(written(slug), new))


EDITS: dict[str, tuple[Callable[[WrittenUnit], object], str, Weight]] = {
    "shorter step": (
        lambda u: step(u, 2, 3).update(minutes=step(u, 2, 3)["minutes"] - 2),
        "step 3 of lesson 2 is 2 minutes shorter (",
        Weight.TEACHING,
    ),
    "somebody read it": (
        lambda u: top(u).update(
            read_by=[{"role": "dance adviser", "edition": "2.0.0", "day": "2026-11-20"}]
        ),
        "the unit: the reading by “dance adviser” was added",
        Weight.RECORD,
    ),
    "longer lesson": (
        lambda u: lesson(u, 3).update(minutes=46),
        "lesson 3 is 1 minute longer (45 to 46)",
        Weight.TEACHING,
    ),
    "question added": (
        lambda u: step(u, 3, 4).update(ask=[{"question": "Where was the pause?", "answers": []}]),
        "step 4 of lesson 3: the question “Where was the pause?” was added",
        Weight.TEACHING,
    ),
    "question taken out": (
        lambda u: lesson(u, 3)["look_and_talk"]["questions"].pop(0),
        "looking and talking in lesson 3: the question “What changed between question and "
        "answer?” was taken out",
        Weight.TEACHING,
    ),
    "question reworded": (
        lambda u: lesson(u, 3)["look_and_talk"]["questions"][0].update(
            question="What changed between the question and the answer?"
        ),
        "looking and talking in lesson 3: the question “What changed between the question and "
        "the answer?”: the words were reworded",
        Weight.TEACHING,
    ),
    "licence": (
        lambda u: top(u).update(licence="CC-BY-4.0"),
        "the unit: the licence is now “CC-BY-4.0”, not “CC-BY-SA-4.0”",
        Weight.DANCE,
    ),
    "step added": (
        lambda u: lesson(u, 3)["steps"].insert(2, {"phase": "explore", "does": "Wave arms"}),
        "step 3 of lesson 3 was added: “Wave arms”",
        Weight.TEACHING,
    ),
    "step taken out": (
        lambda u: lesson(u, 3)["steps"].pop(6),
        "step 7 of lesson 3 was taken out: “Watch another pair's crabs”",
        Weight.TEACHING,
    ),
    "step moved": (
        lambda u: lesson(u, 3)["steps"].insert(5, lesson(u, 3)["steps"].pop(6)),
        "step 6 of lesson 3 was step 7 before",
        Weight.TEACHING,
    ),
    "what is said": (
        lambda u: step(u, 3, 1).update(say="Two taps, stop. Look where you go."),
        "step 1 of lesson 3: what you say was reworded: “Two taps, stop. Look where you go.”",
        Weight.WORDING,
    ),
    "grouping": (
        lambda u: step(u, 3, 1).update(grouping="pairs"),
        "step 1 of lesson 3: the grouping is now “pairs”, not “alone”",
        Weight.TEACHING,
    ),
    "thing to get added": (
        lambda u: lesson(u, 3)["collect"].append("A chair"),
        "lesson 3: “A chair” was added to what to get",
        Weight.TEACHING,
    ),
    "safety line taken out": (
        lambda u: lesson(u, 3)["safety"].pop(1),
        "lesson 3: “Dodge is small, two feet to two feet.” was taken out of what to check for "
        "safety",
        Weight.TEACHING,
    ),
    "safety lines change places": (
        lambda u: lesson(u, 3)["safety"].reverse(),
        "lesson 3: the order of what to check for safety changed",
        Weight.TEACHING,
    ),
    "trouble line": (
        lambda u: lesson(u, 3)["if"].update(loud="Clap a rhythm and wait."),
        "lesson 3: the line for when it gets loud was reworded: “Clap a rhythm and wait.”",
        Weight.WORDING,
    ),
    "where the next lesson starts": (
        lambda u: lesson(u, 3)["look_and_talk"]["next"].update(seen="begin with the storm"),
        "looking and talking in lesson 3: where to start if it was seen was reworded: “begin "
        "with the storm”",
        Weight.TEACHING,
    ),
    "lesson taken out": (
        lambda u: u.lessons.pop(6),  # type: ignore[attr-defined]
        "lesson 6 was taken out: “",
        Weight.DANCE,
    ),
    "lesson notes": (
        lambda u: (
            u.lessons.__setitem__(3, (u.lessons[3][0], "Other notes."))
            if isinstance(u.lessons, dict)
            else None
        ),
        "lesson 3: the notes were reworded",
        Weight.WORDING,
    ),
    "tempo": (
        lambda u: top(u)["dance"].update(tempo=100),
        "the dance: the tempo in beats a minute went from 108 to 100",
        Weight.DANCE,
    ),
    "counts of a section": (
        lambda u: top(u)["sections"]["A"].update(counts=40),
        "section A: the counts went from 32 to 40",
        Weight.DANCE,
    ),
    "an action longer": (
        lambda u: top(u)["motifs"]["wave"]["actions"][2].update(jump=4),
        "motif wave: action 3 (break): the counts to jump went from 2 to 4",
        Weight.DANCE,
    ),
    "an action taken out": (
        lambda u: top(u)["motifs"]["wave"]["actions"].pop(1),
        "motif wave: action 2 (rush) was taken out",
        Weight.DANCE,
    ),
    "a motif renamed away": (
        lambda u: top(u)["motifs"].pop("wave"),
        "motif wave was taken out",
        Weight.DANCE,
    ),
    "a development": (
        lambda u: next(iter(top(u)["developments"].values())).update(device="retrograde"),
        "device is now “retrograde”, not “",
        Weight.DANCE,
    ),
    "an end point": (
        lambda u: top(u)["end_points"]["clear-change"].update(
            looks_like="Anyone can say what changed."
        ),
        "end point clear-change: what it looks like was reworded",
        Weight.WORDING,
    ),
    "a picture's licence": (
        lambda u: top(u)["stimulus"]["items"][0].update(licence="CC0-1.0"),
        "the stimulus: the item “Low tide”: the licence is now “CC0-1.0”, not “CC-BY-SA-4.0”",
        Weight.DANCE,
    ),
    "content note taken out": (
        lambda u: top(u)["stimulus"].pop("content_note"),
        "the stimulus: the content note was taken out",
        Weight.TEACHING,
    ),
    "years": (
        lambda u: top(u).update(years=[{"nation": "England", "years": [3]}]),
        "the unit: the school years are now nation England, years 3",
        Weight.DANCE,
    ),
    "a word explained": (
        lambda u: lesson(u, 3)["words"].update({"change of size": "bigger or smaller"}),
        "lesson 3: the word “change of size” was reworded: “bigger or smaller”",
        Weight.WORDING,
    ),
    "a picture drawn anew": (
        lambda u: u.media.update({"media/low-tide.svg": "x"}),  # type: ignore[attr-defined]
        "the file media/low-tide.svg was changed",
        Weight.TEACHING,
    ),
    "a step that can wait": (
        lambda u: step(u, 3, 2).update(can_wait=True),
        "step 2 of lesson 3: whether it can wait was added: yes",
        Weight.TEACHING,
    ),
}


@pytest.mark.parametrize("edit", EDITS)
def test_each_kind_of_edit_has_its_one_sentence(edit: str) -> None:
    change, told, weight = EDITS[edit]
    found = sentences(change)
    assert len(found) == 1, found
    assert told in found[0].sentence
    assert found[0].weight == weight


@pytest.mark.parametrize("slug", SLUGS)
def test_nothing_is_said_of_what_did_not_change(slug: str) -> None:
    assert compare(unit(slug), unit(slug)) == ()
    assert sentences(lambda u: top(u).update(edition="9.9.9", issued="2030-01-01"), slug) == []


def places(value: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    """The path of every text and number in plain data."""
    if isinstance(value, dict):
        for name, inner in value.items():
            yield from places(inner, (*path, name))
    elif isinstance(value, list):
        for n, inner in enumerate(value):
            yield from places(inner, (*path, n))
    else:
        yield path


def other(value: Any) -> Any:
    if isinstance(value, bool):
        return not value
    return value + 1 if isinstance(value, int) else f"{value} altered"


@contextmanager
def altered(fields: Any, path: tuple[Any, ...]) -> Iterator[None]:
    """The field at `path` altered for as long as the block lasts."""
    *way, last = path
    for part in way:
        fields = fields[part]
    before = fields[last]
    fields[last] = other(before)
    yield
    fields[last] = before


@pytest.mark.parametrize("slug", SLUGS)
def test_no_field_can_change_without_a_sentence(slug: str) -> None:
    """Every text and number of the unit in turn; two sentences where a name is told by its text."""
    new = unit(slug)
    documents = {0: top(new)} | {number: lesson(new, number) for number in new.lessons}
    for number, fields in documents.items():
        for path in list(places(fields)):
            if path[0] in ("edition", "issued") if number == 0 else path == ("lesson",):
                continue
            with altered(fields, path):
                found = compare(written(slug), new)
            assert 1 <= len(found) <= 2, (number, path, found)
    assert compare(written(slug), new) == ()


def test_two_units_that_share_nothing_can_be_compared() -> None:
    assert len(compare(unit("rock-pool"), unit("weaving-shed"))) > 40


@pytest.mark.parametrize(
    ("weights", "edition"),
    [
        ([], "1.2.3"),
        ([Weight.RECORD], "1.2.3"),
        ([Weight.WORDING, Weight.RECORD], "1.2.4"),
        ([Weight.WORDING, Weight.TEACHING], "1.3.0"),
        ([Weight.DANCE, Weight.WORDING], "2.0.0"),
    ],
)
def test_the_edition_that_changes_call_for(weights: list[Weight], edition: str) -> None:
    """Semantic Versioning 2.0.0, items 6 to 8: which number grows, and which start again at 0."""
    assert called_for("1.2.3", [Change("something", weight) for weight in weights]) == edition


def test_which_edition_is_newer() -> None:
    """Semantic Versioning 2.0.0, item 11: 1.9.0 comes before 1.10.0."""
    assert newer("1.10.0", "1.9.0")
    assert not newer("1.9.0", "1.9.0")


def test_what_is_heard_is_told_piece_by_piece_with_its_words() -> None:
    old, new = unit(), unit()
    loom = {"counts": 4, "sound": "claps", "on": [1, 2, 3, "3 1/2", 4], "by": "class"}
    words = {"counts": 4, "sound": "voice", "louder": [1], "says": ["hold", "on", "-", "on"]}
    top(old)["sections"]["A"]["heard"] = [{"counts": 32, "sound": "beat", "by": "teacher"}]
    top(new)["sections"]["A"]["heard"] = [loom, words, {"seconds": 1, "sound": "silence"}]
    top(old)["transitions"][0]["heard"] = [{"counts": 8, "sound": "silence"}]
    top(new)["transitions"][0].pop("heard", None)
    said = [change.sentence for change in compare(old, new)]
    assert said == [
        "section A: what is heard is now 4 counts of claps on 1, 2, 3, 3 1/2 and 4 by the class, "
        "then 4 counts of voice louder on 1, saying “hold on - on”, then 1 second of silence, "
        "where it was 32 counts of beat by the teacher",
        "the unit: the transition from A to B: what is heard was taken out: 8 counts of silence",
    ]
    assert {change.weight for change in compare(old, new)} == {Weight.TEACHING}
