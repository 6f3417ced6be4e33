"""The dance on one line, and its score.

Source: a dance's length in seconds is counts x 60 / tempo (the definition of a metronome mark).
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from build_tools.model.dance import Dance, Seconds, Transition
from build_tools.movement.whole import transition_between
from build_tools.movement.whole_length import CountsRange, whole_counts, whole_seconds
from build_tools.views.dance.dance_line import dance_line, width_in_counts
from build_tools.views.diagrams.score import dance_score, score_in_words
from build_tools.views.diagrams.small_line import small_line
from tests.support.drawn import seen_in
from tests.support.sound_bank import real_bank, real_unit

DANCES = [unit.dance for unit in real_bank().units]


def by_hand(dance: Dance) -> Fraction:
    """The counted part of a dance, added up section by section and join by join."""
    total = Fraction(0)
    for place, letter in enumerate(dance.form):
        total += dance.sections[letter].counts or 0
        if place:
            join = transition_between(dance, dance.form[place - 1], letter)
            if join is not None and join.kind in ("move", "hold"):
                total += join.counts or 0
    return total


def test_the_counts_add_up() -> None:
    for dance in DANCES:
        line = dance_line(dance)
        assert line.counts == by_hand(dance)
        last = line.parts[-1]
        assert last.before + (last.counts or 0) == line.counts


def test_the_rock_pool_is_168_counts_and_a_storm() -> None:
    dance = real_unit().dance
    # four sections of 32 counts; joins of 8, 8, 8 and 16
    assert dance_line(dance).counts == 4 * 32 + 8 + 8 + 8 + 16
    assert whole_counts(dance) == CountsRange(Fraction(168), Fraction(168))
    # 168 counts at 108 beats a minute, and a storm of 20 to 30 seconds
    counted = Fraction(168 * 60, 108)
    assert whole_seconds(dance) == Seconds(counted + 20, counted + 30)


def test_an_overlap_takes_its_counts_back() -> None:
    dance = real_unit().dance
    plain = replace(dance, form=("A", "B"), transitions=())
    early = Transition("A", "B", "overlap", Fraction(8), "start early", "the drum")
    line = dance_line(replace(plain, transitions=(early,)))
    assert line.counts == dance_line(plain).counts - 8
    assert width_in_counts(line.parts[1], dance.tempo) == 0


def test_an_uncounted_section_is_as_wide_as_the_middle_of_its_seconds() -> None:
    dance = real_unit().dance
    (storm,) = (p for p in dance_line(dance).parts if p.section and p.section.letter == "D")
    assert storm.counts is None
    assert width_in_counts(storm, 120) == 50  # 25 seconds at two beats a second


def test_the_score_says_every_section_idea_and_cue_in_words() -> None:
    for dance in DANCES:
        words = " ".join(dance_score(dance, "score").words)
        for letter in dance.form:
            section = dance.sections[letter]
            assert section.idea.rstrip(".") in words
            if section.ends_on:
                assert section.ends_on.rstrip(".") in words
        for place, letter in enumerate(dance.form[1:]):
            join = transition_between(dance, dance.form[place], letter)
            if join is not None:
                assert join.cue in words


def test_letters_keep_their_own_hatch_wherever_they_are_drawn() -> None:
    for dance in DANCES:
        score = seen_in(dance_score(dance, "one").svg)
        small = seen_in(small_line(dance, "two").svg)
        assert [i.removeprefix("one-") for i in score.ids()] == [
            i.removeprefix("two-") for i in small.ids()
        ]
        marks = [a["d"] for n, a in score.elements if a.get("class") == "hatch" and n == "path"]
        # what comes back changed keeps the hatch of the first
        assert len(set(marks)) == len({letter[0] for letter in dance.form})


def test_only_what_is_danced_today_is_hatched() -> None:
    dance = real_unit().dance
    seen = seen_in(small_line(dance, "today", ("B",)).svg)
    blocks = [a["class"] for _, a in seen.elements if a.get("class", "").startswith("block")]
    assert blocks == ["block letter-b tint-2"]
    assert "today part B" in seen.text()


def test_words_that_end_with_a_mark_get_no_stop_behind_it() -> None:
    dance = real_unit().dance
    loud = [replace(t, how="Look where you're going!", cue="Silence.") for t in dance.transitions]
    said = score_in_words(dance_line(replace(dance, transitions=tuple(loud))))
    joins = [line for line in said if "Cue:" in line]
    assert joins
    assert all(line.endswith("Look where you're going! Cue: Silence.") for line in joins)
