"""What the finder loads: small scripts, since a page opened from a folder can load nothing else.

`choices.js` has what narrows a search, for all units; `words-ro.js` the words that begin with ro;
`known.js` the words that slips are set right to and those that are none; each unit's `card.js` how
it is shown. Only the last lies with the unit and changes with it alone.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Sequence
from pathlib import Path

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.page_words.tables import ENGLISH
from build_tools.pages.pieces.unit_card import first_picture, small_name, unit_card
from build_tools.paths.hall import KNOWN_HALLS
from build_tools.pictures.small import small_picture
from build_tools.source.media_files import lies_in
from build_tools.views.dance.room_to_dance import unit_room
from build_tools.views.finding.choices import CHOICES
from build_tools.views.finding.findable import Findable
from build_tools.views.finding.order_of_years import order_of_year
from build_tools.views.finding.word_index import (
    word_index,
    words_for_slips,
    words_of_the_bank,
    words_that_are_no_slips,
)
from build_tools.views.finding.words_typed import words_typed
from build_tools.views.words.room_said import at_once_in_short

FOLDER = "assets/find"
_TO_ITS_SIZE = re.compile(r".*?\bmetres\b.*?\.(?= |$)", re.DOTALL)
"""All sentences up to the one with metres in it."""


def finder_files(bank: Bank, units: Sequence[Findable]) -> dict[str, bytes]:
    """What the finder loads of all `units`, by its path; they are numbered as they stand."""
    parts = word_index(units)
    known = words_for_slips(parts)
    only = sorted(words_of_the_bank(bank) - set(known))
    found = {word for words in parts.values() for word in words}
    real = sorted(words_that_are_no_slips(bank, units) - found - {*only})
    choices = {
        "slugs": [unit.slug for unit in units],
        "parts": " ".join(parts),
        "passedOver": _words(bank.thesaurus.passed_over),
        "ofTheHall": _words(bank.thesaurus.of_the_hall),
        "needs": [" ".join(_needs(unit)) for unit in units],
        "lists": [
            {"name": one.name, "asks": one.asks, "values": list(_values(units, one.name))}
            for one in CHOICES
        ],
    }
    return {
        **{
            f"{FOLDER}/words-{letters}.js": _script(f"words-{letters}", words)
            for letters, words in parts.items()
        },
        f"{FOLDER}/known.js": _script(
            "known", {"found": " ".join(known), "only": " ".join(only), "real": " ".join(real)}
        ),
        f"{FOLDER}/choices.js": _script("choices", choices),
    }


def card_files(bank: Bank, unit: Unit, content: Path) -> dict[str, bytes]:
    """How the finder shows `unit`, and the small copy of its picture, by their paths."""
    at = f"units/{unit.slug}/"
    shown = first_picture(unit)
    card = unit_card(bank, unit)
    told = {
        "title": card.title,
        "years": card.years,
        "summary": card.summary,
        "topics": card.topics,
        "from": card.issued,
        "picture": small_name(shown) if shown else None,
        "shows": card.shows,
        "strip": card.strip.svg,
        "lessons": len(card.lessons),
        "hall": the_hall(unit.space.hall),
        "halfHall": _in_half_a_hall(unit),
        "classroom": unit.space.classroom,
    }
    if card.language != ENGLISH:
        told |= {"language": card.language, "lesson": card.lesson}
    files = {f"{at}card.js": _script(f"card-{unit.slug}", told)}
    if shown and shown.file:
        data = lies_in(content / "units" / unit.slug, shown.file).read_bytes()
        files[at + small_name(shown)] = small_picture(shown.file, data)
    return files


def the_hall(words: str) -> str:
    """What is asked of a hall, as far as its size; what to do in a smaller one the lessons say."""
    size = _TO_ITS_SIZE.match(words)
    return size[0] if size else words


def _words(texts: Sequence[str]) -> str:
    return " ".join(sorted({word for text in texts for word in words_typed(text)}))


def _needs(unit: Findable) -> Iterator[str]:
    yield str(max(one.planned for one in unit.needs))
    for one in unit.needs:
        yield f"{one.at_once}/{one.each_of_two or 0}"


def _values(units: Sequence[Findable], name: str) -> Iterator[tuple[str, str, str]]:
    """Each value that a unit has: its name, its words, and the set of units as a number."""
    words: dict[str, str] = {}
    sets: dict[str, int] = {}
    for number, unit in enumerate(units):
        for value in unit.values[name]:
            words.setdefault(value.name, value.words)
            sets[value.name] = sets.get(value.name, 0) | 1 << number
    for value_name in sorted(words, key=order_of_year if name == "year" else str):
        yield value_name, words[value_name], f"{sets[value_name]:x}"


def _in_half_a_hall(unit: Unit) -> str:
    """How many dance at once there, as every page says; the author's way where none is found."""
    room = unit_room(unit, USUAL_CLASS, KNOWN_HALLS["half"])
    return at_once_in_short(room) if room.found else unit.space.half_hall


def _script(name: str, part: object) -> bytes:
    told = json.dumps(part, ensure_ascii=False, separators=(",", ":"))
    return f"danceUnitBank.finding.take({json.dumps(name)},{told});\n".encode()
