"""What is held still after a shape keeps that shape; a word for a shape of its own wins."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from build_tools.body.poses import BODIES, moved
from build_tools.model.dance import Action
from build_tools.views.dance.left_open import drawn_actions
from build_tools.views.dance.moves_before import moves_before
from build_tools.views.diagrams.body_views import view_of
from build_tools.views.diagrams.body_words import body_in_words
from tests.support.sound_bank import whole_bank

LEAN = Action("gesture", Fraction(4), "lean", level="middle", direction="backwards")
STILL = Action("stillness", Fraction(2), "taut", level="middle", dynamics=("strong", "bound"))
EASE = Action("transfer", Fraction(2), "ease", level="middle to high")


def test_a_stillness_without_a_shape_holds_the_one_before_it() -> None:
    for body in BODIES:
        leant, held = moved(LEAN, None, body), moved(STILL, LEAN, body)
        assert held.start == held.end == held.shown == replace(leant.end, turned=0.0)
        assert held.end != moved(STILL, None, body).end, "once it stood upright"


def test_what_is_held_is_seen_from_where_the_shape_was() -> None:
    """An adviser saw a lean held taut as one who stands upright and is turned to us."""
    for body in BODIES:
        leant, held = moved(LEAN, None, body), moved(STILL, LEAN, body)
        assert view_of(held) == view_of(leant) != view_of(moved(STILL, None, body))


def test_an_arm_that_steps_are_told_to_hold_out_is_out_all_through_them() -> None:
    """An adviser saw a link let go before a lean: the arm hung while the feet stepped."""
    back = Action("travel", Fraction(2), "lengthen", level="middle", direction="backwards")
    held = replace(back, body_part="one hand", step="walk", steps=Fraction(1), size="small")
    for body in ("standing", "chair"):
        poses = [one.pose for one in moved(held, None, body).keys.moments]
        assert all(pose.right_arm.raised > 80 > 20 > pose.left_arm.raised for pose in poses)
    assert moved(replace(held, body_part=None)).end.right_arm.raised < 20
    assert body_in_words(moved(held)) == "One small step backwards, one arm held out"
    leant = moved(replace(LEAN, body_part="one arm"), held)
    assert leant.start.right_arm.raised > 80
    assert leant.end.right_arm.raised > 80 > moved(LEAN).end.right_arm.raised
    assert body_in_words(leant) == (
        "Lean backwards the width of a hand, the feet still, one arm held out"
    )


def test_who_comes_up_from_a_lean_with_an_arm_held_out_has_not_let_go() -> None:
    """A teacher saw the link dropped three counts before it opens: both arms hung as they rose."""
    risen = moved(replace(EASE, body_part="one arm"), STILL)
    assert risen.end.right_arm.raised > 80 > 20 > risen.end.left_arm.raised
    assert view_of(risen) == view_of(moved(LEAN))
    assert body_in_words(risen) == "Rise, one arm held out, from half high to high"
    assert moved(EASE, STILL).end.right_arm.raised < 80


def test_tall_and_small_is_narrow_with_the_arms_round_the_body() -> None:
    """A teacher saw a twisted pod with its arms in the air, so that the burst was no change."""
    tall = Action("stillness", Fraction(2), "tight", level="high", dynamics=("strong",))
    small = moved(replace(tall, size="small")).shown
    assert moved(tall).shown.right_arm.raised > 150
    assert small.right_arm.raised < 60 < small.right_arm.elbow
    assert small.hips == moved(tall).shown.hips


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


def test_a_held_shape_is_said_to_be_the_same() -> None:
    assert body_in_words(moved(STILL, LEAN)) == "Still, in the same shape, strongly, held back"
    assert body_in_words(moved(STILL)).startswith("Still, standing")


def test_who_goes_sideways_to_a_partner_is_not_told_a_side() -> None:
    """Partners face the front side by side: one goes right and the other left."""
    stick = Action("travel", Fraction(3), "stick", direction="sideways", towards="partner")
    stick = replace(stick, step="side-step", steps=Fraction(3), size="small")
    assert "towards your partner" in body_in_words(moved(stick))
    assert "right" not in body_in_words(moved(stick))
    assert "to the left" in body_in_words(moved(replace(stick, side="left")))


def test_a_rise_lifts_the_arms_only_where_it_says_so() -> None:
    rise = Action("transfer", Fraction(2), "rise", level="low to high")
    up = moved(replace(rise, size="big")).end
    assert moved(rise).end.right_arm.raised < 60 < 150 < up.right_arm.raised


def test_a_part_that_pupils_choose_is_known_as_theirs() -> None:
    (unit,) = (one for one in whole_bank().units if one.slug == "rock-pool")
    before = drawn_actions(unit.dance, "anemone")
    for name, places in (("new-anemone", (0, 1)), ("anemone-snap", (0,))):
        actions = drawn_actions(unit.dance, name)
        assert all("body_part" in actions[n].chosen for n in places)
        assert [actions[n].body_part for n in places] == ["elbows"] * len(places)
    assert before[0].body_part == "hands"
    assert not before[0].chosen
    assert [action.kind for action in drawn_actions(unit.dance, "new-anemone")] == [
        action.kind for action in before
    ]


def test_a_shape_half_high_is_said_as_it_is_drawn() -> None:
    """Neither tall nor curled up small: the knees are bent, and the arms round the body."""
    tight = replace(STILL, word="tight", size="small")
    grip = replace(STILL, word="grip", size="small")
    for still in (tight, grip):
        said = body_in_words(moved(still))
        assert "tall" not in said
        assert "curled up" not in said
        assert "knees" in said
        assert "knees" not in body_in_words(moved(still, None, "chair"))
    assert "tall and narrow" in body_in_words(moved(replace(tight, level="high")))
    assert "curled up small" in body_in_words(moved(replace(grip, level="low")))


def test_arms_thrown_forwards_to_high_slant_up_and_out() -> None:
    """An adviser saw a throw over a gap straight up, then level: hands above the head, ahead."""
    cast = Action("gesture", Fraction(1), "cast", level="middle to high", direction="forwards")
    thrown = replace(cast, body_part="arms")
    for body in BODIES:
        arm = moved(thrown, None, body).shown.right_arm
        assert 100 < arm.raised < 160, "between level, 90, and straight up, 180"
        assert arm.plane > 45, "ahead and not to the side"
        level = moved(replace(thrown, level="middle"), None, body).shown.right_arm
        assert level.raised < 100
