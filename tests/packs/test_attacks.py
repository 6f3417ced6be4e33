"""Hostile packs by somebody who had not read the reader: refused in words, or harmless, and cheap.

A fixed sample in the usual tests, all of them with `--thorough`.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.lifeline import walls
from tests.packs.attacks.controls import CONTROLS
from tests.packs.attacks.every import ATTACKS, KINDS
from tests.packs.attacks.harmless import HARMLESS, Reason
from tests.packs.attacks.packed import Pack
from tests.support.banks import BASE, BASE_UNIT, CONTENT, ROOT, THOROUGH
from tests.support.built_packs import made
from tests.support.judged import measuring, took
from tests.support.packs import empty_bank, written

MOST_SECONDS = 5.0 if os.environ.get(THOROUGH) else 3.5
"""Of a published unit in the long run; of a small one, which is soon drawn, in the usual one."""
MOST_BYTES, MOST_DISK = 200 * 2**20, 100_000_000
ENDED = "than any unit needs"
"""What is said of what one of the walls ended."""
_EACH = 120
_SAMPLE = list(ATTACKS)[7::_EACH]
_STEERS = set(map(chr, [*range(9), *range(11, 32), *range(127, 160), 0x202E, 0x2066, 0x2067]))


@pytest.fixture(scope="module")
def good(thorough: bool) -> Pack:
    """The pack that is made hostile: of a published unit in the long run, else of a small one."""
    content = ROOT / "tests/planted/by_hand/content" if thorough else BASE
    return Pack.read(made(content, "rock-pool" if thorough else BASE_UNIT).data)


@pytest.fixture(scope="module")
def bank(tmp_path_factory: pytest.TempPathFactory, thorough: bool) -> Path:
    folder = tmp_path_factory.mktemp("bank") / "content"
    return empty_bank(folder, CONTENT if thorough else BASE)


@pytest.fixture
def content(bank: Path) -> Iterator[Path]:
    """The bank, which is emptied again of what was taken in."""
    yield bank
    for name in ("units", "earlier"):
        shutil.rmtree(bank / name, ignore_errors=True)
    (bank / "units").mkdir()


def taken(
    data: bytes,
    content: Path,
    folder: Path,
    patch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> tuple[int, str]:
    """What the command says and how it ends, which stays within what it may use."""
    most = [0]
    bytes_in = walls._bytes_in

    def watched(room: Path) -> int:
        most.append(bytes_in(room))
        return most[-1]

    patch.setattr(walls, "_bytes_in", watched)
    scratch = folder / "scratch"
    scratch.mkdir()
    patch.setattr("tempfile.tempdir", str(scratch))
    measuring(patch)
    file = written(folder, data)
    before = sorted(content.rglob("*"))
    code = cli.main(["take-in", str(file), "--yes", "--content", str(content)])
    said = capsys.readouterr()
    used = took(file)
    assert "Traceback" not in said.out + said.err
    assert not _STEERS & set(said.out + said.err)
    assert used is None or used.seconds < MOST_SECONDS
    assert used is None or used.memory < MOST_BYTES
    assert max(most) < MOST_DISK
    assert not list(scratch.iterdir())
    left = [path for path in sorted(content.rglob("*")) if path.name != ".taking-in.lock"]
    assert code == 0 or left == [path for path in before if path in left]
    return code, said.out


@pytest.mark.parametrize(
    "name",
    [pytest.param(name, marks=() if name in _SAMPLE else pytest.mark.thorough) for name in ATTACKS],
)
def test_each_is_refused_or_harmless(
    name: str,
    good: Pack,
    content: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    attack = ATTACKS[name]
    code, said = taken(attack.made_of(good), content, tmp_path, monkeypatch, capsys)
    assert code in (0, 1), said
    assert ENDED not in said
    assert "cannot read it" not in said
    if code == 1:
        assert "nothing was taken in" in said, said
        return
    reason = HARMLESS.get(name)
    assert not attack.refuse or reason, f"{attack.what}: it was taken in"
    if reason is Reason.LEFT_OUT:
        assert "left out" in said, said


@pytest.mark.thorough
@pytest.mark.parametrize("name", CONTROLS)
def test_sound_packs_by_the_same_hand_are_taken_in(
    name: str,
    good: Pack,
    content: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    made = CONTROLS[name](good.copy())
    data = made if isinstance(made, bytes) else made.done()
    code, said = taken(data, content, tmp_path, monkeypatch, capsys)
    assert code == 0, said


def test_there_are_many_of_many_kinds() -> None:
    assert len(ATTACKS) > 2_000
    assert len(KINDS) > 20
    assert set(HARMLESS) <= {name for name, attack in ATTACKS.items() if attack.refuse}


@pytest.mark.parametrize("name", _SAMPLE[::3])
def test_a_pack_is_made_of_the_same_bytes_every_time(name: str, good: Pack) -> None:
    assert ATTACKS[name].made_of(good) == ATTACKS[name].made_of(good)
