"""What is added to an author's words for a move: only what they do not say, as one would say it."""

from __future__ import annotations

import pytest

from build_tools.movement.effort import EFFORT_ACTIONS
from build_tools.page_words.speaking import speaking
from build_tools.views.lesson.feel_besides import feel_besides


@pytest.mark.parametrize(
    ("means", "dynamics", "feel"),
    [
        ("Two small side-steps to the right.", ("bound",), "hold it back"),
        ("The tray at chest height.", ("direct",), "directly"),
        ("Both arms up.", ("strong", "sudden"), "strongly, suddenly"),
        ("Two steps in.", ("light", "sustained", "indirect"), "lightly, smoothly, in curves"),
        ("Two steps in.", ("light", "free"), "lightly, freely"),
        # what the author says is not said again
        ("Stand quite still for two.", ("bound",), ""),
        ("Reach up, straight to the hook, lightly.", ("light", "direct"), ""),
        ("Let the weight drop through soft knees, back to the fold.", ("free",), ""),
        ("Lean both flat hands into the dough.", ("strong",), "strongly"),
        ("Sink slowly on bent knees.", ("sustained", "light"), "light"),
        ("Any words at all.", (), ""),
    ],
)  # fmt: skip
def test_only_what_the_words_do_not_say(means: str, dynamics: tuple[str, ...], feel: str) -> None:
    assert feel_besides(means, dynamics) == feel


@pytest.mark.parametrize("word", sorted(EFFORT_ACTIONS))
def test_every_word_of_how_has_words(word: str) -> None:
    assert feel_besides("Walk.", (word,))


def test_another_language_has_its_own_words() -> None:
    with speaking("cy"):
        assert feel_besides("Dau gam.", ("light",)) != "lightly"
