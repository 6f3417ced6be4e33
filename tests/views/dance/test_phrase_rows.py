"""All that a step dances, row by row, with its counts."""

from __future__ import annotations

from fractions import Fraction

from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.views.dance.phrase_rows import MOST_ROWS, PhraseRow, phrase_rows
from build_tools.views.lesson.teachers_part import section_of
from tests.support.sound_bank import every_unit, unit_named


def rows_of(unit: Unit, lesson: int, step: int) -> tuple[PhraseRow, ...]:
    one = unit.lessons[lesson - 1].steps[step - 1]
    return phrase_rows(unit.dance, one, section_of(unit.dance, one))


def test_the_chain_shows_all_five_moves_north_and_south() -> None:
    """What a teacher missed on the wall: it showed the tremble alone."""
    unit = unit_named("magnets")
    rows = rows_of(unit, 3, 5)
    assert [row.name for row in rows] == ["Pull", "Tremble", "Pull south", "Tremble"]
    assert [move.word for move in rows[0].moves] == ["swing", "lean", "slide", "clack", "clamp"]
    assert [move.counts for move in rows[0].moves] == ["1 2", "3", "4 5", "6", "7 8"]
    # nobody's count is everybody's in a canon; all tremble on 15 and 16
    assert all(move.end == 0 for move in rows[0].moves)
    (tremble,) = rows[1].moves
    assert f"{tremble.start} to {tremble.end}" == "14 to 16"


def test_a_step_lists_every_move_to_its_end_though_nobody_counts_it() -> None:
    """A watching child would have thought that the dance ends with the pull to the north."""
    unit = unit_named("magnets")
    (watched,) = (s for s in unit.lessons[0].steps if s.shows == ("A",))
    rows = phrase_rows(unit.dance, watched, section_of(unit.dance, watched))
    assert [row.name for row in rows] == ["Pull", "Pull south", "Pull north", "Pull south"]
    (watched,) = (s for s in unit.lessons[2].steps if s.shows == ("C",))
    rows = phrase_rows(unit.dance, watched, section_of(unit.dance, watched))
    assert [row.name for row in rows] == ["Pull", "Tremble", "Pull south", "Tremble"]


def test_a_step_lists_nothing_that_nobody_dances() -> None:
    """A teacher's six-year-olds would have danced "pod seed", which only leads to "pop seed"."""
    unit = unit_named("seeds-on-the-move")
    (made,) = (s for s in unit.lessons[2].steps if "pod-seed" in s.develops)
    rows = phrase_rows(unit.dance, made, section_of(unit.dance, made))
    assert [row.name for row in rows] == ["Pop seed"]


def test_counts_run_on_from_row_to_row_and_fill_the_section() -> None:
    seen = 0
    for unit in every_unit():
        for lesson in unit.lessons:
            for step in lesson.steps:
                section = section_of(unit.dance, step)
                rows = phrase_rows(unit.dance, step, section)
                assert len(rows) <= MOST_ROWS
                if section is None or not step.counts or step.counts != section.counts:
                    continue
                moves = [move for row in rows for move in row.moves if move.end]
                assert all(move.start < move.end <= step.counts for move in moves)
                if section.danced and all(one.fit == "unison" for one in section.danced) and rows:
                    covered = sum((move.end - move.start for move in moves), Fraction(0))
                    assert figures(covered) == figures(step.counts)
                    seen += 1
    assert seen > 5
