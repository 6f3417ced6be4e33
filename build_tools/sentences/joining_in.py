"""Pupils made to join in, pupils sent to watch, and pupils asked about their own lives."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "those": "they them him her pupil child dancer everyone everybody all class you nobody anyone",
    "deed": (
        "dance join take crouch kneel lie run jump spin perform show crawl hop sink turn copy "
        "lead hold go roll touch do move get be"
    ),
    "kin": (
        "mum dad mother father parent family brother sister home house gran grandad grandparent "
        "uncle aunt mummy daddy carer bedroom"
    ),
    "hard": (
        "flood fire war nits lice accident hospital died dead lost lose leave left hungry poor ill "
        "illness bullied divorce divorced moved refugee stammer wet cried frightened scared "
        "afraid burgled crash homeless fight fought shout prison money pocket free-meals scar "
        "sad lonely hurt sick funeral grave job work jobless"
    ),
    "out": "sit watch wait miss leave keep stay stand step mark score count rest hold work look",
}

MADE_TO = Saying(
    """
    everyone|everybody|all|they|you|pupil|child|class|nobody ~1 have|has|need|needs to @deed
        !nothing|less
    everyone|everybody|all|they|you|pupil ~1 must @deed
    tell|remind|warn ~2 them|him|her ~~3 everyone|everybody|row|group|others|rest|class|all|they
        ~~5 wait|waiting|lose|loses|down|stop|stopped|without|cannot|need|needs|watching|because|
            must|has|have|dance|dances
    take|hold|pull|lead|bring|push|walk|carry ~3 them|him|her|hand|hands|arm|arms ~3 in|into|on|over
        !a|two
    take|hold|grab their|his|her hand|hands|arm|arms|wrist
    make them|him|her ~1 @deed|try
    lose|loses|miss|misses|lost|forfeit ~3 turn|break|playtime|point|points|go|place|place|turns
    until they|he|she ~1 dance|join|dances|joins|agree|try|tries|do|does|give|gives
    no ~1 choice|excuse|excuses|exceptions|opting
    not|never|n't ~2 let them|him|her ~2 sit|opt|stay|watch
    insist|force|shame|scold|punish|threaten|bribe|beg|plead
    count ~2 down|to ~2 #3..
    in front of ~2 class|everyone|others|all
    the whole ~1 row|group|class|four ~3 wait|waiting|loses|stops|suffers|watching
    let|lets|letting ~3 side|row|group|four|everyone|others|team down
    send ~3 headteacher|office|corridor|out|home
    keep ~1 them|him|her ~1 in|behind
    spoil|ruin|wreck ~2 it|dance|show
    what ~2 others|they ~1 think
    baby|babies|babyish|silly
    """,
    _LISTS,
)
"""Somebody is pressed, shamed or led by the hand into dancing."""

SENT_TO_WATCH = Saying(
    """
    anyone|anybody|those|whoever|pupil|pupils|child|children|person|people|who
        ~~5 cannot|can't|unable|struggle|struggles|wheelchair|crutches|late|last|slow|slower|behind|
            plaster|tired|left|spare|over|odd|leftover|without|unsure|injured|wrong|miss|misses|
            forget|forgets|not|n't|asthma|hearing|frame
        ~~8 =sit|=sits|watch|watches|wait|waits|mark|marks|score|scores|referee|rest|
            rests|alone|misses|observe|observes|judge|judges|bench|side|out|
            timekeeper
    odd|left|spare|last|slowest|extra one|pupil|person|dancer|child|over|out ~4 sit|sits|watch|
        watches|wait|waits|rest|rests|misses
    one|anyone|pupil ~1 left over ~4 sit|watch|wait|alone|work|out
    =out sit|sits|watch|watches
    you|they|pupil|pair ~1 are|is|be ~1 =out !of|in|on
    should|must|can|may|had ~2 watch|sit ~2 this|the ~1 unit|lesson|part|dance|one !of
    keep|keeps ~1 score|scores ~4 side|bench|wall
    sit|sat ~1 out ~1 this|that|the|until|for|of|if
    be|are|=re ~1 out ~3 sit|wait|wall|bench|side
    last ~3 sit|sits ~1 down|out
    out ~3 if ~4 miss|wrong|late|last|wobble|move|fall|touch|laugh
    """,
    _LISTS,
)
"""A pupil who cannot do it, or is one over, is sent to watch."""

OWN_LIFE = Saying(
    """
    whose ~1 @kin
    whose ~~6 cost|cheap|cheapest|dearest|poorest|smallest|oldest
    who ~2 lives|live ~3 small|smallest|big|biggest|flat|house
    ^ who|has|which ~4 have|has|had|been|knows|lost|lived|seen|
        lives|feels ~~6 @hard
    ask|tell|share|say ~~3 who|whose|those|each|every|pupils|class|everyone|us ~~8 @hard
    ask|tell|share|say ~~3 who|whose|those|each|us|pupils ~~8 @kin
    share|tell ~2 story|stories ~~8 @hard|@kin
    how much ~~5 earn|earns|pay|pays|cost|costs|spend
    what ~2 they|it|@kin ~1 earn|earns|pay|pays|lost|died
    your|their|own @kin ~1 do|does|earn|earns|work|works|did|like|live|lives|fight|argue|said|say
    when ~2 you|they|somebody ~1 was|were|felt|lost|had ~3 @hard
    a time when|you ~6 @hard
    tell|show|share|say ~4 about|of ~3 @kin|@hard
    own ~1 saddest|worst|frightening|family|trouble|secret|fear|loss
    """,
    _LISTS,
)
"""Pupils are asked before the class about their families, their money or their troubles."""
