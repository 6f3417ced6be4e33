"""How heavy a bank's pictures and recordings are is said where it is worth knowing."""

from __future__ import annotations

import shutil
from dataclasses import replace
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.checking.weights import weights_in_words
from build_tools.model.build_bank import outline_unit
from tests.support.banks import BASE, BASE_UNIT, CONTENT
from tests.support.packs import empty_bank
from tests.support.sound_bank import real_unit

ONE = replace(outline_unit(real_unit()), slug="one", pictured=30_000, recorded=0)
TWO = replace(ONE, slug="two", pictured=287_400, recorded=1_240_000)


def test_little_is_not_told() -> None:
    assert weights_in_words([]) == ""
    assert weights_in_words([ONE, replace(ONE, pictured=69_999)]) == ""


def test_the_heaviest_is_named_with_what_makes_it_heavy() -> None:
    assert weights_in_words([TWO]) == "two: pictures 287 kB and recordings 1.2 MB, as published"
    said = weights_in_words([ONE, TWO])
    assert said == (
        "pictures and recordings of 2 units, as published: 1.6 MB; the most in two: pictures "
        "287 kB and recordings 1.2 MB"
    )


def test_the_check_says_it_of_what_was_asked(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    slug = min(path.parent.parent.name for path in CONTENT.glob("units/*/media/*.mp3"))
    bank = empty_bank(tmp_path / "content", CONTENT)
    for one, goal in ((CONTENT / "units" / slug, slug), (BASE / "units" / BASE_UNIT, BASE_UNIT)):
        shutil.copytree(one, bank / "units" / goal)
    command = ["check", "--content", str(bank)]
    assert cli.main([*command, str(bank / "units" / slug)]) == 0
    assert f"{slug}: " in capsys.readouterr().out
    assert cli.main([*command, str(bank / "units" / BASE_UNIT)]) == 0
    assert slug not in capsys.readouterr().out
