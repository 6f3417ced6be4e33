"""A build killed at any moment leaves whole files, and the next build mends the site."""

from __future__ import annotations

import random
from collections import Counter
from pathlib import Path

from tests.building.banks import built, built_anew
from tests.building.build_once import PHASES
from tests.support.banks import BASE_UNIT, change, copy_base
from tests.support.built_sites import files
from tests.support.killing import forked, killed_in, wanted_phases

ROUNDS, ROUNDS_THOROUGH = 1, 40
"""For each of five phases: 5 builds are killed, and 200 in the long run."""
FOCUS = ("\nfocus: ", "\nfocus: Now, ")


def test_a_killed_build_is_mended_by_the_next(tmp_path: Path, thorough: bool) -> None:
    bank, out = copy_base(tmp_path), tmp_path / "site"
    lessons = sorted((bank / "units" / BASE_UNIT).glob("lesson-*.md"))
    sites = []
    for n, (old, new) in enumerate(((FOCUS[1], FOCUS[0]), FOCUS)):
        for lesson in lessons if n else ():
            change(lesson, old, new)
        sites.append(files(built_anew(bank, tmp_path / f"anew-{n}", tmp_path)))
    for lesson in lessons:
        change(lesson, FOCUS[1], FOCUS[0])
    built(bank, out, tmp_path)
    moments, landed = random.Random(20261129), Counter[str]()
    killed = PHASES[:-1]
    for n, phase in enumerate(
        wanted_phases(killed, ROUNDS_THOROUGH if thorough else ROUNDS, landed)
    ):
        now = sites[(n + 1) % 2]
        old, new = FOCUS if n % 2 == 0 else FOCUS[::-1]
        for lesson in lessons:
            change(lesson, old, new)
        with forked("tests.building.build_once", str(bank), str(out), str(tmp_path)) as building:
            landed[killed_in(building, phase, max(0.0, moments.uniform(-0.004, 0.02)))] += 1
        left = files(out)
        assert left.keys() == now.keys()
        assert [name for name in left if left[name] not in (one[name] for one in sites)] == []
        built(bank, out, tmp_path)
        assert files(out) == now, phase
        assert [path.name for path in tmp_path.iterdir() if path.name.startswith(".")] == []
    assert set(landed) >= set(killed), landed
