"""A change of what is heard, as a sentence that a teacher can follow with the drum in hand."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from build_tools.comparing.phrases import cut

Piece = Mapping[str, Any]


def heard_changed(where: str, old: Sequence[Piece] | None, new: Sequence[Piece] | None) -> str:
    """What happened to the pieces heard in one place: they came, went, or are others now."""
    if not old:
        return f"{where}: what is heard was added: {heard_in_words(new or ())}"
    if not new:
        return f"{where}: what is heard was taken out: {heard_in_words(old)}"
    return (
        f"{where}: what is heard is now {heard_in_words(new)}, where it was {heard_in_words(old)}"
    )


def heard_in_words(pieces: Sequence[Piece]) -> str:
    """Pieces in their order: 8 counts of beat by the teacher, then 4 seconds of silence."""
    return ", then ".join(_piece(one) for one in pieces)


def _piece(piece: Piece) -> str:
    length, each = (
        (piece["counts"], "count") if "counts" in piece else (piece.get("seconds"), "second")
    )
    words = f"{length} {each}{'' if str(length) == '1' else 's'} of {piece.get('sound')}"
    for field, start in (("on", " on"), ("louder", " louder on")):
        if field in piece:
            words += f"{start} {_listed(piece[field])}"
    if "by" in piece:
        by = piece["by"]
        words += f" by {'a' if by == 'player' else 'the'} {by}"
    if "says" in piece:
        said = " ".join(str(word) for word in piece["says"])
        words += f", saying “{cut(said)}”"
    return words


def _listed(places: Sequence[Any]) -> str:
    *first, last = (str(place) for place in places)
    return f"{', '.join(first)} and {last}" if first else last
