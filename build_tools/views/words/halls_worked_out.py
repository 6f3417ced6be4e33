"""What the halls that a dance fits are worked out from, and where that cannot be known."""

from __future__ import annotations

from build_tools.model.dance import Dance
from build_tools.page_words.words import _, ngettext
from build_tools.views.words.plain_words import listed


def halls_from_in_words(dance: Dance) -> str:
    """From where everybody goes; nobody knows that of a part whose ways are made up on the spot."""
    ways_open = [
        letter for letter, section in dance.sections.items() if section.kind == "improvised"
    ]
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
