"""Laws of putting a class into groups, here and in a page's script, and how they are said."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.unit import Unit
from build_tools.movement.class_groups import groups
from build_tools.views.lesson.class_groups import class_groups, group_size, groupings_known
from build_tools.views.lesson.step_facts import step_facts
from build_tools.views.words.groups_in_words import groups_in_words
from tests.sums.lessons import GROUPINGS
from tests.support.page_script import ask, page_script
from tests.support.sound_bank import every_unit, whole_bank

PUPILS = st.integers(1, 120)
SIZES = st.integers(1, 6)
PAIRS_MAKE_FOURS = ("alone", "pairs", "fours")
PAIRS_MAKE_SIXES = ("pairs", "whole class", "sixes")
THREES_MAKE_SIXES = ("threes", "sixes")


def every_way(pupils: int, fewest: int, most: int | None = None) -> Iterator[tuple[int, ...]]:
    """Every way to put pupils into groups of `fewest` at least, larger groups first."""
    if pupils == 0:
        yield ()
    for size in range(min(pupils, most or pupils), fewest - 1, -1):
        for rest in every_way(pupils - size, fewest, size):
            yield (size, *rest)


def off(sizes: Sequence[int], size: int) -> int:
    return sum(abs(one - size) for one in sizes)


def test_the_page_makes_the_groups_that_rules_and_printed_pages_count() -> None:
    """Every size of class, in lessons where each grouping follows each other one."""
    orders = [
        (*before, first, second)
        for before in ((), ("pairs",), ("threes",))
        for first in GROUPINGS
        for second in GROUPINGS
    ]
    cases = [
        (order, grouping, pupils)
        for order in orders
        for grouping in GROUPINGS
        for pupils in (*range(35), 47, 60, 119, 120)
    ]
    found = page_script().answers([("sums.classGroups", case) for case in cases])
    differing = [
        case for case, one in zip(cases, found, strict=True) if tuple(one) != class_groups(*case)
    ]
    assert len(cases) > 50_000
    assert differing == []


@given(PUPILS, SIZES)
def test_every_pupil_is_in_one_group_and_sizes_differ_by_one_at_most(
    pupils: int, size: int
) -> None:
    found = groups(pupils, size)
    assert sum(found) == pupils
    assert max(found) - min(found) <= 1
    assert list(found) == sorted(found, reverse=True)


@given(PUPILS, st.integers(2, 6))
def test_nobody_is_alone_in_a_class_of_two_or_more(pupils: int, size: int) -> None:
    assert min(groups(pupils, size)) > 1 or pupils == 1


@pytest.mark.parametrize("size", [2, 3, 4, 5])
def test_no_other_way_is_nearer_to_the_size(size: int) -> None:
    for pupils in range(2, 25):
        found = groups(pupils, size)
        ways = list(every_way(pupils, 2))
        assert off(found, size) == min(off(way, size) for way in ways)
        as_near = [
            way for way in ways if off(way, size) == off(found, size) and way[0] - way[-1] <= 1
        ]
        assert len(found) == max(len(way) for way in as_near), "a tie goes to the smaller groups"


def ways_to_join(parts: Sequence[int]) -> set[tuple[int, ...]]:
    """Every way to join whole parts into groups, by the sizes of the groups, the larger first."""
    if not parts:
        return {()}
    first, *rest = parts
    found = set()
    for way in ways_to_join(rest):
        found.add(tuple(sorted((first, *way), reverse=True)))
        for place, size in enumerate(way):
            joined = (*way[:place], size + first, *way[place + 1 :])
            found.add(tuple(sorted(joined, reverse=True)))
    return found


@pytest.mark.parametrize(
    ("order", "part"),
    [(PAIRS_MAKE_FOURS, 2), (PAIRS_MAKE_SIXES, 2), (THREES_MAKE_SIXES, 3)],
    ids=["pairs to fours", "pairs to sixes", "threes to sixes"],
)
@pytest.mark.parametrize("pupils", [*range(2, 25), 26, 27])
def test_pairs_and_threes_that_join_are_never_torn_apart(
    order: tuple[str, ...], part: int, pupils: int
) -> None:
    """No other way to join them is nearer to the size, but one that leaves a pair to itself."""
    found = class_groups(order, order[-1], pupils)
    size = group_size(order[-1], pupils)
    ways = ways_to_join(groups(pupils, part))
    assert found in ways
    not_alone = [way for way in ways if way.count(part) == 0 or len(way) == 1 or pupils < 2 * part]
    assert off(found, size) <= min(off(way, size) for way in not_alone)


@pytest.mark.parametrize(
    ("order", "pupils", "words"),
    [
        (PAIRS_MAKE_FOURS, 24, "six fours"),
        (PAIRS_MAKE_FOURS, 25, "five fours and one five"),
        (PAIRS_MAKE_FOURS, 26, "five fours and one six"),
        (PAIRS_MAKE_FOURS, 27, "six fours and one three"),
        (PAIRS_MAKE_FOURS, 30, "six fours and one six"),
        (PAIRS_MAKE_SIXES, 30, "five sixes"),
        (PAIRS_MAKE_SIXES, 26, "three sixes and one group of 8"),
        (THREES_MAKE_SIXES, 27, "three sixes and one group of 9"),
        (("fours", "pairs"), 30, "six fours and two threes"),
        (("threes", "fours"), 30, "six fours and two threes"),
        (("pairs", "fours", "pairs"), 30, "six fours and one six"),
    ],
)
def test_groups_that_join_in_words(order: tuple[str, ...], pupils: int, words: str) -> None:
    grouping = next(one for one in order if one in ("fours", "sixes"))
    assert ask("sums.groupsInWords", class_groups(order, grouping, pupils)) == words


@pytest.mark.parametrize(
    ("pupils", "size", "words"),
    [
        (27, 4, "six fours and one three"),
        (25, 2, "eleven pairs and one three"),
        (26, 4, "five fours and two threes"),
        (25, 4, "five fours and one five"),
        (30, 3, "ten threes"),
        (1, 2, "one pupil alone"),
        (28, 1, "twenty-eight pupils alone"),
        (27, 14, "one group of 14 and one group of 13"),
        (0, 4, "nobody"),
    ],
)
def test_groups_in_words(pupils: int, size: int, words: str) -> None:
    assert ask("sums.groupsInWords", groups(pupils, size)) == words


@given(PUPILS, SIZES)
def test_numbering_off_gives_these_very_sizes(pupils: int, size: int) -> None:
    found = groups(pupils, size)
    numbers = [n % len(found) for n in range(pupils)]
    assert sorted((numbers.count(n) for n in range(len(found))), reverse=True) == list(found)


@pytest.mark.parametrize(
    ("order", "grouping", "pupils", "words"),
    [
        (("alone",), "alone", 3, "Find a space of your own."),
        (("whole class",), "whole class", 9, "All together."),
        (("alone", "pairs"), "pairs", 7, "Turn to the nearest person. If one pupil is "
         "left, make a three."),
        (("pairs",), "pairs", 4, "Turn to the nearest person."),
        (("half class",), "half class", 27, "Make two groups, one on each side of the hall: "
         "fourteen here, and thirteen there."),
        (("alone", "fours"), "fours", 11, "Number off from one to three, and start again at one. "
         "Stand with everyone who has your number."),
        (("pairs", "fours"), "fours", 24, "Join the nearest pair to make a four."),
        (("pairs", "fours"), "fours", 25, "Join the nearest pair to make a four. The three joins a "
         "pair to make a five."),
        (("pairs", "fours"), "fours", 27, "Join the nearest pair to make a four. The three stays a "
         "three."),
        (("pairs", "fours"), "fours", 30, "Join the nearest pair to make a four. If one pair is "
         "left, it joins a four to make a six."),
        (("pairs", "alone", "fours"), "fours", 24, "Find your partner, then join the nearest pair "
         "to make a four."),
        (("pairs", "sixes"), "sixes", 26, "Join two other pairs to make a six. That makes three "
         "sixes and one group of 8."),
        (("threes", "sixes"), "sixes", 30, "Join the nearest three to make a six."),
    ],
)  # fmt: skip
def test_the_sentence_that_makes_them(
    order: tuple[str, ...], grouping: str, pupils: int, words: str
) -> None:
    assert ask("sums.groupsSentence", order, grouping, pupils) == words


@given(st.integers(8, 120))
def test_a_sentence_for_pairs_that_join_names_every_other_group_there_is(pupils: int) -> None:
    said = ask("sums.groupsSentence", PAIRS_MAKE_FOURS[1:], "fours", pupils)
    others = {size for size in class_groups(PAIRS_MAKE_FOURS, "fours", pupils) if size != 4}
    named = {3: "stays a three", 5: "make a five", 6: "make a six"}
    assert {size for size, words in named.items() if words in said} == others


def test_what_odd_groups_do_is_said_by_their_size() -> None:
    said = {"3": "In a three, two ask together.", "5": "In a five, the fifth copies the first."}

    def odd_groups(*given: object) -> str:
        return str(ask("sums.oddGroups", *given, said))

    assert odd_groups((3, 2, 2), 2) == said["3"]
    assert odd_groups((2, 2), 2) == ""
    assert odd_groups((5, 4, 3), 4) == f"{said['5']} {said['3']}"
    assert odd_groups((6, 4, 4), 4) == ""


@given(st.integers(0, 120), st.integers(1, 8))
def test_groups_are_said_as_the_printed_pages_say_them(pupils: int, size: int) -> None:
    found = groups(pupils, size)
    assert ask("sums.groupsInWords", found) == groups_in_words(found)


@given(st.integers(2, 60), st.sampled_from((("pairs",), ("pairs", "fours"), ("fours",), ())))
def test_halves_of_a_class_cut_no_group(pupils: int, known: tuple[str, ...]) -> None:
    halves = ask("sums.halves", (*known, "half class"), pupils)
    whole = class_groups(known, known[-1], pupils) if known else (1,) * pupils
    assert sorted(size for half in halves for size in half) == sorted(whole)
    many = [sum(half) for half in halves]
    assert max(many) - min(many) <= max(whole) or len(many) == 1


@pytest.mark.parametrize(
    ("number", "words"),
    [(0, "no"), (1, "one"), (19, "nineteen"), (20, "twenty"), (47, "forty-seven"), (100, "100")],
)
def test_numbers_in_words(number: int, words: str) -> None:
    assert ask("sums.numberInWords", number) == words


def test_how_many_a_grouping_puts_together() -> None:
    named = ("alone", "sixes", "half class", "whole class")
    assert [group_size(one, 27) for one in named] == [1, 6, 14, 27]
    assert [ask("sums.groupSize", one, 27) for one in named] == [1, 6, 14, 27]


@pytest.mark.parametrize("unit", every_unit(), ids=lambda unit: str(unit.slug))
def test_groups_found_again_are_those_that_were_first_made(unit: Unit) -> None:
    first: dict[str, tuple[int, ...]] = {}
    for lesson in unit.lessons:
        known = groupings_known(unit, lesson)
        for grouping in (step.grouping for step in lesson.steps):
            made = class_groups(known, grouping, 30)
            assert made == first.setdefault(grouping, made), (lesson.number, grouping)


def test_fours_of_pairs_are_fours_of_pairs_in_a_lesson_without_pairs() -> None:
    known, today = ["pairs", "fours", "alone", "fours"], ["alone", "fours"]
    assert ask("sums.groupsInWords", ask("sums.classGroups", known, "fours", 30)) == (
        "six fours and one six"
    )
    assert ask("sums.groupsSentence", known, "fours", 30, today) == (
        "Find a partner, then join the nearest pair to make a four. "
        "If one pair is left, it joins a four to make a six."
    )


def test_pairs_within_fours_make_no_new_fours() -> None:
    assert class_groups(("fours", "pairs", "fours"), "fours", 30) == class_groups(
        ("fours",), "fours", 30
    )


def test_who_stands_beside_a_partner_turns_to_no_other() -> None:
    """A teacher: the nearest belongs to the next pair, 1.8 metres away, the partner is 2.3."""
    order = ("alone", "pairs")
    assert ask("sums.groupsSentence", order, "pairs", 28, order, ("pairs",)) == (
        "Turn to your own partner."
    )
    assert ask("sums.groupsSentence", order, "pairs", 28, order, ("fours",)) == (
        "Turn to the nearest person."
    )


def test_who_stands_on_a_spot_is_sent_to_no_space() -> None:
    """A teacher: "Find a space of your own" sends them off the spots that the steps ask for."""
    kite = next(unit for unit in whole_bank().units if unit.slug == "kite-and-string")
    facts = [
        {"number": one.number, "grouping": one.grouping, "stands": one.stands}
        for one in step_facts(kite, kite.lessons[0])
    ]
    find, stay = "Say “Find a space of your own.”", "say “Stay on your own spot.”"
    assert ask("sums.aloneSentence", facts) == f"{find} In steps 2, 3 and 4 {stay}"
    assert ask("sums.aloneSentence", [facts[0], facts[2]]) == f"{find} In step 3 {stay}"
    assert ask("sums.aloneSentence", facts[1:]) == f"S{stay[1:]}"
    assert ask("sums.aloneSentence", facts[4:]) == find
