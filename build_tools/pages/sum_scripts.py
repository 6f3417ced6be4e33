"""The scripts by which a page does in the browser the sums that `views` does here."""

from __future__ import annotations

SUM_SCRIPTS = (
    "sums/fit.js",
    "sums/sittings.js",
    "sums/catch-up.js",
    "sums/class-groups.js",
    "sums/groups-in-words.js",
    "sums/showing-plan.js",
    "sums/floor-space.js",
    "step-facts.js",
    "settings.js",
)
"""Names in assets/js, for the scripts of a frame; they come before the parts that use them."""
