"""Lines of a list that lost their hyphen, and rows out of a table: read as what they plainly are.

From a trial: an adviser wrote a unit with the manual alone; each of these led to a new error.
"""

from __future__ import annotations

from build_tools.problem import Problem
from build_tools.shapes.shape import shape_of
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.typed.reader import read_typed
from tests.source.said_once.units import LESSON
from tests.support.banks import ROOT

BASE = (ROOT / "tests/rules/base/units/paper-boats/unit.md").read_text(encoding="utf-8")
ROWS = """    actions:
      - word | action | counts | level
      - crease | gesture | 4 | high to low
      - press | stillness | 4 | low
"""
FIELDS = BASE[BASE.index("    actions:\n") : BASE.index("  drift:\n    from: pupils")]


def read(old: str, new: str) -> Document | list[Problem]:
    assert old in BASE
    return read_markdown("units/paper-boats/unit.md", BASE.replace(old, new, 1).encode())


def sound(old: str, new: str) -> Document:
    found = read(old, new)
    assert isinstance(found, Document), found
    assert found.fitting is not None
    return found


def test_braces_on_a_line_of_their_own_are_a_line_of_the_list() -> None:
    with_heard = "    counts: 24\n    heard:\n      {counts: 24, sound: beat}\n"
    read_ = sound("    counts: 24\n", with_heard)
    assert read_.data["sections"]["A"]["heard"] == [{"counts": 24, "sound": "beat"}]
    assert any("read as a line of `heard`" in guess.message for guess in read_.guesses)


def test_several_lines_of_braces_too() -> None:
    lines = "      {counts: 8, sound: beat}\n      {counts: 16, sound: roll}\n"
    read_ = sound("    counts: 24\n", f"    counts: 24\n    heard:\n{lines}")
    assert [one["counts"] for one in read_.data["sections"]["A"]["heard"]] == [8, 16]


def test_a_part_of_a_list_without_its_hyphen_starts_anew() -> None:
    skills = (
        "skills:\n  - skill: Stop on a signal\n    catch_up: Walk eight, stop eight\n"
        "  skill: Keep a beat\n    catch_up: Clap eight: step eight\n"
    )
    read_ = sound("skills: []\n", skills)
    assert [one["skill"] for one in read_.data["skills"]] == ["Stop on a signal", "Keep a beat"]
    assert any("read as a line of `skills`" in guess.message for guess in read_.guesses)


def test_rows_out_of_a_table_may_have_tabs_for_bars() -> None:
    barred = sound(FIELDS, ROWS)
    tabbed = sound(FIELDS, ROWS.replace(" | ", "\t"))
    one_row = sound(FIELDS, ROWS.replace("press | stillness | 4 | low", "press\tstillness\t4\tlow"))
    assert barred.data == tabbed.data == one_row.data
    bare = sound(FIELDS, ROWS.replace(" | ", "\t").replace("      - ", "      "))
    assert bare.data == barred.data


def test_a_row_with_spaces_alone_is_told_what_it_lacks() -> None:
    found = read(FIELDS, ROWS.replace("press | stillness | 4 | low", "press stillness 4 low"))
    assert isinstance(found, list)
    (problem,) = found
    assert problem.message == "the parts of this row have no bars between them"


def test_a_whole_sentence_below_the_hyphens_is_a_line_of_the_list() -> None:
    ending = (
        "kit:\n  wear: School PE kit\n  collect:\n    - One drum.\n    Four cones.\n    - Chalk\n"
    )
    start = BASE.index("kit: {")
    line = BASE[start : BASE.index("\n", start) + 1]
    read_ = sound(line, f"{ending}  without_props: Clap the beat.\n")
    assert read_.data["kit"]["collect"] == ["One drum.", "Four cones.", "Chalk"]


def test_half_a_sentence_there_is_still_the_end_of_the_text_above() -> None:
    start = BASE.index("kit: {")
    line = BASE[start : BASE.index("\n", start) + 1]
    ending = "kit:\n  wear: School PE kit\n  collect:\n    - One drum\n    with a soft beater\n"
    read_ = sound(line, f"{ending}  without_props: Clap the beat.\n")
    assert read_.data["kit"]["collect"] == ["One drum with a soft beater"]


def test_what_is_read_as_it_stands_gets_no_note() -> None:
    text = "{what: [drift-slow], as: canon, parts: 4, after: 4}"
    bare = "what: drift-slow\n        as: canon\n        parts: four\n        after: 4"
    read_ = sound(text, bare)
    assert [guess.message for guess in read_.guesses] == ["“four” is read as 4"]


def test_marks_round_a_whole_text_are_told_where_they_are_not_shown() -> None:
    start = BASE.index("kit: {")
    line = BASE[start : BASE.index("\n", start) + 1]
    ending = 'kit:\n  wear: School PE kit\n  collect:\n    - "in my tummy"\n    - It: is\n'
    read_ = sound(line, f"{ending}  without_props: Clap the beat.\n")
    assert read_.data["kit"]["collect"] == ["in my tummy", "It: is"]
    assert any("not shown" in guess.message for guess in read_.guesses)


def test_a_hyphen_that_is_missing_is_told_once() -> None:
    text = LESSON.replace("  - phase: cool-down\n    does", "    phase: cool-down\n    does", 1)
    assert text != LESSON
    made = read_typed(text.split("---\n")[1], 2, shape_of("lesson"))
    assert [one.rule for one in made.faults] == ["repeated-field"]
