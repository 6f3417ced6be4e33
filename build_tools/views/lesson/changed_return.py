"""Which moves belong to a changed return alone: not to its first part, nor to any other."""

from __future__ import annotations

from build_tools.model.dance import Dance


def only_in_return(dance: Dance, motif: str | None) -> str | None:
    """The letter of the one changed return that dances `motif`, where no other section does."""
    letter = part_alone(dance, motif)
    return letter if letter and dance.sections[letter].returns is not None else None


def part_alone(dance: Dance, motif: str | None) -> str | None:
    """The letter of the one section that dances `motif`, where no other does."""
    dancing = [
        section.letter
        for section in dance.sections.values()
        if any(motif in passage.what for passage in section.danced)
    ]
    return dancing[0] if len(dancing) == 1 else None
