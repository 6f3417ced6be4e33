"""Which scripts each kind of page runs: written as one file a part, published as one a page.

A page asks for one file where it would ask for twenty; on a network share each is a wait.
"""

from __future__ import annotations

SUMS = (
    "sums/fit.js",
    "sums/sittings.js",
    "sums/catch-up.js",
    "sums/class-groups.js",
    "sums/groups-in-words.js",
    "sums/showing.js",
    "sums/floor-space.js",
    "step-facts.js",
    "settings.js",
)
"""The sums that a page does in the browser, and what it does them with; they come first."""
_FIT = tuple(f"fit/{name}.js" for name in ("read", "parts", "results", "on-page", "share", "form"))
_HALL = tuple(f"hall/{name}.js" for name in ("plan", "button", "keys", "awake", "clock"))
_COUNT = tuple(
    f"counts/{name}.js" for name in ("schedule", "sounds", "shown-count", "device", "player")
)

PAGE_SCRIPTS = {
    "lesson.js": (
        *SUMS,
        "whole.js",
        "unfold.js",
        "seen.js",
        "hall/plan.js",
        *_FIT,
        "print.js",
    ),
    "card.js": (*SUMS, *_HALL, "hall/card-state.js", "seen.js", "card.js"),
    "wall.js": (*SUMS, *_COUNT, *_HALL, "hall/wall-count.js", "wall.js"),
    "counts.js": (
        *_COUNT,
        "counts/wav.js",
        "counts/midi.js",
        "counts/tap.js",
        "counts/page.js",
        "counts/page-files.js",
        "counts/page-tap.js",
    ),
    "finder.js": ("finder.js",),
    "print.js": ("print.js",),
}
"""For each file that a page asks for in assets/js, the scripts of that folder that are in it."""
