"""Laws of the player's schedule, asked of the page's own script.

Source: a beat lasts 60 / tempo seconds (the definition of a metronome mark), so beat k falls
k x 60 / tempo after the first.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Heard
from build_tools.model.unit import Unit
from build_tools.movement.sounding import laid
from build_tools.pages.pieces.heard_data import heard_data
from build_tools.views.dance.score import score
from build_tools.views.dance.timeline import Sounding
from tests.movement.test_sounding import pieces
from tests.sums.scores import PLAYED, page_score
from tests.support.page_script import ask

COUNT_IN = 4
NEAR = 1e-6
TEMPI = st.integers(40, 208)


def told(heard: Sequence[Heard], tempo: int, counted: bool = True) -> list[dict[str, Any]]:
    """The pieces as a page tells them."""
    found = laid(heard, counted=counted, tempo=tempo, phrase=8)
    assert found is not None
    return read(heard_data(Sounding(found, known=True, said=True)))


def read(written: str) -> list[dict[str, Any]]:
    """What a page writes as its script reads it."""
    data: list[dict[str, Any]] = ask("counts.pieces", json.loads(written))
    return data


def beat(counts: int) -> dict[str, Any]:
    return {"name": "beat", "counts": counts, "heard": told([Heard("beat", Fraction(counts))], 100)}


def laid_out(stretches: Sequence[dict[str, Any]], tempo: int) -> dict[str, Any]:
    score_ = {"stretches": stretches, "phrase": 8, "tempo": tempo}
    found: dict[str, Any] = ask("counts.beats.laid", score_)
    return found


def struck(found: dict[str, Any]) -> list[tuple[float, str]]:
    return [(one["at"], one["kind"]) for one in found["events"]]


@given(st.lists(pieces(counted=True), min_size=1, max_size=4), TEMPI)
def test_a_page_tells_every_stroke_in_few_words(heard: list[Heard], tempo: int) -> None:
    found = laid(heard, counted=True, tempo=tempo, phrase=8)
    assert found is not None
    written = heard_data(Sounding(found, known=True, said=True))
    for piece, shown in zip(found, read(written), strict=True):
        assert shown["strokes"] == [float(one.at) for one in piece.strokes]
        assert shown["loud"] == [float(one.at) for one in piece.strokes if one.loud]
    even = laid([Heard("beat", Fraction(300))], counted=True, tempo=tempo, phrase=8)
    assert even is not None
    assert len(heard_data(Sounding(even, known=True, said=True))) < 100


@given(st.integers(1, 300), TEMPI)
def test_beat_k_is_at_k_times_sixty_over_tempo(counts: int, tempo: int) -> None:
    found = laid_out([beat(counts)], tempo)
    assert [at for at, _ in struck(found)] == list(range(COUNT_IN + counts))
    anchors = [{"beat": 0, "time": 0, "tempo": tempo}]
    last = counts + COUNT_IN - 1
    assert ask("counts.beats.timeOf", anchors, last) == last * 60 / tempo
    assert found["seconds"] == (counts + COUNT_IN) * 60 / tempo


@given(st.lists(st.lists(pieces(counted=True), min_size=1, max_size=4), min_size=1, max_size=4))
def test_what_is_struck_is_what_the_page_says_and_nothing_else(
    stretches: list[list[Heard]],
) -> None:
    tempo = 100
    data = []
    for heard in stretches:
        pieces_ = told(heard, tempo)
        # a stretch of whole counts: the player gives each its own beat
        data.append({"name": "", "counts": -(-pieces_[-1]["to"] // 1), "heard": pieces_})
    found = laid_out(data, tempo)
    due, start = [], COUNT_IN
    for one in data:
        for piece in one["heard"]:
            due += [start + at for at in piece["strokes"]]
        start += one["counts"]
    firsts = [at for at, kind in struck(found) if kind != "in"]
    assert found["beats"] == start
    assert all(any(abs(at - other) < NEAR for other in firsts) for at in due)
    if not any("rate" in piece for one in data for piece in one["heard"]):
        assert firsts == pytest.approx(sorted(due))


@given(st.integers(1, 16), TEMPI)
def test_a_roll_is_as_quick_at_every_tempo(counts: int, tempo: int) -> None:
    heard = told([Heard("roll", Fraction(counts))], tempo)
    found = laid_out([{"name": "", "counts": counts, "heard": heard}], tempo)
    times = [at * 60 / tempo for at, kind in struck(found) if kind != "in"]
    assert len(times) / (counts * 60 / tempo) == pytest.approx(14, rel=0.15)
    gaps = [b - a for a, b in pairwise(times)]
    assert max(gaps) - min(gaps) < NEAR


@given(st.lists(pieces(), min_size=1, max_size=6), TEMPI)
def test_a_span_is_struck_at_its_own_seconds(heard: list[Heard], tempo: int) -> None:
    span = told(heard, tempo, counted=False)
    alone = [(one["at"], one["kind"]) for one in ask("counts.beats.spanStrokes", span)]
    lasts = span[-1]["to"]
    found = laid_out([{"name": "", "lasts": lasts, "heard": span}], tempo)
    assert [kind for _, kind in struck(found)] == [kind for _, kind in alone]
    assert [at * 60 / tempo for at, _ in struck(found)] == pytest.approx([at for at, _ in alone])
    assert all(0 <= at < lasts for at, _ in alone)
    assert found["seconds"] == pytest.approx(lasts)


@given(st.integers(2, 16), st.data())
def test_what_overlaps_is_struck_once_and_loud_if_either_is(
    counts: int, data: st.DataObject
) -> None:
    early = data.draw(st.integers(1, counts))
    join = {"name": "", "counts": -early, "heard": [], "join": True}
    found = laid_out([beat(counts), join, beat(counts)], 100)
    places = [at for at, _ in struck(found)]
    assert places == list(range(COUNT_IN + 2 * counts - early))
    loud = {at - COUNT_IN for at, kind in struck(found) if kind == "beat!"}
    second = counts - early
    assert loud == {
        at
        for at in range(2 * counts - early)
        if (at < counts and at % 8 == 0) or (at >= second and (at - second) % 8 == 0)
    }


@pytest.mark.parametrize(
    ("sound", "sticks"), [("silence", 0), ("recording", 0), ("voice", 4), ("beat", 4), ("roll", 4)]
)
def test_nobody_is_counted_in_aloud_into_a_silence_or_a_recording(sound: str, sticks: int) -> None:
    heard = told([Heard(sound, Fraction(8))], 100)
    found = laid_out([{"name": "", "counts": 8, "heard": heard}], 100)
    assert sum(kind == "in" for _, kind in struck(found)) == sticks
    assert found["beats"] == COUNT_IN + 8


def test_a_stretch_that_says_nothing_of_its_sound_has_none() -> None:
    found = laid_out([{"name": "", "counts": 8}], 100)
    assert [kind for _, kind in struck(found)] == ["in"] * 4


@pytest.mark.parametrize("unit", PLAYED, ids=[unit.slug for unit in PLAYED])
def test_on_every_count_the_player_tells_the_piece_and_the_word_of_the_timeline(unit: Unit) -> None:
    told_ = page_score(unit)
    found = score(unit.dance).stretches
    program = ask("counts.beats.program", told_["stretches"], told_["phrase"])
    for run in (part for part in program if part["run"]):
        for k in range(run["countIn"], run["countIn"] + run["beats"]):
            at = ask("counts.beats.beat", run, told_["phrase"], k)
            pieces_ = found[at["stretch"]].sounding.pieces
            count = at["count"] - 1
            now = [p for p in pieces_ if p.start <= count < p.end]
            assert at["sound"] == (now[0].sound if now else "")
            said = [w.says for p in now for w in p.words if count <= w.at < count + 1]
            assert at["word"] == " ".join(said)
