"""The pages whose words are all in the tables, and the tool that says which are not."""

from __future__ import annotations

import pytest

from tests.page_words.left_in_english import left_in, left_of_unit, shown_on, unmarked
from tests.page_words.written_by_authors import Written
from tests.support.banks import UNIT
from tests.support.sound_bank import real_bank, real_unit

DONE: tuple[str, ...] = (
    *("index.html", "ready.html", "show.html", "wall.html", "booklet.html", "sheet.html"),
    *("lesson-1.html", "lesson-3.html", "lesson-4.html", "lesson-5.html", "lesson-6.html"),
    *("moves.html", "parts.html", "counts.html", "dance.html"),
)
"""Names of pages that say nothing in English any more: each developer adds theirs."""
MOST_LEFT = {
    # a word that the author explains is one that the schema lists
    "lesson-2.html": 1,
    "assess.html": 1,
    "to-print.html": 1,
    # the fields of a unit's file
    "sign.html": 1,
}
"""Pages that are under way: how much may be left at most. It only ever goes down."""


@pytest.mark.parametrize("ending", DONE)
def test_a_page_that_is_done_stays_done(ending: str) -> None:
    for name, left in left_in(UNIT).items():
        if name.endswith(ending):
            assert left == [], name


@pytest.mark.parametrize("name", MOST_LEFT)
def test_no_more_is_left_than_was(name: str) -> None:
    assert len(left_in(UNIT)[name]) <= MOST_LEFT[name]


def test_marks_are_taken_away_however_deep() -> None:
    assert [" ".join(one.split()) for one in unmarked(["a ⟦b ⟦c⟧ d⟧ e", "⟦all⟧", "none"])] == [
        "a e", "", "none"
    ]  # fmt: skip


def test_every_kind_of_place_for_words_is_looked_at() -> None:
    html = (
        '<p title="one">two <b>three</b></p><img alt="four"><a aria-label="five">six</a>'
        '<input placeholder="seven"><meta name="description" content="eight">'
        '<p data-words="Nine words here." data-key="two words" data-halls="[1, 2]"></p>'
        "<script>ten</script><svg><title>eleven</title><text>twelve</text></svg>"
    )
    found = " ".join(shown_on(html))
    for word in ("one", "two three", "four", "five", "six", "seven", "eight", "Nine words here."):
        assert word in found
    assert "eleven" in found
    assert "twelve" in found
    assert "ten " not in found
    assert "two words" not in found


def test_what_the_author_wrote_is_taken_away_and_nothing_else() -> None:
    unit = real_unit()
    written = Written(real_bank(), unit)
    assert written.left_of(unit.lessons[0].steps[0].task) == ""
    assert written.left_of(f"Words nobody wrote: {unit.title}").startswith("words nobody wrote")
    # the schema's own word, though the author chose it
    assert written.left_of("unison") == "unison"


def test_words_that_a_template_says_outside_the_tables_are_found(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr("build_tools.pages.lesson.lesson.minutes_in_words", lambda _: "some while")
    found = left_of_unit(real_bank(), real_unit())
    assert any("some while" in one for one in found["lesson-1.html"])
