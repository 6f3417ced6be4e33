"""What words of the trade mean, and what they are taken for."""

from __future__ import annotations

import pytest

from build_tools.sentences.meanings import means_another


@pytest.mark.parametrize(
    ("word", "plain"),
    [
        ("canon", "all move as one"),
        ("unison", "each starts two counts after"),
        ("retrograde", "swap left and right"),
        ("mirror", "start with the last move"),
        ("motif", "how fast you go"),
        ("levels", "forwards or sideways"),
        ("dynamics", "near the floor or up high"),
        ("pathway", "standing in a circle"),
        ("formation", "your route across the hall"),
        ("change of speed", "high, middle and low"),
        ("direction", "strong or gentle"),
        ("transition", "the whole group stands in a ring"),
        ("contrast", "doing exactly the same"),
        ("duet", "everyone dances"),
        ("improvisation", "learn the steps by heart"),
        ("call and response", "both at the same time"),
    ],
)
def test_a_word_told_as_another(word: str, plain: str) -> None:
    assert means_another(word, plain) is not None


@pytest.mark.parametrize(
    ("word", "plain"),
    [
        ("canon", "the same moves, one person then the next"),
        ("mirror", "as if your partner were a mirror"),
        ("retrograde", "backwards, like a film"),
        ("motif", "a little dance sentence that we use again"),
        ("levels", "high, middle, low"),
        ("dynamics", "how you move: heavy, light, sharp"),
        ("pathway", "the way you go across the floor, straight or curved"),
        ("formation", "how the dancers are spaced: a line, a ring"),
        ("tempo", "how fast the beat goes"),
        ("transition", "how we get from the circle to the line"),
        ("contrast", "one thing soft, the next sharp, so they are different"),
        ("duet", "two dancers together"),
        ("call and response", "I dance, you answer"),
        ("shimmy", "everyone at the same time"),
    ],
)
def test_a_word_told_right_or_unknown(word: str, plain: str) -> None:
    assert means_another(word, plain) is None
