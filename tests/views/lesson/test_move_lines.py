"""Lines of the notes that are meant for a move, however hands typed them.

From a trial: an adviser forgot the bold of one line, and all four moves fell out of their steps.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.pages.pieces.step_help import step_helps
from build_tools.views.lesson.move_lines import asked_about, notes_as_meant, read_as_moves
from build_tools.views.lesson.moves_in_steps import todays_moves
from build_tools.views.lesson.notes_for_whom import of_a_chair_alone, ways_with_a_dash
from build_tools.views.lesson.notes_in_steps import notes_in_steps
from build_tools.views.lesson.notes_read import Explained, Paragraph, notes_read
from build_tools.views.lesson.sitting_or_wheels import all_seated_ways
from tests.support.sound_bank import real_unit

DANCE = real_unit().dance
"""Its moves are rush, sink, break, grip and more."""
SINK = "- **Sink**: say two."


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("- Rush: say one.", "Rush"),
        ("* Rush: say one.", "Rush"),
        ("-Rush: say one.", "Rush"),
        ("• Rush: say one.", "Rush"),
        ("- **Rushing**: say one.", "Rush"),
        ("- **Rushes:** say one.", "Rush"),
        ("- Rushing: say one.", "Rush"),
        ("– **Rush**: say one.", "Rush"),
        ("-**Rush**: say one.", "Rush"),
        ("— **Rush** – say one.", "Rush"),
        ("- Rush – say one.", "Rush"),
        ("Rush: say one.", "Rush"),
    ],
)
@pytest.mark.parametrize("first", [True, False])
def test_a_line_beside_lines_of_moves_is_the_line_of_its_move(
    line: str, word: str, first: bool
) -> None:
    notes = "\n".join([line, SINK] if first else [SINK, line])
    found = notes_read(notes_as_meant(notes, DANCE))
    said = {one.word: one.text for one in found if isinstance(one, Explained)}
    assert said == {word: "Say one.", "Sink": "Say two."}
    assert [one.word for one in read_as_moves(notes, DANCE)] == ["rush"]
    assert not asked_about(notes, DANCE)


@pytest.mark.parametrize("line", ["- Rush: say one.", "- **Rushing**: say one.", "– **Rush**: o."])
def test_so_it_is_alone_where_a_mark_and_a_colon_say_it(line: str) -> None:
    (found,) = notes_read(notes_as_meant(f"Read this.\n\n{line}", DANCE))[1:]
    assert isinstance(found, Explained)
    assert found.word == "Rush"


@pytest.mark.parametrize(
    "line",
    ["Rush: say one.", "- Rushing: say one.", "**Rushing**: say one.", "- Rush – say one.",
     "- **Rushing** say one."],
)  # fmt: skip
def test_what_may_be_a_line_of_a_move_is_asked_about(line: str) -> None:
    (asked,) = asked_about(f"Read this.\n\n{line}", DANCE)
    assert (asked.line, asked.word) == (2, "rush")
    assert asked.head == "- **Rush**:"
    assert notes_as_meant(line, DANCE) == line


@pytest.mark.parametrize(
    "line",
    [
        "- **Rush**: say one.",
        "**Rush**: say one.",
        "**Rush** is a quick word.",
        "**Rushing** is no way to begin.",
        "- **Rush** - say one.",
        "Rush and sink: say both.",
        "- Before: open the window.",
        "The class says one word, then\nrush: nobody waits.",
        "Part A. Seated: lean in.",
        "Do not rush: wait for the count.",
    ],
)
def test_all_else_stays_as_it_is_typed(line: str) -> None:
    assert notes_as_meant(line, DANCE) == line
    assert not asked_about(line, DANCE)


def test_ways_on_a_chair_are_kept_whatever_the_line_lacked() -> None:
    notes = "- Rush, seated: say one.\n- Sink: say two. Seated: say three. On wheels: say four."
    rush, sink = notes_read(notes_as_meant(notes, DANCE))
    assert isinstance(rush, Explained)
    assert isinstance(sink, Explained)
    assert (rush.word, rush.text, rush.seated) == ("Rush", "", "say one.")
    assert (sink.text, sink.seated, sink.wheels) == ("Say two.", "say three.", "say four.")


@pytest.mark.parametrize("first", [True, False])
def test_a_line_for_no_move_leaves_the_others_where_they_are(first: bool) -> None:
    other, moves = "- Remember the drum.", f"- **Rush**: say one.\n{SINK}"
    found = notes_read(f"{other}\n{moves}" if first else f"{moves}\n{other}")
    assert {one.word for one in found if isinstance(one, Explained)} == {"Rush", "Sink"}
    assert [one.text for one in found if isinstance(one, Paragraph)] == [other]


@pytest.mark.parametrize(
    ("way", "alone"),
    [
        ("keep the feet flat while you grow", True),
        ("Lift the heels by turns.", True),
        ("scoop beside the knees", False),
        ("fold, arms in", False),
        ("sink; the shuttle passes clear of feet or footrests", False),
        (None, False),
    ],
)
def test_feet_on_the_floor_are_a_chairs_alone(way: str | None, alone: bool) -> None:
    assert of_a_chair_alone(way) is alone


def test_what_is_said_of_feet_is_not_told_to_who_uses_a_wheelchair() -> None:
    unit = real_unit()
    lesson = replace(unit.lessons[0], notes="- **Rush**: go. Seated: lift the feet by turns.")
    shown = replace(unit, lessons=(lesson, *unit.lessons[1:]))
    moves = todays_moves(shown, lesson).steps
    ways = [w for step in all_seated_ways(shown, lesson.steps, moves) for w in step.moves]
    rush = next(way for way in ways if way.word == "rush")
    assert rush.chair == "Lift the feet by turns"
    assert rush.wheels
    assert "feet" not in rush.wheels.casefold()


def test_a_step_with_a_way_for_a_chair_alone_says_so_on_the_page() -> None:
    unit = real_unit()
    lesson = replace(unit.lessons[0], notes="Cool-down. Seated: keep the feet flat.")
    shown = replace(unit, lessons=(lesson, *unit.lessons[1:]))
    helped = [help_.seated for help_ in step_helps(shown, lesson, todays_moves(shown, lesson))]
    told = [way for one in helped if one for way in one.moves]
    assert ("Chair: Keep the feet flat", None) in [(way.chair, way.wheels) for way in told]


@pytest.mark.parametrize("line", ["- **Ruhs**: say one.", "- **Russh** – say one."])
def test_a_word_a_letter_off_a_move_that_no_line_tells_is_asked_about(line: str) -> None:
    (asked,) = asked_about(f"{SINK}\n{line}", DANCE)
    assert (asked.line, asked.word, asked.head) == (1, "rush", "- **Rush**:")
    assert notes_as_meant(line, DANCE) == line


@pytest.mark.parametrize(
    "notes",
    [
        "- **Ruhs**: say one.",
        f"{SINK}\n- **Rust**: say one.",
        f"{SINK}\n- **Ruhs**: say one.\n- **Rush**: say two.",
        f"{SINK}\n- **Drum**: say one.",
    ],
)
def test_it_is_not_where_no_line_of_a_move_stands_by_it_or_the_move_has_its_own(notes: str) -> None:
    assert not asked_about(notes, DANCE)


@pytest.mark.parametrize("sign", ["-", "–", "—"])
def test_a_dash_does_for_the_colon_behind_whom_a_way_is_for(sign: str) -> None:
    line = f"- **Rush** {sign} say one. Seated {sign} say three. On wheels {sign} say four."
    (rush,) = notes_read(notes_as_meant(line, DANCE))
    assert isinstance(rush, Explained)
    assert (rush.text, rush.seated, rush.wheels) == ("Say one.", "say three.", "say four.")
    assert ways_with_a_dash(line) == ("Seated", "On wheels")
    assert not ways_with_a_dash("- **Rush**: two – seated – lean. Seated: fold – then lift.")


def test_a_step_that_is_only_named_leaves_no_line_that_says_nothing() -> None:
    unit = real_unit()
    lesson = replace(unit.lessons[0], notes="Step 1. Seated: keep the feet flat.")
    found = notes_in_steps(unit.dance, lesson, frozenset())
    assert not any(found.helps)
    assert found.ways[0][0].seated == "keep the feet flat."
