"""The laws of the score: at every count everybody does one thing, and a swap twice is no swap."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Action, Choice, Dance, Development, Groups, Passage, Section
from build_tools.movement.roles import place_danced
from build_tools.views.dance.left_open import OPEN, drawn_actions, is_left_open
from build_tools.views.dance.parts_over_counts import (
    HOLD,
    JOBS,
    PartsOverCounts,
    RowSpan,
    parts_over_counts,
)
from build_tools.views.words.doing import doing_in_words, odd_group_in_words
from tests.movement.strategies import FITS, dance, section
from tests.support.sound_bank import real_unit, whole_bank

MOTIFS = {
    name: (Action("travel", Fraction(counts), f"go {name}"),)
    for name, counts in (("one", 4), ("two", 8), ("three", 3))
}
ROW = Groups(4, {"odds": (1, 3), "evens": (2, 4), "first": (1,), "last": (4,)})
PAIR = Groups(2, {"ones": (1,), "twos": (2,)})
APART = ("question and answer", "side by side")


@st.composite
def sections(draw: st.DrawFn) -> Section:
    """A section with groups and roles, or without, of passages that are spelt out."""
    groups = draw(st.sampled_from((None, ROW, PAIR)))
    danced = draw(st.lists(passages(groups), min_size=1, max_size=4))
    made = section("A", draw(st.integers(1, 200)), *danced)
    return replace(made, groups=groups)


@st.composite
def passages(draw: st.DrawFn, groups: Groups | None) -> Passage:
    fit = draw(st.sampled_from(FITS))
    what = tuple(draw(st.lists(st.sampled_from(list(MOTIFS)), min_size=2, max_size=2)))
    parts = draw(st.integers(2, 5)) if fit not in ("unison", *APART) else None
    roles: tuple[str, ...] = ()
    if groups is not None and draw(st.booleans()) and fit in (*APART, "canon", "canon in turn"):
        names = list(groups.roles)
        roles = tuple(draw(st.lists(st.sampled_from(names), min_size=2, max_size=2, unique=True)))
        parts = 2 if fit not in APART else None
    return Passage(
        what=what, fit=fit, parts=parts, roles=roles,
        times=draw(st.integers(1, 2)),
        after=Fraction(draw(st.integers(1, 9))) if fit.startswith("canon") else None,
        swap=fit in APART and draw(st.booleans()),
        others=draw(st.sampled_from(list(JOBS))),
    )  # fmt: skip


def of(made: Section) -> tuple[Dance, PartsOverCounts]:
    whole = dance("A", [made], motifs=MOTIFS)
    return whole, parts_over_counts(whole, made)


def row_of(found: PartsOverCounts, row: int) -> list[RowSpan]:
    mine = [span for span in found.everything if span.first <= row <= span.last]
    return sorted(mine, key=lambda span: span.start)


@given(sections())
def test_everybody_does_exactly_one_thing_at_every_count(made: Section) -> None:
    _, found = of(made)
    assert len(found.names) == found.rows
    for row in range(1, found.rows + 1):
        mine = row_of(found, row)
        # roles that share places may be given two things at once; a rule says so
        if made.groups is not None and overlap(mine):
            assert {"first", "last"} & {r for p in made.danced for r in p.roles}
            continue
        assert mine[0].start == 0
        assert mine[-1].end == found.counts
        assert all(one.end == two.start for one, two in pairwise(mine))


def overlap(mine: list[RowSpan]) -> bool:
    return any(one.end > two.start for one, two in pairwise(mine))


@given(sections(), st.integers(0, 400))
def test_at_a_count_it_is_the_span_that_covers_it(made: Section, halves: int) -> None:
    _, found = of(made)
    count = Fraction(halves, 2)
    for row in range(1, found.rows + 1):
        now = found.at(row, count)
        assert (now is None) == (count >= found.counts)
        assert now is None or now.start <= count < now.end


@given(st.sampled_from(APART), st.sampled_from((ROW, PAIR)), st.booleans())
def test_a_swap_is_the_same_with_its_roles_turned_and_twice_is_no_swap(
    fit: str, groups: Groups, others: bool
) -> None:
    roles = ("odds", "evens") if groups is ROW else ("ones", "twos")
    once = Passage(("one", "two"), fit, roles=roles, others="watch" if others else HOLD)
    turned = replace(once, roles=roles[::-1])
    swapped = of(replace(section("A", 1, replace(once, swap=True)), groups=groups))[1]
    both = of(replace(section("A", 1, once, turned), groups=groups))[1]
    assert by_count(swapped) == by_count(both)
    again = replace(turned, roles=turned.roles[::-1])
    assert again == once
    back = of(replace(section("A", 1, replace(turned, swap=True)), groups=groups))[1]
    half = swapped.counts / 2
    for role in roles:
        # what is danced after the swap of a swap is what was danced at first
        first = swapped.at(swapped.names.index(role) + 1, Fraction(0))
        last = back.at(back.names.index(role) + 1, half)
        assert first is not None
        assert last is not None
        assert (first.what, first.job) == (last.what, last.job)


def by_count(found: PartsOverCounts) -> list[list[tuple[str, bool]]]:
    rows = range(1, found.rows + 1)
    spans = [[found.at(row, Fraction(n)) for row in rows] for n in range(int(found.counts))]
    return [[(s.what, s.job) for s in now if s is not None] for now in spans]


def test_the_tail_of_a_canon_holds_and_who_waits_has_the_others_job() -> None:
    canon = Passage(("one",), "canon", parts=3, after=Fraction(2), others="watch")
    _, found = of(section("A", 12, canon))
    said = [[(s.what, int(s.start), int(s.end)) for s in row_of(found, row)] for row in (1, 2, 3)]
    assert said == [
        [("one", 0, 4), ("hold", 4, 8), ("hold", 8, 12)],
        [("watch", 0, 2), ("one", 2, 6), ("hold", 6, 8), ("hold", 8, 12)],
        [("watch", 0, 4), ("one", 4, 8), ("hold", 8, 12)],
    ]


def test_an_answer_is_watched_and_a_row_is_a_role() -> None:
    asks = Passage(("one", "two"), "question and answer", roles=("twos", "ones"), others="echo")
    _, found = of(replace(section("A", 12, asks), groups=PAIR))
    assert found.names == ("ones", "twos"), "as the groups name them, whoever begins"
    assert [(doing_in_words(s), s.first) for s in found.everything] == [
        ("echo it, small", 1), ("one", 2), ("two", 1), ("echo it, small", 2),
    ]  # fmt: skip


def test_fewer_parts_than_rows_leave_nobody_out() -> None:
    """Rows 1 and 3 are the odd numbers where a row of four dances in two parts."""
    two = Passage(("one", "two"), "side by side", parts=2)
    four = Passage(("one",), "canon in turn", parts=4)
    _, found = of(section("A", 24, two, four))
    assert [found.at(row, Fraction(0)) for row in (1, 2)] == [
        found.at(row, Fraction(0)) and replace(span, first=row - 2, last=row - 2)
        for row in (3, 4)
        for span in (found.at(row, Fraction(0)),)
        if span is not None
    ]


@given(st.integers(1, 8), st.integers(1, 9))
def test_one_over_does_what_the_first_does_and_a_missing_ones_part_is_empty(
    size: int, dancers: int
) -> None:
    groups = Groups(size, {})
    danced = [place for n in range(1, dancers + 1) for place in place_danced(n, groups, dancers)]
    assert len(danced) == dancers
    assert set(danced) == set(range(1, min(size, dancers) + 1))
    if dancers == size + 1:
        assert danced[-1] == 1


def said_of_groups(groups: Groups | None, *danced: Passage, notes: str = "") -> tuple[str, ...]:
    unit = replace(real_unit(), notes=notes)
    return odd_group_in_words(unit, replace(section("A", 24, *danced), groups=groups))


TURNS = Passage(("one",), "canon in turn", parts=4)
ALL = Passage(("one",), "unison")


def test_an_odd_group_is_said() -> None:
    assert said_of_groups(PAIR, ALL) == ("A group of 3: dancer 3 does what dancer 1 does.",)
    over, missing = said_of_groups(ROW, TURNS)
    assert over == "A group of 5: dancer 5 does what dancer 1 does."
    assert missing.startswith("A group of 3: the part of last is counted aloud; whoever answers it")
    assert said_of_groups(None, ALL) == said_of_groups(Groups(1, {}), ALL) == ()


def test_nobody_waits_where_all_dance_at_once() -> None:
    four = Groups(4, {"ones": (1, 3), "twos": (2, 4)})
    assert said_of_groups(four, ALL) == ("A group of 5: dancer 5 does what dancer 1 does.",)
    assert len(said_of_groups(four, TURNS)) == 2


def test_the_authors_own_words_come_first() -> None:
    notes = (
        "Pairs make fours. In a five, the fifth stands behind 4 and does as 4 does. In a three,\n"
        "look level."
    )
    assert said_of_groups(ROW, TURNS, notes=notes) == (
        "In a five, the fifth stands behind 4 and does as 4 does.",
        "In a three, look level.",
    )


WALK = (Action("travel", Fraction(4), "walk"), Action("jump", Fraction(2), "hop"))


def open_dance(*developments: Development) -> Dance:
    made = dance("A", [section("A", 12)], motifs={"walk": WALK}, developments=developments)
    choice = Choice("which", "the order", ("walk first", "hop first"), "pairs", "Walk first.")
    return replace(made, choices={"which": choice})


def test_what_pupils_decide_is_blank_and_keeps_its_counts() -> None:
    own = Development("own", "walk", "change of order", choice="which")
    back = Development("back", "own", "retrograde")
    low = Development("low", "walk", "change of level", only=(2,), choice="which")
    part = Development("part", "walk", "change of body part", choice="which")
    made = open_dance(own, back, low, part)
    assert [(a.kind, int(a.counts)) for a in drawn_actions(made, "own")] == [(OPEN, 4), (OPEN, 2)]
    assert [(a.kind, int(a.counts)) for a in drawn_actions(made, "back")] == [(OPEN, 2), (OPEN, 4)]
    assert [a.kind for a in drawn_actions(made, "low")] == ["travel", OPEN]
    # how it is done is said under its boxes, and the moves are known
    assert drawn_actions(made, "walk") == WALK
    assert [
        replace(a, body_part=None, chosen=frozenset()) for a in drawn_actions(made, "part")
    ] == [*WALK]
    assert [is_left_open(made, n) for n in ("own", "back", "low", "part", "walk")] == [
        True, True, False, False, False,
    ]  # fmt: skip
    decided = Development("own", "walk", "change of order", choice="which", order=(2, 1))
    assert [a.word for a in drawn_actions(open_dance(decided), "own")] == ["hop", "walk"]


def test_what_a_five_does_along_the_row_is_told_of_the_part_that_goes_along_it() -> None:
    """An adviser of the weaving read "5 beats with 1" of parts in which all beat at once."""
    unit = next(one for one in whole_bank().units if one.slug == "weaving-shed")
    told = {
        letter: " ".join(odd_group_in_words(unit, part))
        for letter, part in unit.dance.sections.items()
    }
    assert [letter for letter, said in told.items() if "beats with" in said] == ["B"]
