"""What a stranger sends is judged here, within walls: unpacked, read, checked and drawn once."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Literal

from build_tools.checking.check_bank import (
    BankFiles,
    UnitCheck,
    check_bank_files,
    check_read,
    check_together,
)
from build_tools.comparing.comparison import compared
from build_tools.model.bank import UnitOutline
from build_tools.model.build_bank import build_bank
from build_tools.model.unit import Unit
from build_tools.packs.about import says_the_same
from build_tools.packs.reading.contents import Pack
from build_tools.packs.reading.refused_error import RefusedError
from build_tools.packs.reading.scratch import laid_out
from build_tools.packs.reading.verified import verified
from build_tools.packs.reading.walled import Refused, walled
from build_tools.problem import Problem
from build_tools.source.folder import read_unit_folder, unit_slugs
from build_tools.source.front_matter import read_strictly
from build_tools.unit_editions.unit_texts import text_of_folder

Pages = Literal["none", "ours", "other"]


@dataclass(frozen=True, slots=True)
class Judged:
    """A verified pack, its unit, and what the rules of the bank called `bank` find in it.

    `pages` says whether the pages that came with it are those that this bank would draw. They are
    only looked at where the unit has no errors, and is drawn.
    """

    pack: Pack
    unit: Unit
    outline: UnitOutline
    problems: tuple[Problem, ...]
    bank: str
    pages: Pages
    other_words: tuple[str, ...]
    """Files that came with it and do not say what the unit says, as this bank would write them."""
    differs: tuple[str, ...]
    """What differs from the unit of its name that is in the bank, a sentence each."""


def judged(content: Path, file: Path) -> Judged | Refused:
    """The pack `file` as the bank at `content` sees it; whatever is in it, an answer comes."""
    return walled(_judge, content, file)


def _judge(content: Path, file: Path) -> Judged | Refused:
    # The pack first: to refuse one takes less than to read the bank's own files.
    try:
        pack = verified(file)
    except RefusedError as refused:
        return Refused(str(refused))
    files = check_bank_files(content)
    if not files.sound:
        return Refused("the bank's own files have errors, so it cannot be judged; run `check`")
    with laid_out(pack) as beside:
        check = _checked(content, beside, pack.slug, files)
        unit, outline = check.unit, check.outline
        if unit is None or outline is None:
            return Refused("its unit cannot be read", check.problems)
        if unit.edition != pack.edition:
            told = f"edition {pack.edition}, and the unit in it {unit.edition}"
            return Refused(f"about.json says {told}")
        sound = not any(problem.severity == "error" for problem in check.problems)
        pages: Pages = _drawn(files, beside, unit, pack) if sound else "none"
        words = _other_words(unit, pack) if sound else ()
        name = str(files.documents["bank.yml"].data["name"])
        differs = _differs(content, beside, pack.slug)
        return Judged(pack, unit, outline, check.problems, name, pages, words, differs)


def _other_words(unit: Unit, pack: Pack) -> tuple[str, ...]:
    from build_tools.building.pack import said_beside

    ours = {name: hashlib.sha256(data).hexdigest() for name, data in said_beside(unit).items()}
    other = [name for name in ours if pack.beside.get(name, ours[name]) != ours[name]]
    return tuple(other if says_the_same(pack.about, unit) else ["about.json", *other])


def _differs(content: Path, beside: Path, slug: str) -> tuple[str, ...]:
    here = content / "units" / slug
    if not here.is_dir():
        return ()
    old, new = text_of_folder(here), text_of_folder(beside / "units" / slug)
    if isinstance(old, list) or isinstance(new, list):
        return ("the one here cannot be read, so nobody can say what differs",)
    return tuple(change.sentence for change in compared(old, new).changes)


def _checked(content: Path, beside: Path, slug: str, files: BankFiles) -> UnitCheck:
    """What the bank's rules say of the unit in the content folder `beside`.

    Of the rules for the whole bank those speak that need no other unit's text: whether its topics
    and the units that it names are here.
    """
    folder = read_unit_folder(beside, slug, reader=read_strictly)
    check = check_read(slug, folder, files.grades)
    if check.outline is None:
        return check
    here, _ = unit_slugs(content)
    together = check_together(beside, files, {*here, slug}, [check.outline])
    # An allowance may be needed among units that were not read here.
    found = [p for p in together.problems if p.rule != "allowance-stale"]
    return replace(check, problems=(*check.problems, *found))


def _drawn(files: BankFiles, content: Path, unit: Unit, pack: Pack) -> Pages:
    """Draw all pages of the unit, so that nothing that is taken in can stop `site`."""
    # Loading what draws takes time, and most of what is refused never comes here.
    from build_tools.building.assets import asset_files
    from build_tools.building.pack import alone, pages_in_pack
    from build_tools.building.unit_files import unit_files

    bank = alone(build_bank(files.documents, [unit]), unit)
    drawn = {**asset_files(), **unit_files(bank, unit, content)}
    if not pack.pages:
        return "none"
    pages = pages_in_pack(drawn, unit, pack.unit_files)
    ours = {page.name: hashlib.sha256(page.data).hexdigest() for page in pages}
    same = all(ours.get(name) == digest for name, digest in pack.pages.items())
    return "ours" if same else "other"
