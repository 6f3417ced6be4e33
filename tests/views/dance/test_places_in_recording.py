"""Where sections lie in a recording: as the page of counts lays them out."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest

from build_tools.model.dance import Dance, Heard
from build_tools.model.unit import Unit
from build_tools.movement.counts import seconds
from build_tools.movement.sounding import COUNT_IN
from build_tools.pages.counts.counts import CountsView, counts_page
from build_tools.views.dance.places_in_recording import (
    lead_in,
    places_in_recording,
    travels_with_recording,
)
from tests.support.sound_bank import unit_named, whole_bank

RECORDED = [unit for unit in whole_bank().units if travels_with_recording(unit.dance)]
EACH = pytest.mark.parametrize("unit", RECORDED, ids=[unit.slug for unit in RECORDED])
PEASCODS = unit_named("gathering-peascods").dance
KITE = unit_named("kite-and-string").dance


def rounded(dance: Dance) -> list[tuple[str, int, int, int]]:
    """Each section with the seconds from which it is played, begins and ends, to the nearest."""
    found = []
    for letter, place in zip(dance.form, places_in_recording(dance), strict=True):
        assert place is not None
        found.append((letter, round(place.begins), round(place.start), round(place.end)))
    return found


@EACH
def test_sections_lie_where_the_page_of_counts_has_them_after_the_count_in(unit: Unit) -> None:
    tempo = unit.dance.tempo
    assert tempo is not None
    at, laid = float(seconds(COUNT_IN, tempo)), []
    page = counts_page(whole_bank(), unit).context
    assert isinstance(page, CountsView)
    for stretch in page.stretches:
        lasts = Fraction(stretch.lasts or Fraction(stretch.counts or 0) * 60 / tempo)
        if not stretch.join:
            laid.append((at, at + float(lasts)))
        at += float(lasts)
    found = [(float(p.start), float(p.end)) for p in places_in_recording(unit.dance) if p]
    assert laid == [pytest.approx(one) for one in found]
    assert len(found) == len(unit.dance.form)


@EACH
def test_each_is_played_from_its_count_in_or_as_long_before(unit: Unit) -> None:
    """The recording's own at its beginning, the join that leads in, else at least four beats."""
    dance = unit.dance
    places = [place for place in places_in_recording(dance) if place]
    assert places[0].begins == 0
    for before, place in pairwise(places):
        least = seconds(COUNT_IN, dance.tempo or 1)
        if before.end < place.start:
            assert place.begins == before.end
        else:
            assert place.begins.denominator == 1
            assert least <= place.start - place.begins < least + 1


def test_the_strains_of_a_tune_and_a_breeze_between_two_flights() -> None:
    """As the units' own notes say it, who listened: 2, 16, 29, 47, 60, 73; 2, 21, 53."""
    assert rounded(PEASCODS) == [
        ("A", 0, 2, 16), ("B", 13, 16, 29), ("C", 26, 29, 47),
        ("A", 44, 47, 60), ("B'", 57, 60, 73), ("C'", 71, 73, 91),
    ]  # fmt: skip
    assert rounded(KITE) == [("A", 0, 2, 21), ("B", 21, 25, 48), ("A", 48, 53, 71)]


def test_no_place_is_known_after_a_stop_past_the_end_or_in_an_order_that_is_chosen() -> None:
    silent = replace(PEASCODS.sections["B"], heard=(Heard("silence", counts=Fraction(24)),))
    stops = replace(PEASCODS, sections={**PEASCODS.sections, "B": silent})
    assert [place is not None for place in places_in_recording(stops)] == [True] + [False] * 5
    sound = replace(PEASCODS.sound, lasts=30)
    sections = {n: replace(one, sound=sound) for n, one in PEASCODS.sections.items()}
    short = replace(PEASCODS, sound=sound, sections=sections)
    assert [place is not None for place in places_in_recording(short)] == [True] * 2 + [False] * 4
    for other in (
        replace(PEASCODS, order_choice="waiting-arms"),
        replace(PEASCODS, tempo=None),
        replace(PEASCODS, sound=replace(PEASCODS.sound, file=None)),
    ):
        assert set(places_in_recording(other)) == {None}


def test_what_is_near_the_beginning_is_played_from_there() -> None:
    assert lead_in(PEASCODS, Fraction(1)) == 0
    assert lead_in(PEASCODS, Fraction(20)) == 17
