"""A motif or development as pages draw it: bodies above bars, and the same in words."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from build_tools.body.poses import moved
from build_tools.model.dance import Action, Dance
from build_tools.movement.counts import figures
from build_tools.page_words.speaking import kept_by_language
from build_tools.page_words.words import _
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.views.dance.kept_in_choice import CountsKept, kept_in_choice
from build_tools.views.dance.left_open import OPEN, drawn_actions, options_of
from build_tools.views.dance.moves_before import moves_before, shown
from build_tools.views.dance.without_counts import is_counted
from build_tools.views.diagrams.body_sprite import BodyDrawn
from build_tools.views.diagrams.body_words import deed_in_words
from build_tools.views.diagrams.figure_strip import figure_strip
from build_tools.views.diagrams.strip import strip_title
from build_tools.views.diagrams.strip_changes import changes_unseen
from build_tools.views.words.plain_words import action_in_words, action_label, told_apart
from build_tools.views.words.punctuation import capital, stopped


@dataclass(frozen=True, slots=True)
class MotifDrawn:
    """A picture, and the bodies that its page has to draw once for it."""

    picture: Picture
    """The picture."""
    bodies: tuple[BodyDrawn, ...]
    """What it points to."""


@kept_by_language(maxsize=64)
def motif_drawn(dance: Dance, name: str) -> MotifDrawn:
    """The picture of a motif or development; lessons, cards and what is printed show it again."""
    actions, counted = drawn_actions(dance, name), is_counted(dance)
    drawn = figure_strip(
        strip_title(name),
        actions,
        counted,
        changes_unseen(dance, name),
        _words(actions, counted, options_of(dance, name), kept_in_choice(dance, name)),
    )
    return MotifDrawn(picture(drawn.figure), drawn.bodies)


def _words(
    actions: Sequence[Action],
    counted: bool,
    options: Sequence[str],
    kept: Mapping[CountsKept, str],
) -> tuple[str, ...]:
    """Move by move: on which counts, what the body does, and the same in the words of dance.

    `options` are those of which pupils choose one, where the motif is changed so, and `kept` what
    no choice changes.
    """
    if all(shown(action) is None for action in actions):
        return (_("Every move is as pupils choose."),)
    lines = []
    at = Fraction(0)
    for action, before in zip(actions, moves_before(actions), strict=True):
        keeps = kept.get((at, at + action.counts), "")
        said = _said(action, before, options, keeps)
        lines.append(_on_counts(at, action, said) if counted else said)
        at += action.counts
    return tuple(lines)


def _on_counts(at: Fraction, action: Action, move: str) -> str:
    first, last = figures(at + 1), figures(at + action.counts)
    if action.counts <= 1:
        return _("Count {first}: {move}", first=first, move=move)
    return _("Counts {first} to {last}: {move}", first=first, last=last, move=move)


def _said(action: Action, before: Action | None, options: Sequence[str], keeps: str) -> str:
    if action.kind == OPEN:
        if word := action_label(action):
            if keeps:
                return _("{move}: {kept}, in the way chosen.", move=capital(word), kept=keeps)
            return _("{move}, changed as pupils choose.", move=capital(word))
        chosen = _("as pupils choose")
        return f"{chosen}."
    shown = deed_in_words(moved(action, before))
    if "body_part" in action.chosen and options:
        shown = _("the part you chose: {parts}", parts=told_apart(options, "or"))
    trade = action_in_words(action, "").removeprefix(f"{action_label(action)}: ")
    return f"{stopped(action_label(action))} {capital(shown)} ({trade})."
