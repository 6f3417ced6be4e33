"""Which scripts each kind of page runs: written as one file a part, published as one a page.

A page asks for one file where it would ask for twenty; on a network share each is a wait.
"""

from __future__ import annotations

SUMS = tuple(
    f"sums/{name}.js"
    for name in (
        "share-minutes",
        "sittings",
        "catch-up",
        "lesson-today",
        "class-groups",
        "number-in-words",
        "groups-named",
        "step-facts",
        "school-year",
        "settings",
    )
)
"""The sums that a page does in the browser, and what it does them with; they come first."""
FLOOR = tuple(
    f"sums/floor-{name}.js"
    for name in (
        *("metres-each", "hall", "shapes", "places", "starting", "columns", "facings"),
        *("dancing", "whole"),
    )
)
"""Where a class stands and goes in a dance, for the class and the hall of the day."""
ROOM = tuple(
    f"sums/floor-{name}.js" for name in ("on-spots", "clear", "teams", "room-to-dance", "room-said")
)
"""Who of the class dances at once there, and how that is said."""
IN_THE_HALL = ("sums/floor-tape.js", "sums/in-turns.js", "sums/minutes-in-teams.js")
"""What a lesson in the hall of the day is, beside where its class stands and goes."""
FITTED = ("sums/groups-in-words.js", "sums/leave-out.js", "sums/showing.js")
"""What is told of a fitted lesson alone."""
_CATCHING_UP = "sums/catch-up.js"
"""What only a lesson under way needs."""
_FIT = tuple(
    f"lesson/fit/{name}.js" for name in ("fields", "read", "parts", "on-page", "share", "form")
)
_WORDS = ("pieces/page-words.js",)
"""What the scripts of a unit's page ask for their words; it comes first."""
_UNIT_FLOOR = "pieces/unit-floor.js"
"""Loads the floor of the unit's dance where a teacher's settings name a hall."""
_KEEPING = ("pieces/seen.js", "pieces/kept-settings.js")
_HALL = tuple(f"hall/{name}.js" for name in ("button", "keys", "awake", "clock"))
_PLAYING = tuple(
    f"playing/{name}.js"
    for name in ("beat-times", "sound-samples", "shown-count", "sound-device", "player")
)
_COUNTS = tuple(
    f"counts/{name}.js" for name in ("wav", "midi", "tap", "counts", "counts-files", "counts-tap")
)
_DANCE = tuple(
    f"dance_from_above/{name}.js"
    for name in ("stage", "mover", "later", "my-class", "dance_from_above")
)

_FINDING = tuple(
    f"front/finding/{name}.js"
    for name in (
        "words-typed",
        "alike",
        "parts",
        "how-surely",
        "narrowing",
        "sayings",
        "cards",
        "address",
        "when-typing",
    )
)

PAGE_SCRIPTS = {
    "lesson.js": (
        *_WORDS,
        "card/as-card.js",
        "lesson/keep.js",
        *(part for part in SUMS if part != _CATCHING_UP),
        "lesson/whole.js",
        "lesson/unfold.js",
        "lesson/notes-side.js",
        *_KEEPING,
        _UNIT_FLOOR,
        *_FIT,
        "pieces/print.js",
    ),
    "card.js": (
        _CATCHING_UP,
        *_HALL,
        "card/from-lesson.js",
        "card/shown-with-script.js",
        "card/card-state.js",
        *_KEEPING,
        "card/card.js",
    ),
    "wall.js": (
        *_WORDS,
        *SUMS,
        *_PLAYING,
        *_HALL,
        _UNIT_FLOOR,
        "wall/which-lesson.js",
        "wall/wall-count.js",
        "wall/wall-fit.js",
        "wall/wall.js",
        "pieces/kept-settings.js",
    ),
    "music.js": ("pieces/music.js",),
    "counts.js": (*_WORDS, *_PLAYING, *_COUNTS),
    "dance_from_above.js": (
        *_WORDS,
        "pieces/unsqueezed.js",
        "sums/school-year.js",
        "sums/settings.js",
        "sums/class-groups.js",
        *FLOOR,
        "playing/paths.js",
        "playing/bodies.js",
        *_PLAYING,
        *_DANCE,
    ),
    "room.js": (
        "sums/number-in-words.js",
        "sums/groups-named.js",
        *ROOM,
        "dance_from_above/stills.js",
    ),
    "floor.js": (
        "playing/paths.js",
        *FLOOR,
        *ROOM,
        *IN_THE_HALL,
        *FITTED,
        "lesson/fit/results.js",
        "lesson/fit/space.js",
        "pieces/plan-drawn.js",
    ),
    "finder.js": ("front/fetch-finder.js",),
    "finding.js": _FINDING,
    "booklet.js": (*_WORDS, "pieces/print.js", "pieces/unsqueezed.js", "booklet/unpack.js"),
    "handouts.js": (
        *_WORDS,
        "sums/class-groups.js",
        "sums/school-year.js",
        "sums/settings.js",
        "pieces/print.js",
        "handouts/handouts.js",
    ),
    "unit.js": ("unit/unit.js",),
    "stimulus_on_screen.js": (*_WORDS, "stimulus_on_screen/stimulus_on_screen.js"),
    "year_plan.js": (*_WORDS, "sums/plan-cover.js", "pieces/print.js", "year_plan/year_plan.js"),
    "print.js": (*_WORDS, "pieces/print.js"),
}
"""For each file that a page asks for in assets/js, the scripts of site_overrides that are in it."""
