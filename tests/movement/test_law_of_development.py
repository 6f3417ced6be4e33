"""A development differs from its motif in a named dimension and keeps at least one action.

Source: Smith-Autard, Dance Composition, chapter abstracts (Taylor & Francis,
10.4324/9781315060033-7): repetition in dance exists as development and variation, and contrast
needs new material. A mirror and the devices of standing change what a motif does not write.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from build_tools.model.dance import Action, Addition, Development
from build_tools.movement.development import develop, kept, misfit, what_changes
from build_tools.movement.devices import Actions
from tests.movement.strategies import actions, counts, motifs

WAVE = (
    Action("transfer", Fraction(2), "rock", level="low"),
    Action("travel", Fraction(2), "rush", direction="sideways", dynamics=("light", "sustained")),
    Action("jump", Fraction(2), "break", size="big"),
)
DIMENSIONS = {"action", "space", "dynamics", "time", "relationships"}


def by(device: str, **fields: object) -> Development:
    return replace(Development("changed", "wave", device), **fields)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("development", "changed"),
    [
        (by("change of speed", counts=(Fraction(4),) * 3), {"time"}),
        (by("change of size", size="small"), {"space"}),
        (by("change of level", level="high", only=(1,)), {"space"}),
        (by("change of dynamics", dynamics=("strong",)), {"dynamics"}),
        (by("change of body part", body_part="elbows"), {"action"}),
        (by("retrograde"), {"action", "space"}),
        (by("mirror"), {"space"}),
        (by("repetition", times=2), {"action"}),
        (by("change of formation", formation="line"), {"relationships"}),
        (by("change of size", choice="size"), {"space"}),
        (by("change of order", choice="order"), {"action"}),
    ],
    ids=lambda value: value.device if isinstance(value, Development) else None,
)
def test_what_each_device_changes(development: Development, changed: set[str]) -> None:
    assert what_changes(WAVE, development) == changed


@pytest.mark.parametrize(
    "development",
    [
        by("change of speed", counts=(Fraction(2),) * 3),
        by("change of order", order=(1, 2, 3)),
        by("fragmentation", kept=(1, 3)),
        by("change of level", level="low", only=(1,)),
        # glide is light, sustained and direct; without direct it is the same as what is written
        by("change of dynamics", dynamics=("sustained", "light"), only=(2,)),
        by("replacing an action", replaced=3, replacement=WAVE[2]),
    ],
    ids=lambda development: development.device,
)
def test_a_change_that_changes_nothing_is_a_repetition(development: Development) -> None:
    assert what_changes(WAVE, development) == frozenset()


def test_a_motif_of_one_action_has_no_order_to_turn_round() -> None:
    assert what_changes(WAVE[2:], by("retrograde")) == frozenset()
    assert what_changes(WAVE[2:], by("accumulation")) == frozenset()


@st.composite
def worked(draw: st.DrawFn) -> tuple[Actions, Actions, Development]:
    """A motif, what it becomes, and a development that can be carried out on it."""
    motif = draw(motifs)
    number = st.integers(1, len(motif))
    first, last = sorted((draw(number), draw(number)))
    new = draw(actions)
    development = draw(
        st.sampled_from(
            (
                by("repetition", times=2),
                by("retrograde"),
                by("mirror"),
                by("accumulation"),
                by("change of speed", counts=tuple(draw(counts) for _ in motif)),
                by("change of level", level="low", only=(first,)),
                by("change of dynamics", dynamics=("strong",)),
                by("change of order", order=tuple(draw(st.permutations(range(1, last + 1))))),
                by("replacing an action", replaced=first, replacement=new),
                by("embellishment", added=(Addition(first, new),)),
                by("fragmentation", kept=(first, last)),
                by("change of relationship", relationship="canon"),
            )
        )
    )
    assume(misfit(motif, development) is None)
    return motif, develop(motif, development), development


@given(worked())
def test_nothing_changes_only_where_the_actions_stay(
    one: tuple[Actions, Actions, Development],
) -> None:
    motif, after, development = one
    changed = what_changes(motif, development)
    assert changed <= DIMENSIONS
    unwritten = development.device in ("mirror", "change of relationship")
    assert bool(changed) == (after != motif or unwritten)


@given(worked())
def test_only_replacing_the_one_action_can_keep_nothing(
    one: tuple[Actions, Actions, Development],
) -> None:
    motif, after, development = one
    if not kept(motif, after):
        assert development.device == "replacing an action"
        assert len(motif) == 1


def test_what_is_kept_keeps_its_kind_and_its_word() -> None:
    roll = Action("turn", Fraction(2), "roll")
    assert (
        kept(WAVE, develop(WAVE, by("replacing an action", replaced=1, replacement=roll)))
        == (WAVE[1:])
    )
    assert kept(WAVE[:1], (roll,)) == ()
    assert kept(WAVE[:1], (replace(WAVE[0], word="sway"),)) == ()
    assert kept(WAVE[:1], (replace(WAVE[0], word=None, level="high"),)) == WAVE[:1]
    added = by("embellishment", added=(Addition(0, roll),))
    assert kept(WAVE, develop(WAVE, added)) == WAVE
