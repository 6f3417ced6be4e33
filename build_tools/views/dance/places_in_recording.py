"""Where each section and join of a dance lies in the recording that travels with the unit.

Such a recording begins with its count-in; then the dance goes over it as the timeline has it.
Where the recording stops for a while, nobody knows whether it is paused or goes on unheard, so
that from there on no place is known.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Dance
from build_tools.movement.counts import seconds
from build_tools.movement.sounding import COUNT_IN
from build_tools.movement.whole import Stretch, stretches
from build_tools.views.dance.timeline import Sounding, span_seconds, timeline


@dataclass(frozen=True, slots=True)
class Place:
    """A section in the recording, in seconds from its beginning."""

    start: Fraction
    end: Fraction
    begins: Fraction
    """From where it is played: so that who dances hears what leads in, or is counted in."""


def travels_with_recording(dance: Dance) -> bool:
    """Whether the unit brings the recording to which it is danced."""
    return dance.sound.kind == "recorded" and dance.sound.file is not None


def places_in_recording(dance: Dance) -> tuple[Place | None, ...]:
    """The place of each section, in the order of the form; None where it is not known."""
    if not travels_with_recording(dance) or dance.tempo is None or dance.order_choice:
        return (None,) * len(dance.form)
    found: list[Place | None] = []
    at, led_in, known = seconds(COUNT_IN, dance.tempo), Fraction(0), True
    for stretch, heard in zip(stretches(dance), timeline(dance), strict=True):
        end = at + _length(stretch, heard, dance.tempo)
        known = known and _is_recorded(dance, stretch, heard) and end <= _lasts(dance, end)
        if stretch.section is not None:
            found.append(Place(at, end, led_in) if known else None)
            # nothing leads in to what follows straight on: as long before as the count-in takes
            led_in = lead_in(dance, end)
        elif end > at:
            led_in = at
        at = end
    return tuple(found)


def lead_in(dance: Dance, start: Fraction) -> Fraction:
    """From where what begins at `start`, in the middle of a section, is played."""
    return Fraction(max(0, (start - seconds(COUNT_IN, dance.tempo or 1)) // 1))


def _length(stretch: Stretch, heard: Sounding, tempo: int) -> Fraction:
    if stretch.counts is not None:
        return seconds(stretch.counts, tempo)
    return span_seconds(stretch.section, heard) if stretch.section else Fraction(0)


def _lasts(dance: Dance, end: Fraction) -> Fraction:
    return Fraction(dance.sound.lasts) if dance.sound.lasts else end


def _is_recorded(dance: Dance, stretch: Stretch, heard: Sounding) -> bool:
    """Whether this recording plays all through a section or a join."""
    own = stretch.section is not None and stretch.section.sound != dance.sound
    return heard.known and not own and all(one.sound == "recording" for one in heard.pieces)
