"""One timeline of what is heard: what the unit says, what is certain besides, and nothing else."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

import pytest

from build_tools.model.dance import Heard, Seconds, Section, Sound, Transition
from build_tools.model.unit import Unit
from build_tools.movement.sounding import STRUCK
from build_tools.movement.whole import stretches
from build_tools.views.dance.score import score
from build_tools.views.dance.step_sounding import step_sounding
from build_tools.views.dance.timeline import (
    Sounding,
    join_sounding,
    practice_sounding,
    section_sounding,
    sections_with,
    span_seconds,
    timeline,
)
from tests.support.sound_bank import every_unit, real_unit, unit_named

UNITS = pytest.mark.parametrize("unit", every_unit(), ids=[unit.slug for unit in every_unit()])
KINDS = {"silence": "silence", "voice": "voice", "drum": "beat", "recorded": "recording"}
DANCE = real_unit().dance
EIGHT = Fraction(8)


def section(kind: str, heard: Sequence[Heard] = (), counts: int | None = 16) -> Section:
    return replace(
        DANCE.sections["A"],
        counts=None if counts is None else Fraction(counts),
        seconds=Seconds(Fraction(20), Fraction(31)) if counts is None else None,
        sound=Sound(kind, "what is heard", "dancers follow the sound"),
        heard=tuple(heard),
    )


def join(
    kind: str = "move", counts: Fraction | None = EIGHT, heard: Sequence[Heard] = ()
) -> Transition:
    return Transition("A", "B", kind, counts, "Walk", "A hand goes up", tuple(heard))


def sounds(found: Sounding) -> list[str]:
    return [piece.sound for piece in found.pieces]


@UNITS
def test_every_stretch_is_filled_or_is_not_known(unit: Unit) -> None:
    dance = unit.dance
    for stretch, found in zip(stretches(dance), timeline(dance), strict=True):
        if stretch.section is not None and stretch.counts is None:
            assert stretch.seconds is not None
            lasts = span_seconds(stretch.section, found)
            assert stretch.seconds.least <= lasts <= stretch.seconds.most
        elif found.pieces:
            assert found.length == stretch.counts
        else:
            assert not found.known or (stretch.counts or 0) <= 0


@UNITS
def test_what_the_unit_says_is_what_is_heard(unit: Unit) -> None:
    for one in unit.dance.sections.values():
        if one.heard:
            found = section_sounding(unit.dance, one)
            assert found.said
            assert sounds(found) == [piece.sound for piece in one.heard]


@pytest.mark.parametrize("kind", KINDS)
def test_what_a_sound_says_for_certain(kind: str) -> None:
    found = section_sounding(DANCE, section(kind))
    assert found.known
    assert not found.said
    assert sounds(found) == [KINDS[kind]]
    (piece,) = found.pieces
    assert (piece.start, piece.length) == (Fraction(0), Fraction(16))
    assert [s.at for s in piece.strokes] == (list(range(16)) if kind == "drum" else [])
    assert [s.at for s in piece.strokes if s.loud] == ([0, 8] if kind == "drum" else [])
    spoken = [str(n % 8 + 1) for n in range(16)] if kind == "voice" else []
    assert [word.says for word in piece.words] == spoken


def test_live_sound_is_not_known_nor_a_drum_of_its_own_where_nothing_is_counted() -> None:
    for one in (section("pupils live"), section("drum", counts=None)):
        found = section_sounding(DANCE, one)
        assert (found.known, found.pieces) == (False, ())
    silent = section_sounding(DANCE, section("silence", counts=None))
    # the middle of 20 and 31 seconds in whole seconds
    assert silent.known
    assert silent.length == 26
    assert span_seconds(section("drum", counts=None), Sounding((), known=False, said=False)) == 26


@pytest.mark.parametrize("kind", KINDS)
def test_a_join_goes_on_as_both_its_sides_sound(kind: str) -> None:
    found = join_sounding(DANCE, section(kind), join(), section(kind))
    assert found.known
    assert sounds(found) == [KINDS[kind]]
    assert found.length == 8


def test_where_the_sound_changes_a_join_is_not_known() -> None:
    beat = Heard("beat", counts=Fraction(16))
    own = replace(beat, on=(Fraction(1), Fraction(3)))
    drum, voice = section("drum"), section("voice")
    for first, second in ((drum, voice), (voice, drum), (section("drum", [own]), drum)):
        assert not join_sounding(DANCE, first, join(), second).known
    assert sounds(join_sounding(DANCE, section("voice", [beat]), join(), drum)) == ["beat"]
    said = join_sounding(DANCE, drum, join(heard=[Heard("silence", counts=EIGHT)]), voice)
    assert (sounds(said), said.said) == (["silence"], True)


@pytest.mark.parametrize("kind", ["cut", "straight on", "overlap"])
def test_a_join_without_counts_has_no_sound_of_its_own(kind: str) -> None:
    counts = EIGHT if kind == "overlap" else None
    found = join_sounding(DANCE, section("drum"), join(kind, counts), section("voice"))
    assert (found.known, found.pieces) == (True, ())


def test_the_dances_own_drum_goes_on_where_nothing_is_counted() -> None:
    inherited = replace(section("drum", counts=None), sound=DANCE.sound)
    found = section_sounding(DANCE, inherited)
    (piece,) = found.pieces
    # 26 seconds at 108 a minute: 46.8 counts, so 47 strokes
    assert found.length == 26
    assert len(piece.strokes) == 47
    assert sum(stroke.loud for stroke in piece.strokes) == 6


def test_what_is_practised_sounds_as_where_it_is_danced() -> None:
    drum, voice, silent = section("drum"), section("voice"), section("silence")
    whole = practice_sounding(DANCE, [voice], Fraction(16))
    assert whole == section_sounding(DANCE, voice)
    assert sounds(practice_sounding(DANCE, [voice], EIGHT)) == ["voice"]
    assert sounds(practice_sounding(DANCE, [silent, drum], EIGHT)) == ["beat"]
    assert not practice_sounding(DANCE, [section("pupils live")], EIGHT).known


def test_the_moves_of_a_part_by_voice_are_practised_without_a_drum() -> None:
    letters = {name: [s.letter for s in sections_with(DANCE, name)] for name in DANCE.motifs}
    assert letters["wave"][0] == "A"
    assert "B" in letters["anemone"]
    assert sections_with(DANCE, "nothing") == ()


@UNITS
def test_a_step_of_a_lesson_is_counted_to_what_the_dance_sounds_like(unit: Unit) -> None:
    own = {p.sound for found in timeline(unit.dance) for p in found.pieces}
    for lesson in unit.lessons:
        for step in lesson.steps:
            if step.counts is None:
                continue
            found = step_sounding(unit.dance, step)
            assert {piece.sound for piece in found.pieces} <= own
            assert not found.known or found.length == step.counts


def test_the_clock_shop_by_hand() -> None:
    (unit,) = (unit for unit in every_unit() if unit.slug == "clock-shop-sounds")
    told = [sounds(found) for found in timeline(unit.dance)]
    assert told == [
        ["beat", "claps", "soft beat"],
        ["silence"],
        ["voice"],
        ["soft beat", "roll"],
        ["roll", "silence", "shaker", "bell", "recording", "beat"],
    ]
    night = timeline(unit.dance)[-1]
    # 4 + 3 + 3 + 2 + 5 seconds, and six counts at 104 a minute: 360/104
    assert night.length == 17 + Fraction(360, 104)
    assert {p.sound for p in night.pieces if p.strokes} < STRUCK


def test_a_motif_is_practised_to_its_own_counts_where_some_of_them_are_silent() -> None:
    """An adviser: a beat on five to eight, and the silence is learned with a tap in it."""
    dance = unit_named("after-home-time").dance
    heard = {one.name: one.sounding for one in score(dance).motifs}["room"].pieces
    assert [one.sound for one in heard] == ["soft beat", "claps"]
    assert [(one.start, one.end) for one in heard] == [
        (Fraction(0), Fraction(4)),
        (Fraction(4), EIGHT),
    ]
    assert [stroke.at for one in heard for stroke in one.strokes] == [Fraction(n) for n in range(6)]
