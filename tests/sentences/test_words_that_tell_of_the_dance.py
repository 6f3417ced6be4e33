"""Words of pressing, ranking, picking and writing that only tell of the dance."""

from __future__ import annotations

import pytest

from build_tools.sentences.own_lives import OWN_LIFE
from build_tools.sentences.picking_people import TEAMS_PICKED
from build_tools.sentences.pressing import MADE_TO, WILL_NOT_MADE_TO
from build_tools.sentences.ranking import RANKED
from build_tools.sentences.sayings import Saying
from build_tools.sentences.sitting_out import SENT_TO_WATCH
from build_tools.sentences.unseen import UNSEEN
from build_tools.sentences.writing import WRITING


@pytest.mark.parametrize(
    ("saying", "text"),
    [
        (WRITING, "Stand on one side of the room."),
        (WRITING, "Do a pencil jump on count four."),
        (WRITING, "Cast a spell, then sit in a circle and share one word."),
        (RANKED, "Which beat did they freeze on?"),
        (RANKED, "Two out of five dancers start low: point to two pairs that do."),
        (RANKED, "Who goes through the arch first?"),
        (TEAMS_PICKED, "Well done, boys and girls: make two sides of the bridge."),
        (TEAMS_PICKED, "Stay in your own group and try it again."),
        (SENT_TO_WATCH, "Odd numbers sit along the front while even numbers dance."),
        (SENT_TO_WATCH, "Those who cannot jump step from side to side."),
        (MADE_TO, "Lift your arms, carry them over and count down from five."),
        (OWN_LIFE, "Who can tell us how the fox moved when it was frightened?"),
        (OWN_LIFE, "What did the giant have for tea?"),
        (UNSEEN, "a happy face on the count of four"),
    ],
)
def test_what_only_tells_of_the_dance(saying: Saying, text: str) -> None:
    assert saying.said(text) is None


def test_what_presses_one_who_will_not_join_is_no_fault_elsewhere() -> None:
    text = "Count down from five, then walk them in."
    assert WILL_NOT_MADE_TO.said(text) is not None
    assert MADE_TO.said(text) is None
