"""What is typed to ask for a year plan, read: years, terms with their slots, wishes, days."""

from __future__ import annotations

import difflib
import re
from argparse import Namespace
from collections.abc import Iterable, Mapping, Sequence
from datetime import date

from build_tools.misuse import Misuse
from build_tools.model.bank import Topic
from build_tools.planning.asked import Asked, Slot, Wish
from build_tools.views.teaching.covers import Covers, YearOf
from build_tools.views.words.plain_words import listed

MOST_SLOTS = 12
MOST_LESSONS = 20
TERMS = ("Autumn: 6", "Spring: 6", "Summer: 6")
"""What is planned where no term is typed."""
_TERM = re.compile(r"[\w .,'-]{1,40}")
_SLOT = re.compile(r"(\d{1,2})(?: from (\S+))?")
_PLACED = re.compile(r"(?:(\d{1,2})=)?([\w-]+(?: [\w-]+)*)")


def asked_of(args: Namespace, units: Sequence[Covers], topics: Mapping[str, Topic]) -> Asked:
    """What the arguments ask; raises Misuse in plain words for what cannot be."""
    slots = tuple(slot for term in args.term or TERMS for slot in _slots(term))
    if len(slots) > MOST_SLOTS:
        raise Misuse(f"{len(slots)} slots are too many to plan at once: give {MOST_SLOTS} at most")
    known = {unit.slug for unit in units}
    wishes = [Wish(at, topic=_topic(said, topics)) for at, said in _placed(args.topic, slots)]
    wishes += [Wish(at, unit=_unit(said, known)) for at, said in _placed(args.unit, slots)]
    return Asked(
        _year(args.year, args.nation, units),
        slots,
        tuple(dict.fromkeys(wishes)),
        frozenset(_unit(said, known) for said in args.done or ()),
        frozenset(_day(said) for said in args.no_lesson or ()),
    )


def command_of(args: Namespace) -> str:
    """The command that asks the same again."""
    parts = [f"python3 build_tools plan --year {args.year}"]
    if args.nation:
        parts.append(f'--nation "{args.nation}"')
    parts += [f'--term "{term}"' for term in args.term or TERMS]
    parts += [f'--topic "{said}"' for said in args.topic or ()]
    parts += [f"--done {said}" for said in args.done or ()]
    parts += [f"--no-lesson {said}" for said in args.no_lesson or ()]
    parts += [f"--unit {said}" for said in args.unit or ()]
    return " ".join(parts)


def _slots(term: str) -> list[Slot]:
    name, colon, rest = term.partition(":")
    if not colon or not _TERM.fullmatch(name.strip()):
        raise Misuse(f'{term!r} is no term: write it as "Autumn: 6, 6", a number for each slot')
    return [_slot(name.strip(), one.strip()) for one in rest.split(",")]


def _slot(term: str, said: str) -> Slot:
    match = _SLOT.fullmatch(said)
    if match is None or not 1 <= int(match[1]) <= MOST_LESSONS:
        raise Misuse(
            f"{said!r} in {term} is no slot: write how many lessons it has, 1 to {MOST_LESSONS}, "
            'and, if you want days, "6 from 2026-09-07"'
        )
    return Slot(term, int(match[1]), _day(match[2]) if match[2] else None)


def _day(said: str) -> date:
    try:
        return date.fromisoformat(said)
    except ValueError:
        raise Misuse(f"{said} is no day: write it as 2026-09-07, year, month, day") from None


def _year(year: str, nation: str | None, units: Sequence[Covers]) -> YearOf:
    said = year.upper()
    every = sorted({one for unit in units for one in unit.years})
    found = [one for one in every if one[1] == said and nation in (None, one[0])]
    if len(found) == 1:
        return found[0]
    if found:
        raise Misuse(f"year {said} is in {listed([n for n, _ in found])}: say which with --nation")
    known = ", ".join(f"{y} ({n})" for n, y in every)
    raise Misuse(
        f"no unit is for year {year}{f' of {nation}' if nation else ''}; units are for {known}"
    )


def _placed(said: Iterable[str] | None, slots: Sequence[Slot]) -> list[tuple[int | None, str]]:
    found: list[tuple[int | None, str]] = []
    for one in said or ():
        match = _PLACED.fullmatch(one.strip())
        if match is None:
            raise Misuse(f"{one!r} is not understood: write a name, or 2=NAME for the second slot")
        at = int(match[1]) - 1 if match[1] else None
        if at is not None and not 0 <= at < len(slots):
            raise Misuse(f"{one}: there is no slot {match[1]}; the slots are 1 to {len(slots)}")
        found.append((at, match[2]))
    return found


def _topic(said: str, topics: Mapping[str, Topic]) -> str:
    plain = said.casefold().replace(" ", "-")
    if plain in topics:
        return plain
    also = {word.casefold(): name for name, topic in topics.items() for word in topic.also}
    if said.casefold() in also:
        return also[said.casefold()]
    near = difflib.get_close_matches(plain, topics, 3, 0.6)
    hint = f"did you mean {listed(near, 'or')}?" if near else "see vocabulary/topics.yml"
    raise Misuse(f"the bank has no topic {said}; {hint}")


def _unit(said: str, known: Iterable[str]) -> str:
    if said in known:
        return said
    near = difflib.get_close_matches(said, list(known), 3, 0.6)
    hint = f"; did you mean {listed(near, 'or')}?" if near else ""
    raise Misuse(f"no published unit has the folder {said}{hint}")
