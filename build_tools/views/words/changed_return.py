"""What of a section differs when it comes back changed, in words."""

from __future__ import annotations

from collections.abc import Mapping

from build_tools.model.dance import Section
from build_tools.views.words.plain_words import listed

_CALLED: Mapping[str, str] = {
    "idea": "what it is about",
    "name": "its name",
    "counts": "how long it lasts",
    "timed": "how long it lasts",
    "improvised": "how it is improvised",
    "groups": "who dances together",
    "start": "how it starts",
    "end": "how it ends",
    "danced": "what is danced",
    "sound": "its sound",
    "heard": "what sounds on which count",
}


def changed_in_words(section: Section) -> str | None:
    """A come back, with another ending; None for a section that is no changed return.

    The parts stand in the order in which a dance is read, not as they are written.
    """
    if section.returns is None:
        return None
    differs = [words for field, words in _CALLED.items() if field in section.changes]
    what = listed(list(dict.fromkeys(differs))) if differs else "nothing yet"
    return f"{section.returns} comes back. What differs: {what}."
