"""What no unit asks of pupils: lifting, pulling, weight on another, on a head or on a neck."""

from __future__ import annotations

import re

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "other": (
        "partner each-other neighbour friend classmate dancer pupil child person teammate buddy "
        "mate somebody someone anybody b smallest lightest tallest shortest fourth third flyer "
        "volunteer leader rider teacher"
    ),
    "lift": (
        "lift carry hoist heave hurl toss throw catch raise cradle shoulder scoop drag pull tug "
        "tow haul swing launch"
    ),
    "pull": "pull drag tug tow haul yank heave",
    "on": "on onto upon over",
    "part": "back shoulder knee neck head lap thigh hip stomach tummy chest",
    "stand": (
        "sit stand climb step kneel lie ride perch crouch balance jump hop leap bounce clamber "
        "straddle mount rest walk stamp scramble get put"
    ),
    "drop": (
        "crash drop fall thud slam dive throw plunge hurl fling bump land jump plonk flop thump "
        "collapse leap bang plop whack pounce crumple slump tumble smack"
    ),
    "bony": "=knees =knee =hands =wrists =bottom =bottoms =tailbone =bum =backside =elbows =seat",
    "meanwhile": "when whenever as if while until till once after before",
    "glide": (
        "slide dance skate glide run spin skid slip move travel work perform go twirl jump stay"
    ),
    "of_mind": (
        "eye eyes gaze idea ideas move moves movement rhythm shape shadow attention spirits story "
        "voice pattern pose mood energy place turn line arm arms"
    ),
}

NEVER = Saying(
    """
    @lift ?up ?your|their|a|an|the|one|another|each|our ?own ?other @other !@of_mind|by|with
    @lift ~3 @other ~2 up|high|off|across|over|into|onto|along|around|round|through|down|overhead
    @lift ~2 each-other
    @lift one ~2 of ~3 you|them|dancers|pupils|group|four
    carry|lift|hoist him|her|me|you !up|to
    piggyback|piggybacks|wheelbarrow|leapfrog|human-pyramid
    piggy back|backs
    fireman lift
    human pyramid|tower|ladder
    bunk up
    leg up
    @pull ~3 each-other
    hold|grip|take|grab|clasp|wrist|=arms|ankle ~~7 v:@pull !your|their|in
    hand ~7 v:@pull !your|their|in
    v:@pull ~2 against ~2 @other|team|side|pair
    @pull ~2 @other ~3 along|over|across|to|by|up|towards|down|through|round|around|off|back
    @pull ~1 your|their|a|the ?other partner|person|dancer|pupil|friend !@of_mind
    @pull ~2 by ~2 hand|arm|wrist|leg|ankle|foot|hair|sleeve|shirt
    tug of war !with|no
    @stand ~2 @on ~4 @other ~2 @part
    @stand ~2 @on =a|=x|=y @part
    lie|drape|lean|sprawl across ~3 @other !@of_mind
    @stand ~2 @on !@meanwhile ~3 partner|b|each-other|neighbour|friend|another|somebody|someone
        !@of_mind
    @stand ~1 @on ~1 @other back
    @stand @on each-other
    @stand ~2 @on ~2 @part of ~4 @other|you|two|base|one
    @on|to !<look|glance|peep|peer|watch|see|turn ~3 partner|other|dancer|person|friend|
        neighbour|pupil|base|somebody|someone|one shoulder|shoulders
    weight ~3 on|through|over|across ~4 neck|head|@other ?back ?knee
    weight on ~3 neck|head
    ride ~3 @on ~3 back|shoulders|shoulder
    @stand ~2 @on ~2 his|her|their back|shoulders
    other|others|they|partner|rest|one ~6 sit|stand|kneel|step|climb|lie on ~1 your @part
    @on ~2 back of ~1 neck
    roll ~5 neck
    take|put|bear|support ~3 weight ~4 head|neck
    headstand|head-stand|headspin|head-spin|necklace-roll|candlestick-roll|handspring|somersault
    head stand|spin|spring
    shoulder stand|stands
    stand|balance|spin|kick|roll|turn|rest|go|get|perch ~3 on|onto|over ?to ?your|their|
        the ?top ?of head|heads|neck|=necks|nape !of
    upside down ~3 head|heads
    balance ~2 on ~2 head
    back|backward|backwards|neck roll|rolls|roll|somersault
    roll ~2 backwards|backward|over ~3 head|neck|shoulders
    @drop ~4 on|onto|to ~3 @bony !and
    @drop ~3 tail|coccyx bone|first
    knee|knees|bottom|seat ~1 drop|drops|slam|crash
    in|wearing ?your|their|just|only|thick|slippery|stocking|stockinged|bare =socks|=sock !and|
        under|inside
    socks|sock alone|only
    =socks ~1 is|are|be ~1 best|better|ideal|perfect
    as far|high|hard|low ~1 as ~1 dare
    =socks on !and|under|with|inside|this|the|a|that|our
    land|landing|lands ~2 on ~2 knee|knees
    land|landing|lands ~3 stiff|stiffly|stiff-legged|locked|heavily
    land|landing|lands ~3 straight|locked ~1 legs|knees
    land|landing|lands ~~6 loud|hard|heavy|noisy ~1 stamp|thud|thump|bang|crash
    land|landing|lands ~1 hard|loudly|noisily
    the =splits
    race|sprint|run|dash|charge ~6 touch ~2 wall|end|door|bench|side
    race|sprint|charge ~3 to|against|for ~2 wall|end|door|bench
    eyes|eye ~1 shut|closed ~~8 turn|spin|run|whirl|skip|gallop|round|travel|jump|leap
    turn|spin|run|whirl|skip|gallop|travel|jump|leap|walk ~~8 eyes ~1 shut|closed
    run|leap|race|rush|dash|sprint ~~10 eyes ~1 on ~1 floor|ground|feet
    go|jump|leap|step|run|roll|hop|fly|pass over !<no|never ~2 people|person|dancers|bodies|
        children|
        pupils|anybody|anyone|everyone
    jump|leap|hop|go|step|roll over|across ~2 @other|lying
    hands and feet ~~8 fast|race|backwards|quickly|speed
    backwards|fast|race|run|scuttle ~4 on ~1 hands and feet
    by both|the|one ~1 =wrists|=wrist|=ankles|=ankle|=arms
    take ~2 =hands|=hand|=wrists ~~5 pull|draw|haul|heave|lift|drag ~2 up|along|over|to
    @pull|lift|heave|haul ~1 the other|others ~2 along|up|over|across|behind|off
    pull|lift|drag|carry|draw =them|=her|=him|=each-other ~1 free|along|off|across
    drop|drops|fall|falls|crash|crashes ~~8 on|onto ~~4 =knees|=knee
    bridge|crab|backbend|somersault|cartwheel|handstand|headstand ~2 against|off|from|without|alone
    only|just ~2 socks
    stocking|stockinged feet
    @other ~2 push|steer|spin|tow|tip|race ~2 wheelchair
    v:push|steer|spin|tow|tip ~2 @other ~2 in|by|on ~1 wheelchair|chair
    v:push|steer|spin|tow|tip ~1 @other ~1 wheelchair|chair
    v:circle|circling ?your|their|the|whole =head|=neck !of|with|table
    head|neck circles|circling
    roll|turn|swing|throw|circle|spin|take|let ~1 head ~1 right|all|whole|full ?the ?way round|
        around
    head ~1 right|all|whole|full ?the ?way round|around !to
    full|whole|complete|big circles|circle ~2 head|neck
    """,
    _LISTS,
)
"""A deed that is ruled out, whoever is careful."""

_WITH_CARE = Saying(
    """
    slow+|gentle+|soft+|control|controlled|careful|carefully|care|lower|lowering|sink|melt|gradual|
        gradually
    """
)
"""With care, a way down to the floor is a sinking and no drop."""

_DROPS = Saying(
    """
    @drop ~6 @bony|tail|coccyx
    @bony ~2 drop|slam|crash
    """,
    _LISTS,
)

_HARMLESS = Saying(
    """
    imaginary|invisible|pretend|puppet|string|thread|magnet|magnets
    no|without|never ~2 rope|touch|touching
    with|through ~4 air
    feel|sense ~2 tail|kite|wind|sail|air|water|current|river|tide|moon|sea|earth ~1 pull|tug|drag|
        tow
    trainers|trainer|shoes|plimsolls over|on
    """
)
"""Nobody is borne or pulled after all."""


_LIFTED_BY_A_MOVE = re.compile(
    r"\b(?:let|make) (?:the|your) (?:[a-z]+ )?(?!(?:other|base|back|group|pair|four|three|team|"
    r"row|line|partner|friend|neighbour|leader|dancer|person|teacher|class|tallest|strongest|rest|"
    r"pupil|child|mate|half)s?\b)[a-z-]+ (?:lift|carry) (?:you|them) (?:up )?(?:on ?to|to|high on) "
    r"(?:your|their|the) (?:toes|tiptoes)\b",
    re.IGNORECASE,
)
"""Who rises by a move of their own, such as a big sift, is lifted by nobody."""


_KINDS: tuple[tuple[str, Saying], ...] = (
    ("pulling one another", Saying("@pull|tug|=taken|wrist|wrists|ankle|ankles", _LISTS)),
    ("socks without shoes", Saying("sock|socks|stocking|stockinged")),
    ("going with eyes shut, or not where one goes", Saying("eye|eyes")),
    ("pushing another's wheelchair", Saying("wheelchair|chair")),
    ("circling the head right round", Saying("head|neck ~4 circle|circles|circling|round|around\n"
        "circle|circles|circling ~3 head|neck")),
    ("a drop or a stiff landing on knees, hands or bottom", Saying(
        """
        @drop ~~8 @bony|tail|coccyx|stiff|stiffly|locked
        land|landing|lands ~~8 stamp|thud|thump|bang|crash|hard|loudly|noisily
        @bony ~2 @drop
        """, _LISTS)),
    ("weight on a head, a neck or a back", Saying(
        "head|neck|headstand|head-stand|headspin|head-spin|necklace-roll|candlestick-roll|nape"
        "|shoulder|shoulders|back|backs|roll|rolls|somersault|handspring")),
    ("a race to something to touch", Saying("race|sprint|charge|wall|run|dash")),
    ("the splits", Saying("=splits")),
    ("going over somebody", Saying("over|across")),
)  # fmt: skip
_OTHERWISE = "lifting, carrying or climbing on one another"


def kind_of(said: Said) -> str:
    """What is ruled out, in the words of its kind."""
    return next((kind for kind, words in _KINDS if words.said(said.text)), _OTHERWISE)


def never(text: str) -> Said | None:
    """The first deed of `NEVER` that a text asks for."""
    reading = read(text)
    for said in NEVER.all_in(text):
        sentence = reading.sentence_of(said.words[0])
        if _DROPS.said(sentence) and _WITH_CARE.said(sentence):
            continue
        if not (_HARMLESS.mentioned(sentence) or _LIFTED_BY_A_MOVE.search(sentence)):
            return said
    return None
