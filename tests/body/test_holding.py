"""What is held still after a shape keeps that shape; a word for a shape of its own wins."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from build_tools.body.poses import BODIES, moved
from build_tools.model.dance import Action
from build_tools.views.dance.moves_before import moves_before
from tests.support.sound_bank import whole_bank

LEAN = Action("gesture", Fraction(4), "lean", level="middle", direction="backwards")
STILL = Action("stillness", Fraction(2), "taut", level="middle", dynamics=("strong", "bound"))
EASE = Action("transfer", Fraction(2), "ease", level="middle to high")


def test_a_stillness_without_a_shape_holds_the_one_before_it() -> None:
    for body in BODIES:
        leant, held = moved(LEAN, None, body), moved(STILL, LEAN, body)
        assert held.start == held.end == held.shown == replace(leant.end, turned=0.0)
        assert held.end != moved(STILL, None, body).end, "once it stood upright"


def test_a_shape_of_its_own_is_not_held_over() -> None:
    travelled = Action("travel", Fraction(2), "go", level="middle", direction="forwards")
    for still, before in (
        (replace(STILL, word="star"), LEAN),
        (replace(STILL, word="rest"), LEAN),
        (replace(STILL, level="low"), LEAN),
        (replace(STILL, body_part="arms"), LEAN),
        (STILL, travelled),
    ):
        assert moved(still, before).end == moved(still).end


def test_the_next_move_begins_in_the_shape_that_was_held() -> None:
    assert moves_before((LEAN, STILL, EASE)) == (None, LEAN, LEAN)
    assert moved(EASE, LEAN).start == moved(STILL, LEAN).end
    assert moves_before((STILL, LEAN, replace(STILL, word="star"), EASE))[-1] is not LEAN


def test_in_every_published_motif_each_move_begins_where_the_last_ended() -> None:
    for unit in whole_bank().units:
        for motif in unit.dance.motifs.values():
            ended = None
            for action, before in zip(motif.actions, moves_before(motif.actions), strict=True):
                done = moved(action, before)
                assert ended is None or done.start == replace(ended, turned=0.0)
                ended = done.end
