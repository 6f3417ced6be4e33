"""What teachers say for a word of a list, where the nearest spelling would be another thing.

What can mean one thing alone is read so (`source/typed/said_plainly.py`) and is not here.
"Together"
is spelt most like canon together, and is unison; "each group" is spelt most like each pupil, and is
groups.
"""

from __future__ import annotations

import re
from collections.abc import Collection

_SAID: dict[str, tuple[str, ...]] = {
    "together": ("unison",),
    "all together": ("unison",),
    "at the same time": ("unison",),
    "at once": ("unison",),
    "one after another": ("canon in turn",),
    "one by one": ("canon in turn",),
    "in turn": ("canon in turn",),
    "each group": ("groups",),
    "every group": ("groups",),
    "small groups": ("groups",),
    "each pair": ("pairs",),
    "every pair": ("pairs",),
    "partners": ("pairs",),
    "twos": ("pairs",),
    "each child": ("each pupil",),
    "everyone": ("whole class", "class"),
    "everybody": ("whole class", "class"),
    "all": ("whole class", "class"),
    "whole class": ("class",),
    "individual": ("alone", "each pupil"),
    "solo": ("alone",),
    "practise": ("rehearse",),
    "practice": ("rehearse",),
    "perform": ("show",),
    "share": ("show",),
    "starter": ("warm-up",),
    "plenary": ("look and talk",),
    "slow": ("sustained",),
    "slowly": ("sustained",),
    "smooth": ("sustained",),
    "smoothly": ("sustained",),
    "quick": ("sudden",),
    "quickly": ("sudden",),
    "fast": ("sudden",),
    "heavy": ("strong",),
    "hard": ("strong", "vigorous"),
    "soft": ("light", "soft beat"),
    "easy": ("gentle",),
    "medium": ("middle", "steady"),
    "mid": ("middle",),
    "drum": ("beat",),
    "tambourine": ("beat", "drum"),
    "clapping": ("claps",),
    "music": ("recording", "recorded"),
    "quiet": ("silence",),
}


def said_for(word: str, options: Collection[str]) -> str | None:
    """The word among `options` that a teacher means by `word`, where it is known."""
    plain = " ".join(re.split(r"[\s_-]+", word.casefold().strip(" .,;")))
    plain = plain.removeprefix("in ") if plain not in _SAID else plain
    meant = list(_SAID.get(plain, ()))
    if re.fullmatch(r"groups? of ([2-6])", plain):
        meant.append("groups")
    return next((one for one in meant if one in options), None)
