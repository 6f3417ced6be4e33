"""Which moves belong to a changed return alone: not to its first part, nor to any other."""

from __future__ import annotations

from build_tools.model.dance import Dance


def only_in_return(dance: Dance, motif: str | None) -> str | None:
    """The letter of the one changed return that dances `motif`, where no other section does."""
    dancing = [
        section
        for section in dance.sections.values()
        if any(motif in passage.what for passage in section.danced)
    ]
    if len(dancing) != 1 or dancing[0].returns is None:
        return None
    return dancing[0].letter
