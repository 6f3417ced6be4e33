"""Signals to stop; sudden sounds, the dark, and a word that warns of them."""

from __future__ import annotations

import re

from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "still": (
        "freeze halt =still statue standstill hush motionless frozen =freezing hover solid stone "
        "stock-still pause"
    ),
    "sounding": (
        "=claps =taps =pats drum signal whistle bell shaker tambourine music silence chime cymbal "
        "triangle horn gong drumbeat claves maraca buzzer tambour woodblock rattle =lights lamps "
        "n:clap n:tap n:beat n:call n:shout n:sound n:ring n:rattle n:knock n:stamp n:click song "
        "track flute recorder piano guitar"
    ),
    "i": "i teacher leader",
    "instrument": "drum cymbal gong pan lid tray bin saucepan tambourine door pot metal",
    "loud": (
        "loud+ sudden+ huge big deafening enormous almighty mighty thunderous ear-splitting "
        "violent piercing unexpected"
    ),
    "noise": (
        "bang crash noise clash cymbal explosion scream boom blast roar shout thunderclap clap "
        "whistle siren alarm thud sound smash slam horn shriek gong"
    ),
    "lamps": "light lamp",
}

STOP_SIGNAL = Saying(
    """
    stop|stopping signal|sign|sound|word|call|card|light|cue
    signal|sign|word|call|sound|cue ~2 to|for|means|mean|of|is ~1 stop|freeze|stopping|still|halt
    @sounding ~~8 @still !<in
    @still ~~6 on|at|when|if|once|until|soon|moment|for|after|with ~3 @sounding
    @sounding ~~2 mean|means|say|says|for|tell|tells ~3 =stop|=stopping|halt
    @sounding ~~4 , =stop|=stops|=halt !thinking
    =stop|=stopping|halt|pause ~~4 on|at|when|if|once|until|soon|moment|for|with ~3 @sounding
    when|if|once|whenever|soon|moment ~3 @sounding ~~6 =stop|=stops|halt|pause
    raise|lift|hold|wave|show|see|put ~3 hand|arm|card|flag|palm ~~8 =stop|=stops|@still
    hand|arm|card|flag|palm|board ~2 up|high|means|mean|says|say|goes|red|turns ~~6 =stop|=stops|
        @still
    =raised hand|arm|palm ~~5 =stop|=stops|@still
    =stop|halt|@still ~~5 when|if|once|until|soon|moment|on ~3 hand|arm|card|flag|palm|lights|red
    say|shout|call|cry|hear ~1 =stop|=freeze
    =stop is ~3 @sounding
    hand|arm|card|flag|palm ~2 up|high ~~5 brake|brakes|still|stop
    =brake|=brakes ~1 on|$
    stop|freeze|halt|still when|if|once|whenever|as ~2 i
    when|if|once|whenever|soon|moment ~1 i ~~8 =stop|=stops|@still
    on|hear ~2 word ~~5 =stop|=stops|@still
    """,
    _LISTS,
)
"""What stops the class."""

SUDDEN = Saying(
    """
    @loud ~2 @noise !of
    crash|bang|clash|bash|strike|smash ~3 @instrument !softly|gently|lightly|quietly|once
    =cymbals|cymbal crash|clash|smash|bang
    crash|clash|bang of ~2 cymbal|drum|cymbals|gong|lid
    @lamps ~3 out|off !<card|board|traffic
    switch|turn|put|flick ~1 off|out ~3 @lamps
    switch|turn|put|flick ~4 @lamps ~1 off|out
    dim|cut|kill|darken ~3 @lamps|hall|room
    blackout|strobe|strobing|pitch-dark
    black out
    plunge ~4 dark|darkness|black|blackness
    in|into ~2 darkness|blackness
    in|into the dark !of|water|earth|soil|sea|green|blue !<roost|sleep|grow|seed|root|owl|bat|mole|
        bird|starling
    make|turn ~3 room|hall|it dark
    clap|shout|bang|stamp|yell|roar|scream ~~5 behind ~1 them|pupils|class|children|each-other|
        dancers
    hit|beat|strike|thump|bang ~3 @instrument ~~4 hard|loud+
    pop|burst|prick|explode ~3 balloon|bag
    shout|yell|scream|cry|bellow|roar boo|bang
    boo
    whistle blast|shriek
    blast|blow|shriek ~3 whistle|horn|trumpet|siren ~~6 sudden+|jolt|wake|jump|surprise
    slam|bang ~2 door|lid|desk|table|book !<wind|how|like
    drop|smash|throw|hurl ~3 tray|pan|saucepan|metal|plate|tin|lid ~~4 floor|ground|crash|as
    full|maximum|top|highest volume
    blast|burst|explosion|clash of ~3 brass|trumpet|trumpets|horns|noise|sound|music|drums|cymbals
    from ~2 whisper|silence|nothing ~1 to ~2 blast|roar|shout|crash|bang|full|thunder
    deafening|ear-splitting
    blare|bellow|screech|scream ~~6 sudden+|blue|nowhere|music|speaker|recording
    out of nowhere
    out of the blue
    as a surprise|shock
    catch|take ~2 by surprise|unawares|guard
    make|let ~2 jump ~2 out|with|from|of
    startle|shock|frighten|scare|spook ~3 them|class|pupils|dancers|everyone|children
    party|paper popper|bag
    firework|cracker|cap-gun|klaxon|air-horn|starting-pistol|firecracker
    """,
    _LISTS,
)
"""A sudden loud sound, or the lights going out."""

WARNED = Saying(
    """
    warn|forewarn|forewarned
    tell|explain|announce|remind|prepare|show ~~8 class|pupil|pupils|everyone|everybody|dancers|
        children|them|first|coming|before|when|that|all
    say ~2 beforehand|first|before|so|that|when|aloud
    beforehand|before-hand|in advance
    let ~2 know|hear
    knows|know ~~6 bang|crash|when|loud|coming|dark|sound|noise|light|lights
    practise|try|hear|listen ~~4 first|once|quietly|gently|beforehand
    may|can|could ~3 step|stand|leave|cover|move|sit|wait|hold|block
    =ears ~3 covered|cover
    cover ~2 =ears
    startle|frighten|scare|startled|frightened|scared
    ready|prepared for ~4 bang|crash|dark|noise|sound|loud
    count ~3 up|down|aloud|to ~3 it|bang|crash|together
    """
)
"""The class is told that it is coming, or may step aside."""

ABOUT_SOUND_OR_DARK = Saying(
    """
    loud|bang|crash|noise|sound|dark|darkness|light|sudden|cymbal|drum|balloon|whistle|ear|startle
    """
)

_WITHOUT_WARNING = Saying(
    """
    without|no|not ~1 warning
    """
)


_THING_IN_THE_DARK = re.compile(
    r"\b(?!(?:every|no|any|some)(?:one|body)\b|each\b|class\b|group\b|pupil\b|pair\b|partner\b|child\b"
    r"|teacher\b|dancer\b|half\b|who\b|one\b|he\b|she\b|it\b|leader\b|that\b)[a-z]+ does "
    r"(?:this|that|it|so)(?: all night| alone)? in the dark\b",
    re.IGNORECASE,
)
"""Of dough, which nobody dances: the lights of the hall stay on."""


def sudden(text: str) -> Said | None:
    """The first sudden sound or dark that a text has."""
    text = _THING_IN_THE_DARK.sub("", text)
    return SUDDEN.said(text) or _WITHOUT_WARNING.mentioned(text)
