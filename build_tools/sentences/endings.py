"""What dancers do at the very end of a dance, and whether anybody is left out of it."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "final": (
        "hold freeze rest sink lie fall melt curl kneel leave exit bow sleep kneel stand sit "
        "crouch settle collapse fold drop fade stay wait face gaze lower press balance "
        "lean slump pose crumple huddle shrink land bend lift reach raise nestle retreat vanish "
        "disappear hush"
    ),
    "off": (
        "walk run gallop skip creep file march travel tiptoe drift stroll step go crawl trot glide "
        "dance jog fly swim slip scatter scamper shuffle roll slide hop wander float spin"
    ),
    "body": "arm hand head eye finger knee palm back shoulder face body foot fist elbow",
}

_WHO = {
    "solo": (
        "clockmaker king queen captain fox wolf giant hero soloist conductor storm sun moon "
        "wind spider dragon witch wizard shepherd hunter baker sailor puppeteer magician "
        "narrator lighthouse princess prince robot chief lead rocket explorer keeper farmer"
    ),
    "verbs": "walk run sink hold freeze lie stand sit leave fall go turn stop bow stay step",
}

ENDS = Saying(
    """
    @final !up|out !<music|drum|sound|song|track|until|story
    still|stillness|standstill|motionless|statue|tableau|frozen|asleep|silent|silence|rest|pose
    v:close
    ^ stop !the
    stop|end|finish ~3 still|dead|there|where|low|high|standing|sitting|lying|kneeling|
        facing|asleep|on|in|as !<music|drum|sound|song|track|story|dance|own|way
    look ~1 up|down|out|ahead|back|round|straight|forward|at|away|over|into|across|towards
    stop|end|finish ~2 arm|head|hand|foot|knee|eye|face
    is|be|become|turn ~1 into ~1 a|an|the stone|rock|statue|tree|star|ball|seed|stones|rocks|statues
    everyone|all|pupils|dancers|everybody|you is|are|be ~1 stone|rock|statue|stones|rocks|statues|
        low|high|asleep|quiet
    end|finish|come|be ~3 in|on|to ?a|an|the|your ~2 shape|line|circle|floor|heap|huddle|spot|place|
        row|corner|statue|ball|star|stop|cluster|position|close|balance
    @off ~4 off|away|out|home|offstage
    @off ~4 to|towards|into ~2 wall|side|edge|exit|door|corner|place|bench|wings
    @off ~5 until ~4 gone|empty|out|leave|left
    back|return to ~3 place|places|start|space|spot|home|line|circle
    turn|face ~3 front|back|audience|wall|centre|away|watchers
    back in|to|at ~2 circle|place|line|ring|corner
    do|and not|never move
    not|nothing|nobody ~2 move
    last|final ~1 shape|pose|statue|picture|position
    @body ~3 up|down|low|high|closed|open|forward|out|together
    shape|pose
    ripple|sway|shake|slow ~6 until|smaller|nothing
    """,
    _LISTS,
)
"""Something in which a dance can end."""

NOTHING_SETTLED = Saying(
    """
    not|nothing|n't|nobody|still|yet ~3 fixed|decided|settled|deciding|decide|sure|known|agreed|
        worked
    still ~2 decide|choose|think|work
    sort|work|decide|think|plan|fix|see ~4 another|later|next|tomorrow|nearer ?day|time|lesson|week
    sort|work ~1 out ~6 later|another|day
    run out of
    own|any|some|free ~1 way|choice|ending|idea|finish|time|pace
    others|rest|half|other|twos|evens|everyone ~2 carry|carries|keep|keeps|go|goes|continue|
        continues
        ~1 on|dancing|going|moving|$
    others|rest|twos|evens|everyone ~2 continue|continues|dance|dances
    whatever|however|anything|something !they|is
    wait and see
    ending|end|finish|it|rest|last|this ~3 will|shall|to ~2 be ~2 add|added|decided|made|found|
        chosen|agreed|written|told|worked|set|settled|taught
    be|to added|confirmed
    decide|choose|think|find|make|invent|plan ~4 ending|finish|end
    decide|choose|agree|invent|improvise ~2 on ~2 day|night|spot|moment
    ending|end that ~1 fit|fits|suits|works|matches
    until ~2 teacher|music|bell|time|tired|lunch|end|over ~3 say|says|over|ends|stops|up|tired|$
    until ~4 tired|bored|enough|over
    try|remember|want|hope ~1 to|that
    until|when ~4 time ~1 up|over|out|runs
    """
)
"""The ending, or a part of it, is left open."""

SOME = Saying(
    """
    half !<and|or|other ?of ?the ?class|room
    =ones|=twos|=odds|=evens|leader|some|few|most
    partner|number|dancer|group one|two|a|b
    one|first|front pupil|dancer|child|pair|group|half|row|of
    #1..3 pupil|dancer|child|pair|group|of
    ^ dancers|pupils|numbers|children # ~1 and|or #
    ^ one|two|three of ~2 pair|three|four|group|=pairs|=threes|=fours|them
    ^ the #1..12 children|pupils|dancers|people who|with|in|on
    first|last|next|other|front #1..12 ~1 pupils|dancers|pairs|groups|children|people
    ^ =odd|=even number
    ^ the|a ~1 @solo ~6 @verbs
    ^ =bees|=birds|=lions|=stars|=waves|=boats|=kings|=clocks
    """,
    _WHO,
)
"""Only some of the class are told."""

ALL_TOLD = Saying(
    """
    everyone|everybody|all|whole|each|every|both|anyone|rest|others|remainder|nobody|you|your
    half ~~14 half|other|rest
    =ones ~~14 =twos
    =odds ~~14 =evens
    front|first ~1 row|line|half|group ~~14 back|second|other|last ~1 row|line|half|group
    leader ~~12 follower|others|rest
    partner|number|dancer one|=a ~~14 two|=b
    last of all
    off ~~6 and|while|but ~2 stay|hold|freeze|sink|kneel|curl|lie|stand
    until ~3 floor|hall|stage|space|room ~2 empty
    @solo ~~10 the ~2 @verbs
    """,
    _WHO,
)
"""Nobody is left out."""

EVERYONE = Saying(
    """
    everyone|everybody|all|every|each|both|whole|class|pupil|dancers|children|rest|others|anyone|
        either|whoever
    #1 ~~6 and|to
    """
)
"""Who it is for: words that leave nobody out."""
PART_OF_CLASS = Saying(
    """
    half|=ones|=twos|=odds|=odd|=evens|=even|leader|some|few|most
    partner one|two|=a|=b
    one|a pupil|dancer|of|group|pair|half|in
    number|dancer # !and|to
    dancer one|two|three|four|=a|=b
    #2 =pupils|=dancers
    """
)
"""Who it is for: words that name a part of the class."""


def ending_told(does: str) -> bool:
    """Whether a text says in what the dancers end."""
    return ENDS.said(does) is not None and NOTHING_SETTLED.mentioned(does) is None


def tells_some_only(text: str) -> bool:
    """Whether a text tells an ending to a part of the class and leaves the others without."""
    return SOME.mentioned(text) is not None and ALL_TOLD.mentioned(text) is None
