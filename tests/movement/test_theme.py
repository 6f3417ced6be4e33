"""Theme and variations, told from what is danced: letters alone cannot tell it.

NSW Department of Education, HSC dance: a theme is stated, and each section after it varies it.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from build_tools.model.dance import Action, Dance, Development, Passage
from build_tools.movement.theme import form_in_words, is_theme_and_variations, made_of
from tests.movement.strategies import dance, section

PULL = (Action("gesture", Fraction(4), word="swing"), Action("jump", Fraction(4), word="clack"))
OTHER = (Action("turn", Fraction(8), word="wheel"),)
LOW = Development("low", "pull", "change of level", level="low")
SLOW = Development("slow", "low", "change of speed", counts=(Fraction(8), Fraction(8)))


def danced(*names: str) -> Dance:
    """A dance of a section for each name, A B C …, in which that is danced."""
    letters = "ABCDE"[: len(names)]
    return dance(
        letters,
        [
            section(letter, 8, Passage((name,), "unison"))
            for letter, name in zip(letters, names, strict=True)
        ],
        motifs={"pull": PULL, "other": OTHER},
        developments=(LOW, SLOW),
    )


def test_a_motif_and_what_comes_of_it_are_a_theme_and_its_variations() -> None:
    varied = danced("pull", "low", "slow")
    assert is_theme_and_variations(varied)
    assert "theme and variations" in form_in_words(varied)
    assert made_of(varied, "C") == {"pull"}


@pytest.mark.parametrize(
    "names",
    [("pull", "low", "other"), ("other", "low", "slow"), ("pull", "low")],
    ids=["something new at the end", "the theme is another", "two sections are binary"],
)
def test_what_is_none(names: tuple[str, ...]) -> None:
    assert not is_theme_and_variations(danced(*names))


def test_a_section_made_up_on_the_spot_varies_nothing() -> None:
    varied = danced("pull", "low", "slow")
    loose = replace(varied.sections["C"], danced=())
    made = replace(varied, sections={**varied.sections, "C": loose})
    assert not is_theme_and_variations(made)
    assert form_in_words(made) == "one section after another (chain)"


def test_what_comes_back_is_no_chain_of_variations() -> None:
    varied = danced("pull", "low", "slow")
    assert not is_theme_and_variations(replace(varied, form=("A", "B", "A", "C")))
