"""Where a unit goes, what stays, and a run that is killed or refused at any step."""

from __future__ import annotations

import pickle
import random
import shutil
import subprocess
import sys
from collections import Counter
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.checking.check_bank import check_folder
from build_tools.disk import sure_files
from build_tools.packs.reading.contents import Pack
from build_tools.packs.taking_in import journal
from build_tools.packs.taking_in.placing import placing_of
from build_tools.packs.taking_in.provenance import Provenance, noted
from build_tools.source.folder import TAKEN_IN
from build_tools.use_cases import judging_packs
from tests.packs.take_in_once import (
    CLEARING,
    DONE,
    JOURNAL,
    LOOKING,
    MOVING_IN,
    MOVING_OUT,
    PHASES,
    WRITING,
)
from tests.support.built_sites import ROOT
from tests.support.judged import judging_once
from tests.support.killing import WHOLE, forked, killed_in, wanted_phases
from tests.support.packs import about, empty_bank, pack, unit_files, with_files, written

SLUG, OWN = "paper-boats", "Another bank"
CAME = Provenance("sent.zip", "0" * 128, "The dance unit bank", "1.0.0", date(2026, 11, 25))


def of_edition(edition: str, words: bytes = b"", publisher: bytes = b"") -> dict[str, bytes]:
    """The unit's files as another edition, with `words` at the end of its notes."""
    files = dict(unit_files())
    unit = files["unit.md"].replace(b"edition: 1.0.0", f"edition: {edition}".encode())
    if publisher:
        unit = unit.replace(b"publisher: The dance unit bank", b"publisher: " + publisher)
    return files | {"unit.md": unit + words}


def packed(folder: Path, files: dict[str, bytes], edition: str) -> Path:
    parts = {f"unit/{name}": data for name, data in files.items()}
    data = pack(with_files({**parts, "about.json": about(edition=edition)}))
    return written(folder, data, f"{edition}-{abs(hash(data)) % 1000}.zip")


def files_in(folder: Path) -> dict[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file() and not path.name.startswith((".taking-in", TAKEN_IN))
    }


@pytest.fixture(autouse=True)
def _judged_once(monkeypatch: pytest.MonkeyPatch) -> None:
    judging_once(monkeypatch)


@pytest.fixture
def content(tmp_path: Path) -> Path:
    """A bank with the unit as it came from another school."""
    folder = empty_bank(tmp_path / "content")
    plan = placing_of(folder, Pack(SLUG, "1.0.0", unit_files()), OWN)
    journal.take(folder, noted(unit_files(), CAME), plan)
    return folder


def take_in(content: Path, file: Path, *more: str) -> int:
    return cli.main(["take-in", str(file), "--content", str(content), *more])


def test_a_newer_edition_takes_its_place_and_the_old_one_is_kept(
    content: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    newer = of_edition("1.1.0", b"\nMore.\n")
    assert take_in(content, packed(tmp_path, newer, "1.1.0"), "--yes") == 0
    assert files_in(content / "units" / SLUG) == newer
    assert files_in(content / "earlier" / f"{SLUG}-1.0.0") == dict(unit_files())
    said = capsys.readouterr().out
    assert "take the place of edition 1.0.0" in said
    assert f"earlier/{SLUG}-1.0.0" in said


@pytest.mark.parametrize(
    ("files", "edition", "words"),
    [
        (of_edition("0.9.0"), "0.9.0", "an older edition"),
        (of_edition("1.0.0", b"\nOther words.\n"), "1.0.0", "other words"),
        (of_edition("2.0.0", publisher=b"Somebody else"), "2.0.0", "another unit"),
    ],
)
def test_what_is_older_or_other_is_kept_beside_the_one_here(
    content: Path,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    files: dict[str, bytes],
    edition: str,
    words: str,
) -> None:
    assert take_in(content, packed(tmp_path, files, edition), "--yes") == 0
    assert files_in(content / "units" / SLUG) == dict(unit_files())
    assert files_in(content / "earlier" / f"{SLUG}-{edition}") == files
    said = capsys.readouterr().out
    assert words in said
    assert "stays, and this one would be kept beside it" in said
    # and once more: it is there already
    assert take_in(content, packed(tmp_path, files, edition), "--yes") == 0
    assert "it is here already" in capsys.readouterr().out
    assert len(list((content / "earlier").iterdir())) == 1


def test_two_different_ones_of_a_name_are_both_kept(content: Path, tmp_path: Path) -> None:
    for words in (b"\nOne.\n", b"\nTwo.\n"):
        assert take_in(content, packed(tmp_path, of_edition("0.9.0", words), "0.9.0"), "--yes") == 0
    kept = sorted(path.name for path in (content / "earlier").iterdir())
    assert kept == [f"{SLUG}-0.9.0", f"{SLUG}-0.9.0-2"]


@pytest.mark.parametrize(("answer", "taken"), [("yes\n", True), ("no\n", False), ("", False)])
def test_it_asks(
    content: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    answer: str,
    taken: bool,
) -> None:
    import io

    monkeypatch.setattr("sys.stdin", io.StringIO(answer))
    newer = of_edition("1.1.0")
    assert take_in(content, packed(tmp_path, newer, "1.1.0")) == 0
    assert (files_in(content / "units" / SLUG) == newer) is taken
    said = capsys.readouterr().out
    assert "Take it in? yes or no" in said
    assert ("nothing was taken in" in said) is not taken


def test_it_shows_what_it_is(
    content: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    files = of_edition("1.1.0")
    files["unit.md"] = files["unit.md"].replace(
        b"language:",
        b"adapted_from: {title: Shore, publisher: The shore bank, edition: 2.0.0, "
        b"licence: CC-BY-4.0}\nlanguage:",
        1,
    )
    lesson = files["lesson-1.md"].replace(b"    minutes: ", b"    minutes: 5", 1)
    files["lesson-1.md"] = lesson
    take_in(content, packed(tmp_path, files, "1.1.0"))
    said = capsys.readouterr().out
    for words in (
        "Paper boats, edition 1.1.0",
        "from The dance unit bank",
        "licence CC-BY-4.0",
        "adapted from Shore, edition 2.0.0, by The shore bank, licence CC-BY-4.0",
        "3 lessons, 1 picture",
        "minutes-do-not-add-up",
    ):
        assert words in said, words


def test_a_unit_that_names_others_comes_alone(
    content: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """It is asked about, and does not stop the bank's own pages."""
    files = of_edition("1.1.0")
    text = files["unit.md"].decode()
    before = text.index("builds_on:")
    at = text.index("leads_to:")
    named = "builds_on: {in_words: Moving to a beat, units: [first-beats]}\n"
    topics = text.index("topics:")
    after = text.index("\n", topics)
    assert topics < before
    files["unit.md"] = (
        text[:topics] + "topics: [tides-of-elsewhere]" + text[after:before] + named + text[at:]
    ).encode()
    assert take_in(content, packed(tmp_path, files, "1.1.0"), "--yes") == 0
    said = capsys.readouterr().out
    assert "`builds_on` names `first-beats`" in said
    assert "`tides-of-elsewhere` is not in `vocabulary/topics.yml`" in said
    assert "allowance-stale" not in said
    report = check_folder(content)
    found = {(p.rule, p.severity) for p in report.problems}
    assert {("earlier-unit-missing", "question"), ("topic-unknown", "question")} <= found
    assert not report.of_grade("error")


def states(content: Path) -> tuple[dict[str, bytes], dict[str, bytes]]:
    """The bank before a newer edition is taken in, and after."""
    newer = of_edition("1.1.0", b"\nMore.\n")
    before = files_in(content)
    rest = {k: v for k, v in before.items() if not k.startswith(f"units/{SLUG}/")}
    after = rest | {f"units/{SLUG}/{k}": v for k, v in newer.items()}
    after |= {f"earlier/{SLUG}-1.0.0/{k}": v for k, v in unit_files().items()}
    return before, after


class Stopped(BaseException):
    """Stands for the end of the process: nothing of the program runs after it."""


def stopping(at: int, what: Callable[..., object]) -> Callable[..., object]:
    count = 0

    def step(*given: object) -> object:
        nonlocal count
        count += 1
        if count == at:
            raise Stopped
        return what(*given)

    return step


@pytest.mark.parametrize("name", ["write_down", "settle", "patiently", "write_whole"])
def test_a_run_stopped_at_any_step_leaves_the_old_or_the_new(
    content: Path, monkeypatch: pytest.MonkeyPatch, name: str
) -> None:
    before, after = states(content)
    newer = of_edition("1.1.0", b"\nMore.\n")
    done = False
    for at in range(1, 60):
        trial = content.with_name(f"trial-{at}")
        shutil.copytree(content, trial)
        plan = placing_of(trial, Pack(SLUG, "1.1.0", newer), OWN)
        with monkeypatch.context() as patch:
            patch.setattr(sure_files, name, stopping(at, getattr(sure_files, name)))
            try:
                journal.take(trial, newer, plan)
                done = True
            except Stopped:
                pass
        with journal.alone_in(trial):
            pass
        assert files_in(trial) in (before, after), at
        assert not (trial / journal.ROOM).exists()
        shutil.rmtree(trial)
        if done:
            break
    assert done
    assert at > 1


@pytest.mark.parametrize("name", ["write_down", "settle"])
def test_a_disk_that_is_full_at_any_write_leaves_the_old(
    content: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    name: str,
) -> None:
    before, after = states(content)
    file = packed(tmp_path, of_edition("1.1.0", b"\nMore.\n"), "1.1.0")
    real = getattr(sure_files, name)
    for at in range(1, 60):
        count = 0

        def full(*given: object) -> object:
            nonlocal count
            count += 1
            if count == at:  # noqa: B023 - used within this round
                raise OSError(28, "No space left on device", str(given[0]))
            return real(*given)

        with monkeypatch.context() as patch:
            patch.setattr(sure_files, name, full)
            code = take_in(content, file, "--yes")
        said = capsys.readouterr().out
        if code == 0:
            break
        assert "No space left on device" in said
        if "half taken in" not in said:
            assert files_in(content) == before
        with journal.alone_in(content):
            pass
        assert files_in(content) in (before, after), at
        if files_in(content) == after:
            break
    assert files_in(content) == after


def test_a_process_killed_in_any_phase_leaves_the_old_or_the_new(
    content: Path, tmp_path: Path, thorough: bool
) -> None:
    """The process says each phase before it enters it, so the last it said is where it died.

    It looks at the pack itself where it is to be killed while it does; else it has looked.
    """
    before, after = states(content)
    outcomes = {
        LOOKING: [before],
        WRITING: [before],
        JOURNAL: [before, after],
        MOVING_OUT: [after],
        MOVING_IN: [after],
        CLEARING: [after],
        DONE: [after],
        WHOLE: [after],
    }
    file = packed(tmp_path, of_edition("1.1.0", b"\nMore.\n"), "1.1.0")
    looked = tmp_path / "judged"
    looked.write_bytes(pickle.dumps(judging_packs._judge(content, file)))
    chance = random.Random(20261125)
    landed: Counter[str] = Counter()
    for wanted in wanted_phases(PHASES[:-1], 30 if thorough else 1, landed):
        trial = content.with_name("killed")
        shutil.rmtree(trial, ignore_errors=True)
        shutil.copytree(content, trial)
        given = [str(file), str(trial), *([] if wanted == LOOKING else [str(looked)])]
        with forked("tests.packs.take_in_once", *given) as process:
            phase = killed_in(process, wanted, max(0.0, chance.uniform(-0.002, 0.003)))
        landed[phase] += 1
        with journal.alone_in(trial):
            pass
        assert files_in(trial) in outcomes[phase], phase
        assert not (trial / journal.ROOM).exists()
    assert set(landed) >= set(PHASES[:-1]), landed


def test_two_at_once(content: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = packed(tmp_path, of_edition("1.1.0"), "1.1.0")
    command = [sys.executable, "-c", "import sys,time;from pathlib import Path;"]
    command[-1] += "from build_tools.packs.taking_in.journal import alone_in\n"
    command[-1] += "with alone_in(Path(sys.argv[1])):\n print('in', flush=True); time.sleep(30)"
    other = subprocess.Popen([*command, str(content)], stdout=subprocess.PIPE, cwd=ROOT, text=True)
    try:
        assert other.stdout is not None
        assert other.stdout.readline() == "in\n"
        assert take_in(content, file, "--yes") == 1
        assert "another unit is being taken in" in capsys.readouterr().out
    finally:
        other.kill()
        other.wait()
        if other.stdout is not None:
            other.stdout.close()
    assert take_in(content, file, "--yes") == 0
