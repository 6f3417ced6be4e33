"""How far long work is, said on the side: how many of how many, and the time left."""

from __future__ import annotations

import sys
import time
from collections.abc import Callable

from build_tools.views.words.plain_words import how_many

QUIET_SECONDS = 2.0
"""Nothing is said of what is done sooner."""
BETWEEN_SECONDS = 1.0


def progress(what: str) -> Callable[[int, int], None]:
    """What to call with how many of how many units are `what`; it says so now and then."""
    begun = said = time.monotonic()

    def tell(done: int, total: int) -> None:
        nonlocal said
        now = time.monotonic()
        if now - begun < QUIET_SECONDS or now - said < BETWEEN_SECONDS or done == total:
            return
        said = now
        left = (now - begun) / done * (total - done)
        print(f"{done:,} of {how_many(total, 'unit')} {what}, {_left(left)}", file=sys.stderr)

    return tell


def _left(seconds: float) -> str:
    """About how long it still takes."""
    if seconds < 90:
        return f"about {how_many(max(1, round(seconds)), 'second')} left"
    return f"about {how_many(round(seconds / 60), 'minute')} left"
