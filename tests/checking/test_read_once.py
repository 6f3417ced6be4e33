"""However many rules there are, one check of a unit reads each of its texts once at most.

The unit is one that is kept as it was, so that the share of what is read is of the same words.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

import pytest

from build_tools.checking.check_bank import check_unit
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath
from build_tools.sentences import plain, reading
from build_tools.views.reading import lesson_text
from build_tools.views.written import unit_text
from tests.planted.planted_by_hand import CONTENT
from tests.support.banks import UNIT


def check_anew() -> Unit:
    for kept in (reading.read, plain.plain_words, plain.words_by_sentence):
        kept.cache_clear()
    unit = check_unit(CONTENT, UNIT, {}).unit
    assert unit is not None
    return unit


def test_no_text_is_read_twice_and_most_are_never_read(monkeypatch: pytest.MonkeyPatch) -> None:
    texts: list[str] = []
    tokens = reading._tokens

    def counted(text: str) -> list[reading._Token]:
        texts.append(text)
        return tokens(text)

    monkeypatch.setattr(reading, "_tokens", counted)
    unit = check_anew()
    times = Counter(texts)
    assert times, "nothing was read: another function does it now"
    assert set(times.values()) == {1}
    written = [one.text for _, fields in unit_text.unit_text(unit).documents for one in fields]
    assert sum(map(len, times)) < sum(map(len, written)) / 2


def test_the_words_of_a_text_are_looked_up_and_not_found_again() -> None:
    check_anew()
    for kept in (plain.plain_words, plain.words_by_sentence):
        told = kept.cache_info()
        assert told.misses == told.currsize, "more texts than are kept: they are read anew"
    assert plain.plain_words.cache_info().hits > plain.plain_words.cache_info().misses


def test_the_fields_of_a_unit_are_listed_once(monkeypatch: pytest.MonkeyPatch) -> None:
    times: Counter[FieldPath] = Counter()
    of_step = lesson_text._step

    def counted(path: FieldPath, step: Step) -> Iterator[lesson_text.FieldText]:
        times[path] += 1
        return of_step(path, step)

    monkeypatch.setattr(lesson_text, "_step", counted)
    unit = check_anew()
    lessons = (range(len(lesson.steps)) for lesson in unit.lessons)
    assert times == Counter(("steps", step) for steps in lessons for step in steps)
