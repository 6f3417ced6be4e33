"""Writes a bank of many units, made from one real unit, for measuring speed.

Every copy has its own name, title and sentences, so that nothing can be read once and reused.
"""

from __future__ import annotations

import argparse
import random
import shutil
from pathlib import Path

PROJECT = Path(__file__).resolve().parents[1]
_PLACES = ("hill", "harbour", "meadow", "market", "orchard", "station", "valley", "quarry")
_TIMES = ("dawn", "noon", "dusk", "night", "spring", "summer", "autumn", "winter")


def make_bank(out: Path, units: int, pattern: str = "rock-pool", seed: int = 1) -> int:
    """Write a bank of `units` units into `out`; returns how many unit and lesson files it has."""
    content = PROJECT / "content"
    for file in ("bank.yml", "safety.md", "vocabulary/topics.yml", "vocabulary/words.yml"):
        (out / file).parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(content / file, out / file)
    source = content / "units" / pattern
    texts = {p.name: p.read_text(encoding="utf-8") for p in sorted(source.glob("*.md"))}
    media = sorted((source / "media").iterdir())
    choose = random.Random(seed)
    for number in range(units):
        folder = out / "units" / f"{pattern}-{number:05}"
        (folder / "media").mkdir(parents=True, exist_ok=True)
        name = f"{choose.choice(_PLACES)} at {choose.choice(_TIMES)} {number}"
        for file, text in texts.items():
            if file == "unit.md":
                text = text.replace("\ntitle: ", f"\ntitle: {name}, ", 1)
            else:
                text = text.replace("\nfocus: ", f"\nfocus: In the {name}, ", 1)
            (folder / file).write_text(text, encoding="utf-8")
        for picture in media:
            shutil.copyfile(picture, folder / "media" / picture.name)
    return units * len(texts)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("out", type=Path)
    parser.add_argument("--units", type=int, default=1500)
    args = parser.parse_args()
    print(f"{make_bank(args.out, args.units):,} files in {args.out}")


if __name__ == "__main__":
    main()
