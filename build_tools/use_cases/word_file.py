"""Making a word-processor file of a unit's lessons, for who adapts them by hand."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from build_tools.building.word_file.unit_document import WordFile, word_file
from build_tools.disk.sure_files import write_whole
from build_tools.model.build_bank import build_bank
from build_tools.pictures.trouble import PictureError
from build_tools.use_cases.finished_unit import NotMade, finished_unit
from build_tools.views.words.plain_words import listed


def make_word_file(content: Path, slug: str, numbers: Sequence[int] = ()) -> WordFile | NotMade:
    """The file of the unit `slug` in the folder `content`: of the lessons `numbers`, else of all.

    As `pack` does, it is judged by all that needs no other unit, and a unit with errors or a draft
    goes to nobody.
    """
    found = finished_unit(content, slug)
    if isinstance(found, NotMade):
        return found
    unit = found.unit
    known = [one.number for one in unit.lessons]
    if odd := [str(number) for number in numbers if number not in known]:
        return NotMade(f"it has no lesson {listed(odd, 'or')}: its lessons are {_span(known)}")
    lessons = tuple(one for one in unit.lessons if not numbers or one.number in numbers)
    try:
        return word_file(
            build_bank(found.documents, [unit]), unit, content / "units" / slug, lessons
        )
    except PictureError as error:
        return NotMade(str(error))


def write_word_file(made: WordFile, out: Path) -> Path:
    """Write the file into the folder `out`; gives its place. Raises OSError, with nothing left."""
    out.mkdir(parents=True, exist_ok=True)
    write_whole(out / made.name, made.data)
    return out / made.name


def _span(numbers: Sequence[int]) -> str:
    return f"{numbers[0]} to {numbers[-1]}" if len(numbers) > 1 else str(numbers[0])
