"""Where a unit leaves it open where groups stand: they stand as drawn, or anywhere else.

Pairs and small groups of which it says how they stand inside, and not in how many columns, have no
places of their own in the hall. `site_overrides/sums/floor-tape.js` says the same on the pages.
"""

from __future__ import annotations

from build_tools.model.dance import Section
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.model import StretchPaths

_LOOSE = ("scattered", "pairs", "small groups")


def stands_anywhere(stretch: StretchPaths) -> bool:
    """Whether a section starts in new places that are nobody's own, nor so far from others."""
    section = stretch.section
    if section is None or stretch.start is None or stretch.start.spot != "new place":
        return False
    return leaves_places_open(section) and section.start.groups_apart is None


def leaves_places_open(section: Section) -> bool:
    """Whether its groups have no places of their own, so that there is nothing to mark."""
    at, size = section.start, groups_of(section).size
    return size > 1 and at.formation in _LOOSE and at.columns is None
