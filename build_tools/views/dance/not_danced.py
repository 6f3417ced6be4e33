"""What is made on the way and is not danced, as it is, in the whole dance."""

from __future__ import annotations

from build_tools.model.dance import Dance
from build_tools.page_words.words import _, ngettext
from build_tools.views.words.plain_words import listed, name_in_words


def not_danced(dance: Dance, name: str) -> str | None:
    """Why a motif or development is shown though the dance has it nowhere; None where it has it."""
    if any(name in passage.what for one in dance.sections.values() for passage in one.danced):
        return None
    made = [
        name_in_words(d.name) for d in dance.developments.values() if name in (d.of, d.joined_to)
    ]
    if not made:
        return _("Not danced in the whole dance.")
    return ngettext(
        "Not danced as it is: {parts} is made from it.",
        "Not danced as it is: {parts} are made from it.",
        len(made),
        parts=listed(made),
    )
