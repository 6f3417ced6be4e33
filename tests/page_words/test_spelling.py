"""The Welsh page words are words of Welsh, and mutate after what makes them mutate.

The word list is that of Prifysgol Bangor and Troi for Hunspell, from its npm package; it knows
words in their mutated forms too. What else grammar asks, a Welsh speaker has to judge.
"""

from __future__ import annotations

from build_tools.page_words.tables import catalog, table_file
from tests.page_words.welsh import (
    before_softening,
    not_softened,
    softened_twice,
    unknown,
    words,
)

NOT_IN_THE_LIST = {
    "Argymhellir": "from argymell",
    "Council": "part of a title in English",
    "County": "part of a title in English",
    "Oxfordshire": "a name",
    "Ctrl": "a key",
    "Gellir": "from gallu",
    "allen": "gallen after na: na allen nhw",
    "Arhoswch": "from aros",
    "cliriach": "from clir",
    "drymiwch": "from drymio",
    "gellir": "from gallu",
    "half": "part of a code for settings",
    "m²": "square metres",
    "md": "the end of a file's name",
    "hopiau": "the plural of hop, as sboncio is another move",
    "sgipiau": "the plural of sgip",
    "ysgydwr": "an instrument that is shaken; from memory",
}
"""Words that are right and that the list does not know, and why."""
FIXED = {
    "i mewn": "its m is its own",
    "a c": "a letter",
    "am tua": "tua is softened already",
    "gyda ctrl": "a key",
    "hyd mewn": "another phrase begins",
    "hyd llinell": "ar hyd, along, softens nothing",
    "o tua": "tua is softened already",
    "neu cyfrwch": "a verb that orders is not softened after neu",
    "neu dewiswch": "the same",
    "neu drymiwch": "the same",
    "neu gadewch": "the same",
    "i grwpiau": "grŵp keeps its g",
    "o grwpiau": "grŵp keeps its g",
}
"""Pairs that stay as they are, and why."""


def messages() -> list[str]:
    every = [one.string for one in catalog(table_file("cy")) if one.id]
    return [
        text for one in every for text in ([one] if isinstance(one, str) else one or ()) if text
    ]


def test_every_word_is_in_the_list() -> None:
    every = sorted({word for one in messages() for word in words(one)} - {*NOT_IN_THE_LIST})
    assert len(every) > 400
    assert unknown(every) == []


def test_every_exception_is_one() -> None:
    used = {word for one in messages() for word in words(one)}
    assert {*NOT_IN_THE_LIST} <= used
    assert unknown(NOT_IN_THE_LIST) == [*NOT_IN_THE_LIST]


def test_words_mutate_after_what_asks_it() -> None:
    found = {f"{one.first} {one.then}: {one.message}" for one in not_softened(messages())
             if f"{one.first} {one.then}".lower() not in FIXED}  # fmt: skip
    assert sorted(found) == []


def test_what_begins_with_b_g_or_d_is_softened_already() -> None:
    pairs = [*softened_twice(messages())]
    known = {*unknown({before_softening(one.then) for one in pairs})}
    assert [
        f"{one.first} {one.then}: {one.message}"
        for one in pairs
        if before_softening(one.then) in known and f"{one.first} {one.then}".lower() not in FIXED
    ] == []


def test_a_slip_of_either_kind_is_seen() -> None:
    assert unknown(["gwersi", "gwresi"]) == ["gwresi"]
    (one,) = not_softened(["o camau"])
    assert one.then == "camau"
    assert [*not_softened(["o gamau", "gyda phartner"])] == []
    assert [pair.then for pair in not_softened(["gyda partner"])] == ["partner"]
    assert before_softening("gam") == "cam"
