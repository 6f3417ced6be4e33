"""What is told to those who watch: whether some dance meanwhile, and where watchers sit."""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "some": (
        "half one pair four three group row one =ones =twos odds evens third quarter each other "
        "other others rest everyone everybody all you they we two class line table team dancers "
        "pupils partner"
    ),
    "about": "about talk discuss describe remember like how film video picture year",
    "mover": (
        "rest other others ones twos dancer dancers half group pair four three they runner "
        "runners performer performers traveller travellers boats boat shoal shoals spider"
    ),
    "edge": (
        "wall edge side bench stage outside window bar tape cone door perimeter rim mat sideline "
        "boundary =sides =edges"
    ),
    "sit": "sit seat kneel lie stay stand chair perch squat settle crouch gather watch rest",
    "watcher": (
        "watcher audience half rest others ones twos watch watching pair group class everyone "
        "everybody who spectator onlooker viewer you seated observer"
    ),
}

SOME_DANCE = Saying(
    """
    ^ dance|perform|rehearse
    @some ~4 v:dance|perform|rehearse|performs !<@about
    and|then|or|now|to|up|again dance|dances|perform|performs|rehearse
    v:dancing|performing !<@about|watch|our
    two|three|half|one|ones of ~1 four|three|pair|group|six|class dance|dances|perform
    not|n't ~1 just|only ~3 , dance|perform
    just|only ~3 , dance|perform your|the|it
    dance|perform ~2 for|to ~3 partner|other|others|pair|group|half|rest|neighbour|you|each-other
    v:dance|perform it|again|once|twice|while|as
    get|stand|jump|spring|rise up ~~6 dance|try|show|move|do
    try ~1 out|it|that|again ~3 move|on|in|feet|it|together|once !yet
    on ~2 feet
    half|pair|four|group|third|quarter|one ~4 shows|performs|moves|dances
    act ~2 out
    swap|change over ~~6 dance|perform
    """,
    _LISTS,
)
"""In a step of looking and talking, some dance."""

AMONG_DANCERS = Saying(
    """
    watcher|watchers|audience|onlooker|onlookers|spectators ~1 @sit ~2 among|amongst|between|amid|
        inside
    watcher|watchers|audience|onlookers|spectators ~1 @sit ~2 in ~1 middle|centre|gaps|way|path
    """,
    _LISTS,
)
"""Those who watch are put where others dance."""

SEATED_IN_THE_WAY = Saying(
    """
    @sit ~5 in|on|at ~2 middle|centre|center|midst|gap|gaps|way|path|route|track|pathway|runway
    @sit ~5 on ~2 centre|middle|halfway ~1 line
    seated|sit|stay ~4 centre|middle|central ~1 circle|ring|square|spot
    watch|look ~2 from ~2 middle|centre|floor
    @sit ~5 just|exactly|right|down where ~3 *
    @sit ~3 where they|you ~1 are|were|finish|finished|stop|stopped|end|ended|stand|land
    @sit ~3 in|on ~2 places|place|spots|spot|own|spaces|space !outside
    @sit ~5 along|across|on ~3 path|pathway|route|track|line|way
    @sit ~6 among|amongst|between|amid|inside|within|around ~3 dancer|dancers|performer|performers|
        them|group|groups|shapes|dance|circle
    @sit ~4 anywhere|wherever|everywhere
    chairs|benches|mats ~4 anywhere|wherever|everywhere|across|middle
    @sit ~4 corner|place|spot|end|side|wall where ~3 *
    @sit ~3 near|close|under|beside|by|at ~3 feet|foot|legs
    @sit ~4 on|across ~2 dance|hall|whole|dancing ~1 floor|space|area
    seated|sitting ~2 ring|circle|line|row|group|island ~3 in|on|at ~2 centre|middle|floor
    landing|turning|crash ~1 place|spot|area|mat|corner ~~6 sit|sitting|watch|seated
    watch|sit ~4 landing|turning ~1 place|spot|area|corner
    watching|watchers|watch|others|rest|half ~4 row|line|circle|ring|group|wall ~3 across|in|on|
        along
        ~3 centre|middle|floor|way
    @sit ~6 between|amid|among ~3 group|pair|dancer|line|row
    spot|place|space ~4 between|amid|among ~2 groups|pairs|dancers|lines|rows ~4 @sit
    v:@sit ~2 about|around|over|round|across|throughout|all ~3 hall|room|floor|space|gym|stage
    @sit ~3 on|along|across|over ~2 diagonal|midline|line|lines|cross|pathway|arrow|tracks|track
    @sit ~3 scattered|spread|dotted|everywhere|about
    scattered|spread|dotted ~3 hall|room|floor|space|about
    @sit ~3 in|on|at|by|near|inside ~2 doorway|entrance|exit|finish|finishing|start|starting|
        arrival|
        goal|corner ~3 *
    @sit ~5 right|close|just|directly|very ~1 beside|behind|under|by|next|near|in ~3 dancer|dancers|
        partner|pair|group|performers|them
    @sit ~4 in front of|where|as ~2 dancer|dancers|performers|them|runners|partner ~4 come|comes|
        run|
        travel|arrive|land|rush|gallop|fly|
        towards
    @sit ~4 in|inside ~2 dancers|dancer|their|group|performers ~1 circle|ring|space|shape|square|way
    @sit ~4 in|inside|on ~2 dance|dancing|performing|performance ~1 space|area|floor|zone
    @sit ~3 down as|when|once|after ~6 finished|finish|done|turn|over|had|danced|stop|end|out
    @sit ~2 islands|island|rocks|rock|trees|tree|posts|post|obstacles|obstacle|cones|statues
        ~~12 past|round|between|through|among|weave|around
    islands|rocks|trees|posts|obstacles|reeds ~~3 @sit
    dance|go|run|move|travel|gallop|skip|weave|race|jump|leap|fly|charge|swim|sail|creep ~3 round|
        around|past|between|among|through|over|across ~2 watcher|watchers|audience|sitters|seated|
        sitting|twos|ones|half|those|viewers
    watcher|watchers|audience|observer|observers|spectator|spectators|viewer|viewers ~1 walk|stroll|
        wander|move|roam|go|step|follow ~4 hall|room|floor|among|between|next|beside|with|round|
        around
    @sit|settle|perch ~3 line|path|lane|way|route ~2 that|where|which ~3 travel|come|cross|dance|go|
        run|move|pass
    @sit ~6 where ~4 come|comes|arrive|arrives|land|lands|end|ends|pour|pours ~1 out|in|to
    island|islands|cluster|clusters|clump|clumps|knot|knots ~3 all over|across|about|around|on
        ~2 floor|hall|room|space
    @sit ~3 across ~2 middle|centre|hall|room|floor
    watcher|watchers|audience|watch|half|sit|lie ~~8 among|round|around|through|over|past|between|
        across them
    """,
    _LISTS,
)
"""Watchers sit where others dance."""

_WATCHES = Saying(
    """
    watch|watcher|watching|audience|spectator|onlooker|viewer|observer|see|look|judge|admire
    sitter|seated
    """
)
_OTHERS_DANCE = Saying(
    """
    @mover ~~5 @go|come|arrive|land
    half|rest|others|one ~1 @sit
    @mover ~~5 n:swap|cross|use|charge|perform|leap|jump
    while|as|and ~3 @mover|the ~3 @go|come|arrive|land
    """,
    _LISTS,
)
"""Somebody dances, or somebody watches: where all sit, nobody is in the way."""

OUT_OF_THE_WAY = Saying(
    """
    at|along|by|against|on|under|beside|behind|outside|near|off|beyond|of|facing ~3 @edge !to
    to !<travel|run|gallop|dance|from|go ~1 the|one|that|our ~1 @edge
    at|along|by|behind|outside|beyond ~3 line !that|where|which
        !<finishing|finish|starting|start|centre
    out of ~2 way
    outside|behind|beyond|clear
    backs ~1 against|to
    back ~1 corner|row|half|end|of
    #2.. ~2 steps ~2 away|off|back|apart
    wide|big|clear ~1 gap
    on ~2 stage
    benches !across|in|between
    ^ everyone|everybody|all ~1 sit|sits|seated
    """,
    _LISTS,
)
"""Watchers sit where nobody dances."""

_WATCHERS_SAY = Saying(
    """
    watcher|watchers|audience|observers|onlookers ~1 , say|tell|describe|name|ask
    """
)
_FACES = Saying(
    """
    stand|stay ~6 look ?straight at|to|towards ~2 partner|wall|north|south|east|west|front|back|
        gate|window|neighbour
    stand|stay ~6 look north|south|east|west|ahead|forwards|outwards|inwards
    """
)
"""Who stands and looks at a partner or a wall is about to dance, and watches nobody."""
_SEATED = Saying("v:sit|seat|kneel|lie|settle|crouch|squat|perch|stay|stand|gather\nseated|sitting")
"""What held the line between them is said by watchers, who are seated there in other words."""


def some_dance(text: str) -> bool:
    """Whether some dance while others look and talk."""
    return SOME_DANCE.said(text) is not None


def in_the_way(text: str) -> Said | None:
    """The first place in a text where watchers sit in the dancers' way."""
    if not (_WATCHES.mentioned(text) or _OTHERS_DANCE.mentioned(text)):
        return None
    for said in SEATED_IN_THE_WAY.all_in(text):
        sentence = read(text).sentence_of(said.words[0])
        told_to_say = _WATCHERS_SAY.said(sentence) and not _SEATED.mentioned(sentence)
        if not (told_to_say or OUT_OF_THE_WAY.said(sentence) or _FACES.said(sentence)):
            return said
    return None
