"""Whatever happens to a file, the check ends, soon, with places that exist."""

from __future__ import annotations

import json
import random
import time
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.source.folder import BANK_FILES, MAY_BE_MISSING
from tests.mutations.mutating import CHANGES, mutated
from tests.support.banks import BASE_UNIT, CONTENT, copy_bank, copy_base, line_count
from tests.support.quick_bank import QuickBank

FEW, MANY = 50, 20_000
PARTS = 2
SEED = 20_261_125
LONGEST_SECONDS = 10.0
"""Of the processor, for one check; the usual one takes a few hundredths of a second."""


def check(quick: QuickBank, file: str, raw: bytes) -> int:
    """How many problems there are with `raw` as `file`; fails if a place does not exist."""
    start = time.process_time()
    problems = quick.problems_with(file, raw)
    assert time.process_time() - start < LONGEST_SECONDS
    # there may be a problem in each of forty thousand lines
    lines = {one: line_count(text) for one, text in (quick.originals | {file: raw}).items()}
    for problem in problems:
        assert 1 <= problem.line <= lines[problem.file], problem
        assert problem.column >= 1, problem
        problem.message.encode("utf-8")
    return len(problems)


@pytest.mark.parametrize("part", range(PARTS))
def test_damage_to_sound_files(
    part: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, thorough: bool
) -> None:
    """Of a published unit in the long run; in the usual one of a small one, checked sooner."""
    quick = QuickBank(copy_bank(tmp_path) if thorough else copy_base(tmp_path), monkeypatch)
    everything = [p.read_bytes() for p in sorted(CONTENT.rglob("*.md"))]
    choose = random.Random(SEED + part)
    files = sorted(quick.originals)
    assert set(BANK_FILES) - MAY_BE_MISSING < set(files)
    assert quick.problems_with(files[0], quick.originals[files[0]]) == []
    found = 0
    many = (MANY if thorough else FEW) // PARTS
    for number in range(part * many, (part + 1) * many):
        file = files[number % len(files)]
        raw = mutated(quick.originals[file], everything, choose)
        try:
            found += check(quick, file, raw) > 0
        except Exception:
            (tmp_path / "guilty").write_bytes(raw)
            print(f"mutation {number} of {file}, kept in {tmp_path / 'guilty'}")
            raise
    # most damage is seen; the rest is in notes and words, or does no harm
    assert found > many // 2


@pytest.mark.parametrize("kind", range(len(CHANGES)))
def test_each_kind_of_damage_from_the_command_line(
    kind: int, tmp_path: Path, capsys: pytest.CaptureFixture[str], thorough: bool
) -> None:
    bank = copy_base(tmp_path)
    file = bank / "units" / BASE_UNIT / "lesson-1.md"
    original = file.read_bytes()
    choose = random.Random(SEED + kind)
    for _ in range(3 if thorough else 1):
        file.write_bytes(CHANGES[kind](original, choose, [original]))
        code = cli.main(["check", "--content", str(bank), "--json"])
        problems = json.loads(capsys.readouterr().out)
        assert code == int(any(p["severity"] == "error" for p in problems))
        assert cli.main(["check", "--content", str(bank)]) == code
        capsys.readouterr().out.encode("utf-8")


LARGE_AND_EMPTY = (
    b"",
    b"---",
    b"---\n---",
    b"\n" * 1000,
    b"-" * 200000,
    b"\x00" * 200000,
    b"\xff" * 200000,
    b"---\n" + b"a: b\n" * 40000,
    b"---\n" + b"- " * 100000,
    b"---\n" + b" " * 250000,
    b"---\n" + b"[" * 200000 + b"\n---\n",
    b"---\nx: '" + b"''" * 100000,
    b"---\n#" * 50000,
    b"---\ntitle: x\n---\n" + b"[" * 200000,
    b"---\ntitle: x\n---\n" + b"](" * 100000,
    b"---\ntitle: x\n---\n" + b"<" * 200000,
    b"---\ntitle: x\n---\n" + b"<https://" * 25000,
    b"---\n" + "".join(f"a{n}: x\n" for n in range(12000)).encode() + b"---\n",
    b"---\nsteps:\n" + b"- {}\n" * 20000 + b"---\n",
    b"---\n? " * 40000,
    b"---\ntopics: [" + b"a, " * 20000 + b"]\n---\n",
    b"---\nyears:\n- years: [R, " + b"".join(b"%d, " % n for n in range(490)) + b"]\n---\n",
    b"---\nsteps: [" + (b"{ask: [" + b"{}, " * 450 + b"]},\n") * 140 + b"]\n---\n",
)


@pytest.mark.parametrize("number", range(len(LARGE_AND_EMPTY)))
def test_large_and_empty_files(
    number: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, thorough: bool
) -> None:
    """As a unit's file and as a lesson's in the long run, in turns in the usual one."""
    quick = QuickBank(copy_base(tmp_path), monkeypatch)
    names = ("unit.md", "lesson-2.md")
    for name in names if thorough else names[number % 2 :][:1]:
        assert check(quick, f"units/{BASE_UNIT}/{name}", LARGE_AND_EMPTY[number]) > 0
