"""The tables of page words, made to follow what the templates, the Python and the scripts say."""

from __future__ import annotations

from pathlib import Path

from build_tools.disk.places import PROJECT
from build_tools.page_words.gathering import gathered, led_after
from build_tools.page_words.tables import TABLES, TEMPLATE, catalog, translated


def tables(project: Path) -> dict[Path, bytes]:
    """Each file as it should be: `en.pot`, and the table of each language led after it."""
    template = gathered(project)
    languages = sorted(TABLES.glob("*.po"))
    return {TEMPLATE: template, **{one: led_after(one, template) for one in languages}}


def run(*, only_look: bool) -> bool:
    """Write those that are not so; whether all were, where they are only looked at."""
    wanted = tables(PROJECT)
    stale = [file for file, text in wanted.items() if _now(file) != text]
    for file in stale:
        if only_look:
            print(f"{file.relative_to(PROJECT)} is not as the pages say: run `page-words`")
        else:
            file.write_bytes(wanted[file])
    for file in sorted(TABLES.glob("*.po")):
        words = [one for one in catalog(file) if one.id]
        print(f"{file.name}: {sum(map(translated, words))} of {len(words)} messages")
    return not (stale and only_look)


def _now(file: Path) -> bytes | None:
    return file.read_bytes() if file.is_file() else None
