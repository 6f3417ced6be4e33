"""The score of a unit as its page of counts tells it to the player, and where its pieces come."""

from __future__ import annotations

import base64
import io
import json
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import Any

import mido  # type: ignore[import-untyped]

from build_tools.model.unit import Unit
from build_tools.movement.sounding import Piece
from build_tools.pages.counts.counts import CountsView, counts_page
from build_tools.views.dance.score import score
from build_tools.views.dance.timeline import Sounding, span_seconds
from tests.support.page_script import ask
from tests.support.sound import Samples, heard_bytes
from tests.support.sound_bank import every_unit, real_bank

PLAYED = tuple(unit for unit in every_unit() if unit.dance.tempo is not None)
"""The units whose dances have a beat."""


def page_score(unit: Unit, tempo: int | None = None) -> dict[str, Any]:
    """What the page's script makes of the page: the whole dance, at its own tempo or another."""
    view = counts_page(real_bank(), unit).context
    assert isinstance(view, CountsView)
    assert view.playing is not None
    stretches = []
    for one in view.stretches:
        told: dict[str, Any] = {
            "name": one.name,
            "heard": ask("counts.pieces", json.loads(one.heard or "[]")),
        }
        if one.counts is None:
            assert one.lasts is not None
            told |= {"lasts": float(one.lasts)}
        else:
            told |= {"counts": float(one.counts), "join": one.join}
        stretches.append(told)
    return {
        "tempo": tempo or view.playing.tempo,
        "phrase": view.playing.phrase,
        "title": unit.title,
        "stretches": stretches,
    }


@dataclass(frozen=True, slots=True)
class Placed:
    """A stretch of the whole dance: when it starts, and how long one of its units is."""

    starts: Fraction
    lasts: Fraction
    unit: Fraction
    sounding: Sounding

    def time(self, place: Fraction) -> Fraction:
        """When a place of the stretch comes, in seconds from the start of the file."""
        return self.starts + place * self.unit


def placed(unit: Unit) -> Iterator[Placed]:
    """Every stretch at its time in a saved file, worked out from the score alone.

    A count lasts 60 / tempo. Four counts, or a phrase if that is less, come before the first
    counted stretch and after a span that no join follows.
    """
    found = score(unit.dance)
    assert found.tempo is not None
    count, now, counting = Fraction(60, found.tempo), Fraction(0), False
    for n, stretch in enumerate(found.stretches):
        if stretch.counts is None:
            assert stretch.section is not None
            lasts, counting = span_seconds(stretch.section, stretch.sounding), False
            yield Placed(now, lasts, Fraction(1), stretch.sounding)
        else:
            if not counting and not (stretch.join is not None and n):
                now += min(4, found.phrase) * count
            counting = True
            lasts = -(-stretch.counts // 1) * count
            yield Placed(now, lasts, count, stretch.sounding)
        now += lasts


def pieces_placed(unit: Unit) -> Iterator[tuple[Placed, Piece]]:
    """Every piece of what is heard, with the stretch that it is in."""
    for stretch in placed(unit):
        for piece in stretch.sounding.pieces:
            yield stretch, piece


@cache
def saved_sound(slug: str) -> tuple[Samples, int]:
    """The samples of the whole dance as the page saves it, and their rate."""
    return heard_bytes(base64.b64decode(ask("counts.wav", page_score(_unit(slug)))))


@cache
def saved_notes(slug: str) -> mido.MidiFile:
    """The whole dance as the page saves it as notes."""
    return mido.MidiFile(
        file=io.BytesIO(base64.b64decode(ask("counts.midi", page_score(_unit(slug)))))
    )


def _unit(slug: str) -> Unit:
    (unit,) = (unit for unit in PLAYED if unit.slug == slug)
    return unit
