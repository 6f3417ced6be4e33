"""A teacher's settings for one lesson as a short code to copy: 38-7-25-2-half."""

from __future__ import annotations

import re
from dataclasses import dataclass

MOST_MINUTES, MOST_PUPILS = 240, 120
_NUMBER = "(0|[1-9][0-9]{0,2})"
_SPACE = "full|half|classroom|unknown|[1-9][0-9]?x[1-9][0-9]?[ms]"
_CODE = re.compile(f"{_NUMBER}-{_NUMBER}-{_NUMBER}-{_NUMBER}-({_SPACE})")


@dataclass(frozen=True, slots=True)
class FitSettings:
    """What a teacher says of today."""

    available: int
    """Minutes from the classroom door and back."""
    changing: int
    """How many of them go to changing."""
    dancing: int
    """How many pupils dance."""
    watching: int
    """How many do not dance today."""
    space: str
    """full, half, classroom, unknown, 12x8m in metres, or 14x9s in big steps."""


def settings_code(settings: FitSettings) -> str | None:
    """The settings as a code; None where they are out of range."""
    code = "-".join(
        str(part)
        for part in (
            settings.available,
            settings.changing,
            settings.dancing,
            settings.watching,
            settings.space,
        )
    )
    return code if settings_from(code) == settings else None


def settings_from(code: str) -> FitSettings | None:
    """The settings that a code holds; None where it holds none.

    At least one minute is left after changing, of 240 at most; 1 to 120 pupils dance.
    """
    found = _CODE.fullmatch(code)
    if found is None:
        return None
    available, changing, dancing, watching = (int(found.group(n)) for n in range(1, 5))
    if not changing < available <= MOST_MINUTES:
        return None
    if not 1 <= dancing <= MOST_PUPILS or watching > MOST_PUPILS:
        return None
    return FitSettings(available, changing, dancing, watching, found.group(5))
