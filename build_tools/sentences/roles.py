"""Parts that only some of a group have, and how they are passed on."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "role": (
        "leader caller conductor captain chief soloist drummer narrator storyteller boss director "
        "puppeteer sculptor commander ringmaster shepherd pilot driver magician master mistress "
        "chieftain guide controller inventor choreographer general sheriff wizard witch"
    ),
    "heads": "lead call conduct decide choose direct command control guide shape head try play",
    "plays": (
        "be act play lead stand stay decide choose call conduct move travel set give become hide "
        "make show dance freeze sit lie keep hold"
    ),
    "crown": "king queen prince princess",
    "pupil": "pupil child dancer person partner member player performer boy girl one somebody "
    "someone",
    "leads": (
        "lead call conduct decide choose direct command control order steer start stop pick give "
        "say tell guide shape sculpt mould pull push manage signal point set show"
    ),
    "follows": (
        "copy follow mirror echo answer obey respond react trail shadow imitate repeat do be match "
        "move"
    ),
    "rest": "rest other everyone everybody remaining class group line crew orchestra team hive "
    "remainder",
    "best": (
        "tallest smallest oldest youngest best strongest loudest quickest fastest bravest shortest "
        "front first middle last confident keenest back nearest"
    ),
}

LEADING = Saying(
    """
    a|an|the|one|each|your|as|be|is|=first|=group ?new|first|good|brave @role !less|game
    group|team|crew head|chief|captain
    be|as ?the|a ~1 @crown
    one|=a|=ones|partner|leader|first|=odds ?one|=a ~2 @leads ~~8 =b|=twos|two|other|partner|
        follower|=evens|rest ~3 @follows
    =a|=b|one|two|=ones|=twos ?be|is the|a ~~6 =b|=a|=twos|two|other ~1 the|a
    one|a|the|=first|@best ~2 @pupil|@best ~6 @plays ~~16 @rest|others
    #1..3 @pupil ~6 @plays ~~16 @rest|others
    #1..3 @pupil ~1 be|is the|a
    the @pupil ~5 be|is the
    =ones|=odds|number ?one|ones be|is the|a|an|like
    one @pupil ~~6 the|you|=other|all|=your ~1 @rest|others
    one|alone @pupil ~5 while ~1 @rest|others
    partner|dancer|number|pupil one|=a|two|=b ~1 @leads
    give ~4 to one|a @pupil
    dancer|number|pupil # ~1 @leads ~~14 @follows|do|dancers|rest|others
    one|a|@best ~1 @pupil ~2 be|act|play|become the|a
    one|#1..2 of ~2 =you|four|three|group|pair|class ~2 be|is|lead|call|decide|choose|conduct|play|
        act|stand|set
    pupil|child|dancer|person|one|partner ~1 with|holding|at|in the ~2 card|hat|ball|baton|wand|
        front|scarf|drum|middle|centre|head ~2 @leads
    one|person|dancer|pupil|leader ~1 at|in the ~1 front|head|middle|centre ~1 @leads|be
    let|choose|pick|name|make|give|elect|appoint|ask|have ~2 @best|one|a|an ~2 @pupil|dancer ~2 be|
        lead|to|as|start|call|conduct|show
    let|choose|pick|name|elect|appoint ~4 to ~1 be|lead|call|conduct|direct
    puppet|clay|robot|shadow|slave|servant|orchestra ~~4 @follows
    the @role ~3 and|while the
    follow ~1 @role
    @best in|of|from ~1 each|every|the|your|a ~1 group|four|three|pair|class ~3 be|stand|lead|lie|
        sit|go|as|kneel
    let|choose|pick|ask|have|get ~2 most|least * @pupil|one ~2 go|lead|be|start|stand|take|call
    somebody|someone|=one count|call|clap|drum|keep|shout|say ~4 for|to|aloud|out ~2 group|others|
        rest|four|three
    the @crown ?bee|of ~2 be|stay|stand|sit|lead|remain|rule ~~10 and|while the|her|his|their
    #1..3 of you be|form|make|are|become|play ~~8 fourth|third|other|last|rest be|is|=are the|a
    #1..3 be|=are the|a|an ?hunter|hunters|wolf|wolves|fox|cat ~~6 #1..3 be|=are
    #1..3 be|=are hunters|hunter|wolves|cats|foxes|chasers|catchers|trees|rocks|builders|keepers
        ~2 #1..3
    """,
    _LISTS,
)
"""One of a group leads, calls or is somebody that the others are not."""

PASSED_ON = Saying(
    """
    swap !right|left|one|the|a
    exchange|trade|rotate|alternate|interchange
    switch !on|off|the|it|others|them|everyone
    switch ~2 role|part|place|job|side|leader
    =a|=ones|=twos|=odds|=evens|=one ~4 first !row|line|part|section|then
    be|go|lead|start first !part|section
    change ~1 over|roles|role|places|parts|leaders|leader|jobs|round|sides|about|part|place|hands
    reverse ~2 roles|parts|jobs|it
    vice
    take|have|give|share ~2 =turn|=turns
    in turn|turns
    turn about
    by turns
    other way round|about
    other|opposite half|pair ~2 lead|be|is|now|then|go|turn
    new|different|another|next|second|fresh|each|every ~1 @role
    new|different|another|next ~1 @pupil|four|@crown|spider|one ?will|can|then ~2 @leads|be|is|have|
        has|step|take|go|come|turn|try|play
    new|different|next|another ~2 every|each|on|for|after|at ~3 time|turn|beat|drum|round|go|count|
        corner|verse|eight|lesson|minute
    each|every|all|both ?of ?the @pupil|you|them|us ~5 @heads|turn|=go|part|@role|once|chance|have
    everyone|everybody ~5 once|chance|part|@heads|turn|=go|@role
    everyone|everybody|all|both|nobody ~5 turn|chance|try|lead|leader|=been|role|part|job
    until|till|so ~3 everyone|everybody|all|each|both|every
    pass ~3 on|round|along|around|next|to
    share|pass|hand ~1 the|it|this|that ?=on ?job|part|lead|role|baton|hat|crown|card
    one|first ~1 partner|pair|half|=a|dancer ~~5 then the other|second
    then ~2 =b|=twos|two|other|partner|=evens|second|another|next ~2 @leads|be|turn|go|have|do|take
    front|leader|first|one ~4 go|peel|join|move|run|slip|drop ~3 back|end|tail
    let|give ~2 another|next|others|someone|somebody|each
    @role ~1 change|rotate
    again ~2 with|as ~2 other|another|new|different
    try|dance|play|do|be ~2 each|every|both|all|other|another|opposite ~1 part|role|side|job
    one ~1 after another ~3 @heads
    to|on|round ~1 next|neighbour ~2 leader|@pupil|$
    four|three|#2..6 @role
    """,
    _LISTS,
)
"""How everyone gets a go at a part."""

TWO_ROLES = Saying(
    """
    =ones|=twos|=odds|=evens|half|halves
    odd|even ~1 number
    partner one|two|=a|=b
    leader|follower|caller
    """
)
"""Names for the two sides of a passage in which they do different things."""
