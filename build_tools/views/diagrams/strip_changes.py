"""What a development changes that no box can show: said under each action, in a word or two."""

from __future__ import annotations

from collections.abc import Mapping

from build_tools.model.dance import Action, Dance, Development
from build_tools.movement.development import actions_of, is_left_to_pupils
from build_tools.page_words.words import _, of_schema
from build_tools.views.dance.left_open import OPEN, drawn_actions
from build_tools.views.words.plain_words import SHORT_DEVICES, how_developed
from build_tools.views.words.standing_said import facing_in_words

_UNSEEN = frozenset(
    {
        "change of dynamics",
        "change of body part",
        "change of size",
        "change of facing",
        "change of formation",
        "change of number of dancers",
        "change of relationship",
    }
)


def changes_unseen(dance: Dance, name: str) -> tuple[str, ...]:
    """For each action of `name`, what is new in it that its box does not show; "" for nothing.

    Empty where `name` is a motif, or a development whose boxes show the change. Boxes that pupils
    fill are blank, so under them stands what it is that pupils choose.
    """
    development = dance.developments.get(name)
    if development is None:
        return ()
    if chosen := _chosen(dance, name):
        blanks = (action.kind == OPEN for action in drawn_actions(dance, name))
        told_blank = _("pupils choose: {what}", what=chosen)
        return tuple(told_blank if blank else "" for blank in blanks)
    before, after = actions_of(dance, development.of), actions_of(dance, name)
    if len(before) != len(after):
        return ()
    if before != after and development.device not in _UNSEEN:
        return ()
    told = tuple(_told(old, new) for old, new in zip(before, after, strict=True))
    return told if any(told) else _of_the_whole(development, len(after), dance.sides)


def _chosen(dance: Dance, name: str) -> str:
    """What pupils choose in the blanks of a development, or of what it is made from."""
    if not any(action.kind == OPEN for action in drawn_actions(dance, name)):
        return ""
    at = dance.developments.get(name)
    while at is not None:
        if at.choice is not None and at.choice in dance.choices and is_left_to_pupils(at):
            what = dance.choices[at.choice].what.partition(". ")[0].rstrip(".")
            return what[:1].lower() + what[1:]
        at = dance.developments.get(at.of)
    return ""


def _told(old: Action, new: Action) -> str:
    changed = [
        ", ".join(map(of_schema, new.dynamics)) if new.dynamics != old.dynamics else "",
        new.body_part if new.body_part and new.body_part != old.body_part else "",
        of_schema(new.size) if new.size and new.size != old.size else "",
        facing_in_words(new.facing) if new.facing and new.facing != old.facing else "",
    ]
    return ", ".join(word for word in changed if word)


def _of_the_whole(
    development: Development, count: int, sides: Mapping[str, str]
) -> tuple[str, ...]:
    how = how_developed(development, SHORT_DEVICES, sides)
    numbers = development.only or range(1, count + 1)
    return tuple(how if n in numbers else "" for n in range(1, count + 1))
