"""What is asked of many texts at once is what each of them says by itself."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from build_tools.sentences import many_texts
from build_tools.sentences.many_texts import ManyTexts, bits_of, numbers_of
from build_tools.sentences.plain import plain_words
from tests.wordings.lists import all_wordings

ODD = (
    "",
    "Nobody helps: no one else, one another.",
    "The 8th count, 2nd fête, thirty-two",
    "As if as though",
    "a mark \0 inside",
    "Ends with one",
    "no",
)
TEXTS = [*ODD, *(text for w in all_wordings() for text in (*w.faulty, *w.sound))]


def where(holds: Callable[[str], object]) -> list[int]:
    return [number for number, text in enumerate(TEXTS) if holds(text)]


def test_the_words_are_those_of_each_text() -> None:
    together = ManyTexts(TEXTS)
    each = [plain_words(text) for text in TEXTS]
    assert together.words == frozenset().union(*each)
    for word in ("one", "nobody", "each", "8", "8th", "fete", "dance", "thirty", "no-such-word"):
        assert numbers_of(together.with_word(word)) == [
            number for number, words in enumerate(each) if word in words
        ]


def test_lists_asked_for_before_are_found_as_those_asked_for_first() -> None:
    lists = [frozenset({"hands", "wrist"}), frozenset({"nobody", "one"}), frozenset({"xyzzy"})]
    wanted = [
        [number for number, text in enumerate(TEXTS) if one & plain_words(text)] for one in lists
    ]
    for _ in range(2):
        together = ManyTexts(TEXTS)
        assert [numbers_of(together.with_any(one)) for one in lists] == wanted


def test_a_list_too_many_is_found_too(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(many_texts, "MOST_LISTS", 0)
    one = frozenset({"hands", "a-list-of-this-test"})
    for _ in range(2):
        found = ManyTexts(TEXTS).with_any(one)
        assert numbers_of(found) == where(lambda text: one & plain_words(text))


@pytest.mark.parametrize("letters", ["esson", "@", "hand", "é"])
def test_letters_and_patterns_are_found_where_they_stand(letters: str) -> None:
    together = ManyTexts(TEXTS)
    assert numbers_of(together.containing(letters)) == where(lambda text: letters in text)
    pattern = re.compile(re.escape(letters) + r"\w")
    assert numbers_of(together.matching(pattern)) == where(pattern.search)


def test_nothing_is_found_in_no_texts() -> None:
    for none in (ManyTexts([]), ManyTexts([""])):
        assert not none.words
        assert not none.with_any(frozenset({"hands"}))
        assert not none.containing("a")
        assert not none.matching(re.compile("a"))


def test_bits_stand_for_numbers() -> None:
    assert numbers_of(bits_of([7, 0, 1000, 7])) == [0, 7, 1000]
