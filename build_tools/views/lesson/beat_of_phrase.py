"""What sounds over a phrase of moves that is learned by itself: as in the part that dances it.

A teacher who had "Say the words for two eights" did not know the words before the part was danced.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from build_tools.model.dance import Dance
from build_tools.movement.sounding import Piece, later
from build_tools.views.dance.parts_over_counts import parts_over_counts
from build_tools.views.dance.timeline import Sounding, section_sounding, sections_with


def as_in_its_part(dance: Dance, names: Sequence[str], heard: Sounding) -> Sounding:
    """`heard`, or what sounds where a part dances the one phrase of `names`, if that is its sound.

    Only for as long as the part dances that phrase and nothing else.
    """
    phrases = [name for name in names if name in dance.motifs or name in dance.developments]
    if heard.said or len(phrases) != 1 or len(names) != 1 or not heard.pieces:
        return heard
    for section in sections_with(dance, phrases[0]):
        for span in parts_over_counts(dance, section).passages:
            if set(span.passage.what) != {phrases[0]} or span.end - span.start < heard.length:
                continue
            found = _cut(section_sounding(dance, section).pieces, span.start, heard.length)
            if found and {one.sound for one in found} == {one.sound for one in heard.pieces}:
                return Sounding(found, known=True, said=True)
    return heard


def _cut(pieces: Sequence[Piece], start: Fraction, long: Fraction) -> tuple[Piece, ...]:
    """The pieces that fill so much from `start`, as if it were the beginning; else none."""
    inside = [one for one in pieces if one.start >= start and one.end <= start + long]
    filled = sum((one.length for one in inside), Fraction(0)) == long
    return tuple(later(one, -start) for one in inside) if filled else ()
