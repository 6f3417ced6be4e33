"""publish: it says, and with --strict refuses, an edition number that changes do not call for.

What a number says is Semantic Versioning 2.0.0, section 6 to 8, applied to teaching.
"""

from __future__ import annotations

import json
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.publishing.edition_folders import editions_in
from build_tools.unit_editions.kept_with_pages import place_of
from tests.support.banks import BASE_UNIT, change, copy_base

Run = Callable[..., tuple[int, list[str]]]
UNIT = f"units/{BASE_UNIT}/unit.md"


@pytest.fixture(scope="module")
def published(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The small bank and the folder it is published in, made once; tests change copies."""
    room = tmp_path_factory.mktemp("published")
    content = copy_base(room)
    assert cli.main(["publish", str(room / "share"), "--content", str(content)]) == 0
    return room


@pytest.fixture
def room(published: Path, tmp_path: Path) -> Path:
    return Path(shutil.copytree(published, tmp_path / "room"))


@pytest.fixture
def run(room: Path, capsys: pytest.CaptureFixture[str]) -> Run:
    def publish(*more: str) -> tuple[int, list[str]]:
        capsys.readouterr()
        command = ["publish", str(room / "share"), "--content", str(room / "content"), *more]
        return cli.main(command), capsys.readouterr().out.splitlines()

    return publish


def retitle(content: Path) -> None:
    change(content / UNIT, "\ntitle: ", "\ntitle: More ")


def edition(content: Path, old: str, new: str) -> None:
    change(content / UNIT, f"\nedition: {old}\n", f"\nedition: {new}\n")


def line_of_edition(content: Path) -> int:
    lines = (content / UNIT).read_text(encoding="utf-8").splitlines()
    return next(n for n, line in enumerate(lines, 1) if line.startswith("edition:"))


def test_a_changed_unit_under_the_same_number_is_told(room: Path, run: Run) -> None:
    retitle(room / "content")
    code, said = run()
    line = line_of_edition(room / "content")
    assert code == 0
    assert said[:2] == [
        f"content/{UNIT}:{line}: readers have edition 1.0.0, and what changed since calls for "
        "edition 1.0.1; the unit says 1.0.0",
        "    - the unit: the title was reworded: “More Paper boats”",
    ]
    assert said[2] == "    to mend it: write `edition: 1.0.1`, and the day of issue in `issued`"
    assert said[3].startswith("published ")


def test_strict_refuses_it_and_readers_keep_what_they_had(room: Path, run: Run) -> None:
    retitle(room / "content")
    before = (room / "share" / "current.js").read_bytes()
    code, said = run("--strict")
    assert code == 1
    assert "calls for edition 1.0.1; the unit says 1.0.0" in said[0]
    assert said[-1] == (
        "1 edition number to mend; nothing was published, and the last edition stands"
    )
    assert (room / "share" / "current.js").read_bytes() == before
    assert len(editions_in(room / "share")) == 1


@pytest.mark.parametrize("number", ["1.0.1", "1.1.0", "2.0.0"])
def test_the_number_called_for_or_a_newer_one_will_do(room: Path, run: Run, number: str) -> None:
    retitle(room / "content")
    edition(room / "content", "1.0.0", number)
    code, said = run("--strict")
    assert (code, len(said)) == (0, 1), said


def test_nothing_changed_calls_for_nothing(run: Run) -> None:
    code, said = run("--strict")
    assert code == 0
    assert said[0].startswith("the current edition ")


def test_an_older_number_is_told(room: Path, run: Run) -> None:
    edition(room / "content", "1.0.0", "0.9.0")
    code, said = run("--strict")
    assert code == 1
    assert said[0].endswith("readers have edition 1.0.0; the unit says 0.9.0, which is older")


def test_what_was_damaged_is_not_compared_with(room: Path, run: Run) -> None:
    """The edition kept in the bank tells then: it is the same unit, and one word older."""
    (current,) = editions_in(room / "share")
    kept = room / "share" / "editions" / current / place_of(BASE_UNIT)
    held = json.loads(kept.read_bytes())
    held["unit"]["fields"]["edition"] = "9.0.0"
    kept.write_text(json.dumps(held), encoding="utf-8")
    shutil.copytree(
        room / "content" / "units" / BASE_UNIT, room / "content" / "earlier" / f"{BASE_UNIT}-1.0.0"
    )
    retitle(room / "content")
    code, said = run("--strict")
    assert code == 1
    assert f": earlier/{BASE_UNIT}-1.0.0 is edition 1.0.0, and what changed since" in said[0]


def test_only_the_weightiest_changes_are_said(room: Path, run: Run) -> None:
    retitle(room / "content")
    for number in range(1, 4):
        lesson = room / "content" / "units" / BASE_UNIT / f"lesson-{number}.md"
        text = lesson.read_text(encoding="utf-8").replace("task: ", "task: Now. ")
        lesson.write_text(text.replace("\ntitle: ", "\ntitle: More "), encoding="utf-8")
    _, said = run("--strict")
    changes = [line for line in said if line.startswith("    - ")]
    assert len(changes) == 7, said
    assert changes[-1].startswith("    - and ")
