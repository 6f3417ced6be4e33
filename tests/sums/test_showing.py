"""Laws of who shows when, asked of the page's own script, and the same minutes as the rule's."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.views.lesson.class_groups import class_groups
from build_tools.views.lesson.showing import showing
from tests.sums.lessons import GROUPINGS, Lesson, Shows, step
from tests.sums.page_facts import page_facts
from tests.support.page_script import ask
from tests.support.sound_bank import every_unit

TALK, LET_PASS = 60, 30
"""Seconds, as the page is told them, and as it lets pass."""
PUPILS = st.integers(1, 60)
MINUTES = st.integers(1, 30)


@st.composite
def showings(draw: st.DrawFn, in_turn: bool) -> Lesson:
    """A step of pairs, which may join, and one that shows."""
    shows: Shows = {
        "each": draw(st.integers(16, 300)),
        "talk": draw(st.sampled_from((0, TALK))),
        "atOnce": draw(st.integers(1, 4)) if in_turn else None,
    }
    grouping = draw(st.sampled_from(GROUPINGS[:6] if in_turn else GROUPINGS))
    return (step(1, "make", 5, 5, "pairs"), {**step(2, "show", 5, 5, grouping), "shows": shows})


def plan_of(lesson: Lesson, minutes: int, pupils: int) -> Any:
    return ask("sums.showing", lesson, 1, minutes, pupils)


def groups_of(lesson: Lesson, pupils: int, in_turn: bool) -> int:
    grouping = lesson[1]["grouping"]
    if grouping == "alone" and not in_turn:
        grouping = "half class"
    return len(class_groups([one["grouping"] for one in lesson], grouping, pupils))


@given(showings(in_turn=False), MINUTES, PUPILS)
def test_halves_show_to_each_other_and_everyone_is_seen_once(
    lesson: Lesson, minutes: int, pupils: int
) -> None:
    plan = plan_of(lesson, minutes, pupils)
    groups = groups_of(lesson, pupils, in_turn=False)
    assert sorted(place for run in plan["runs"] for place in run) == list(range(groups))
    assert len(plan["runs"]) == min(2, groups)
    assert max(map(len, plan["runs"])) - min(map(len, plan["runs"])) <= 1


@given(showings(in_turn=True), MINUTES, PUPILS)
def test_groups_in_turn_are_each_seen_once_as_many_at_a_time_as_the_words_say(
    lesson: Lesson, minutes: int, pupils: int
) -> None:
    plan = plan_of(lesson, minutes, pupils)
    groups, shows = groups_of(lesson, pupils, in_turn=True), lesson[1]["shows"]
    assert shows
    assert [place for run in plan["runs"] for place in run] == list(range(groups))
    assert {len(run) for run in plan["runs"][:-1]} <= {shows["atOnce"]}
    assert len(plan["runs"][-1]) <= (shows["atOnce"] or 0)


@given(showings(in_turn=False) | showings(in_turn=True), MINUTES, PUPILS)
def test_it_fits_where_all_runs_and_the_talk_take_half_a_minute_more_at_most(
    lesson: Lesson, minutes: int, pupils: int
) -> None:
    plan, shows = plan_of(lesson, minutes, pupils), lesson[1]["shows"]
    assert shows
    assert plan["seconds"] == len(plan["runs"]) * shows["each"] + shows["talk"]
    assert plan["fits"] == (plan["seconds"] <= minutes * 60 + LET_PASS)
    assert plan["fits"] == (plan["needs"] <= minutes)
    assert plan_of(lesson, plan["needs"], pupils)["fits"]


@given(showings(in_turn=False) | showings(in_turn=True), MINUTES, PUPILS)
def test_what_is_named_instead_fits(lesson: Lesson, minutes: int, pupils: int) -> None:
    plan, shows = plan_of(lesson, minutes, pupils), lesson[1]["shows"]
    assert shows
    runs = {None: None, "let half": 2, "let all ": 1}[plan["instead"] and plan["instead"][:8]]
    if runs is not None:
        assert not plan["fits"]
        assert runs < len(plan["runs"])
        assert runs * shows["each"] + shows["talk"] <= minutes * 60 + LET_PASS


def shown(grouping: str, each: int, talk: int = TALK, at_once: int | None = None) -> Lesson:
    shows: Shows = {"each": each, "talk": talk, "atOnce": at_once}
    return (step(1, "make", 5, 5), {**step(2, "show", 5, 5, grouping), "shows": shows})


def test_seven_groups_show_four_and_then_three() -> None:
    plan = plan_of(shown("fours", 35), 4, 27)
    assert plan["runs"] == [[0, 2, 4, 6], [1, 3, 5]]
    assert plan["who"] == (
        "Every other group dances, four at once, and the rest watch. Then they swap, and three "
        "dance."
    )
    assert plan["where"].startswith("Watchers sit")


def test_groups_one_at_a_time_take_a_run_each_and_the_page_says_so() -> None:
    plan = plan_of(shown("fours", 33, at_once=1), 6, 30)
    assert (len(plan["runs"]), plan["seconds"], plan["needs"], plan["fits"]) == (8, 324, 5, True)
    assert plan["who"] == "The eight groups dance one at a time, and the rest watch."
    assert plan_of(shown("alone", 33, at_once=5), 6, 30)["who"] == (
        "The thirty pupils dance five at a time, and the rest watch."
    )


def test_a_swap_that_is_a_few_seconds_too_long_stays_a_swap() -> None:
    plan = plan_of(shown("pairs", 33), 2, 30)
    assert (len(plan["runs"]), plan["seconds"], plan["needs"]) == (2, 126, 2)
    assert plan["fits"]
    assert "swap" in plan["who"]


def test_with_no_time_for_two_runs_all_may_dance_at_once() -> None:
    plan = plan_of(shown("fours", 65, talk=0), 1, 12)
    assert (plan["needs"], plan["fits"]) == (2, False)
    assert plan["instead"] == "let all dance at once, and watch with those who are not dancing"


def test_a_step_that_shows_nothing_is_no_showing() -> None:
    assert ask("sums.showing", (step(1, "show", 5, 5),), 0, 5, 30) is None


@given(st.data())
def test_the_page_adds_up_what_the_rule_adds_up_for_any_class(data: st.DataObject) -> None:
    """On every lesson there is, with words and groupings of other steps laid in."""
    unit = data.draw(st.sampled_from(every_unit()))
    lesson = data.draw(st.sampled_from(unit.lessons))
    index = data.draw(st.integers(0, len(lesson.steps) - 1))
    words = (None, "Show one group at a time.", "Two fours at a time.", "Half dance; swap.")
    step_shown = replace(
        lesson.steps[index],
        shows=data.draw(st.sampled_from((("whole",), (unit.dance.form[0],)))),
        grouping=data.draw(st.sampled_from(GROUPINGS)),
        into=data.draw(st.sampled_from(words)),
        minutes=data.draw(st.integers(1, 12)),
    )
    lesson = replace(lesson, steps=(*lesson.steps[:index], step_shown, *lesson.steps[index + 1 :]))
    pupils = data.draw(st.sampled_from((USUAL_CLASS, 1, 2, 13, 26, 27, 33)))
    by_rule = showing(unit, lesson, index, pupils)
    on_page = ask("sums.showing", page_facts(unit, lesson), index, step_shown.minutes, pupils)
    if by_rule is None:
        assert on_page is None
        return
    assert on_page["seconds"] == by_rule.seconds
    assert on_page["needs"] == by_rule.needs
    assert len(on_page["runs"]) == by_rule.runs
    assert on_page["fits"] == (by_rule.needs <= step_shown.minutes)
