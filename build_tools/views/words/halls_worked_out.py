"""What the halls that a dance fits are worked out from, and where that cannot be known."""

from __future__ import annotations

from build_tools.model.dance import Dance, Section
from build_tools.movement.development import actions_of
from build_tools.page_words.words import _, ngettext
from build_tools.paths.steps import goes
from build_tools.sentences.staying_in_place import stays_on_one_spot
from build_tools.views.words.plain_words import listed


def halls_from_in_words(dance: Dance) -> str:
    """From where everybody goes; nobody knows that of a part whose ways are made up on the spot.

    Where nobody travels at all, that is where everybody stands.
    """
    ways_open = [
        letter
        for letter, section in dance.sections.items()
        if section.kind == "improvised" and not _on_one_spot(section)
    ]
    if not ways_open and not _travels(dance):
        return _("The halls are worked out from where everybody stands in this dance.")
    if not ways_open:
        return _("The halls are worked out from where everybody goes in this dance.")
    return ngettext(
        "The halls are worked out from where everybody goes in this dance, but not in part "
        "{parts}, where the ways are open: in a small hall let one team go at a time, or go for a "
        "shorter time.",
        "The halls are worked out from where everybody goes in this dance, but not in parts "
        "{parts}, whose ways are open: in a small hall let one team go at a time, or go for a "
        "shorter time.",
        len(ways_open),
        parts=listed(ways_open),
    )


def _on_one_spot(section: Section) -> bool:
    """Whether what is made up keeps everybody where they stand, as one of its rules says."""
    return any(stays_on_one_spot(rule) for rule in section.improvised_rules)


def _travels(dance: Dance) -> bool:
    """Whether a move takes somebody over the floor, or a part has places of its own."""
    later = [dance.sections[letter] for letter in dance.form[1:]]
    if any(section.start.spot == "new place" for section in later):
        return True
    danced = {what for one in dance.sections.values() for p in one.danced for what in p.what}
    return any(goes(action) for what in sorted(danced) for action in actions_of(dance, what))
