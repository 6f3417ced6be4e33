"""What the sayings of safety and care find, and what they leave alone.

The sentences are made up; what each ought to mean is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from build_tools.sentences import (
    care,
    floor,
    hard_work,
    props,
    signals,
    spins,
    touch,
    travel,
)
from build_tools.sentences.sayings import Said


def garments(text: str) -> Said | None:
    return care.dressed(text, about_wear=False)


Ask = Callable[[str], Said | None]

FOUND: list[tuple[Ask, str]] = [
    (travel.fast_travel, "Run into the gaps."),
    (travel.fast_travel, "Gallop like the wind."),
    (signals.STOP_SIGNAL.said, "Two quick taps mean stop."),
    (signals.STOP_SIGNAL.said, "Two taps: all stop."),
    (signals.STOP_SIGNAL.said, "When the music stops, freeze."),
    (signals.STOP_SIGNAL.said, "Stop when I raise a hand."),
    (signals.STOP_SIGNAL.said, "When I pat my knees, stop."),
    (signals.STOP_SIGNAL.said, "Freeze when I kneel."),
    (travel.SAID_OF_BACKWARDS.said, "Look behind before you step out."),
    (travel.SAID_OF_BACKWARDS.said, "Two small steps back, looking over your shoulder."),
    (travel.SAID_OF_BACKWARDS.said, "Go back slowly."),
    (travel.SAID_OF_BACKWARDS.said, "Walk slowly back, one at a time."),
    (travel.SAID_OF_BACKWARDS.said, "Back means two small steps, after a look."),
    (travel.SAID_OF_BACKWARDS.said, "Step backwards, slowly."),
    (floor.LOOKED_AT.mentioned, "Check the floor is dry and clear."),
    (floor.LOOKED_AT.mentioned, "Is the floor swept?"),
    (floor.bare_feet, "Shoes and socks off."),
    (hard_work.ON_KNEES.said, "Sink on to your knees."),
    (hard_work.ON_KNEES.said, "Move on hands and knees."),
    (hard_work.ON_KNEES.said, "Drop to the floor."),
    (hard_work.many_jumps, "Hop for two minutes."),
    (travel.BACKWARDS.said, "Run quickly backwards."),
    (travel.CLOSE.said, "Weave in and out of each other."),
    (spins.spin, "Keep on turning."),
    (props.underfoot, "Lay the ribbons on the floor."),
    (touch.touching, "Link arms."),
    (touch.touching, "Lean on your partner."),
    (touch.touching, "Take your partner’s hand."),
    (touch.touching, "Lift each other."),
    (touch.touching, "Stand palm to palm."),
    (signals.sudden, "Turn the lights off."),
    (garments, "Come dressed as a sailor."),
    (care.DEFERENCE.mentioned, "Your school's risk assessment comes first."),
    (care.DEFERENCE.mentioned, "Follow your school’s own policy."),
]
LEFT_ALONE: list[tuple[Ask, str]] = [
    (travel.fast_travel, "Run the whole dance twice."),
    (travel.fast_travel, "Nobody runs into the gaps."),
    (travel.fast_travel, "One pupil is in charge of the cards."),
    (signals.STOP_SIGNAL.said, "Walk eight, freeze eight."),
    (signals.STOP_SIGNAL.said, "When we are still, listen."),
    (travel.SAID_OF_BACKWARDS.said, "A question looks back to an earlier lesson."),
    (travel.SAID_OF_BACKWARDS.said, "A short set of moves that we keep and come back to."),
    (travel.SAID_OF_BACKWARDS.said, "Toys tick slowly back to sleep."),
    (travel.SAID_OF_BACKWARDS.said, "The taps come back, a steady walk."),
    (travel.SAID_OF_BACKWARDS.said, "Your own row, with room to pass in front and behind."),
    (floor.LOOKED_AT.mentioned, "Draw a curve on the floor."),
    (floor.bare_feet, "No bare feet today."),
    (hard_work.ON_KNEES.said, "Bend your knees."),
    (hard_work.ON_KNEES.said, "Nobody crawls."),
    (hard_work.ON_KNEES.said, "Do not drop to the floor."),
    (hard_work.many_jumps, "Jump eight times."),
    (travel.BACKWARDS.said, "Read the cards backwards."),
    (travel.BACKWARDS.said, "Walk back to your partner."),
    (travel.CLOSE.said, "Dance it all together."),
    (spins.spin, "Look at the sycamore spinner."),
    (props.underfoot, "Put the cards in order."),
    (props.underfoot, "Sit down on the floor."),
    (touch.touching, "Hold your hands high."),
    (touch.touching, "Hold hands high."),
    (touch.touching, "Catch your partner's eye."),
    (touch.touching, "Pull your partner's idea apart."),
    (touch.touching, "Touch it to remember it."),
    (touch.touching, "Lean away from your partner."),
    (touch.touching, "Nobody holds hands."),
    (touch.touching, "Push the other way."),
    (signals.sudden, "Light, sudden steps."),
    (signals.sudden, "Make no loud noise."),
    (garments, "Bare feet only on a clean floor."),
    (care.DEFERENCE.mentioned, "Ask at the school office."),
]


@pytest.mark.parametrize(("ask", "text"), FOUND, ids=[text for _, text in FOUND])
def test_finds(ask: Ask, text: str) -> None:
    assert ask(text)


@pytest.mark.parametrize(("ask", "text"), LEFT_ALONE, ids=[text for _, text in LEFT_ALONE])
def test_leaves_alone(ask: Ask, text: str) -> None:
    assert ask(text) is None
