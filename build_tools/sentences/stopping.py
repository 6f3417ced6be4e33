"""A signal to stop that is a sound of the dance itself."""

from __future__ import annotations

from functools import lru_cache

from build_tools.sentences.plain import plain_words
from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

SOUNDS_OF_DANCES = {
    "drum": "drum drumbeat drumroll bongo djembe tambour tom-tom n:bang n:boom n:thump",
    "tap": "n:tap =taps tapping",
    "beat": "n:beat =beats drumbeat",
    "shaker": "shaker maraca rattle n:shake =shakes",
    "bell": "bell jingle",
    "clap": "n:clap =claps",
    "whistle": "whistle",
    "tambourine": "tambourine",
    "triangle": "triangle",
    "cymbal": "cymbal",
    "gong": "gong",
    "claves": "claves woodblock",
    "chime": "chime",
    "music": "music song track",
    "roll": "n:roll =rolls",
    "stamp": "n:stamp =stamps",
    "click": "n:click =clicks",
    "hum": "n:hum =hums",
    "guitar": "guitar",
    "piano": "piano",
    "voice": "voice",
}
"""Sounds to which dances are danced, and the words by which a signal is made of the same."""

TOLD_TO_STOP = Saying(
    """
    =stop|=stopping|halt|freeze|standstill|statue|statues|motionless !thinking|in|sign
    stand|be|hold|keep|go|stay ~2 still|stone|stones|rock|rocks|solid|hush
    everyone|everybody|all|you|class|dancer|dancers|pupils|we ~2 =stops
    stone|stones|statue|statues
    red|=stop light|sign
    =brake|=brakes
    pause|hush|frozen
    everyone|everybody|all|we|you|class ~2 still|silent|quiet
    fall|drop|come|sink|settle|go|grow|become|be ~2 still|silent|silence|quiet|quietly|halt
    sit|stand|kneel|crouch|lie|get ~1 down ~~4 quiet+|still|listen|look|at|silent+|once
    stand|sit|be|stay|freeze like|as ~3 post|pillar|lamp|tree|statue|rock|stone|soldier|ice|mouse
    eyes ~2 on|to ~1 me|teacher
    look|turn|face ~2 at|this|to|towards ~1 me|way|teacher
    listen|look to|at me
    come|gather|run|walk|back ~2 in|round|to|over ~2 me|middle|centre|teacher
    call ~3 in|back|together ~1 to|here ~1 me
    calls|brings|call|bring ~4 in|back ~1 to ~1 me|halt|standstill
    feet|body|bodies|legs|everything ~2 =stop|=stops|freeze|still
    end|finish|time ~3 dancing|moving|travelling|stopping|stop
    wait|rest for|until|quietly|silently|where
    down and quiet|still|low
    hold|keep ~1 your|their|that|this|the position|shape|place|pose|spot
    like|as ~1 statue|statues|stone|stones
    get|have|want|need ~2 attention
    """
)
"""The class is told to stop."""

NOT_MOVING = Saying(
    """
    muscle|finger|toe|foot|whisker|hair ~1 move|moves|moving|stir|stirs|budge
    move|stir|budge|wriggle|dance|wobble|go|travel
    muscle
    """
)
"""What is denied where nobody is to move."""

STOPS = Saying(f"{TOLD_TO_STOP.phrases}\n{NOT_MOVING.phrases}")
"""A text that may tell the class to stop."""

_ANOTHER_SIGNAL = Saying(
    """
    hand|arm|flag|card|finger|palm
    light|lamp !<red
    =i|teacher|leader|you|we|adult ~2 say|shout|call|whisper|cry
    on|at|to|by|a|the n:shout|call|whisper|cry
    word|voice|name
    say|shout|call ~1 stop|freeze
    unlike|except|different
    """
)
_DANCED_TO = Saying(
    """
    listen|go|move|dance|step|walk|run|travel|jump|skip|turn|back|on|along|keep ~2 to|with|
        by ~2 @own
    for|after|over|through|during|until|all # ~1 @own
    on|at|with each|every ~1 @own
    when|once|as|if|until|till ~3 @own ~2 start|starts|begin|begins|play|plays|beat|beats
        ~~4 go|move|melt|run|walk|start|travel|wake|rise|skip|begin
    let|makes|make ~2 @own ~1 you|one|a|them
    then ~3 @own ~1 you|one|a|wake
    """,
    {"own": " ".join(SOUNDS_OF_DANCES.values())},
)
"""The sound is there to dance to, or to hear."""
_STILL_ALREADY = Saying(
    """
    when|once|after|if ~1 all|everyone|everybody|every|each|both|they|you ~2 is|are
        ~1 still|silent|quiet|stone
    =stops|=stop when|once|as|if ~2 all|everyone|everybody|every|each|both|they ~2 is|are
        ~1 still|silent|quiet
    """
)
"""Dancers are still before it sounds, so it tells nobody to stop."""
_GOES_ON = Saying("@own ~~4 pause|rest|hush ~~3 @own", {"own": " ".join(SOUNDS_OF_DANCES.values())})
"""It is how the sound goes that is told: drum eight, pause, drum eight."""
_FALLS_SILENT = Saying(
    """
    @own =stops|=ends|=fades|=finishes|=pauses|=dies|=cuts
    =taps|=beats|=claps|=drums|=shakers|=bells =stop|=end|=fade|=pause
    @own ~1 silent|quiet
    =stop ?the|your @own
    =stop|freeze ~1 with the|your @own
    lay|put|set ~1 @own ~1 down|away
    """,
    {"own": " ".join(SOUNDS_OF_DANCES.values())},
)
"""A sound that ends is no sound: its silence can be told apart."""
_IT = Saying(
    """
    ^ hear|when|once|if|whenever ~3 it|that|this|them
    ^ it|that|this|they|these ~4 =stop|=stops|=tell|=tells|means|mean|say|says|is|are
    """
)


_MADE_OR_HEARD = """
    @own
    =i|teacher|we|leader ~2 @do
    signal|sign ~~4 @do
    when|if|once|whenever|as|until|till ~2 hear ~2 =i|me|teacher|us ~1 @do
    when|if|once|whenever|soon|as|until|till ~3 =i|teacher|leader ~2 hit|beat|strike|sound|shake|
        play
        ~2 it|@own
    """
_DEEDS = {
    "tap": "tap taps",
    "drum": "drum drums",
    "beat": "beat beats",
    "clap": "clap claps",
    "shaker": "shake shakes rattle rattles",
    "bell": "ring rings jingle",
    "stamp": "stamp stamps",
    "click": "click clicks snap",
    "whistle": "whistle whistles blow",
    "roll": "roll rolls",
    "hum": "hum hums",
    "voice": "sing sings",
}
"""What the teacher does who makes the sound."""


def _played(sounds: frozenset[str]) -> str:
    return " ".join(_DEEDS[sound] for sound in sorted(sounds) if sound in _DEEDS) or "sound"


_SHORT = 2
"""Words of a sentence that only answers the one before: Statues!"""


def may_be_signal(sounds: frozenset[str], text: str) -> bool:
    """Whether a text has words for a sound and words for stopping: it is read only then."""
    words = plain_words(text)
    return _own_and_other(sounds)[0].may_be_in(words) and STOPS.may_be_in(words)


def signal_of(sounds: frozenset[str], text: str) -> Said | None:
    """Where a text tells the class to stop by one of `sounds`, keys of `SOUNDS_OF_DANCES`.

    The sound may stand in the sentence before, where the next says what "it" means.
    """
    own, other = _own_and_other(sounds)
    before = ""
    for whole in read(text).sentences:
        sentence = _after_but(whole)
        if TOLD_TO_STOP.said(sentence, likened=True) or NOT_MOVING.denied(sentence):
            heard = sentence if own.said(sentence) else ""
            goes_back = _IT.said(sentence) or len(read(sentence).words) <= _SHORT
            if not heard and goes_back and own.said(before) and not other.said(before):
                heard = before
            clear = (
                other.said(sentence)
                or _ANOTHER_SIGNAL.said(sentence)
                or _STILL_ALREADY.said(sentence)
                or _FALLS_SILENT.said(heard)
                or _GOES_ON.said(heard)
                or _DANCED_TO.said(heard)
            )
            if heard and not clear and (said := own.said(heard)):
                return said
        before = whole
    return None


@lru_cache(maxsize=64)
def _own_and_other(sounds: frozenset[str]) -> tuple[Saying, Saying]:
    own = " ".join(SOUNDS_OF_DANCES[sound] for sound in sorted(sounds))
    made_or_heard = Saying(_MADE_OR_HEARD, {"own": own, "do": _played(sounds)})
    return made_or_heard, _sound(_all_but(own, "drum" in sounds))


def _after_but(sentence: str) -> str:
    """What a sentence says after its "but", where that part is the one that stops the class."""
    _, but, after = sentence.rpartition(" but ")
    return after if but and TOLD_TO_STOP.said(after, likened=True) else sentence


def _all_but(own: str, drummed: bool) -> str:
    """The words of all other sounds; a beat, a roll and a tap are a drum's own."""
    of_drums = ("n:beat", "=beats", "n:roll", "=rolls", "n:tap", "=taps", "tapping")
    none = {*own.split(), *(of_drums if drummed else ())}
    every = " ".join(SOUNDS_OF_DANCES.values()).split()
    return " ".join(word for word in every if word not in none)


def sounds_in(text: str) -> frozenset[str]:
    """The sounds that a text names, as keys of `SOUNDS_OF_DANCES`."""
    return frozenset(sound for sound, words in SOUNDS_OF_DANCES.items() if _sound(words).said(text))


@lru_cache(maxsize=64)
def _sound(words: str) -> Saying:
    return Saying("@own", {"own": words})
