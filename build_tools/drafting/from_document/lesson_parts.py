"""What stands under each heading of a lesson, as fields; what they do not take is kept."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping

from build_tools.drafting.from_document.labels import (
    CHANGES_MADE,
    LOOKERS_SAID,
    TALK_LABELS,
    TROUBLES,
    key,
    label_of,
)
from build_tools.drafting.from_document.leftover import (
    MOST_LINE,
    Leftover,
    clean,
    fitted,
    put,
    put_in_list,
)
from build_tools.drafting.from_document.step_values import Fields, put_question
from build_tools.views.lesson.checks_before import ROOM_BESIDE_CHAIRS
from build_tools.views.lesson.lesson_wording import DEFERENCE, EVERY_TIME

SAID_ANYWAY = frozenset(
    {EVERY_TIME, DEFERENCE, ROOM_BESIDE_CHAIRS, "You do not need to demonstrate."}
)
"""What every lesson's page says by itself."""
_MOST_WORDS = 12
_WORD = 40
_LOOK = re.compile(r"(?P<who>.+?)\. (?P<they>They look at|They talk about) (?P<at>.+)\.")
_SHORT_OF_TIME = re.compile(
    r" (?=That is (?:steps? [\d, and]+, )?\w+ minutes? of the plan\b"
    r"|That (?:is steps? [\d, and]+: (?:it saves|they save)|saves) \w+ minutes?\b"
    r"|If you run short after that, "
    r"|If you know (?:it before you start|beforehand that time is short), take )"
)
"""What the page adds to the author's line on short time, in this edition and before it."""
_JOURNEY = re.compile(
    r".+ (?:is made and changed today|was made in lesson \d+ and is changed today"
    r"|is made today, and its .+ (?:is|are) also danced without the rest"
    r"|was made in lesson \d+; (?:today )?its .+ (?:is|are) danced "
    r"(?:without the rest|alone as well))\..*"
)
_LAST_TIME = ("last time you looked for ", "if you saw it: ", "if not yet: ")
_NEVER_DID = re.compile(r"Never did lesson \d+\? Start here: ?")

Part = Callable[[Fields, str, str, Leftover], None]


def listed_in(name: str, most: int) -> Part:
    """Each paragraph a line of the list `name`."""

    def read(fields: Fields, text: str, where: str, left: Leftover) -> None:
        put_in_list(fields, name, text, where, left, most)

    return read


def written_in(name: str) -> Part:
    """The first paragraph is the field `name`."""

    def read(fields: Fields, text: str, where: str, left: Leftover) -> None:
        put(fields, name, text, where, left)

    return read


def _story(fields: Fields, text: str, where: str, left: Leftover) -> None:
    if found := _NEVER_DID.match(text):
        left.labels.add(found.group().strip())
        put(fields, "never_did_last", text[found.end() :], where, left)
    elif _JOURNEY.fullmatch(text) or text.casefold().startswith(_LAST_TIME):
        left.keep(where, text)
    else:
        put(fields, "story_so_far", text, where, left)


def labelled_in(name: str, known: Mapping[str, str]) -> Part:
    """Each paragraph with a label of `known` is a line of the field `name`."""

    def read(fields: Fields, text: str, where: str, left: Leftover) -> None:
        label, rest = label_of(text)
        inside = fields.setdefault(name, {})
        assert isinstance(inside, dict)
        if key(label) not in known:
            left.keep(where, text)
            return
        left.labels.add(label)
        field = known[key(label)]
        said, *added = _SHORT_OF_TIME.split(rest, maxsplit=1)
        put(inside, field, said if field == "short_of_time" else rest, f"{where}, {label}", left)
        if field == "short_of_time" and added:
            left.keep(f"{where}, {label}, what the page adds", added[0])

    return read


def _words(fields: Fields, text: str, where: str, left: Leftover) -> None:
    label, rest = label_of(text)
    found = fields.setdefault("words", {})
    assert isinstance(found, dict)
    plain, more = fitted(rest, 1, MOST_LINE)
    fits = label and len(label) <= _WORD and re.match("[A-Za-z]", label) and "<" not in label
    if not fits or label in found or len(found) == _MOST_WORDS or plain is None:
        left.keep(where, text)
        return
    found[clean(label)] = plain
    left.keep(f"{where}, after what is written", more)


def _talk(fields: Fields, text: str, where: str, left: Leftover) -> None:
    talk = fields.setdefault("look_and_talk", {})
    assert isinstance(talk, dict)
    label, rest = label_of(text)
    name = TALK_LABELS.get(key(label), "")
    match = _LOOK.fullmatch(text)
    if match and key(match["who"]) in LOOKERS_SAID and "who" not in talk:
        talk["who"] = LOOKERS_SAID[key(match["who"])]
        put(talk, "at", match["at"], where, left)
        left.labels |= {match["who"], match["they"]}
    elif name in ("seen", "not_yet"):
        left.labels.add(label)
        after = talk.setdefault("next", {})
        assert isinstance(after, dict)
        put(after, name, rest, f"{where}, {label}", left)
    elif name == "looking_for":
        left.labels.add(label)
        put(talk, name, rest, f"{where}, {label}", left)
    elif name == "ask" or text.rstrip().endswith("?"):
        if label and name:
            left.labels.add(label)
        put_question(talk, "questions", rest if name else text, where, left, most=3)
    else:
        left.keep(where, text)


PARTS: Mapping[str, Part] = {
    "collect": listed_in("collect", 5),
    "classroom_first": listed_in("classroom_first", 4),
    "safety": listed_in("safety", 6),
    "story": _story,
    "talk": _talk,
    "not_dancing": written_in("not_dancing"),
    "focus": written_in("focus"),
    "trouble": labelled_in("if", TROUBLES),
    "change": labelled_in("change", CHANGES_MADE),
    "words": _words,
}
