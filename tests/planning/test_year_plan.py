"""A year plan over units: what can be asked, what is said where it cannot be kept.

What a plan covers is held in test_solving.py to trying every plan; here, that the words of units
become what is solved, and that the page's own sums say the same as the plan.
"""

from __future__ import annotations

import json
from collections.abc import Sequence

from hypothesis import given, settings
from hypothesis import strategies as st

from build_tools.pages.year_plan.year_plan import YearPlanView, year_plan_page
from build_tools.planning.asked import Asked, Slot, Wish
from build_tools.planning.year_plan import NoPlan, YearPlan, year_plan
from build_tools.views.teaching.covers import HEADINGS, Covers, Link
from tests.planning.test_solving import holds
from tests.support.page_script import ask
from tests.support.sound_bank import real_bank
from tests.views.teaching.made_covers import NOTHING, banks, bare

YEAR = ("England", "2")
THREE = tuple(Slot(term, 6) for term in ("Autumn", "Spring", "Summer"))


def asked(
    *wishes: Wish, slots: tuple[Slot, ...] = THREE, done: frozenset[str] = frozenset()
) -> Asked:
    return Asked(YEAR, slots, wishes, done)


def planned(units: Sequence[Covers], wanted: Asked) -> YearPlan:
    found = year_plan(units, wanted)
    assert isinstance(found, YearPlan), found
    return found


def why(units: Sequence[Covers], wanted: Asked) -> str:
    found = year_plan(units, wanted)
    assert isinstance(found, NoPlan), found
    return " ".join(found.why)


def names(plan: YearPlan) -> list[str | None]:
    return [None if n is None else plan.units[n].slug for n in plan.order]


def does(slug: str, *actions: str, **changed: object) -> Covers:
    return bare(slug, words=NOTHING | {"actions": actions}, **changed)


def test_most_is_covered_with_fewest_repeats() -> None:
    wide, jump, turn = does("wide", "travel", "turn"), does("jump", "jump"), does("turn", "turn")
    plan = planned([wide, jump, turn], asked(slots=THREE[:2]))
    assert set(names(plan)) == {"wide", "jump"}
    assert plan.met == {("actions", word): 1 for word in ("travel", "turn", "jump")}


def test_nothing_comes_before_what_it_builds_on_or_without_it() -> None:
    first = bare("zigzag", leads_to=("apple",))
    then = does("apple", "turn", builds_on=("zigzag",))
    assert names(planned([first, then], asked())) == ["zigzag", "apple", None]
    # the one slot cannot hold both, and the later is nothing without the earlier
    assert names(planned([first, then], asked(slots=THREE[:1]))) == ["zigzag"]
    had = asked(slots=THREE[:1], done=frozenset({"zigzag"}))
    assert names(planned([first, then], had)) == ["apple"]


def test_what_is_built_on_in_other_years_is_said() -> None:
    before = bare("before", years=(("England", "1"),))
    (note,) = planned([before, bare("now", builds_on=("before",))], asked()).notes
    assert "“Now” builds on “Before”, which is for other years" in note


def test_a_topic_that_nobody_teaches_says_so() -> None:
    units = [bare("here"), bare("there", topics=("rivers",), years=(("England", "6"),))]
    assert why(units, asked(Wish(None, topic="rivers"))) == (
        "No unit for Year 2 (England) teaches rivers. For other years there is “There” "
        "(Year 6 (England))."
    )
    assert why(units, asked(Wish(1, topic="fire"))) == (
        "No unit for Year 2 (England) teaches fire, nor any other of the bank."
    )
    gone = [bare("here"), bare("had", topics=("fire",))]
    over = asked(Wish(None, topic="fire"), done=frozenset({"had"}))
    assert "the class has had Had" in why(gone, over)


def test_a_topic_stands_in_its_slot_and_a_unit_too() -> None:
    units = [bare("a"), bare("b", topics=("fire",)), bare("c")]
    plan = planned(units, asked(Wish(2, topic="fire"), Wish(1, unit="c")))
    assert names(plan) == ["a", "c", "b"]


def test_what_is_too_long_or_cannot_be_kept_together_is_said() -> None:
    long = bare("long", topics=("fire",), lessons=9)
    assert "“Long” takes 9 lessons, and there are 6 at most" in why(
        [long], asked(Wish(None, topic="fire"))
    )
    units = [bare("a", topics=("fire",)), bare("b", topics=("rain",))]
    clash = why(units, asked(Wish(0, topic="fire"), Wish(0, topic="rain"), Wish(None, unit="a")))
    assert "the topic “fire” in slot 1 and the topic “rain” in slot 1" in clash
    assert "unit" not in clash.partition(":")[2]


def test_no_unit_for_the_year_says_so() -> None:
    assert "No unit for Year 2 (England) is left" in why([], asked())


def test_a_published_text_of_another_stage_is_none_of_this_year() -> None:
    texts = (Link("England", "key stage 1", "move"), Link("England", "key stage 2", "dance"))
    plan = planned([bare("both", links=texts)], asked())
    assert list(plan.met) == [("links", "key stage 1: move")]


@given(banks(5), st.permutations(range(5)))
@settings(max_examples=25)
def test_the_order_in_which_units_are_read_changes_nothing(
    units: tuple[Covers, ...], order: Sequence[int]
) -> None:
    mixed = [units[n] for n in order if n < len(units)]
    assert year_plan(units, asked()) == year_plan(
        sorted(mixed, key=lambda unit: unit.slug), asked()
    )
    found, again = year_plan(units, asked()), year_plan(mixed, asked())
    if isinstance(found, YearPlan) and isinstance(again, YearPlan):
        assert names(found) == names(again)


@given(banks(5), st.lists(st.one_of(st.none(), st.integers(0, 4)), min_size=3, max_size=3))
@settings(max_examples=40)
def test_the_page_says_by_hand_what_the_plan_would(
    units: tuple[Covers, ...], drawn: list[int | None]
) -> None:
    plan = year_plan(units, asked())
    if isinstance(plan, NoPlan):
        return
    view = year_plan_page(real_bank(), plan, (), "plan", None).context
    assert isinstance(view, YearPlanView)
    data = json.loads(view.data)
    by_hand = [None if n is None or n >= len(plan.units) else n for n in drawn]
    found = ask("sums.planCover", data, by_hand)
    chosen = [n for n in by_hand if n is not None]
    assert found["times"] == [
        sum(word in plan.problem.words[n] for n in chosen) for word in plan.met
    ]
    assert (not found["faults"]) == holds(plan.problem, tuple(by_hand))
    assert ask("sums.planCover", data, list(plan.order))["faults"] == []


def test_all_headings_have_words_that_a_plan_can_miss() -> None:
    every = bare("every", words=HEADINGS)
    assert set(planned([every], asked()).met) == {
        (heading, word) for heading, words in HEADINGS.items() for word in words
    }
