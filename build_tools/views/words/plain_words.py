"""Dance in plain words: actions, devices, who follows whom, lengths. No trade words."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from build_tools.model.dance import Action, Development, Passage, Seconds, Standing, Transition
from build_tools.movement.counts import figures
from build_tools.views.dance.left_open import OPEN
from build_tools.views.words.how_far import how_far_in_words
from build_tools.views.words.sides_named import NO_NAMES, side_in_words, towards_in_words

_KINDS = {
    "travel": "travel",
    "turn": "turn",
    "jump": "jump",
    "gesture": "gesture",
    "stillness": "hold still",
    "transfer": "shift the weight",
    OPEN: "as pupils choose",
}
_PLACES = {
    "V": "in a V shape",
    "cluster": "close together",
    "pairs": "in pairs",
    "small groups": "in small groups",
    "scattered": "spread out",
    "two lines": "in two lines",
    "rows": "in rows",
    "file": "one behind another",
}
_FACINGS = {
    "centre": "facing the middle",
    "outwards": "facing out",
    "partner": "facing a partner",
    "mixed": "facing different ways",
}
_OTHERS = {
    "watch": "; those who wait watch",
    "echo": "; those who wait echo it, small",
    "frame": "; those who wait frame it, still",
}
_DEVICES = {
    "repetition": "danced more than once",
    "retrograde": "danced backwards, the last move first",
    "change of speed": "slower or faster",
    "change of rhythm": "the same length in a new rhythm",
    "change of size": "bigger or smaller",
    "change of level": "higher or lower",
    "change of direction": "going another way",
    "change of facing": "facing another way",
    "change of pathway": "along another line on the floor",
    "change of dynamics": "the same moves with another feel",
    "change of body part": "with another part of the body",
    "mirror": "left and right swapped",
    "change of order": "the moves in a new order",
    "replacing an action": "one move swapped for another",
    "leaving out": "with something left out",
    "embellishment": "with something added",
    "fragmentation": "only a piece of it",
    "accumulation": "building up one move at a time",
    "combination": "joined with another",
    "change of formation": "standing in another shape",
    "change of number of dancers": "with more or fewer dancers",
    "change of relationship": "with the dancers together in a new way",
    "own variation": "changed in a way of their own",
}


def name_in_words(name: str) -> str:
    """A short name as it is read: wave-slow becomes wave slow."""
    return name.replace("-", " ")


def counts_in_words(counts: Fraction) -> str:
    """8 counts, 1 count, 1/2 count."""
    return f"{figures(counts)} {'count' if counts <= 1 else 'counts'}"


def minutes_in_words(minutes: int) -> str:
    """6 minutes, 1 minute."""
    return f"{minutes} {'minute' if minutes == 1 else 'minutes'}"


def how_many(number: int, thing: str) -> str:
    """3 lessons, 1 lesson."""
    return f"{number} {thing}" if number == 1 else f"{number} {thing}s"


def listed(words: Sequence[str], last: str = "and") -> str:
    """Words in a row: a, b and c."""
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} {last} {words[-1]}"


def seconds_in_words(length: Seconds) -> str:
    """A length that may vary: 20 to 30 seconds, 1 minute 40 seconds to 2 minutes."""
    least, most = round(length.least), round(length.most)
    if least == most:
        return _clock(least)
    if most < 60:
        return f"{least} to {_clock(most)}"
    return f"{_clock(least)} to {_clock(most)}"


def length_in_words(seconds: Fraction | int) -> str:
    """A length in seconds: 45 seconds, 1 minute 40 seconds."""
    return _clock(round(seconds))


def _clock(seconds: int) -> str:
    minutes, left = divmod(seconds, 60)
    words = [minutes_in_words(minutes)] if minutes else []
    if left or not minutes:
        words.append(f"{left} {'second' if left == 1 else 'seconds'}")
    return " ".join(words)


def action_label(action: Action) -> str:
    """The pupils' own word for an action, or the plainest word for what it is; none for a blank."""
    if action.kind == OPEN:
        return ""
    return action.word or _KINDS[action.kind]


def action_in_words(action: Action, lasts: str | None = None) -> str:
    """One action as a line: rush: 2 counts, travel sideways to the right, middle level.

    `lasts` says its length in a dance that nobody counts.
    """
    what = " and ".join(_KINDS[kind] for kind in action.kinds)
    parts = [
        counts_in_words(action.counts) if lasts is None else lasts,
        f"{what} {way_in_words(action)}".rstrip(),
        how_far_in_words(action),
        f"along a {action.pathway} line" if action.pathway else "",
        _level(action.level),
        action.size or "",
        _with(action),
        _facing(action.facing) if action.facing else "",
        " and ".join(action.dynamics),
    ]
    text = ", ".join(part for part in parts if part)
    return f"{action.word}: {text}" if action.word else text


def _with(action: Action) -> str:
    """With which part of the body: the hands, one arm, or the part that pupils chose."""
    if not action.body_part:
        return ""
    if action.body_part == action.part_chosen:
        return "with the part you chose"
    counted = action.body_part.split()[0] in ("one", "both", "a", "an")
    return f"with {'' if counted else 'the '}{action.body_part}"


def way_in_words(action: Action) -> str:
    """Which way an action goes: sideways to the right; empty where it says neither."""
    side = f"to the {action.side}" if action.side else ""
    return " ".join(word for word in (action.direction, side) if word)


def _level(level: str | None) -> str:
    if not level:
        return ""
    return f"from {level}" if " to " in level else f"{level} level"


def _facing(facing: str, sides: Mapping[str, str] = NO_NAMES) -> str:
    if facing in sides:
        return f"facing {side_in_words(facing, sides)}"
    return _FACINGS.get(facing, f"facing {facing}")


def standing_in_words(standing: Standing, sides: Mapping[str, str] = NO_NAMES) -> str:
    """How the dancers stand: in pairs, facing a partner; sides of the hall by their own names."""
    where = _PLACES.get(standing.formation, f"in a {standing.formation}")
    return f"{where}, {_facing(standing.facing, sides)}"


def passage_in_words(passage: Passage, sides: Mapping[str, str] = NO_NAMES) -> str:
    """What is danced and how the parts fit: anemone part, 4 parts, each starts 4 counts after."""
    joint = " then " if passage.fit not in ("side by side",) else " and "
    what = joint.join(name_in_words(name) for name in passage.what)
    times = f" {passage.times} times" if passage.times > 1 else ""
    towards = f", {towards_in_words(passage.towards, sides)}" if passage.towards else ""
    return f"{what}{times}, {fit_in_words(passage)}{towards}{_meanwhile(passage)}"


def _meanwhile(passage: Passage) -> str:
    """Whether the parts change over, and what those do who are not dancing, where it is said."""
    swap = ", then again with the parts changed over" if passage.swap else ""
    return f"{swap}{_OTHERS.get(passage.others, '')}"


def danced_in_words(passage: Passage, sides: Mapping[str, str] = NO_NAMES) -> str:
    """The same, with who dances it where that is said, else the roles in order."""
    who = passage.who or listed(passage.roles)
    return passage_in_words(passage, sides) + (f" ({who})" if who else "")


def fit_in_words(passage: Passage) -> str:
    """How the parts of a passage fit in time."""
    after = counts_in_words(passage.after) if passage.after is not None else ""
    parts = f"{passage.parts} parts" if passage.parts else "the parts"
    return {
        "unison": "all together",
        "canon": f"{parts}, each starts {after} after the one before",
        "canon in turn": f"{parts}, each starts when the one before has finished",
        "canon together": f"{parts}, all start together at different places in it",
        "canon to one ending": f"{parts}, each joins in {after} after the one before, and all "
        "finish together",
        "question and answer": "one part, then the other answers",
        "side by side": "at the same time",
    }[passage.fit]


def development_in_words(development: Development) -> str:
    """How a development is made: wave with left and right swapped."""
    d, how = development, _DEVICES[development.device]
    if d.times:
        how = f"danced {d.times} times"
    if d.dynamics:
        how += f": {listed(d.dynamics)}"
    for value in (d.size, d.level, d.direction, d.pathway, d.body_part, d.formation):
        how += f": {value}" if value else ""
    if d.facing:
        how += f": {_facing(d.facing)}"
    if d.dancers or d.relationship:
        how += f": {d.dancers or d.relationship}"
    if d.joined_to:
        how = f"joined with {name_in_words(d.joined_to)}"
    if d.choice:
        how += ", as pupils choose"
    return f"{name_in_words(d.of)}, {how}"


def transition_in_words(transition: Transition) -> str:
    """How long a join takes: 8 counts, held still for 8 counts, straight on."""
    counts = counts_in_words(transition.counts) if transition.counts is not None else ""
    return {
        "move": counts or "a move",
        "hold": f"held still, {counts}" if counts else "held still",
        "overlap": f"the next part starts {counts} early" if counts else "the next part overlaps",
        "cut": "a sudden cut, no counts",
        "straight on": "straight on, no counts",
    }[transition.kind]
