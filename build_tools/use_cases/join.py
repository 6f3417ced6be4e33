"""Several banks as one site: the units of each under its publisher's name, one name used once.

A bank with errors is left out and said, and the others are published. What banks say of the same
word or topic differently is taken from the bank that comes first.
"""

from __future__ import annotations

import hashlib
import re
import shutil
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from build_tools.building.progress import Progress, no_progress
from build_tools.building.ready import Ready, ready_to_publish
from build_tools.building.site import Built, Wanted, build_site
from build_tools.checking.quick_check import quick_check
from build_tools.disk.scratch import scratch
from build_tools.model.bank import Bank
from build_tools.source.folder import MOST_SLUG, is_slug
from build_tools.source.shared_spelled import as_it_goes, shared_with
from build_tools.use_cases.check import kept_file


@dataclass(frozen=True, slots=True)
class OneBank:
    """One of the banks: its folder, and what of it can be published."""

    content: Path
    ready: Ready


@dataclass(frozen=True, slots=True)
class Joined:
    """What became of the banks: the site, the names given anew, and words said differently."""

    built: Built
    renamed: Mapping[str, tuple[str, ...]]
    """For each name that several banks use, the names that their units have in the site."""
    differing: tuple[str, ...]
    """The words that banks explain differently."""


def read_banks(folders: Sequence[Path], kept: Path) -> tuple[OneBank, ...]:
    """Each bank checked; what was read is kept in the project folder `kept`."""
    return tuple(
        OneBank(folder, ready_to_publish(quick_check(folder, kept_file(kept, folder)), folder))
        for folder in folders
    )


def join(
    banks: Sequence[OneBank],
    name: str,
    out: Path,
    record: Path | None,
    progress: Progress = no_progress,
) -> Joined:
    """Build the site called `name` of all `banks` that can be published into `out`."""
    sound = [(one.content, one.ready.wanted) for one in banks if one.ready.wanted]
    wanted = [one for _, one in sound]
    names = unit_names(wanted)
    settings = joined_settings([one.settings for one in wanted], name)
    with scratch("joined") as content:
        digest = hashlib.sha256(repr(settings).encode()).hexdigest()
        (content / "settings.txt").write_text(digest, encoding="utf-8")
        units, leads = dict[str, str](), dict[str, tuple[str, ...]]()
        for own, (folder, one) in zip(names, sound, strict=True):
            same = {old for old, new in own.items() if old == new}
            for old, new in own.items():
                _copied(folder / "units" / old, content / "units" / new)
                units[new] = one.units[old]
                leads[new] = tuple(other for other in one.leads[old] if other in same)
        built = build_site(Wanted(settings, content, units, leads), out, record, progress)
    renamed: dict[str, tuple[str, ...]] = {}
    for own in names:
        for old, new in own.items():
            if old != new:
                renamed[old] = (*renamed.get(old, ()), new)
    return Joined(built, renamed, differing_words([one.settings for one in wanted]))


def _copied(unit: Path, to: Path) -> None:
    """Copy a unit's folder, and into it what the unit shares with others of its bank."""
    shared = shared_with(unit)
    texts = {one.name: as_it_goes(unit, one.name) for one in unit.glob("*.md")} if shared else {}
    shutil.copytree(unit, to)
    for name, path in shared.items():
        (to / name).parent.mkdir(exist_ok=True)
        shutil.copyfile(path, (to / name).with_name(path.name))
    for name, text in texts.items():
        (to / name).write_bytes(text)


def unit_names(banks: Sequence[Wanted]) -> list[dict[str, str]]:
    """For each bank the name of each of its units in the site: its own where no other bank has it.

    Else the bank's name is added, or a number where that does not tell them apart either.
    """
    times = Counter(slug for one in banks for slug in one.units)
    taken = {slug for slug, count in times.items() if count == 1}
    found: list[dict[str, str]] = []
    for one in banks:
        own: dict[str, str] = {}
        for slug in sorted(one.units):
            own[slug] = slug if times[slug] == 1 else _told_apart(slug, one.settings.name, taken)
            taken.add(own[slug])
        found.append(own)
    return found


def joined_settings(banks: Sequence[Bank], name: str) -> Bank:
    """The bank that the joined site shows: every topic, word and note on safety of all."""
    first = banks[0]
    notes = "\n\n".join(f"## As {one.name} says\n\n{_lower(one.safety_notes)}" for one in banks)
    return replace(
        first,
        name=name,
        as_of=max(one.as_of for one in banks),
        about="\n\n".join(dict.fromkeys(one.about for one in banks)),
        topics={k: v for one in reversed(banks) for k, v in one.topics.items()},
        words={k: v for one in reversed(banks) for k, v in one.words.items()},
        safety_notes=notes if len(banks) > 1 else first.safety_notes,
    )


def differing_words(banks: Sequence[Bank]) -> tuple[str, ...]:
    """The words that banks explain differently, in order."""
    said: dict[str, set[str]] = {}
    for one in banks:
        for word, meaning in one.words.items():
            said.setdefault(word, set()).add(meaning.plain)
    return tuple(sorted(word for word, plain in said.items() if len(plain) > 1))


def _told_apart(slug: str, bank: str, taken: set[str]) -> str:
    words = re.sub(r"[^a-z0-9]+", "-", bank.lower()).strip("-")
    for ending in (words, *(f"{words[:12].strip('-')}-{n}" for n in range(2, 1000))):
        room = MOST_SLUG - len(ending) - 1
        name = f"{slug[: max(1, room)].strip('-')}-{ending}"[:MOST_SLUG].strip("-")
        if is_slug(name) and name not in taken:
            return name
    raise ValueError(f"no name is left for {slug} of {bank}")


def _lower(notes: str) -> str:
    """Notes with their headings one level down."""
    return re.sub(r"^(#{1,5}) ", r"#\1 ", notes, flags=re.MULTILINE)
