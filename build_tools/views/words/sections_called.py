"""How a section is called: by its letter, and by the name that the class says, where it has one."""

from __future__ import annotations

from build_tools.model.dance import Dance, Section
from build_tools.page_words.words import _
from build_tools.views.words.punctuation import quoted


def called(section: Section) -> str:
    """Its letter and its name: "A: tide"; the letter alone where it has no name."""
    return f"{section.letter}: {section.name}" if section.name else section.letter


def heading_of(section: Section) -> str:
    """What stands over it: "Section A: tide"."""
    return _("Section {name}", name=called(section))


def title_of(section: Section, what: str) -> str:
    """The title of a picture of it: "Section A: where they stand", "Section A: tide, where …"."""
    return f"{heading_of(section)}{', ' if section.name else ': '}{what}"


def in_a_sentence(section: Section) -> str:
    """It in the middle of a sentence: the tide, or section A."""
    if not section.name:
        return _("section {letter}", letter=section.letter)
    return (
        section.name
        if section.name.lower().startswith("the ")
        else _("the {name}", name=section.name)
    )


def in_short(dance: Dance, letter: str) -> str:
    """Its letter where a line has no room for more; a changed return by its name: “night”.

    A' is a sign of the trade, and a teacher who is new to it asks what it says.
    """
    section = dance.sections[letter]
    if section.returns is None:
        return letter
    return quoted(section.name) if section.name else _("{part} changed", part=section.returns)


def called_by(dance: Dance, letter: str) -> str:
    """The same as `called`, by the letter."""
    return called(dance.sections[letter])
