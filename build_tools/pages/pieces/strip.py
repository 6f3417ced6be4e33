"""The order strip of a motif or development, as pages show it."""

from __future__ import annotations

from build_tools.model.dance import Dance
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.views.dance.left_open import drawn_actions
from build_tools.views.dance.without_counts import is_counted
from build_tools.views.diagrams.strip import order_strip, strip_title
from build_tools.views.diagrams.strip_changes import changes_unseen


def strip_of(dance: Dance, name: str) -> Picture:
    """The order strip of a motif or development."""
    title = strip_title(name)
    changes = changes_unseen(dance, name)
    phrase = dance.phrase if is_counted(dance) else None
    return picture(order_strip(title, drawn_actions(dance, name), phrase, changes))
