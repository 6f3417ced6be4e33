"""Packs with bytes changed anywhere: an answer every time, and nothing written for a refusal."""

from __future__ import annotations

import random
import zlib
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.packs.reading import verified
from build_tools.packs.reading.refused_error import RefusedError
from build_tools.packs.reading.walled import Refused
from build_tools.use_cases import judging_packs
from tests.support.packs import (
    bag,
    empty_bank,
    in_top,
    pack,
    unit_files,
    with_files,
    written,
    zipped,
)

PACKS, MANY = 500, 20_000
"""So many packs are only unpacked and looked into."""
JUDGED, MANY_JUDGED = 40, 5_000
"""So many are judged whole: the walls would hide a fault of ours, so they are judged without."""
TAKEN_IN, MANY_TAKEN_IN = 3, 100
SEED = 20261125
HARD = (b"PK\x01\x02", b"PK\x03\x04", b"PK\x05\x06", b"data/", b"\xff" * 4, b"\0" * 4, b"../", b"<")


def sources() -> list[bytes]:
    small = with_files({f"unit/{name}": b"a\n" for name in unit_files() if name != "unit.md"})
    return [pack(), zipped(in_top(bag()), 8), zipped(in_top(bag(small)))]


def changed(data: bytes, chance: random.Random) -> bytes:
    """A copy with one to four changes: bits, pieces put in, taken out, doubled or swapped."""
    made = bytearray(data)
    for _ in range(chance.randint(1, 4)):
        at = chance.randrange(len(made) + 1)
        # the list of files is short and says the most, so half the changes are made there
        if chance.random() < 0.5:
            at = chance.randrange(max(0, len(made) - 3000), len(made) + 1)
        piece = chance.choice((*HARD, chance.randbytes(chance.randint(1, 8))))
        match chance.randrange(4):
            case 0 if at < len(made):
                made[at] ^= 1 << chance.randrange(8)
            case 1:
                made[at:at] = piece
            case 2:
                del made[at : at + chance.choice((1, 4, 100, 5000))]
            case _:
                made[at : at + len(piece)] = piece
    return bytes(made)


def test_changed_packs_are_refused_or_sound(tmp_path: Path, thorough: bool) -> None:
    chance = random.Random(SEED)
    whole = sources()
    refused = 0
    for _ in range(MANY if thorough else PACKS):
        file = written(tmp_path, changed(chance.choice(whole), chance))
        try:
            found = verified.verified(file)
        except RefusedError:
            refused += 1
        else:
            # a unit that is verified is the one that was packed
            assert found.slug == "paper-boats"
    assert refused > PACKS * 0.9
    assert [path.name for path in tmp_path.iterdir()] == ["unit.zip"]


@pytest.mark.parametrize("part", range(4))
def test_judging_never_falls_over(tmp_path: Path, part: int, thorough: bool) -> None:
    chance = random.Random(SEED + part)
    content = empty_bank(tmp_path / "content")
    whole = sources()
    refused = 0
    for _ in range((MANY_JUDGED if thorough else JUDGED) // 4):
        file = written(tmp_path, hurt(whole, chance))
        refused += isinstance(judging_packs._judge(content, file), Refused)
    assert refused


def test_the_command_never_falls_over(
    tmp_path: Path, thorough: bool, capsys: pytest.CaptureFixture[str]
) -> None:
    chance = random.Random(SEED)
    content = empty_bank(tmp_path / "content")
    before = sorted(content.rglob("*"))
    whole = sources()
    for _ in range(MANY_TAKEN_IN if thorough else TAKEN_IN):
        data = hurt(whole, chance)
        file = written(tmp_path, data)
        code = cli.main(["take-in", str(file), "--content", str(content)])
        said = capsys.readouterr()
        assert code in (0, 1), (code, zlib.crc32(data))
        assert "Traceback" not in said.out + said.err
        left = [path for path in sorted(content.rglob("*")) if path.name != ".taking-in.lock"]
        assert left == before


def hurt(whole: list[bytes], chance: random.Random) -> bytes:
    """A pack with something changed in it, or one file's words, and the sums put right again."""
    if chance.random() < 0.5:
        return changed(chance.choice(whole), chance)
    files = dict(unit_files())
    name = chance.choice(sorted(files))
    files[name] = changed(files[name], chance)
    return pack(with_files({f"unit/{one}": text for one, text in files.items()}))
