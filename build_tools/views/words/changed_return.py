"""What of a section differs when it comes back changed, in words."""

from __future__ import annotations

from collections.abc import Mapping

from build_tools.model.dance import Section
from build_tools.page_words.words import N_, _
from build_tools.views.words.plain_words import listed

_CALLED: Mapping[str, str] = {
    "idea": N_("what it is about"),
    "name": N_("its name"),
    "counts": N_("how long it lasts"),
    "timed": N_("how long it lasts"),
    "improvised": N_("how it is improvised"),
    "groups": N_("who dances together"),
    "start": N_("how it starts"),
    "end": N_("how it ends"),
    "danced": N_("what is danced"),
    "sound": N_("its sound"),
    "heard": N_("what sounds on which count"),
}


def changed_in_words(section: Section) -> str | None:
    """A come back, with another ending; None for a section that is no changed return.

    The parts stand in the order in which a dance is read, not as they are written.
    """
    if section.returns is None:
        return None
    differs = [_(words) for field, words in _CALLED.items() if field in section.changes]
    what = listed(list(dict.fromkeys(differs))) if differs else _("nothing yet")
    return _("{section} comes back. What differs: {what}.", section=section.returns, what=what)
