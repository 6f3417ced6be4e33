"""What the halls that a dance fits are worked out from, and where that cannot be known."""

from __future__ import annotations

from build_tools.model.dance import Dance
from build_tools.views.words.plain_words import listed


def halls_from_in_words(dance: Dance) -> str:
    """From where everybody goes; nobody knows that of a part whose ways are made up on the spot."""
    everywhere = "The halls are worked out from where everybody goes in this dance"
    ways_open = [
        letter for letter, section in dance.sections.items() if section.kind == "improvised"
    ]
    if not ways_open:
        return f"{everywhere}."
    part, is_open = (
        ("part", "where the ways are") if len(ways_open) == 1 else ("parts", "whose ways are")
    )
    return (
        f"{everywhere}, but not in {part} {listed(ways_open)}, {is_open} open: "
        "in a small hall let half go at once, or for a shorter time."
    )
