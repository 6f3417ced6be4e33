"""What the wordings of safety and care find, and what they leave alone.

The sentences are made up; what each ought to mean is common practice, no source.
"""

from __future__ import annotations

import pytest

from build_tools.sentences import wording_care as care
from build_tools.sentences import wording_rights as rights
from build_tools.sentences import wording_safety as safety
from build_tools.sentences.wordings import Wording, lowered

FOUND: list[tuple[Wording, str]] = [
    (safety.FAST, "Run into the gaps."),
    (safety.FAST, "Gallop like the wind."),
    (safety.STOP_SIGNAL, "Two quick taps mean stop."),
    (safety.STOP_SIGNAL, "Two taps: all stop."),
    (safety.STOP_SIGNAL, "When the music stops, freeze."),
    (safety.STOP_SIGNAL, "Stop when I raise a hand."),
    (safety.STOP_SIGNAL, "When I pat my knees, stop."),
    (safety.STOP_SIGNAL, "Freeze when I kneel."),
    (safety.LOOK_BACK, "Look behind before you step out."),
    (safety.LOOK_BACK, "Two small steps back, looking over your shoulder."),
    (safety.LOOK_BACK, "Go back slowly."),
    (safety.LOOK_BACK, "Walk slowly back, one at a time."),
    (safety.LOOK_BACK, "Back means two small steps, after a look."),
    (safety.LOOK_BACK, "Step backwards, slowly."),
    (safety.FLOOR_CHECK, "Check the floor is dry and clear."),
    (safety.FLOOR_CHECK, "Is the floor swept?"),
    (safety.BARE_FEET, "Shoes and socks off."),
    (safety.ON_KNEES, "Sink on to your knees."),
    (safety.ON_KNEES, "Move on hands and knees."),
    (safety.ON_KNEES, "Drop to the floor."),
    (safety.AGAIN, "Hop for two minutes."),
    (safety.BACKWARDS, "Run quickly backwards."),
    (safety.CLOSE, "Weave in and out of each other."),
    (safety.SPIN, "Keep on turning."),
    (safety.PROPS_DOWN, "Lay the ribbons on the floor."),
    (care.CONTACT, "Link arms."),
    (care.CONTACT, "Lean on your partner."),
    (care.CONTACT, "Take your partner’s hand."),
    (care.CONTACT, "Lift each other."),
    (care.CONTACT, "Stand palm to palm."),
    (care.SUDDEN, "Turn the lights off."),
    (care.COSTUME, "Come dressed as a sailor."),
    (care.DEFERENCE, "Your school's risk assessment comes first."),
    (care.DEFERENCE, "Follow your school’s own policy."),
    (rights.AUDIENCE, "Show the dance to families."),
    (rights.AUDIENCE, "Parents are coming."),
    (rights.AUDIENCE, "Perform it in assembly."),
]
LEFT_ALONE: list[tuple[Wording, str]] = [
    (safety.FAST, "Run the whole dance twice."),
    (safety.FAST, "Nobody runs into the gaps."),
    (safety.FAST, "One pupil is in charge of the cards."),
    (safety.STOP_SIGNAL, "Walk eight, freeze eight."),
    (safety.STOP_SIGNAL, "When we are still, listen."),
    (safety.LOOK_BACK, "A question looks back to an earlier lesson."),
    (safety.LOOK_BACK, "A short set of moves that we keep and come back to."),
    (safety.LOOK_BACK, "Toys tick slowly back to sleep."),
    (safety.LOOK_BACK, "The taps come back, a steady walk."),
    (safety.LOOK_BACK, "Your own row, with room to pass in front and behind."),
    (safety.FLOOR_CHECK, "Draw a curve on the floor."),
    (safety.BARE_FEET, "No bare feet today."),
    (safety.ON_KNEES, "Bend your knees."),
    (safety.ON_KNEES, "Nobody crawls."),
    (safety.ON_KNEES, "Do not drop to the floor."),
    (safety.AGAIN, "Jump eight times."),
    (safety.BACKWARDS, "Read the cards backwards."),
    (safety.BACKWARDS, "Walk back to your partner."),
    (safety.CLOSE, "Dance it all together."),
    (safety.SPIN, "Look at the sycamore spinner."),
    (safety.PROPS_DOWN, "Put the cards in order."),
    (safety.PROPS_DOWN, "Sit down on the floor."),
    (care.CONTACT, "Hold your hands high."),
    (care.CONTACT, "Hold hands high."),
    (care.CONTACT, "Catch your partner's eye."),
    (care.CONTACT, "Pull your partner's idea apart."),
    (care.CONTACT, "Touch it to remember it."),
    (care.CONTACT, "Lean away from your partner."),
    (care.CONTACT, "Nobody holds hands."),
    (care.CONTACT, "Push the other way."),
    (care.SUDDEN, "Light, sudden steps."),
    (care.SUDDEN, "Make no loud noise."),
    (care.COSTUME, "Bare feet only on a clean floor."),
    (care.DEFERENCE, "Ask at the school office."),
    (rights.AUDIENCE, "Families worked in the mill."),
    (rights.AUDIENCE, "Show it to the other half."),
]


@pytest.mark.parametrize(("what", "text"), FOUND, ids=[text for _, text in FOUND])
def test_finds(what: Wording, text: str) -> None:
    assert what.asked(lowered(text))


@pytest.mark.parametrize(("what", "text"), LEFT_ALONE, ids=[text for _, text in LEFT_ALONE])
def test_leaves_alone(what: Wording, text: str) -> None:
    assert what.asked(lowered(text)) is None


@pytest.mark.parametrize(("what", "text"), FOUND, ids=[text for _, text in FOUND])
def test_each_match_holds_a_stem(what: Wording, text: str) -> None:
    """The stems only make it quicker: the pattern alone finds the same."""
    match = what.pattern.search(lowered(text))
    assert match
    assert any(stem in match.group() for stem in what.stems)
