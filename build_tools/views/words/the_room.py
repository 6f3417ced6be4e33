"""Which side of the hall is the front, and what the unit calls the others.

Every lesson says it at its head: a teacher who opens lesson 4 in the hall has not read the rest.
"""

from __future__ import annotations

import re

from build_tools.model.dance import Dance
from build_tools.page_words.words import N_, _
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital, sentence

_WHERE = {
    "left": N_("on the left as you face the front"),
    "right": N_("on the right as you face the front"),
    "back": N_("at the back, opposite the front"),
}


def the_room(dance: Dance) -> str:
    """The front: one long wall, where watchers sit. It is the gate. The pegs are at the back …

    A side that the author's words on the front name already is not told twice.
    """
    said = _needed(dance)
    front = said[:1].lower() + said[1:]
    told = [sentence(_("The front is {place}", place=front) if _is_a_place(front) else said)]
    named = {
        side: name
        for side, name in dance.sides.items()
        if not re.search(rf"\b{re.escape(name)}\b", dance.front, re.IGNORECASE)
    }
    if "front" in named:
        told.append(_("The front is called the {name}.", name=_bare(named["front"])))
    others = [
        _("the {name} is {where}", name=_bare(named[side]), where=_(where))
        for side, where in _WHERE.items()
        if side in named
    ]
    if others:
        told.append(f"{capital(listed(others))}.")
    return " ".join(told)


def _needed(dance: Dance) -> str:
    """The first sentence on the front, and those that name a side or say where watchers sit."""
    first, *more = re.split(r"(?<=[.]) ", dance.front)
    names = re.compile("|".join(["watchers", *map(re.escape, dance.sides.values())]), re.IGNORECASE)
    return " ".join([first, *(one for one in more if names.search(one))])


def _is_a_place(front: str) -> bool:
    return front.startswith(("one ", "the ", "a ", "any "))


def _bare(name: str) -> str:
    return name.removeprefix("the ")
