"""Developing a motif: what each device keeps and changes.

Definitions: Blom and Chaplin, The Intimate Act of Choreography, 1982, pp. 102-104; retrograde,
accumulation and embellishment: Marchant, composition tools, Washington University in St Louis.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from build_tools.model.build_dance import ACTION_KINDS
from build_tools.model.dance import Action, Addition, Development
from build_tools.movement.development import (
    actions_of,
    develop,
    is_left_to_pupils,
    misfit,
    roots,
    total,
    what_changes,
)
from build_tools.movement.devices import DEVICES, Actions, accumulate, mirror, retrograde
from build_tools.shapes.schemas import schema
from tests.movement.strategies import PUBLISHED, actions, counts, dance, developments, motifs

FOUR = tuple(Action("gesture", Fraction(2), word=str(n)) for n in (1, 2, 3, 4))
SETTINGS = {
    "change of size": ("size", "big"),
    "change of level": ("level", "low"),
    "change of direction": ("direction", "up"),
    "change of facing": ("facing", "back"),
    "change of pathway": ("pathway", "zigzag"),
    "change of dynamics": ("dynamics", ("light",)),
    "change of body part": ("body_part", "elbows"),
}


def words(some: Actions) -> str:
    return "".join(a.word or "?" for a in some)


def changed(device: str, **fields: object) -> Development:
    return replace(Development("changed", "motif", device), **fields)  # type: ignore[arg-type]


def is_subsequence(short: Sequence[Action], long: Sequence[Action]) -> bool:
    rest = iter(long)
    return all(any(a == b for b in rest) for a in short)


def test_the_published_devices_are_there() -> None:
    rows = PUBLISHED["devices"]["rows"]
    assert len(rows) == 16
    assert {device for ours in rows.values() for device in ours} <= set(DEVICES)


def test_files_may_name_just_these_devices_and_actions() -> None:
    """Six body actions: Curriculum for Excellence EXA 1-08a (travel, turn, jump, gesture, pause,
    fall), from memory."""
    written = schema("unit")["$defs"]["development"]["properties"]["device"]["enum"]
    assert sorted(written) == sorted(DEVICES)
    branches = schema("shared")["$defs"]["action"]["oneOf"]
    assert {branch["required"][0] for branch in branches} == set(ACTION_KINDS)
    assert len(ACTION_KINDS) == 6


def test_worked_retrograde() -> None:
    assert words(retrograde(FOUR)) == "4321"
    rise = Action("travel", Fraction(4), level="low to high", direction="forwards")
    assert retrograde((rise,)) == (replace(rise, level="high to low", direction="backwards"),)


def test_each_move_of_a_retrograde_is_undone() -> None:
    """As when a film is run backwards: Blom and Chaplin, The Intimate Act of Choreography, 1982."""
    go = Action("travel", Fraction(2), direction="forwards")
    aside = Action("travel", Fraction(2), direction="sideways", side="left")
    turn = Action("turn", Fraction(2), side="right", turn_by="half")
    reach = Action("gesture", Fraction(2), direction="forwards", body_part="arms")
    meet = Action("travel", Fraction(2), direction="forwards", towards="partner")
    assert retrograde((go, aside, turn, reach, meet)) == (
        meet,
        reach,
        replace(turn, side="left"),
        replace(aside, side="right"),
        replace(go, direction="backwards"),
    )


def test_worked_accumulation() -> None:
    assert words(accumulate(FOUR)) == "1121231234"


@given(motifs)
def test_retrograde_twice_and_mirror_twice_are_the_motif(motif: Actions) -> None:
    assert retrograde(retrograde(motif)) == motif
    assert mirror(mirror(motif)) == motif
    assert retrograde(mirror(motif)) == mirror(retrograde(motif))


@given(motifs)
def test_retrograde_and_mirror_keep_counts_kinds_and_how_often_it_goes(motif: Actions) -> None:
    for other in (retrograde(motif), mirror(motif)):
        assert total(other) == total(motif)
        assert Counter((a.kind, a.counts, a.steps) for a in other) == Counter(
            (a.kind, a.counts, a.steps) for a in motif
        )
    for was, now in zip(motif, reversed(retrograde(motif)), strict=True):
        assert {was.direction, now.direction} in ({was.direction}, {"forwards", "backwards"})
    assert [a.direction for a in mirror(motif)] == [a.direction for a in motif]


@given(motifs, st.sampled_from(sorted(SETTINGS)), st.data())
def test_one_new_value_keeps_counts_and_the_other_actions(
    motif: Actions, device: str, data: st.DataObject
) -> None:
    field, value = SETTINGS[device]
    only = data.draw(st.lists(st.integers(1, len(motif)), unique=True).map(tuple))
    after = develop(motif, changed(device, only=only, **{field: value}))
    assert [a.counts for a in after] == [a.counts for a in motif]
    for number, (new, old) in enumerate(zip(after, motif, strict=True), start=1):
        if only and number not in only:
            assert new == old
        else:
            assert new == replace(old, **{field: value})  # type: ignore[arg-type]


@given(motifs, st.data())
def test_embellishment_keeps_the_motif_as_a_subsequence(
    motif: Actions, data: st.DataObject
) -> None:
    addition = st.builds(Addition, st.integers(0, len(motif)), actions)
    added = data.draw(st.lists(addition, min_size=1, max_size=4).map(tuple))
    after = develop(motif, changed("embellishment", added=added))
    assert is_subsequence(motif, after)
    assert total(after) == total(motif) + sum(a.action.counts for a in added)
    assert len(after) == len(motif) + len(added)


def test_worked_embellishment() -> None:
    extra = replace(FOUR[0], word="x")
    added = (Addition(0, extra), Addition(4, extra))
    assert words(develop(FOUR, changed("embellishment", added=added))) == "x1234x"


@given(motifs, st.data())
def test_a_fragment_is_a_contiguous_part(motif: Actions, data: st.DataObject) -> None:
    first = data.draw(st.integers(1, len(motif)))
    last = data.draw(st.integers(first, len(motif)))
    after = develop(motif, changed("fragmentation", kept=(first, last)))
    assert len(after) == last - first + 1
    assert any(motif[n : n + len(after)] == after for n in range(len(motif)))
    assert after[0] == motif[first - 1]


@given(motifs)
def test_accumulation_adds_one_each_time(motif: Actions) -> None:
    after, n = develop(motif, changed("accumulation")), len(motif)
    assert len(after) == n * (n + 1) // 2
    start = 0
    for length in range(1, n + 1):
        assert after[start : start + length] == motif[:length]
        start += length


@given(motifs, st.data())
def test_speed_is_written_as_new_counts(motif: Actions, data: st.DataObject) -> None:
    n = len(motif)
    new = data.draw(st.lists(counts, min_size=n, max_size=n).map(tuple))
    after = develop(motif, changed("change of speed", counts=new))
    assert tuple(a.counts for a in after) == new
    assert [replace(a, counts=o.counts) for a, o in zip(after, motif, strict=True)] == list(motif)


@given(motifs, st.data())
def test_rhythm_and_order_keep_the_total(motif: Actions, data: st.DataObject) -> None:
    turned = data.draw(st.permutations([a.counts for a in motif]).map(tuple))
    assert total(develop(motif, changed("change of rhythm", counts=turned))) == total(motif)
    longer = (turned[0] + 1, *turned[1:])
    assert misfit(motif, changed("change of rhythm", counts=longer)) is not None
    order = data.draw(st.permutations(range(1, len(motif) + 1)).map(tuple))
    after = develop(motif, changed("change of order", order=order))
    assert Counter(after) == Counter(motif)
    assert after[0] == motif[order[0] - 1]


@given(motifs, motifs, st.integers(2, 4))
def test_repetition_and_combination_are_one_after_the_other(
    motif: Actions, other: Actions, times: int
) -> None:
    assert develop(motif, changed("repetition", times=times)) == motif * times
    assert develop(motif, changed("combination", joined_to="other"), other) == motif + other


@given(motifs, actions, st.data())
def test_replacing_and_leaving_out_keep_the_rest(
    motif: Actions, new: Action, data: st.DataObject
) -> None:
    number = data.draw(st.integers(1, len(motif)))
    after = develop(motif, changed("replacing an action", replaced=number, replacement=new))
    assert after == (*motif[: number - 1], new, *motif[number:])
    assume(len(motif) > 1)
    left = develop(motif, changed("leaving out", left_out=(number,)))
    assert left == (*motif[: number - 1], *motif[number:])


@given(motifs, st.sampled_from(DEVICES))
def test_what_pupils_decide_keeps_actions_and_counts(motif: Actions, device: str) -> None:
    own = {"retrograde": retrograde, "mirror": mirror, "accumulation": accumulate}
    after = develop(motif, changed(device, choice="a-choice"))
    assert after == (own[device](motif) if device in own else motif)


@given(motifs, developments, st.sampled_from([(), FOUR]))
def test_a_misfit_is_said_exactly_where_it_cannot_be_danced(
    motif: Actions, development: Development, other: Actions
) -> None:
    why = misfit(motif, development, other)
    if why is None:
        after = develop(motif, development, other)
        assert after
        assert total(after) > 0
        assert any(a.kind == b.kind for a in after for b in motif) or len(motif) == 1
    else:
        assert not why.endswith(".")
        with pytest.raises(ValueError) as raised:  # noqa: PT011 - the text is compared below
            develop(motif, development, other)
        assert str(raised.value) == why


def test_an_own_variation_is_left_to_pupils_and_wants_their_choice() -> None:
    own = changed("own variation", choice="what-changes")
    assert develop(FOUR, own) == FOUR
    assert is_left_to_pupils(own)
    assert what_changes(FOUR, own)
    assert "choice" in str(misfit(FOUR, changed("own variation")))


def test_developments_of_developments_and_their_roots() -> None:
    made = dance(
        "A",
        [],
        motifs={"one": FOUR, "two": FOUR[:2]},
        developments=(
            Development("back", "one", "retrograde"),
            Development("both", "back", "combination", joined_to="two"),
            Development("round", "circle", "mirror"),
            Development("circle", "round", "mirror"),
        ),
    )
    assert words(actions_of(made, "both")) == "432112"
    assert roots(made, "both") == {"one", "two"}
    assert roots(made, "one") == {"one"}
    assert roots(made, "circle") == roots(made, "nobody") == frozenset()
    with pytest.raises(ValueError, match="goes round in a circle"):
        actions_of(made, "circle")
    with pytest.raises(KeyError):
        actions_of(made, "nobody")
