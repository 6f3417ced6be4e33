"""Touching one another, and how to dance it without."""

from __future__ import annotations

import re

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "other": (
        "partner each-other neighbour friend classmate dancer pupil child person teammate buddy "
        "mate somebody someone anybody anyone everybody everyone b leader passenger sculptor "
        "guide rider driver follower helper member opposite =ones =twos =as =bs"
    ),
    "own_way": (
        "=up =out =high =low =wide =still above over by at behind under =loose =away =down =in"
    ),
    "of_mind": (
        "eye gaze idea move movement rhythm shape shadow attention picture line turn dance pathway "
        "path name word story beat energy motif wave reflection spirits interest place space pose "
        "sound voice example speed time spot side way face hat card"
    ),
    "grip": (
        "hold grab clasp grip clutch seize grasp link lock interlock interlace lace hook entwine "
        "squeeze"
    ),
    "join": "join link lock interlock interlace hook clasp entwine connect",
    "which": "both all right left inside outside inner outer near opposite little crossed",
    "theirs": "their his her partner each-other neighbour other somebody someone",
    "handle": (
        "push pull drag lift carry hug cuddle embrace tow tug shove nudge poke tickle wrestle "
        "hoist haul heave barge bump grab grip clutch seize grasp clasp catch touch stroke pat "
        "pinch squeeze steer rock drape hoist raise support tag prop cradle mould sculpt roll "
        "untangle lower"
    ),
    "rests": (
        "lean sit lie perch rest balance climb stand press push pull hang cling fall roll drape"
    ),
    "part": (
        "hand palm finger fingertip fist arm forearm elbow wrist shoulder head forehead back foot "
        "sole knee hip cheek chin ear side"
    ),
}

TOUCH = Saying(
    """
    shake =hands !and|@own_way|with|out
    shake =hands with ~2 @other
    hold|join|take|clasp|link|grab|touch|clutch|clap ?@which ?their =hands|=palms !@own_way
    @join ?@which ?their =arms|=elbows|=fingers|=hands|=wrists|=shoulders|=thumbs !@own_way
    @grip|take ?@which =forearms|=wrists
    @join ?@which ?their =arms|=elbows|=fingers|=hands in ~1 line|row|ring|circle|chain|two|three|
        four|=pairs|=threes|=fours
    tap|touch|pat|poke|stroke|press ~2 part|place|joint|spot of|on ~1 @other
    steer|mould|sculpt|tow|cradle|hug|cuddle|tickle =them|=him|=her
    hand|wrist|elbow|arm|forearm|finger held|linked|joined|clasped|gripped|locked|entwined
        !@own_way
    right|left|both|inside =hand|=hands ~5 across|star|turn|swing
    promenade|do-si-do|ballroom|waltz|ceilidh|elbow|arm|two-hand hold|swing|turn !your
    swing ~1 your partner
    thread|strip|dip|orange ~1 willow|needle|lemons ~~8 arch|arm|hand
    @grip|take|catch|find|reach ?for|hold ?of a|one|any|=another|each hand|arm|elbow|wrist|finger|
        thumb
    @grip|take|catch|touch|tap|tag|pat|stroke|lift|lower|push|press|pull|shake|kiss|
        hold ~4 @other hand|arm|elbow|wrist|shoulder|waist|palm|back|finger|knee|ankle|foot|hip|
        head|weight|ribs|sleeve
    @grip|take ~2 waist|shoulder|hand|hip|elbow|ankle|arm|back|wrist of ~4 @other|front|next|side|
        left|right
    @grip|take|catch your|their|his|her|my wrist|waist
    take|get|keep|catch|grab hold of ~3 @part|@other|waist|shirt|sleeve|belt
    hand|arm in hand|arm
    palm|finger|fingertip|elbow to palm|finger|fingertip|elbow
    high|low five|=fives|=fived
    fist bump
    piggyback|piggybacks|leapfrog|wheelbarrow|conga|ballroom|counterbalance|counter-balance
    piggy back|backs
    counter balance ~3 @other
    human knot|chain|pyramid|tower|bridge|ladder
    three legged
    palm|hand|sole|forehead|cheek|back|shoulder ?flat|gently|softly|lightly|firmly|both on|
        against ~1 partner|each-other|neighbour
    =backs|=shoulders|=hands|=palms|=soles|=sides|=heads ~1 pressed|squashed|glued|stuck|leaning|
        touching|together
    join|link|take|hold|holding ?@which =hands in|into|as|to|and|all|round ~2 ring|circle|line|
        chain|
        row|star|four|six|three|pair|make|form
    @part|@limb|hair !@own_way on|against|round|around|over|across|onto|upon|into|
        touching ~3 @other !@of_mind
    arm|hand round|around|about ~2 shoulder|waist|neck
    rap|knock|drum|beat|bang|hammer|thump|pound|slap|clap|tap|pat ~2 on|upon|at|against ~2 @other
        ~1 back|shoulder|knee|arm|hand|head|elbow|palm
    hand on|to ~1 the|each shoulder|back|waist|hip|head|knee of|in|next
    hand on|to =shoulders|=waists
    @rests on|against|into|onto|upon ?to ?top ?of ?the|your ~2 @other !@of_mind
    @rests on|against|onto you|them|him|her
    @handle !away|from ?up|on|at|against|with|along ?to ~2 @other !@of_mind|by|with|they|you|we|well
    hold ?on|onto|up ?to ?your|their|a|the|an ?own ?new @other !@of_mind
    hold|swing|twirl|spin|turn|rock ?round ?your|their|the ?other|with each-other|partner !@of_mind
    link|hook|attach|join|connect|tie on ?to ~2 @other
    cling|hang ?on|onto to ~2 @other
    share|bear|support|give|take|hold ~2 @other weight
    share|give|take|exchange|support|bear weight|balance ~3 @other|together
    balance ~3 on|against ~2 @other
    by the =hand|=wrist|=elbow|=arm|=shoulder|=shoulders|=waist|=hands
    tap|pat|touch|nudge|poke|tag ~3 on the|their|his|her shoulder|back|arm|head|hand|knee
    press|push|put|place|squash|lean|rest|stick ?your|their|both|the palm|hand|back|shoulder|foot|
        sole|forehead|head|cheek|knee|toe together|against|to
    push|press|lean|pull|slide|rise|sit|stand|roll ?up|down back|shoulder|palm|hand to back|
        shoulder|palm|hand
    back|shoulder to back|shoulder ~~5 lean|push|press|slide|balance|support|roll
    =backs|=shoulders|=hands|=palms|=fingertips|=fingers|=elbows|=toes|=feet|=knees|=heads|=hips|
        =arms ~2 touch|meet !the|your|a|above|over|behind|in|at|nobody|nothing|none|no
    touching =backs|=shoulders|=hands|=palms|=fingertips|=elbows|=toes|=feet|=knees|=hips
    arch ~3 with ~2 @other
    pass ~2 squeeze|hug
    stack|pile ~2 =hands
    arms|arm linked|joined|locked
    in|make|keep|stay|physical contact !of
    wrap|fold|throw|fling ~3 round|around ~2 @other
    wrap|fold|fling|slip|put your|their|an|one|both arm round|around|about|under ~1 @other
    @part on|to|at|against the !left|right|other|opposite|back|front|far|near * shoulder|back|hip|
        elbow|
        head|hand|waist|arm
    @rests|climb|step|kneel|ride on|onto|across @theirs ?hand back|shoulder|thigh|lap|knee|foot|hip
    foot|sole|hand|knee|toe|elbow|nose to foot|sole|hand|knee|toe|elbow|nose !and
    point|place of contact between|with ~2 @other|you|your
    give|send|pass ~4 squeeze|hug|pat|cuddle|push|shove|nudge !of|off
    give ~3 @theirs ~1 hand ~2 squeeze|pat|shake
    @handle|shape|model|bend|position|arrange|dress ~1 @theirs ~2 like|into|as ~2 clay|shape|statue|
        puppet|doll|dough|model
    catch|hold|save|steady|lower|lift|carry|roll|rock|pull|push|drag|swing|tip|tilt|turn gently|
        carefully|slowly|softly @other
    =ones|=twos|=as|=bs|partner|pupil|child|dancer|four|you|two|three ~1 roll|rock|tip|lift|carry|
        drag|
        pull|push|swing|lower|catch =them|=him|=her !selves|all
    @other|they|others catch|hold|lift|carry|lower|pull|push =you|=him|=her|=them
    fall|drop|lean|sink ?back ~1 into|onto ~2 arm|lap
    fall ~4 caught|catch
    carry|lift|hoist|raise ~2 smallest|lightest|member
    without|never|not|before let|letting go !of|into
    let go of ~1 @theirs
    glued|stuck|tied|fastened|attached|joined|connected ~2 at|by ~2 @part|hip
    back|shoulder|palm|elbow|side|knee|foot ~3 stay|keep|be|remain touching|together|joined|in
    weight sharing|bearing|share
    """,
    _LISTS,
)
"""Pupils touching one another."""

WITHOUT = Saying(
    """
    touch
    contact
    hold|link|lean|lift|carry|join|push|pull|hug !back
    meet
    close|near enough ~3 touch
    """
)
"""What is denied where pupils are not to touch."""

ABOUT_TOUCHING = Saying(
    """
    touch|contact|hold|link|lean|lift|partner|hand|hands
    """
)
"""A line that speaks of touching, or of those who might touch."""

_APART = (
    "apart gap space room air width length distance hover alongside near beside between shadow "
    "mirror scarf ribbon rope hoop band cloth elastic invisible imaginary pretend almost nearly "
    "alone side instead otherwise parallel facing close reach float glass magnet cushion separate "
    "balloon stand stay copy follow dance own"
)
CHOICE = Saying(
    """
    or ~~9 @apart
    or ~2 just|not|simply|only|else
    if|anyone|whoever|anybody|those|everyone|everybody|who|should|unless ~~8 prefer|rather|like|
        want|wish|choose|happy|comfortable|agree|mind|decide|say
    prefer|optional|choice|option|voluntary
    choose|decide|agree ~4 whether|how|if|between|touch|hold|link
    instead ~~8 @apart
    @apart ~~6 instead
    may|can|could !<until|so|that ~3 touch|hold|link|lean|join|meet|keep|leave|choose|stand|stay|
        dance|turn|mirror|use|say
    @apart ~~6 fine|welcome|good|well|too|okay|ok|allowed|enough|works|always
    nobody|not have|has|need ~2 to ~2 touch|hold|link|lean|join
    as good
    just as well
    """,
    {"apart": _APART},
)
"""A way of one's own beside touching: or a hand's width apart, if you like, a scarf instead."""

APART = Saying(
    """
    hand|hands|finger|fingers|arm|arms|step|steps|ruler width|length|lengths|breadth|apart
    leave|keep|with|gap|a|plenty ~4 gap|space|room|air|distance ~2 between|apart
    leave|keep ~3 gap|distance
    little|step|bit|small|way apart
    scarf|ribbon|rope|hoop|band|cloth|elastic|towel|pane|cushion ~2 between
    hover|almost|nearly|imaginary|invisible|pretend
    as if|as-if ~6 @other|hand
    """,
    _LISTS,
)
"""Room between those who would touch."""


def touching(text: str | None) -> Said | None:
    """The first touching that a text asks for and does not itself offer a way without."""
    if text is None or not may_touch(text):
        return None
    reading = read(text)
    for said in TOUCH.all_in(text):
        sentence = reading.sentence_of(said.words[0])
        if APART.said(sentence) or (_FEET.fullmatch(said.text) and _JUMPS.mentioned(sentence)):
            continue
        return said
    return None


_FEET = re.compile(r"(?:foot|feet)\W+to\W+(?:foot|feet)", re.IGNORECASE)
_JUMPS = Saying("jump|hop|leap|land|bounce|spring|skip|step|weight")
"""From a foot to a foot of one's own, as jumps are told."""


def may_touch(text: str) -> bool:
    """Whether a text asks for touching at all."""
    return TOUCH.said(text) is not None


def way_without(text: str | None) -> bool:
    """Whether a text says that touching is a choice, or that nobody touches."""
    return bool(WITHOUT.denied(text) or CHOICE.mentioned(text))
