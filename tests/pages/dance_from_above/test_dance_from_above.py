"""The dance from above: what its script is told is the score and the paths, picture by picture."""

from __future__ import annotations

import json
from fractions import Fraction
from html import unescape
from typing import Any

import pytest

from build_tools.model.unit import Unit
from build_tools.pages.dance_from_above.dance_from_above import DanceView, dance_page
from build_tools.paths.whole import paths_of
from build_tools.views.dance.score import score
from tests.support.sound_bank import every_unit, real_bank, unit_named

UNITS = every_unit()


def shown(unit: Unit) -> DanceView:
    view = dance_page(real_bank(), unit).context
    assert isinstance(view, DanceView)
    return view


def told(unit: Unit) -> dict[str, Any]:
    playing = shown(unit).playing
    assert playing is not None
    found: dict[str, Any] = json.loads(unescape(playing.data))
    return found


WITH_A_BEAT = [unit for unit in UNITS if unit.dance.tempo]


@pytest.mark.parametrize("unit", WITH_A_BEAT, ids=lambda unit: str(unit.slug))
def test_parts_are_those_of_the_score_and_of_the_paths(unit: Unit) -> None:
    data, found, paths = told(unit), score(unit.dance), paths_of(unit.dance)
    assert len(data["parts"]) == len(found.stretches) == len(data["paths"]["parts"])
    for part, stretch, walked in zip(data["parts"], found.stretches, paths.stretches, strict=True):
        assert part["join"] == (stretch.join is not None) == (walked.transition is not None)
        assert ("counts" in part) == (stretch.counts is not None)
        if stretch.counts is not None and stretch.counts >= 0:
            assert part["counts"] == walked.lasts == stretch.counts


@pytest.mark.parametrize("unit", WITH_A_BEAT, ids=lambda unit: str(unit.slug))
def test_who_dances_what_is_told_count_by_count_as_in_the_score(unit: Unit) -> None:
    data, found = told(unit), score(unit.dance)
    names = [motif.name for motif in found.motifs]
    for part, stretch in zip(data["parts"], found.stretches, strict=True):
        said = [
            (names[of], Fraction(start), Fraction(end), first + 1, last + 1)
            for start, end, first, last, of in part.get("danced", [])
        ]
        assert said == [(s.what, s.start, s.end, s.first, s.last) for s in stretch.danced]
        assert part.get("rows", []) == (list(stretch.rows) if stretch.danced else [])


@pytest.mark.parametrize("unit", WITH_A_BEAT, ids=lambda unit: str(unit.slug))
def test_each_move_has_a_body_and_says_what_it_means(unit: Unit) -> None:
    data = told(unit)
    moves = [move for of in data["sets"] for move in of["moves"]]
    assert {number for *_, number in moves} == set(range(len(data["bodies"]["moves"])))
    assert len(data["told"]) == len(data["bodies"]["moves"])
    for _, _, word, number in moves:
        # what pupils decide has no word, and nothing is said of it
        assert bool(word) == bool(data["told"][number].strip())


@pytest.mark.parametrize("unit", UNITS, ids=lambda unit: str(unit.slug))
def test_every_move_is_one_tap_away_where_there_are_moves(unit: Unit) -> None:
    ways = [link.href for link in shown(unit).onward]
    assert ("moves.html" in ways) == bool(unit.dance.motifs)


def test_without_a_beat_nothing_is_played_and_everything_is_read() -> None:
    silent = [unit for unit in UNITS if not unit.dance.tempo]
    assert silent
    for unit in silent:
        view = shown(unit)
        assert view.playing is None
        assert [still.title for still in view.stills]
        assert view.frame.script is None


def test_what_the_script_is_told_stands_in_single_quotes_with_little_written_out() -> None:
    for unit in WITH_A_BEAT:
        playing = shown(unit).playing
        assert playing is not None
        assert "'" not in playing.data
        assert "&#34;" not in playing.data
        assert playing.data.count('"') % 2 == 0
        assert '\\"' not in playing.data


def test_who_sits_to_make_the_sound_is_drawn_and_said_to_sit() -> None:
    """An adviser: drawn for 30 pupils, while two of them are on the shore as the wings."""
    assert any(
        "those who sit and make the sound" in one for one in shown(unit_named("starlings")).besides
    )
    assert not any("make the sound" in one for one in shown(unit_named("rock-pool")).besides)


def test_of_two_short_walls_one_is_the_doors() -> None:
    """An adviser: watchers was written at both, and nobody may sit at the door's."""
    assert told(unit_named("marble-run"))["paths"]["waiting"]["door"] == 1
    assert "door" not in told(unit_named("magnets"))["paths"]["waiting"]
