"""Jumps that a text asks for, and how to land."""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "thought": "idea thought gaze story sound beat energy line colour word look",
    "limb": "shoulder finger fingertip hand arm elbow eye eyebrow heart voice gaze thumb toe heel",
    "soft": (
        "soft+ quiet+ silent silently light+ gentle+ low still controlled control careful "
        "carefully bent bend knee foot feet toe cat feather cushion cushioned snow snowflake "
        "balanced steady spring springy cotton-wool velvet smooth+ safe+ noiselessly noiseless "
        "sound sofa sponge squashy kind+ two both heel"
    ),
    "land": "land landing touchdown",
}

JUMP = Saying(
    """
    jump !<@limb !in|to|at|ahead|off|queue|rope
    jump in|at ~3 place|spot|air|line|circle|step|front|and|then|turn
    hop !<@limb
    leap !<@limb !to|year|years|frog
    leap to ~3 @side
    bounce !<ball|@limb !a|the|ideas|it
    v:spring !<of|in|the|early|late|this|last|next|coil|like !clean|term|flowers|onto|is|has|comes
    vault|pounce|pogo|leapfrog|trampoline|hurdle
    v:bound !<you|be|are|is ~3 into|over|across|like|along|forward|forwards|through|from|round|
        around|off|up|away|high|about
    bounding|bounds !<of
    blast|lift|take off !your|the|shoes|their|a|all
    explode|burst|fly|launch|shoot|pop|rocket|spring|blast|soar|bound|take|kick|throw|fling ~3 into|
        in the air
    leave|off the|your floor|ground
    clear the ~3 rock|puddle|gap|fence|hurdle|bar|wall|stream|log|river|hedge
    star|tuck|pencil|frog|kangaroo|bunny|squat|split jump
    jumping|hopping|leaping jack|bean
    """,
    _LISTS | {"side": "side left right front other lily rock stone pad puddle spot"},
)
"""Feet leave the floor."""

NO_JUMP = Saying(
    """
    jump|leap|hop ?back|straight|right in|into|to|inside|out ~2 story|picture|book|scene|poem|tale|
        adventure|world|song|page|photograph
    bounce free
    keep|take|leave|lose ~2 bounce ~1 out|away|behind
    jump|leap|hop ~2 idea|answer|conclusion|question|queue
    hop on ~2 board|bus|train|boat
    let|make ~2 @limb ~3 jump|hop|leap|bounce|skip
    @limb|@thought ~2 jump|hop|leap|bounce|skip
    """,
    _LISTS,
)
"""A jump of thoughts or of fingers."""

HOW_TO_LAND = Saying(
    """
    @land ~~6 @soft
    @soft ~~4 land|landing !stage|place|craft|mark
    come|comes|coming|came down|back ~~6 @soft
    down|back|touch|return ~1 to ~1 earth|ground|floor ~~5 @soft
    touch|touches down ~~6 @soft
    meet|reach|find|kiss|hit ~1 floor|ground ~~5 @soft
    bend|soften|bent|give ~~4 =knees|knee|ankles|hips
    bend|soften|give as|when|if ~2 land|meet|come|touch|reach|arrive
    =knees|=knee ~3 bend|bent|soft+|springy|spring|springs|bendy|loose|give|easy|ready|absorb
    bendy|bent|soft|springy|easy|loose|squashy =knees|knee|legs
    bent ~1 legs
    quiet|silent|soft|light|gentle|cat|padded ~1 =feet|landing|toes|paws
    =feet|=paws|=toes ~3 quiet+|silent+|soft+|light+
    quiet|silent|soft|light as|on|like ~4 foot|feet|cat|feather|snow|mouse|paw|toe|floor|down
    toe|toes|ball|balls ~4 heel|heels
    through ~3 ball|toe|heel|foot|feet
    absorb|cushion|squash ~4 land|landing|shock|jump|ground|floor|knee
    """,
    _LISTS,
)
"""How to come down from a jump."""

_NO_THUD = Saying(
    """
    thud|thump|bounce|noise|sound|bang|stamp|crash|clatter|thunder|hear
    """
)
"""What a soft landing does not make."""

_ABOUT_LANDING = Saying(
    """
    land|landing|jump|hop|leap|foot|feet|floor|down
    """
)


def jump(text: str) -> Said | None:
    """The first jump that a text asks for."""
    for said in JUMP.all_in(text):
        if not NO_JUMP.mentioned(read(text).sentence_of(said.words[0])):
            return said
    return None


def says_how_to_land(text: str) -> bool:
    """Whether a text tells how to land: land softly, knees bent, no thud."""
    if HOW_TO_LAND.said(text, likened=True):
        return True
    return bool(_NO_THUD.denied(text) and _ABOUT_LANDING.mentioned(text))
