"""What words of the trade mean, and what they are mistaken for."""

from __future__ import annotations

from build_tools.sentences.sayings import Said, Saying

_TOGETHER = "same time|moment|beat|instant\nat once\ntogether|simultaneous|simultaneously\nas one"
_IN_TURN = (
    "one after|by another|one|each-other\nafter each-other|another|other|first\nin turn\n"
    "one ~2 then ~2 next|another|other\nlater\neach-other after|behind|following\n"
    "each|one|dancer|person|group ~3 start|starts|starting|begin|begins|enters|follows ~3 after|"
    "later|behind|next\n#1.. ~1 counts|beats ~1 after|later|apart|behind"
)
_OTHER_SIDE = (
    "left ~2 right\nright ~2 left\nother|opposite side|hand|foot\nmirror|reflect|reflection|glass"
    "\nswap|swapped ~2 sides"
)
_BACKWARDS = (
    "backwards|backward|reverse|reversed|rewind|rewound|undo|undone\n"
    "last|end ~4 first|start|beginning"
)
_BY_HEART = (
    "by heart\nlearn|learnt|learned|copy|copied|set|fixed|rehearse|rehearsed|memorise|practise\n"
    "same ~2 every|each|time|way"
)
_FREELY = (
    "make|making|made ~3 up\nas you|they ~1 go\n"
    "invent|inventing|unplanned|spontaneous|freely|free\n"
    "without|no|not ~2 plan|planning|planned|set|fixed|decided|rehearsed\non the spot\n"
    "there and then"
)
_BUILDS = "add|adds|adding|added|build|builds|grow|grows|more\none ~~2 one ~2 two\nlonger"
_FEWER = "take|takes|taking|leave|leaves|left ~3 away|out\nfewer|less|shorter|drop|drops"

_MEANS = {
    "canon": (_IN_TURN, f"{_TOGETHER}\n{_OTHER_SIDE}\n{_BACKWARDS}"),
    "unison": (_TOGETHER, f"{_IN_TURN}\n{_OTHER_SIDE}\n{_BACKWARDS}"),
    "question and answer": (
        "then|replies|reply|answer|answers|back|turn|turns|after\nother waits",
        f"{_TOGETHER}\n{_BACKWARDS}",
    ),
    "retrograde": (_BACKWARDS, f"{_OTHER_SIDE}\n{_TOGETHER}\n{_IN_TURN}\n{_BUILDS}"),
    "mirror": (_OTHER_SIDE, f"{_BACKWARDS}\n{_IN_TURN}\n{_BUILDS}"),
    "improvise": (_FREELY, f"{_BY_HEART}\n{_TOGETHER}"),
    "improvisation": (_FREELY, f"{_BY_HEART}\n{_TOGETHER}"),
    "accumulation": (_BUILDS, f"{_FEWER}\n{_TOGETHER}\n{_BACKWARDS}"),
}
_SAYINGS = {word: (Saying(right), Saying(other)) for word, (right, other) in _MEANS.items()}
"""For each word, what its meaning says, and what the meaning of another says."""


def means_another(word: str, plain: str) -> Said | None:
    """Where the explanation of `word` says what another word means, and not what it means."""
    if word not in _SAYINGS:
        return None
    right, other = _SAYINGS[word]
    return None if right.mentioned(plain) else other.said(plain)
