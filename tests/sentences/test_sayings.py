from __future__ import annotations

import importlib
import pkgutil
import re

import pytest

import build_tools.sentences
from build_tools.sentences.plain import plain_words
from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Saying
from tests.wordings.lists import all_wordings


def every_saying() -> list[Saying]:
    modules = pkgutil.iter_modules(build_tools.sentences.__path__)
    named = (importlib.import_module(f"build_tools.sentences.{one.name}") for one in modules)
    return [value for one in named for value in vars(one).values() if isinstance(value, Saying)]


FIFTH = 5
HOLD = Saying(
    """
    v:hold|take ~2 @limb !up|out
    hold on $
    """
)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("You held her hand.", "held her hand"),
        ("Holding hands, turn.", "Holding hands"),
        ("Take a big breath, hand up.", None),
        ("Hold, then give a hand.", None),
        ("Hold your hand up.", None),
        ("Keep a hold of the hand.", None),
        ("Never hold hands.", None),
        ("As if you held hands.", None),
        ("Jump and hold on. Now turn.", "hold on"),
        ("Hold on to the beat.", None),
        (None, None),
        ("", None),
    ],
)
def test_says(text: str | None, said: str | None) -> None:
    found = HOLD.said(text)
    assert (found.text if found else None) == said


def test_denied_and_mentioned() -> None:
    assert HOLD.denied("Never hold hands.")
    assert not HOLD.denied("Hold hands.")
    assert HOLD.mentioned("Never hold hands.")
    assert HOLD.mentioned("As if you held hands.")


def test_all_places_in_the_order_of_the_text() -> None:
    found = HOLD.all_in("Hold hands. Do not hold hands! Take my arm.")
    assert [one.text for one in found] == ["Hold hands", "Take my arm"]


def test_the_first_of_several_is_found() -> None:
    found = HOLD.said("Hold on. Hold hands.")
    assert found is not None
    assert found.text == "Hold on"


@pytest.mark.parametrize(
    ("phrase", "text", "said"),
    [
        ("#20.. jump", "Twenty-four jumps", True),
        ("#20.. jump", "Four jumps", False),
        ("#2..4 jump", "3 jumps", True),
        ("#8 jump", "eight jumps", True),
        ("#8 jump", "nine jumps", False),
        ("# jump", "a hundred jumps", True),
        ("^ run", "Walk. Run!", True),
        ("^ run", "You run", False),
        ("n:drop", "A drop falls", True),
        ("n:drop", "Drop now", False),
        ("hand ~~4 shoulder", "a hand, please, on a shoulder", True),
        ("hand ~4 shoulder", "a hand, please, on a shoulder", False),
        ("tap ~~2 , stop", "Two taps, and you stop", True),
        ("tap ~~2 , stop", "Two taps stop", False),
        ("fall ?right down", "fall down", True),
        ("fall ?right down", "fell right down", True),
        ("fall ?right down", "fall slowly down", False),
        ("soft+ land", "softly landing", True),
        ("crawl !<finger|hand", "let your fingers crawl", False),
        ("crawl !<finger|hand", "hands up, crawl", True),
        ("crawl !<finger|hand", "fingers so long that they crawl", True),
        ("step * back", "step one back", True),
        ("go @small", "go tiny", True),
    ],
)
def test_phrases(phrase: str, text: str, said: bool) -> None:
    assert (Saying(phrase, {"small": "tiny little"}).said(text) is not None) is said


def test_anchors_are_words_that_a_text_saying_it_has() -> None:
    saying = Saying("hold|take hand")
    assert "hands" in saying.anchors
    assert "hold" not in saying.anchors, "the rarer of two needed words is enough"


def test_an_unknown_list_is_a_mistake_of_ours() -> None:
    with pytest.raises(KeyError):
        Saying("hold @nothing").said("hold")


@pytest.mark.parametrize("phrase", ["hold ~3", "hold ,", "hold ~3 ?a hand", "^ ?a hand"])
def test_a_gap_that_leads_to_no_word_is_a_mistake_of_ours(phrase: str) -> None:
    with pytest.raises(ValueError, match=re.escape(phrase)):
        Saying(phrase).said("hold")


@pytest.mark.parametrize(
    ("phrase", "text"),
    [
        ("hug each-other", "Hug one another."),
        ("hug each-other", "Hug each other."),
        ("nobody touch", "No one touches."),
        ("thirty-two count", "Thirty-two counts."),
        ("don't run", "Don't run."),
        ("fete", "The fête."),
        ("#2 a", "Step 2a"),
        ("on all-fours", "On all fours."),
    ],
)
def test_what_is_said_passes_the_screen_that_spares_reading(phrase: str, text: str) -> None:
    what = Saying(phrase)
    assert what.may_be_in(plain_words(text))
    assert what.mentioned(text)


def test_the_screen_loses_nothing_that_any_saying_finds_in_any_wording(thorough: bool) -> None:
    """Every saying in every text; in the usual run each saying in a fifth, and each text tried."""
    texts = [t for w in all_wordings() for t in (*w.faulty, *w.sound)]
    readings = [(text, read(text)) for text in texts]
    found = 0
    for number, saying in enumerate(every_saying()):
        for text, reading in readings if thorough else readings[number % FIFTH :: FIFTH]:
            if any(True for phrase in saying._phrases for _ in phrase.found_in(reading)):
                assert saying.mentioned(text), (saying.phrases[:60], text)
                found += 1
    assert found > len(texts) // 2
