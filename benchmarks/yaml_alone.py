"""The plain peer: every file's fields through PyYAML's C loader, on one core, and nothing else."""

from __future__ import annotations

import sys
from pathlib import Path

import yaml


def main() -> None:
    files = 0
    for path in sorted(Path(sys.argv[1]).glob("units/*/*.md")):
        yaml.load(path.read_text(encoding="utf-8").split("\n---\n", 1)[0], Loader=yaml.CSafeLoader)
        files += 1
    print(files)


if __name__ == "__main__":
    main()
