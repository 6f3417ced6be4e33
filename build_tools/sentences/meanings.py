"""What words of the trade mean, and what they are mistaken for.

Each meaning is written once, as the phrases that tell it; a word has the meaning that is its own
and those of the words it is taken for.
"""

from __future__ import annotations

from build_tools.sentences.sayings import Said, Saying

_TOGETHER = "same time|moment|beat|instant\nat once\ntogether|simultaneous|simultaneously\nas one"
_IN_TURN = (
    "one after|by another|one|each-other\nafter each-other|another|other|first\nin turn\n"
    "one ~3 then ~2 next|another|other\none ~~3 then ~2 next\nlater\n"
    "each-other after|behind|following\n"
    "each|one|dancer|person|group ~3 start|starts|starting|begin|begins|enters|follows ~3 after|"
    "later|behind|next\n#1.. ~1 counts|beats ~1 after|later|apart|behind\nmexican wave\ndomino"
)
_OTHER_SIDE = (
    "left ~2 right\nright ~2 left\nother|opposite side|hand|foot\nmirror|reflect|reflection|glass"
    "\nswap|swapped ~2 sides"
)
_BACKWARDS = (
    "backwards|backward|reverse|reversed|rewind|rewound|undo|undone\n"
    "last|end ~4 first|start|beginning\nstart|begin|starting ~2 last|end ~1 move|action|$"
)
_BY_HEART = (
    "by heart\nlearn|learnt|learned|copy|copied|set|fixed|rehearse|rehearsed|memorise|practise\n"
    "same ~2 every|each|time|way\nrepeat|repeated|again"
)
_FREELY = (
    "make|making|made ~3 up\nas you|they ~1 go\n"
    "invent|inventing|unplanned|spontaneous|freely|free\n"
    "without|no|not ~2 plan|planning|planned|set|fixed|decided|rehearsed\non the spot\n"
    "there and then"
)
_BUILDS = "add|adds|adding|added|build|builds|grow|grows|more\none ~~2 one ~2 two\nlonger"
_FEWER = "take|takes|taking|leave|leaves|left ~3 away|out\nfewer|less|shorter|drop|drops"
_ANSWERS = (
    "chat|conversation|talking|reply|replies|answer|answers\n"
    "one ~4 other|another ~2 move|moves|dance|dances|answer|answers ~1 back"
)
_HEIGHT = (
    "high|higher|up|top|tall ~~8 low|lower|floor|middle|down|ground|deep\n"
    "low|lower|floor|down ~~8 high|higher|up|top|middle|tall\n"
    "near|close|far ~3 floor|ground\nhow ~1 high|low|tall"
)
_QUALITY = (
    "strong|soft|sharp|smooth|sudden|heavy|light|floaty|gentle|jerky|bouncy|sustained ~~6 "
    "strong|soft|sharp|smooth|sudden|heavy|light|floaty|gentle|jerky|bouncy|sustained\n"
    "how ~1 strong|soft|sharp|smooth|sudden|heavy|light|gentle|strongly|softly|sharply|smoothly|"
    "heavily|lightly|gently\nenergy|force"
)
_SPEED = (
    "fast|quick|slow|slowly|quickly|faster|slower ~~6 fast|quick|slow|slowly|quickly|faster|slower"
    "\nspeed|tempo\nhow ~1 fast|quick|slow|quickly|slowly"
)
_TRACK = (
    "track|trail|route|footprints|path|pathway\nline|pattern|shape ~3 you|they|feet ~3 leave|draw|"
    "make|travel|walk\nwhere you|we|dancers ~1 go|travel|walk\nas you travel"
)
_PLACES = (
    "shape|pattern|line|circle ~4 group|dancers|you|they|we|everyone ~2 stand|stands|standing|"
    "placed|arranged|make|makes\ndancers|group|pupils|everyone ~2 stand|stands|standing|placed|"
    "arranged\nwhere ~3 dancers|people|everyone|pupils ~2 stand|are|placed\n"
    "stand|standing in ~3 line|lines|circle|row|rows|triangle|square"
)
_WAY = "forwards|forward|sideways ~~6 backwards|backward|sideways|forwards|forward\nwhich way"
_SAME = "exactly ~1 same\nsame ~2 again|move|moves|thing|way"

_ONE, _TWO, _THREE = (
    "one|alone|yourself|own|single|itself",
    "two|pair|partner|partners|couple|both|=twos",
    "three|threes",
)
_ALL = "everyone|everybody|group\nwhole class"

_MEANS = {
    "canon": (_IN_TURN, (_TOGETHER, _OTHER_SIDE, _BACKWARDS)),
    "unison": (_TOGETHER, (_IN_TURN, _OTHER_SIDE, _BACKWARDS)),
    "question and answer": (
        "then|replies|reply|answer|answers|back|turn|turns|after\nother waits",
        (_TOGETHER, _BACKWARDS, _OTHER_SIDE, _BUILDS),
    ),
    "retrograde": (_BACKWARDS, (_OTHER_SIDE, _TOGETHER, _IN_TURN, _BUILDS)),
    "mirror": (_OTHER_SIDE, (_BACKWARDS, _IN_TURN, _BUILDS)),
    "improvise": (_FREELY, (_BY_HEART, _TOGETHER)),
    "accumulation": (_BUILDS, (_FEWER, _TOGETHER, _BACKWARDS, _ANSWERS)),
    "motif": (
        "short|small|little|set|row|string|few ~4 move|movement|action|step|dance|gesture\n"
        "idea|sentence|tune|chorus|pattern ~3 moves|movement|actions\nidea\nrepeat|repeated\n"
        "come|comes|coming|keep|keeps|return|returns ~2 back|again",
        (_PLACES, _TRACK, _QUALITY, _HEIGHT, _SPEED),
    ),
    "level": (
        "high|higher|low|lower|middle|medium|floor|ground|tall|deep|height",
        (_QUALITY, _SPEED, _PLACES, _TRACK, _WAY),
    ),
    "dynamics": (
        f"{_QUALITY}\nstrong|soft|sharp|smooth|sudden|heavy|light|floaty|gentle|quick|fast|slow|"
        "speed|weight|flow|feel|quality",
        (_HEIGHT, _PLACES, _TRACK, _WAY),
    ),
    "pathway": (
        f"{_TRACK}\ntravel|go|goes|journey|draw|leave|walk|move|wander|curved|zigzag",
        (_PLACES, _HEIGHT, _QUALITY, _SPEED),
    ),
    "formation": (
        f"{_PLACES}\nstand|stands|standing|placed|arranged|group|circle|row|rows|lines|triangle|"
        "square|semicircle|positions",
        (_TRACK, _HEIGHT, _QUALITY, _SPEED),
    ),
    "tempo": (
        f"{_SPEED}\nfast|quick|slow|beat|beats|pulse|time",
        (_HEIGHT, _QUALITY, _PLACES, _TRACK, _WAY),
    ),
    "direction": (
        f"{_WAY}\nway|direction|forwards|backwards|sideways|face|facing|left|right|diagonal|towards",
        (_HEIGHT, _QUALITY, _SPEED),
    ),
    "transition": (
        "from|join|joins|joining|link|links|between|next|get|gets|connect|connects|bridge|change",
        (_PLACES, _TOGETHER, _BACKWARDS, _HEIGHT, _QUALITY),
    ),
    "contrast": (
        "different|difference|opposite|opposites|unlike|change|changes|if ~~6 then",
        (_SAME, _TOGETHER, _IN_TURN),
    ),
    "repetition": (
        "again|same|repeat|repeated|repeats|twice|once|over",
        (_BACKWARDS, _IN_TURN, _OTHER_SIDE, _FREELY),
    ),
    "solo": (_ONE, (_TWO, _THREE, _ALL)),
    "duet": (_TWO, (_THREE, "alone|yourself|own", _ALL)),
    "trio": (_THREE, (_TWO, "alone|yourself", _ALL)),
}
_ALSO_CALLED = {
    "improvisation": "improvise",
    "improvising": "improvise",
    "mirroring": "mirror",
    "call and response": "question and answer",
    "accumulate": "accumulation",
    "in canon": "canon",
    "in unison": "unison",
    "speed": "tempo",
    "change of speed": "tempo",
    "change of tempo": "tempo",
    "change of level": "level",
    "change of direction": "direction",
    "dynamic": "dynamics",
    "floor pattern": "pathway",
    "repeat": "repetition",
}
_SAYINGS = {
    word: (Saying(right), Saying("\n".join(others))) for word, (right, others) in _MEANS.items()
}
"""For each word, what its meaning says, and what the meanings say that it is taken for."""


def means_another(word: str, plain: str) -> Said | None:
    """Where the explanation of `word` says what another word means, and not what it means.

    What a meaning is likened to tells it too: as if you looked in the glass.
    """
    one = _ALSO_CALLED.get(word, word)
    known = one if one in _SAYINGS else one.removesuffix("s")
    if known not in _SAYINGS:
        return None
    right, other = _SAYINGS[known]
    return None if right.mentioned(plain) else other.said(plain, likened=True)
