"""Taking in gives back what became of it, asks once, and only about what could go in."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from build_tools.packs.taking_in.arrival_in_words import Arrival
from build_tools.use_cases.take_in import (
    Answer,
    Declined,
    HereAlready,
    NotTakenIn,
    TakenIn,
    take_in,
)
from tests.support.judged import judging_once
from tests.support.packs import SLUG, about, empty_bank, pack, with_files, written

DAY = date(2026, 11, 25)


@pytest.fixture(autouse=True)
def _judged_once(monkeypatch: pytest.MonkeyPatch) -> None:
    judging_once(monkeypatch)


class Asked:
    """Somebody who is asked and answers as told, and remembers what about."""

    def __init__(self, answer: Answer) -> None:
        self.answer = answer
        self.about: list[Arrival] = []

    def __call__(self, arrival: Arrival) -> Answer:
        self.about.append(arrival)
        return self.answer


def test_what_becomes_of_a_pack(tmp_path: Path) -> None:
    content = empty_bank(tmp_path / "content")
    file = written(tmp_path, pack(with_files({"about.json": about()})), "sent.zip")
    goal = content / "units" / SLUG
    no, yes = Asked("no"), Asked("yes")

    assert take_in(content, file, DAY, no) == Declined()
    assert not goal.exists()
    assert take_in(content, file, DAY, yes) == TakenIn(goal)
    assert (goal / "unit.md").is_file()
    again = take_in(content, file, DAY, no)
    assert isinstance(again, HereAlready)
    assert again.goal == goal
    assert [len(no.about), len(yes.about)] == [1, 1]
    assert [one.placing.why for one in no.about] == ["new"]


def test_nobody_is_asked_about_what_is_refused(tmp_path: Path) -> None:
    content = empty_bank(tmp_path / "content")
    file = written(tmp_path, b"no zip at all", "sent.zip")
    asked = Asked("yes")
    refused = take_in(content, file, DAY, asked)
    assert isinstance(refused, NotTakenIn)
    assert "refused: " in refused.reason
    assert asked.about == []
