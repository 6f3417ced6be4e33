"""How many of a unit's words are its notation: names of fields, hyphens, bars, numbers, choices.

    .venv/bin/python benchmarks/structure_share.py [FOLDER OF UNITS]

Counted as in the trial of an adviser's unit (27 words in a hundred): a name of a field, a hyphen, a
bar and the start of each part of a bracketed list count one each; so does each word of a value that
is chosen from a list or is a number, a name or a code. Everything else is what the author has to
say: sentences, the words of moves, notes. Remarks are not counted, nor are marks that stand on a
word (a comma, a colon, quotation marks). What is counted is what the file writes: what follows from
it and is not written costs nothing, and a row of moves counts its bars and its columns.
"""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from build_tools.shapes.shape import ANY, Shape, shape_of
from build_tools.source.front_matter import Document, kind_of_file, read_again, read_markdown
from build_tools.source.typed.rows import columns_of
from build_tools.source.yaml_quickly import read_quickly

CONTENT = Path(__file__).resolve().parents[1] / "content" / "units"


@dataclass(slots=True)
class Share:
    """The words of some files: those of the notation, by the field they stand in, and all."""

    by_field: Counter[str] = field(default_factory=Counter)
    said: int = 0

    @property
    def structure(self) -> int:
        """The words of the notation."""
        return self.by_field.total()

    @property
    def in_a_hundred(self) -> float:
        """Of a hundred words, how many are notation."""
        return 100 * self.structure / max(1, self.structure + self.said)


def share_of(document: Document) -> Share:
    """The share of one file."""
    kind = kind_of_file(document.file)
    assert kind is not None
    found = Share(said=len(document.body.split()))
    # a file that YAML cannot read, or reads otherwise, is counted as it is read line by line
    by_lines = read_again(document, shape_of(kind)).data
    written = read_quickly(document.yaml_text) if document.kind is None else by_lines
    written = written if isinstance(written, dict) else {}
    for name, structure, said in _counted(written, shape_of(kind), ""):
        found.by_field[name] += structure
        found.said += said
    return found


def _counted(value: Any, shape: Shape, name: str) -> Iterator[tuple[str, int, int]]:
    """The field, its words of notation and its words of the author's, piece by piece."""
    if isinstance(value, dict):
        for key, inner in value.items():
            yield key, 1, 0
            yield from _counted(inner, shape.fields.get(key) or shape.each or ANY, key)
    elif isinstance(value, list):
        columns: tuple[str, ...] = ()
        for inner in value:
            yield name, 1, 0
            if isinstance(inner, str) and "|" in inner:
                columns = columns_of(inner) or columns
                yield from _row(inner, columns)
            else:
                yield from _counted(inner, shape.each or ANY, name)
    elif shape.takes == "text" or (shape.each is not None and shape.each.takes == "text"):
        yield name, 0, len(str(value).split())
    else:
        yield name, len(str(value).split()), 0


def _row(row: str, columns: tuple[str, ...]) -> Iterator[tuple[str, int, int]]:
    """A row of moves, or the row that names its columns: only the pupils' own words are said."""
    cells = [cell.strip() for cell in row.split("|")]
    yield "bars", len(cells) - 1, 0
    for column, cell in zip(columns, cells, strict=False):
        own = column in ("word", "part") and columns_of(row) == ()
        words = len(cell.split())
        yield column, 0 if own else words, words if own else 0


def share_of_unit(folder: Path) -> Share:
    """The share of a unit's files together."""
    whole = Share()
    for path in (folder / "unit.md", *sorted(folder.glob("lesson-*.md"))):
        read = read_markdown(path.name, path.read_bytes())
        if isinstance(read, Document):
            one = share_of(read)
            whole.by_field += one.by_field
            whole.said += one.said
    return whole


def main(root: Path) -> None:
    """Print the share of each unit, and which fields make it up in all."""
    every = Share()
    for folder in sorted(path for path in root.iterdir() if (path / "unit.md").is_file()):
        share = share_of_unit(folder)
        every.by_field += share.by_field
        every.said += share.said
        print(f"{folder.name:24} {share.in_a_hundred:5.1f} of a hundred words")
    print(f"{'all':24} {every.in_a_hundred:5.1f}")
    print("most of it, in a hundred words of notation:")
    for name, words in every.by_field.most_common(20):
        print(f"  {name:20} {100 * words / every.structure:5.1f}")


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else CONTENT)
