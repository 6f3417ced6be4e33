"""Writes a bank of many units, made from one real unit or from all in turn, for measuring speed.

Each copy has its own title, its own things to dance about (their names go through its motifs and
developments too), and small words drawn anew at each place, so that what is read in one unit
says little about the next. How many of its long lines stand in the unit before is printed.
"""

from __future__ import annotations

import argparse
import random
import re
import shutil
from dataclasses import dataclass
from pathlib import Path

PROJECT = Path(__file__).resolve().parents[1]
_PLACES = ("hill", "harbour", "meadow", "market", "orchard", "station", "valley", "quarry")
_TIMES = ("dawn", "noon", "dusk", "night", "spring", "summer", "autumn", "winter")
_THINGS: dict[str, tuple[str, ...]] = {
    "sea": ("lake", "bay", "loch", "sound", "deep", "firth", "strait", "mere"),
    "crab": ("shrimp", "otter", "heron", "eel", "gull", "vole", "newt", "prawn"),
    "anemone": ("lily", "fern", "clover", "barley", "poppy", "thistle", "bramble", "daisy"),
    "pool": ("pond", "marsh", "creek", "hollow", "basin", "puddle", "inlet", "lagoon"),
    "storm": ("gale", "squall", "shower", "tempest", "surge", "downpour", "blizzard", "breeze"),
    "beach": ("bank", "dune", "quay", "pier", "cliff", "wharf", "bridge", "jetty"),
    "wave": ("ripple", "swell", "roller", "current", "eddy", "billow", "spray", "flow"),
    "poem": ("verse", "rhyme", "ballad", "song", "story", "tale", "letter", "riddle"),
}
"""One name for each in each unit, the same in all its files."""
_SMALL: dict[str, tuple[str, ...]] = {
    "the": ("the", "this", "that", "our", "your", "one", "my", "their"),
    "a": ("one", "some", "the", "this", "that"),
    "an": ("one", "some", "the", "this", "that"),
    "slowly": ("slowly", "calmly", "evenly", "smoothly"),
    "quick": ("quick", "swift", "brisk", "short"),
    "every": ("every", "each"),
    "before": ("before", "until"),
    "card": ("card", "sheet", "label", "note"),
    "cards": ("cards", "sheets", "labels", "notes"),
    "part": ("part", "piece", "bit"),
    "shape": ("shape", "outline", "form", "figure"),
    "first": ("first", "last", "next"),
    "one": ("one", "the", "this"),
    "without": ("without", "having"),
    "keep": ("keep", "hold", "save"),
    "start": ("start", "begin"),
    "moves": ("moves", "actions", "bits"),
    "dance": ("dance", "do", "perform"),
    "teacher": ("teacher", "helper", "grown-up"),
}
"""One of these at each place, drawn anew."""
_NAMED = re.compile(rf"(?<!/)(?<!low-)(?<!rock-)\b({'|'.join(_THINGS)})(s?)\b", re.IGNORECASE)
_FREE = re.compile(rf"(?<= )(?<!atch )(?<!replacing )({'|'.join(_SMALL)})(?= [a-z])")
_FROM_A_LIST = re.compile(
    r"\s*(- )?({|(who|phase|grouping|stage|kinds|from|form|follows|says|start|end|device):)"
)
"""Lines that hold words of the schema, which have to stay."""


@dataclass(frozen=True, slots=True)
class Made:
    """How many unit and lesson files were written, and how alike neighbouring units are."""

    files: int
    repeated: float
    """The share of long lines that stand in the unit before too."""


def published() -> tuple[str, ...]:
    """The units of the project's own bank, by their folders, less its drafts."""
    folders = sorted((PROJECT / "content" / "units").iterdir())
    texts = {one.name: (one / "unit.md").read_text(encoding="utf-8") for one in folders}
    return tuple(name for name, text in texts.items() if "\ndraft: true" not in text)


def make_bank(
    out: Path, units: int, patterns: tuple[str, ...] = ("rock-pool",), seed: int = 1
) -> Made:
    """Write a bank of `units` units into the folder `out`, made from `patterns` in turn."""
    content = PROJECT / "content"
    for file in ("bank.yml", "safety.md", "vocabulary/topics.yml", "vocabulary/words.yml"):
        (out / file).parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(content / file, out / file)
    for name in sorted(path.name for path in (content / "vocabulary").iterdir()):
        shutil.copyfile(content / "vocabulary" / name, out / "vocabulary" / name)
    sources = {pattern: _source(content / "units" / pattern) for pattern in patterns}
    choose = random.Random(seed)
    before: set[str] = set()
    lines = repeated = files = 0
    for number in range(units):
        pattern = patterns[number % len(patterns)]
        texts, media = sources[pattern]
        files += len(texts)
        folder = out / "units" / f"{pattern}-{number:05}"
        (folder / "media").mkdir(parents=True, exist_ok=True)
        title = f"{choose.choice(_PLACES)} at {choose.choice(_TIMES)} {number}"
        things = {thing: choose.choice(names) for thing, names in _THINGS.items()}
        written: set[str] = set()
        for file, text in texts.items():
            varied = _varied(text, things, choose)
            if file == "unit.md":
                varied = re.sub(r"(?m)^title: .*$", f"title: {title}", varied, count=1)
            written.update(line for line in varied.split("\n") if len(line.split()) > 6)
            (folder / file).write_text(varied, encoding="utf-8")
        for picture in media:
            shutil.copyfile(picture, folder / "media" / picture.name)
        lines += len(written)
        repeated += len(written & before)
        before = written
    return Made(files, repeated / lines)


def _source(folder: Path) -> tuple[dict[str, str], list[Path]]:
    """The texts of a unit and its pictures."""
    texts = {p.name: p.read_text(encoding="utf-8") for p in sorted(folder.glob("*.md"))}
    media = folder / "media"
    return texts, sorted(media.iterdir()) if media.is_dir() else []


def _varied(text: str, things: dict[str, str], choose: random.Random) -> str:
    def named(match: re.Match[str]) -> str:
        word = things[match[1].lower()] + match[2]
        return word.capitalize() if match[1][0].isupper() else word

    def line_varied(line: str) -> str:
        if line.startswith("topics:"):
            return line
        line = _NAMED.sub(named, line)
        if _FROM_A_LIST.match(line):
            return line
        return _FREE.sub(lambda m: choose.choice(_SMALL[m[1]]), line)

    return "\n".join(map(line_varied, text.split("\n")))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("out", type=Path)
    parser.add_argument("--units", type=int, default=1500)
    args = parser.parse_args()
    made = make_bank(args.out, args.units)
    print(
        f"{made.files:,} files in {args.out}; "
        f"{made.repeated:.0%} of long lines stand in the unit before too"
    )


if __name__ == "__main__":
    main()
