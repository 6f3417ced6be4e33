"""Whether words written for a move still hold when a device has changed it."""

from __future__ import annotations

import re
from collections.abc import Sequence

from build_tools.model.dance import Action

_TWICE = 2
_BETWEEN = re.compile(r"(?<=[.!?])\s+")
"""Between two sentences."""
_WHERE = re.compile(
    r"\b((?<!is )(?<!are )(?<!was )(?<!were )(?<!have )left(?! over)|right|"
    r"(for|back|side|in|out|up|down)wards?|front|behind|towards|away|sideways|side)\b"
)
"""Which way; all four that are left are on no side."""
_HOME = re.compile(r"\bon the way (?:home|back)\b", re.IGNORECASE)
"""Words by which a way says how it is of what comes back, as well as of what goes out."""
_HOW_LONG = re.compile(r"\b(one|two|three|four|five|six|seven|eight|\d+|counts?|beats?|half)\b")
_HOW_FAST = re.compile(
    r"\b(quick|quickly|quicker|slow|slowly|slower|sudden|suddenly|sharp|sharply|fast|faster|at once"
    r"|pace)\b"
)
_HOW_MUCH = re.compile(r"\b(big|small|tiny|huge|wide|narrow|low|high|middle|tall|deep|little)\b")


def still_true(made: Sequence[Action], now: Action, text: str) -> bool:
    """Whether `text`, written for one of the moves `made`, says nothing wrong of `now`."""
    return not made or any(
        _told_alike(one, now, text)
        and (one.dynamics == now.dynamics or not _HOW_FAST.search(text.casefold()))
        for one in made
    )


def first_sentence(text: str | None) -> str:
    """What a text begins with, on which its other sentences build."""
    return _BETWEEN.split(text.strip(), maxsplit=1)[0] if text else ""


def words_as_they_hold(made: Sequence[Action], now: Action, text: str) -> str | None:
    """`text` without those sentences after the first that do not hold; None where that does not."""
    first, *more = _BETWEEN.split(text.strip())
    if not still_true(made, now, first):
        return None
    return " ".join([first, *(one for one in more if still_true(made, now, one))])


def way_as_it_holds(made: Sequence[Action], now: Action, way: str | None) -> str | None:
    """A way whose first sentence holds, with those of its other sentences that do.

    So a sentence more never takes away what the author said before it.
    """
    if not way:
        return way
    first, *more = _BETWEEN.split(way.strip())
    return " ".join([first, *(one for one in more if way_still_true(made, now, one))])


def way_still_true(made: Sequence[Action], now: Action, text: str) -> bool:
    """The same of how it is done on a chair or on wheels, whatever it feels like.

    A feel never undoes what keeps a way safe, such as a glance before a slow roll back.
    """
    return not made or any(_told_alike(one, now, text) for one in made)


def ways_home(
    made: Sequence[Action], now: Action, seated: str | None, wheels: str | None
) -> tuple[str | None, str | None]:
    """The author's ways where one of them says the way home too: out to the left, and home.

    None where neither does, or where the other is wrong of `now`: a mirror goes to the other side.
    """
    ways = [way for way in (seated, wheels) if way]
    home = [way for way in ways if _HOME.search(way)]
    rest = (way for way in ways if way not in home)
    if not home or not all(way_still_true(made, now, first_sentence(way)) for way in rest):
        return None, None
    return seated, wheels or seated


def _told_alike(first: Action, now: Action, text: str) -> bool:
    """Whether `text` says the same of both: it is silent about whatever differs but the feel."""
    said = text.casefold()
    where = [(a.side, a.direction, a.facing, a.towards, a.pathway) for a in (first, now)]
    much = [(a.level, a.size, a.body_part, a.also) for a in (first, now)]
    long = [(a.counts, a.steps, a.step) for a in (first, now)]
    return (
        (where[0] == where[1] or not _WHERE.search(said))
        and (much[0] == much[1] or not _HOW_MUCH.search(said))
        and (long[0] == long[1] or not (_HOW_LONG.search(said) or _HOW_FAST.search(said)))
        and now.counts <= _TWICE * first.counts
        and first.counts <= _TWICE * now.counts
    )
