"""Dance in plain words: actions, devices, who follows whom, lengths. No trade words."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction
from functools import reduce

from build_tools.model.dance import Action, Development, Passage, Seconds, Transition
from build_tools.movement.counts import figures
from build_tools.page_words.forms import row
from build_tools.page_words.words import N_, _, ngettext, of_schema
from build_tools.views.dance.left_open import OPEN
from build_tools.views.words.how_far import how_far_in_words
from build_tools.views.words.sides_named import NO_NAMES, towards_in_words
from build_tools.views.words.standing_said import facing_in_words, formation_in_words

_KINDS = {
    "travel": N_("travel"),
    "turn": N_("turn"),
    "jump": N_("jump"),
    "gesture": N_("gesture"),
    "stillness": N_("hold still"),
    "transfer": N_("shift the weight"),
    OPEN: N_("as pupils choose"),
}
_OTHERS = {
    "watch": N_("; those who wait watch"),
    "echo": N_("; those who wait echo it, small"),
    "frame": N_("; those who wait frame it, still"),
}
_DEVICES = {
    "repetition": N_("danced more than once"),
    "retrograde": N_("danced backwards, the last move first"),
    "change of speed": N_("slower or faster"),
    "change of rhythm": N_("the same length in a new rhythm"),
    "change of size": N_("bigger or smaller"),
    "change of level": N_("higher or lower"),
    "change of direction": N_("going another way"),
    "change of facing": N_("facing another way"),
    "change of pathway": N_("along another line on the floor"),
    "change of dynamics": N_("the same moves with another feel"),
    "change of body part": N_("with another part of the body"),
    "mirror": N_("left and right swapped"),
    "change of order": N_("the moves in a new order"),
    "replacing an action": N_("one move swapped for another"),
    "leaving out": N_("with something left out"),
    "embellishment": N_("with something added"),
    "fragmentation": N_("only a piece of it"),
    "accumulation": N_("building up one move at a time"),
    "combination": N_("joined with another"),
    "change of formation": N_("standing in another shape"),
    "change of number of dancers": N_("with more or fewer dancers"),
    "change of relationship": N_("with the dancers together in a new way"),
    "own variation": N_("changed in a way of their own"),
}
SHORT_DEVICES = {
    **_DEVICES,
    "change of body part": N_("another part of the body"),
    "leaving out": N_("something left out"),
    "embellishment": N_("something added"),
    "change of number of dancers": N_("more or fewer dancers"),
    "change of relationship": N_("the dancers together in a new way"),
}
"""The same as a few words under a drawing."""
_TO_SIDE = {"left": N_("to the left"), "right": N_("to the right")}
_FITS = {
    "unison": N_("all together"),
    "canon": N_("{parts}, each starts {after} after the one before"),
    "canon in turn": N_("{parts}, each starts when the one before has finished"),
    "canon together": N_("{parts}, all start together at different places in it"),
    "canon to one ending": N_(
        "{parts}, each joins in {after} after the one before, and all finish together"
    ),
    "question and answer": N_("one part, then the other answers"),
    "side by side": N_("at the same time"),
}


def name_in_words(name: str) -> str:
    """A short name as it is read: wave-slow becomes wave slow."""
    return name.replace("-", " ")


def counts_in_words(counts: Fraction) -> str:
    """8 counts, 1 count, 1/2 count."""
    return ngettext(
        "{number} count", "{number} counts", 1 if counts <= 1 else 2, number=figures(counts)
    )


def minutes_in_words(minutes: int) -> str:
    """6 minutes, 1 minute."""
    return ngettext("{number} minute", "{number} minutes", minutes)


def how_many(number: int, thing: str) -> str:
    """3 lessons, 1 lesson: for problem messages and the screen, which are in English.

    A page asks `ngettext("{number} lesson", "{number} lessons", many)`.
    """
    return f"{number} {thing}" if number == 1 else f"{number} {thing}s"


def listed(words: Sequence[str], last: str = "and") -> str:
    """Words in a row: a, b and c; `last` is `and` or `or`."""
    return row(words, last)


def told_apart(words: Sequence[str], last: str = "and") -> str:
    """Words in a row, with semicolons between where one of them has a comma inside."""
    return row(words, last, apart=any("," in one for one in words))


def seconds_in_words(length: Seconds) -> str:
    """A length that may vary: 20 to 30 seconds, 1 minute 40 seconds to 2 minutes."""
    least, most = round(length.least), round(length.most)
    if least == most:
        return _clock(least)
    first = str(least) if most < 60 else _clock(least)
    return _("{least} to {most}", least=first, most=_clock(most))


def length_in_words(seconds: Fraction | int) -> str:
    """A length in seconds: 45 seconds, 1 minute 40 seconds."""
    return _clock(round(seconds))


def _clock(seconds: int) -> str:
    minutes, left = divmod(seconds, 60)
    words = [minutes_in_words(minutes)] if minutes else []
    if left or not minutes:
        words.append(ngettext("{number} second", "{number} seconds", left))
    return " ".join(words)


def action_label(action: Action) -> str:
    """The pupils' own word for an action, or the plainest word for what it is; none for a blank.

    Of a variation of their own it is the word of the move that they vary.
    """
    if action.kind == OPEN:
        return action_label(action.theme) if action.theme else ""
    return action.word or _(_KINDS[action.kind])


def action_in_words(action: Action, lasts: str | None = None) -> str:
    """One action as a line: rush: 2 counts, travel sideways to the right, middle level.

    `lasts` says its length in a dance that nobody counts.
    """
    what = all_of([_(_KINDS[kind]) for kind in action.kinds])
    word = action.word or (action_label(action.theme) if action.theme else None)
    parts = [
        counts_in_words(action.counts) if lasts is None else lasts,
        f"{what} {way_in_words(action)}".rstrip(),
        how_far_in_words(action),
        _along(action.pathway),
        _level(action.level),
        _size(action),
        _with(action.body_part, chosen="body_part" in action.chosen),
        facing_in_words(action.facing) if action.facing else "",
        all_of([of_schema(word) for word in action.dynamics]),
        _("with the feel you chose") if "dynamics" in action.chosen else "",
    ]
    text = ", ".join(part for part in parts if part)
    return f"{word}: {text}" if word else text


def all_of(words: Sequence[str]) -> str:
    """Every one of them by the word for and: slow and smooth and light."""
    return "" if not words else reduce(lambda said, one: row([said, one]), words)


def _size(action: Action) -> str:
    if "size" in action.chosen:
        return _("bigger or smaller")
    return of_schema(action.size) if action.size else ""


def _along(pathway: str | None) -> str:
    return _("along a {pathway} line", pathway=of_schema(pathway)) if pathway else ""


def _with(part: str | None, *, chosen: bool = False) -> str:
    """With which part of the body: the hands, one arm, or the part that pupils chose."""
    if chosen:
        return _("with the part you chose")
    if not part:
        return ""
    if part.split()[0] in ("one", "both", "a", "an"):
        return _("with {part}", part=part)
    return _("with the {part}", part=part)


def way_in_words(action: Action) -> str:
    """Which way an action goes: sideways to the right; empty where it says neither."""
    side = _(_TO_SIDE[action.side]) if action.side else ""
    direction = of_schema(action.direction) if action.direction else ""
    return " ".join(word for word in (direction, side) if word)


def _level(level: str | None) -> str:
    if not level:
        return ""
    if " to " in level:
        return _("from {levels}", levels=of_schema(level))
    return _("{level} level", level=of_schema(level))


def passage_in_words(passage: Passage, sides: Mapping[str, str] = NO_NAMES) -> str:
    """What is danced and how the parts fit: anemone part, 4 parts, each starts 4 counts after."""
    names = [name_in_words(name) for name in passage.what]
    what = all_of(names) if passage.fit == "side by side" else _one_after_another(names)
    if passage.times > 1:
        what = _("{what} {times} times", what=what, times=passage.times)
    towards = f", {towards_in_words(passage.towards, sides)}" if passage.towards else ""
    return f"{what}, {fit_in_words(passage)}{towards}{_meanwhile(passage)}"


def _one_after_another(names: Sequence[str]) -> str:
    return reduce(lambda said, one: _("{first} then {next}", first=said, next=one), names)


def _meanwhile(passage: Passage) -> str:
    """Whether the parts change over, and what those do who are not dancing, where it is said."""
    swap = _(", then again with the parts changed over") if passage.swap else ""
    return f"{swap}{_(_OTHERS[passage.others]) if passage.others in _OTHERS else ''}"


def danced_in_words(passage: Passage, sides: Mapping[str, str] = NO_NAMES) -> str:
    """The same, with who dances it where that is said, else the roles in order."""
    who = passage.who or listed(passage.roles)
    return passage_in_words(passage, sides) + (f" ({who})" if who else "")


def fit_in_words(passage: Passage) -> str:
    """How the parts of a passage fit in time."""
    after = counts_in_words(passage.after) if passage.after is not None else ""
    parts = _("{number} parts", number=passage.parts) if passage.parts else _("the parts")
    said = _FITS[passage.fit]
    return _(said).format(parts=parts, after=after)


def development_in_words(development: Development, sides: Mapping[str, str] = NO_NAMES) -> str:
    """How a development is made: wave, left and right swapped."""
    how = how_developed(development, sides=sides)
    if development.choice:
        how = _("{how}, as pupils choose", how=how)
    return f"{name_in_words(development.of)}, {how}"


def how_developed(
    development: Development,
    devices: Mapping[str, str] = _DEVICES,
    sides: Mapping[str, str] = NO_NAMES,
) -> str:
    """What is done with that which it is made from: left and right swapped, facing the back."""
    d = development
    if d.times:
        return _("danced {times} times", times=d.times)
    if d.joined_to:
        return _("joined with {other}", other=name_in_words(d.joined_to))
    if said := _changed_to(d, sides):
        return said
    how = _(devices[d.device])
    if d.dynamics:
        how += f": {listed([of_schema(word) for word in d.dynamics])}"
    if d.dancers or d.relationship:
        how += f": {d.dancers or d.relationship}"
    return how


def _changed_to(d: Development, sides: Mapping[str, str]) -> str:
    """What a development changes to, where the unit says it: no word that something is changed."""
    said = (
        facing_in_words(d.facing, sides) if d.facing else "",
        _("going {direction}", direction=of_schema(d.direction)) if d.direction else "",
        _("danced {size}", size=of_schema(d.size)) if d.size else "",
        _level(d.level),
        _along(d.pathway),
        _with(d.body_part),
        formation_in_words(d.formation) if d.formation else "",
    )
    return ", ".join(one for one in said if one)


def transition_in_words(transition: Transition) -> str:
    """How long a join takes: 8 counts, held still for 8 counts, straight on."""
    counts = counts_in_words(transition.counts) if transition.counts is not None else ""
    return {
        "move": counts or _("a move"),
        "hold": _("held still, {counts}", counts=counts) if counts else _("held still"),
        "overlap": _("the next part starts {counts} early", counts=counts)
        if counts
        else _("the next part overlaps"),
        "cut": _("a sudden cut, no counts"),
        "straight on": _("straight on, no counts"),
    }[transition.kind]
