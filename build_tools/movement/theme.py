"""Theme and variations: a first section whose material all the others are made of.

A form that letters cannot tell: a theme and its variations are A B C D, as a chain is. What is
danced tells it (NSW Department of Education, HSC dance: a theme stated, then varied each time).
"""

from __future__ import annotations

from build_tools.model.dance import Dance
from build_tools.movement.development import roots
from build_tools.movement.forms import name
from build_tools.movement.letters import all_unmarked
from build_tools.page_words.words import _


def made_of(dance: Dance, letter: str) -> frozenset[str]:
    """The motifs that what is danced in a section comes from."""
    danced = dance.sections[letter].danced
    return frozenset(
        motif for passage in danced for what in passage.what for motif in roots(dance, what)
    )


def all_from_the_first(dance: Dance) -> bool:
    """Whether everything danced comes from what the first section is made of."""
    theme = made_of(dance, dance.form[0])
    return all(made_of(dance, letter) <= theme for letter in dance.sections)


def is_theme_and_variations(dance: Dance) -> bool:
    """Whether each section is its own, all of one motif, and none of it made up on the spot."""
    letters = all_unmarked(dance.form)
    return (
        len(letters) > 2
        and len(set(letters)) == len(letters)
        and all(len(made_of(dance, letter)) == 1 for letter in dance.form)
        and all_from_the_first(dance)
    )


def form_in_words(dance: Dance) -> str:
    """The form's name in plain words: from its letters, or from what is danced."""
    if is_theme_and_variations(dance):
        return _("one motif, changed each time (theme and variations)")
    return name(dance.form)
