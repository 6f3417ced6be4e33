"""What the halls that a dance fits are worked out from, and where that cannot be known."""

from __future__ import annotations

from build_tools.model.dance import Dance
from build_tools.page_words.words import _, ngettext
from build_tools.views.dance.leaving_the_spot import parts_with_ways_open, somebody_travels
from build_tools.views.words.plain_words import listed


def halls_from_in_words(dance: Dance) -> str:
    """From where everybody goes; nobody knows that of a part whose ways are made up on the spot.

    Where nobody travels at all, that is where everybody stands; where all parts leave their ways
    open, the places at which they start and end.
    """
    ways_open = parts_with_ways_open(dance)
    if not ways_open and not somebody_travels(dance):
        return _("The halls are worked out from where everybody stands in this dance.")
    if not ways_open:
        return _("The halls are worked out from where everybody goes in this dance.")
    if set(dance.form) <= set(ways_open):
        return _(
            "The halls are worked out from where everybody stands as each part starts and ends; "
            "the ways between are open. In a small hall let one team go at a time, or go for a "
            "shorter time."
        )
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
