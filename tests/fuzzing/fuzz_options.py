"""What libFuzzer is told for one target: how long, where to begin, which words are looked for."""

from __future__ import annotations

from pathlib import Path

from tests.fuzzing.targets import TARGETS

PLANTED = "a planted fault"
PLANTED_SECONDS = 60
SEED = 20261125
FEW = 300
"""Readings of one target in the usual run, which take about half a second."""
MOST_WAITING = 300
"""Seconds by the clock on the wall, on a busy computer, until one reading is said to hang."""
MOST_MEGABYTES = 700


def options(name: str, seconds: int, folder: Path, *, few: bool) -> list[str]:
    """Write what the target begins with into `folder`; give the options for that long or `FEW`."""
    beginnings, ended, words = folder / "beginnings", folder / "ended", folder / "words"
    for made in (beginnings, ended):
        made.mkdir(parents=True, exist_ok=True)
    most = 16
    if name != PLANTED:
        target = TARGETS[name]
        most = max(target.most, *map(len, target.beginnings()))
        for number, data in enumerate(target.beginnings()):
            (beginnings / f"{number}").write_bytes(data)
        words.write_text("".join(f'"{_escaped(word)}"\n' for word in target.words), "utf-8")
    return [
        *([f"-dict={words}"] if words.exists() else []),
        f"-max_total_time={seconds}",
        *([f"-runs={FEW}"] if few else []),
        f"-seed={SEED}",
        f"-max_len={most}",
        f"-timeout={MOST_WAITING}",
        f"-rss_limit_mb={MOST_MEGABYTES}",
        f"-artifact_prefix={ended}/",
        str(beginnings),
    ]


def _escaped(word: bytes) -> str:
    return "".join(f"\\x{letter:02x}" for letter in word)
