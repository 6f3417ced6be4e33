"""What the words in a step's table mean for its fields; what they say besides is kept."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping

from build_tools.drafting.from_document.labels import GROUPING_WORDS, PHASE_WORDS, key
from build_tools.drafting.from_document.leftover import (
    MOST_LINE,
    Leftover,
    clean,
    fitted,
    put,
)

Fields = dict[str, object]

MOST_MINUTES = 120
_MOST_COUNTS = 512
_MOST_ASKED, _MOST_ANSWERS = 2, 4
_PLACE, _FACING, _DOES, _YOU = 80, 60, 60, 200
_MINUTES = re.compile(
    r"(?:about\s+)?(\d{1,3})\s*(?P<unit>minutes?|mins?|m|['’′])?\.?", re.IGNORECASE
)
_SPAN = re.compile(
    r"(\d{1,3})\s*(?:-|–|to)\s*(\d{1,3})\s*(?P<unit>minutes?|mins?|m|['’′])?\.?", re.IGNORECASE
)
_COUNTS = re.compile(r"(\d{1,3}) counts?\.?")
_COUNTS_LAST = re.compile(r"(?<=\s)(\d{1,3}) counts?\.?\Z")
"""As our own files have it, below the words of the beat."""
_QUESTION = re.compile(
    r"(?P<question>.*?\?)(?:\s*\(looks back to lesson (?P<back>\d{1,2})\))?"
    r"(?:\s*They may say: (?P<answers>.+))?"
)
_FACES = re.compile(r"(?P<place>.*?)\s*\bFacing: (?P<facing>.+)")


def put_value(fields: Fields, name: str, text: str, where: str, left: Leftover) -> None:
    """Read the words of one field of a step, and keep what of them it does not take."""
    _READ.get(name, _line(name))(fields, text, where, left)


def put_head(fields: Fields, text: str, where: str, left: Leftover) -> None:
    """Read what the first row of a page's step says: 0 to 5 · 5 minutes · make · In pairs."""
    for piece in (one.strip() for one in text.split(" · ")):
        if (_SPAN.fullmatch(piece) or _MINUTES.fullmatch(piece)) and "minutes" not in fields:
            put_minutes(fields, piece, where, left)
        elif piece.startswith("say “"):
            left.labels.add("say")
            told, closing, besides = piece.removeprefix("say ").partition("”")
            put(fields, "into", unquoted(told + closing) + besides, where, left)
        elif "phase" not in fields and key(piece) in PHASE_WORDS:
            fields["phase"] = PHASE_WORDS[key(piece)]
            left.labels.add(piece)
        elif "grouping" not in fields and key(piece) in GROUPING_WORDS:
            fields["grouping"] = GROUPING_WORDS[key(piece)]
            left.labels.add(piece)
        else:
            left.keep(where, piece)


def unquoted(text: str) -> str:
    """The words without the quotation marks that stand round all of them."""
    inside = text.strip()[1:-1]
    pairs = {"“": "”", '"': '"'}
    begins = text.strip()[:1]
    whole = begins in pairs and text.strip().endswith(pairs[begins])
    plain = whole and not set(inside) & {"“", "”", '"'}
    return inside.strip() if plain else text


def put_minutes(fields: Fields, text: str, where: str, left: Leftover) -> None:
    """Read minutes: 5, 5 minutes; from when to when; or the fewest and the most."""
    span = _SPAN.fullmatch(text.strip())
    found = _MINUTES.fullmatch(text.strip())
    if "minutes" in fields or not (span or found):
        left.keep(where, text)
        return
    if span:
        first, last = int(span[1]), int(span[2])
        if first < last <= MOST_MINUTES * 2 and "span" not in fields:
            fields["span"] = (first, last)
            left.labels.add(span["unit"] or "to")
            return
        left.keep(where, text)
        return
    assert found is not None
    number = int(found[1])
    if 1 <= number <= MOST_MINUTES:
        fields["minutes"] = number
        left.labels.add(found["unit"] or "minutes")
        if text.casefold().startswith("about"):
            left.keep(where, text)
    else:
        left.keep(where, text)


def put_question(
    fields: Fields, name: str, text: str, where: str, left: Leftover, most: int = _MOST_ASKED
) -> None:
    """Read a question with the answers that pupils may give."""
    asked = fields.get(name, [])
    assert isinstance(asked, list)
    if len(asked) == most:
        left.keep(where, text)
        return
    match = _QUESTION.fullmatch(clean(text))
    question, rest = fitted(match["question"] if match else text, 1, MOST_LINE)
    if question is None:
        left.keep(where, text)
        return
    left.keep(f"{where}, after what is written", rest)
    found: Fields = {"question": question}
    if match and match["answers"]:
        left.labels.add("They may say:")
        answers = match["answers"].strip().removesuffix(".").split("; ")
        for one in answers[_MOST_ANSWERS:]:
            left.keep(f"{where}, an answer", one)
        taken = [one for one in answers[:_MOST_ANSWERS] if one.strip() and len(one) <= MOST_LINE]
        for one in answers[:_MOST_ANSWERS]:
            if one not in taken:
                left.keep(f"{where}, an answer", one)
        if taken:
            found["answers"] = taken
    if match and match["back"]:
        back = int(match["back"])
        if 1 <= back <= 12:
            found["looks_back_to"] = back
            left.labels.add("looks back to lesson")
        else:
            left.keep(where, f"looks back to lesson {back}")
    fields[name] = [*asked, found]


def _place(fields: Fields, text: str, where: str, left: Leftover) -> None:
    match = _FACES.fullmatch(clean(text))
    place = (match["place"] if match else text).strip()
    if place:
        put(fields, "place", place.removesuffix("."), where, left, most=_PLACE)
    if match:
        left.labels.add("Facing:")
        put(fields, "facing", match["facing"].removesuffix("."), where, left, most=_FACING)


def _counts(fields: Fields, text: str, where: str, left: Leftover) -> None:
    match = _COUNTS.match(text) or _COUNTS_LAST.search(text)
    if match is None or "counts" in fields or not 1 <= int(match[1]) <= _MOST_COUNTS:
        left.keep(where, text)
        return
    fields["counts"] = int(match[1])
    left.labels.add("counts")
    if match[0] != text:
        left.keep(where, text)


def _chosen(name: str, known: Mapping[str, str]) -> Callable[[Fields, str, str, Leftover], None]:
    def read(fields: Fields, text: str, where: str, left: Leftover) -> None:
        if name not in fields and key(text) in known:
            fields[name] = known[key(text)]
            left.labels.add(text)
        else:
            left.keep(where, text)

    return read


def _line(
    name: str, most: int = MOST_LINE, least: int = 1
) -> Callable[[Fields, str, str, Leftover], None]:
    def read(fields: Fields, text: str, where: str, left: Leftover) -> None:
        put(fields, name, text, where, left, most=most, least=least)

    return read


def _said(name: str) -> Callable[[Fields, str, str, Leftover], None]:
    def read(fields: Fields, text: str, where: str, left: Leftover) -> None:
        put(fields, name, unquoted(text), where, left)

    return read


def _asked(fields: Fields, text: str, where: str, left: Leftover) -> None:
    put_question(fields, "ask", text, where, left)


_READ: Mapping[str, Callable[[Fields, str, str, Leftover], None]] = {
    "minutes": put_minutes,
    "say": _said("say"),
    "into": _said("into"),
    "place": _place,
    "facing": _line("facing", _FACING),
    "you": _line("you", _YOU),
    "does": _line("does", _DOES, 3),
    "counts": _counts,
    "ask": _asked,
    "phase": _chosen("phase", PHASE_WORDS),
    "grouping": _chosen("grouping", GROUPING_WORDS),
}
