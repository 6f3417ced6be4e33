"""Files as teachers write them: which headings are lessons, which tables steps, what is left open.

Common practice, no source.
"""

from __future__ import annotations

from typing import Any

import pytest

from build_tools.drafting.from_document.draft_from_document import NoDraft
from build_tools.views.words.open_places import MARK
from tests.drafting.from_document.making import drafted, fields_of, sound
from tests.support.word_files import document, paragraph, table, written

STEP = table([["Minutes", "5"], ["Do", "Walk and stop."]])


def lesson(body: str, number: int = 1) -> dict[str, Any]:
    made = sound(written(document(body)))
    found: dict[str, Any] = fields_of(made, f"lesson-{number}.md").data
    return found


def titles(body: str) -> list[str]:
    made = sound(written(document(body)))
    return [str(fields_of(made, name).data["title"]) for name in made.files if name != "unit.md"]


def h(level: int, text: str) -> str:
    return paragraph(text, f"heading{level}")


@pytest.mark.parametrize(
    ("body", "found"),
    [
        (h(1, "Waves") + STEP + STEP + h(1, "Rocks") + STEP, ["Waves", "Rocks"]),
        (h(1, "Our pool") + h(2, "Waves") + STEP + STEP + h(2, "Rocks") + STEP, ["Waves", "Rocks"]),
        (h(1, "Waves") + h(2, "Walk") + STEP + h(2, "Stop") + STEP, ["Waves"]),
        (h(1, "Aims") + paragraph("To sink.") + h(1, "Waves") + STEP, ["Waves"]),
        (h(2, "Lesson 1: Waves") + STEP + h(2, "Lesson 2 – Rocks") + STEP, ["Waves", "Rocks"]),
        (STEP + STEP, [f"{MARK} title of lesson 1 in two to six words"]),
    ],
)
def test_which_headings_are_lessons(body: str, found: list[str]) -> None:
    assert titles(body) == found


def test_a_step_is_called_as_the_heading_over_its_table() -> None:
    body = h(1, "Waves") + h(2, "1. Walk") + STEP + h(2, "Stop dead") + STEP
    assert [step["does"] for step in lesson(body)["steps"]][:2] == ["Walk", "Stop dead"]


def test_under_columns_with_names_each_row_is_a_step() -> None:
    rows = [["Time", "Activity", "Say"], ["0-5", "Walk.", "Stop!"], ["5-12", "Sink.", "Slowly."]]
    first, second, third = lesson(h(1, "Waves") + table(rows))["steps"]
    assert (first["minutes"], first["task"], first["say"]) == (5, "Walk.", "Stop!")
    assert (second["minutes"], second["task"]) == (7, "Sink.")
    assert third["task"].startswith(MARK)


def test_a_span_that_does_not_begin_where_the_last_step_ends_is_the_fewest_and_the_most() -> None:
    rows = table([["Minutes", "5 to 8 minutes"], ["Do", "Walk."]])
    step = lesson(h(1, "Waves") + rows)["steps"][0]
    assert (step["least"], step["minutes"]) == (5, 8)


def test_what_a_field_cannot_hold_open_is_asked_for_in_the_notes() -> None:
    made = sound(written(document(h(1, "Waves") + table([["Do", "Walk."]]))))
    notes = made.files["lesson-1.md"].rpartition("---")[2]
    assert f"{MARK} Step 1: say how many minutes it lasts; 5 is written until then." in notes
    assert f"{MARK} Step 1: say how pupils are grouped; whole class is written" in notes
    assert f"{MARK} Step 2 is not in the word-processor file" in notes


def test_the_eleventh_step_stands_in_the_notes() -> None:
    eleven = "".join(table([["Do", f"Walk {n}."]]) for n in range(1, 12))
    made = sound(written(document(h(1, "Waves") + eleven)))
    assert len(fields_of(made, "lesson-1.md").data["steps"]) == 10
    notes = made.files["lesson-1.md"].rpartition("---")[2]
    assert "- Step 11, for which a lesson has no place: Do · Walk 11." in notes


def test_too_many_lessons_are_refused() -> None:
    many = "".join(h(1, f"Lesson {n}") + STEP for n in range(1, 14))
    made = drafted(written(document(many)))
    assert isinstance(made, NoDraft)
    assert "13 lessons, and a unit 12 at most" in made.reason


def test_a_licence_that_lets_nothing_be_changed_is_kept_to() -> None:
    """Creative Commons, BY-ND 4.0, 2(a)(1)(B): adapted material is produced but not shared."""
    rights = paragraph("Edition 1.0.0, issued by A bank on 1 March 2026.") + paragraph(
        "Free to share, unchanged, under CC BY-ND 4.0 (creativecommons.org/licenses/by-nd/4.0)."
    )
    made = drafted(written(document(h(1, "Waves") + STEP + rights)))
    assert isinstance(made, NoDraft)
    assert "CC BY-ND 4.0, lets no changed copy be shared" in made.reason


def test_what_the_notes_have_no_room_for_is_told() -> None:
    many = "".join(paragraph(f"Line {n}: {'walk ' * 70}") for n in range(80))
    made = sound(written(document(h(1, "Waves") + STEP + h(2, "Thoughts") + many)))
    (kept,) = (one for one in made.kept if one.file == "lesson-1.md")
    assert kept.over
    assert kept.over[-1].text.startswith("Line 79: walk")
    assert kept.over[-1].where == "under “Thoughts”"


def test_safety_words_and_what_to_get_find_their_fields() -> None:
    body = (
        h(1, "Waves") + h(2, "Resources") + paragraph("A drum") + h(2, "Safety")
        + paragraph("Check the floor.") + h(2, "Key words") + paragraph("canon: one after another")
        + STEP
    )  # fmt: skip
    found = lesson(body)
    assert found["collect"] == ["A drum"]
    assert found["safety"] == ["Check the floor."]
    assert found["words"] == {"canon": "one after another"}
