"""Cues that all pupils see, hear or count, and cues that nobody notices."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "sound": (
        "drum beat tap clap music sound song bell shaker roll voice word call sing hum whisper "
        "shout clave chime gong cymbal triangle tambourine tambour whistle flute tune melody note "
        "chord rattle rhythm drumming drumbeat drumroll maraca horn guitar piano violin recorder "
        "buzzer siren bang click snap knock thunder rain stamp slap hiss chant rhyme verse chorus "
        "track speaker instrument silence silent quiet loud soft fade echo crash rumble rustle "
        "ring strike pluck beater woodblock block xylophone glockenspiel cowbell ocean "
        "rainstick sleigh-bells bass conductor read recite poem say pat palm"
    ),
    "count": "count beat bar breath second eight phrase counting aloud",
    "seen": (
        "raise lift lower turn still freeze stop stand sit land touch reach sink rise nod point "
        "show hold kneel step bow open close face gather meet arrive look light lamp torch card "
        "letter flag scarf hand arm head foot shape floor circle line row leader teacher captain "
        "dancer partner pupil last first everyone everybody all group pair four move end start "
        "leave come pass cross reach finish begin wave signal sign stillness pose statue pause "
        "colour screen picture position place wall centre middle front traveller sculptor "
        "player run skip jump "
        "gallop fall drop child ribbon scarf cloth trail ball feather"
    ),
}

HEARD_OR_COUNTED = Saying(
    """
    @sound
    @count ~3 #
    # ~2 @count
    =count|counts|counted|counting
    """,
    _LISTS,
)
"""A sound, or so many counts."""

SEEN = Saying("@seen", _LISTS)
"""Something to be seen in others."""

SIGN = Saying(
    """
    raise|lift|lower|nod|wave|point|signal|sign|hold|turn|show|light|step|drop|open|spread|shake|bow
        ~3 hand|arm|head|card|flag|scarf|light|lamp|fist|finger|letter|torch|cloth|ribbon|ball|
        feather|beanbag|up|over
    nod|signal
    """
)
"""Somebody gives a sign."""

MADE = Saying(
    """
    strike|ring|beat|tap|clap|shake|play|hit|sound|blow|call|say|shout|click|stamp|count|pluck|knock
    drum|bell|triangle|cymbal|gong|shaker|whistle|music|chime|drumming|tambourine|woodblock
    # count|beat|tap|clap|breath
    aloud
    """
)
"""A sound is made, or counted out."""

INSIDE = Saying(
    """
    when|whenever|once|until|as|if ~4 ready|right|able|mood|fancy|comfortable|bored|tired|enough
    feel ~2 right|ready|it|time|like|done|finished|settled|complete|that
    feel|sense|know|decide|believe|think|guess|imagine|judge|wish|want|choose ~6 moment|time|it|go|
        enough|over|long|when|ready|that|word|storm
    instinct|instinctively|intuition|telepathy
    own time|pace|head|mind
    some point|stage|moment|time
    after|in ~1 a while|bit
    eventually|naturally|spontaneously|somehow|gradually|whenever|sometime|sooner|presently|soon|
        organically|magically|automatically
    more or less|roughly
    suit|please|wish
    right|good|proper|best moment|point|time
    mood|atmosphere|feeling|energy|spirit|tension ~3 change|shift|drop|lift|settle|build|be|is
    flow ~2 on|into|naturally
    about ~1 time|now
    any|no|particular ~1 time|moment|cue
    somewhere|somewhen
    near|towards|around the end !of
    when|as|if it ~2 happen|come|suit
    story|storm|dream|scene|weather|adventure|idea|imagination|journey ~4 over|finish|end|change|
        out|
        past
    imagine|imagination|imagining
    """
)
"""A cue that happens inside a pupil, or at no moment anyone could name."""

IN_THE_MIND = Saying(
    """
    in ~3 head|heads|mind|minds|imagination|heart|hearts|thoughts
    in|from|deep inside
    inner|inward|private|secret impulse|voice|feeling|clock|count|signal|sense|urge|rhythm
    in ~1 teacher|leader|own|their|your ~1 view|opinion|judgement|estimation
    think|judge|feel|find|seem ~3 enough|right|ready|time
    long|calm|quiet|good|strong|soft enough
    own|free|personal choosing|choice|wish|will|accord|feeling|judgement|decision
    think|thinks|dream|imagine|remember ~1 of|about
    when|as|once|if|whenever|until ~5 understood|understand|understands|happy|like|likes|please|
        pleases|wish|wishes|want|wants|tired|bored|comfortable|satisfied|relaxed|calm|confident|
        inspired|agreed|decide|decides|decided|ready|enough|willing|fancy
    decide|decides|decided|choose|chooses|agree|agrees ~1 to|silently|when|for|that
    feelings|feeling|instinct|idea|ideas|impulse|urge|mood|energy|inspiration ~2 tell|tells|take|
        takes|come|comes|drop|drops|say|says|run|runs|fade|fades|strike|strikes|change
    energy|mood|atmosphere|tension|idea|picture|dream|thought ~3 drop|fade|end|go|break|peak|rise|
        fall|run
    height|peak|climax|end|middle|heart of ~1 storm|story|dream|adventure|battle|journey|mood|
        excitement|tension
    picture|story|idea|dream|thought|image ~3 mind
    """
)
"""It happens inside a pupil, whatever else is named with it."""

HIDDEN = Saying(
    """
    see|seen|hear|heard|notice|noticed|show|showing|say|saying|look|visible|obvious
    """
)
"""Denied: a sign that the others cannot see."""

SECRET = Saying(
    """
    behind|without ~4 back|backs|looking|saying|showing|telling|a|any ~1 sound|sign|word|$
    behind ~1 everyone|everybody|their|the ~1 back|backs
    secret|secretly|unseen|unnoticed|hidden|invisible|privately|silently|sneakily
    in ~1 secret|private
    inside|in ~1 shoe|shoes|pocket|pockets|sleeve|sleeves|mouth|glove|gloves
    think ~3 word|go|number|name
    blink|blinks|swallow|swallows|breathe ~1 quietly|silently|once|$
    ?a|the wink|winks|blink|blinks $
    glance|look|smile|whisper|nudge ~2 between ~2 two|some|three|them|pair|leaders|friends
    only|just ~3 know|knows|see|sees|hear|hears|notice|notices
    known ~1 only
    nobody|none ~2 see|sees|hear|hears|know|knows
    wink|thought|glance ~3 to|at|between ~1 one|a|another|each-other|somebody
    """
)
"""A sign that is kept from others."""

TO_ALL = Saying(
    """
    see|hear|feel|count|notice|watch ~2 every|all|everyone|everybody|whole
    every|all|everyone|everybody|whole|each ~3 see|hear|feel|count|notice|watch|stamp|know
    full view
    aloud
    clear|plain view|sight
    """
)
"""Said to be for all."""

NO_CUE = Saying(
    """
    ^ none|nothing $
    ^ no|not cue|needed|necessary|signal
    without|no|needs ~2 cue|signal|sign
    any|no cue|signal needed|necessary|given|$
    """
)
TIME_IS_UP = Saying(
    """
    ^ at|after|on|when|once ~8 over|up|finished|done|time|second|minute|while $
    """
)
"""The whole of a cue only says that time has passed."""


def nobody_notices(cue: str) -> bool:
    """Whether a cue is none, is kept from some, or is nothing to be seen, heard or counted."""
    if NO_CUE.mentioned(cue):
        return True
    if not TO_ALL.said(cue) and (SECRET.mentioned(cue) or HIDDEN.denied(cue)):
        return True
    if IN_THE_MIND.mentioned(cue) and not (MADE.said(cue) or SIGN.said(cue)):
        return True
    if HEARD_OR_COUNTED.said(cue) or SIGN.said(cue):
        return False
    return INSIDE.mentioned(cue) is not None or SEEN.said(cue) is None
