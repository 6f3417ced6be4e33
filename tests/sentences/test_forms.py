from __future__ import annotations

import importlib
import pkgutil

import pytest
from simplemma import lemmatize

import build_tools.sentences
from build_tools.sentences.forms import _TABLE, forms
from build_tools.sentences.named_lists import NAMED
from build_tools.sentences.sayings import Saying


def all_words() -> list[str]:
    """Every word that a saying or a named list asks for."""
    found: set[str] = set()
    for line in NAMED.values():
        found.update(line.split())
    for module in pkgutil.iter_modules(build_tools.sentences.__path__):
        for value in vars(importlib.import_module(f"build_tools.sentences.{module.name}")).values():
            if isinstance(value, Saying):
                found |= value.words
    return sorted(word for word in found if word.isalpha())


@pytest.mark.parametrize(
    ("word", "written"),
    [
        ("hold", {"hold", "holds", "holding", "held"}),
        ("hop", {"hop", "hops", "hopping", "hopped"}),
        ("hope", {"hope", "hopes", "hoping", "hoped"}),
        ("carry", {"carry", "carries", "carrying", "carried"}),
        ("scarf", {"scarf", "scarves"}),
        ("leaf", {"leaf", "leaves"}),
        ("leave", {"leave", "leaves", "left", "leaving"}),
        ("lie", {"lie", "lies", "lying", "lay", "lain"}),
        ("travel", {"travel", "travels", "travelled", "travelling", "traveling"}),
        ("touch", {"touch", "touches", "touched", "touching"}),
        ("squat", {"squat", "squatting"}),
        ("soft+", {"soft", "softer", "softest", "softly", "softness", "soften"}),
        ("gentle+", {"gentle", "gentler", "gently", "gentleness"}),
        ("heavy+", {"heavy", "heavier", "heavily"}),
        ("frantic+", {"frantic", "frantically"}),
    ],
)
def test_has_the_forms_that_are_written(word: str, written: set[str]) -> None:
    assert written <= forms(word)


def test_a_form_alone_is_alone() -> None:
    assert forms("=felt") == {"felt"}


def test_forms_of_one_word_do_not_run_into_another() -> None:
    assert "hoping" not in forms("hop")
    assert "hopping" not in forms("hope")
    assert "stared" not in forms("star")


@pytest.mark.parametrize("word", sorted(_TABLE))
def test_irregular_words_agree_with_simplemma(word: str) -> None:
    known = {lemmatize(form, lang="en") for form in _TABLE[word]}
    # a dictionary with one answer a form calls `lay` a word of its own, and `left`, and `felt`
    assert word in known or known <= _TABLE[word] | {word}


def test_regular_words_agree_with_simplemma() -> None:
    words = [word for word in all_words() if word not in _TABLE]
    unknown = []
    for word in words:
        for form in (f"{word}s", f"{word}es", f"{word}ing", f"{word}ed", f"{word[:-1]}ing"):
            if lemmatize(form, lang="en") == word and form not in forms(word):
                unknown.append((word, form))
    assert unknown == []
