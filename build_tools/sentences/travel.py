"""Travelling: fast, backwards, close to others, and what keeps it from ending in a bump."""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "limb": "finger fingertip hand arm eye eyes elbow heart thought gaze mind shoulder voice",
    "rapid": (
        "race gallop sprint dash dart whizz zoom rush hurtle bolt hurry scurry gallop speed tear "
        "stampede scamper bombed streak scoot pelt whoosh jet canter hare"
    ),
    "go": (
        "go walk run travel move skip jog march step stride stroll tiptoe creep shuffle sidestep "
        "slide glide skate trot prowl wander dart zoom whizz hop leap jump charge sprint chase "
        "rush race gallop dash flow stream fly swoop sail scuttle crawl stagger tread pace zigzag "
        "swim scurry hurry whirl drive swirl weave"
    ),
    "fast": (
        "fast+ quick+ rapidly swift+ speedy+ flat-out furiously madly breakneck hurriedly "
        "top-speed full-tilt"
    ),
    "over": (
        "once twice on the it a an this that your our their his her out over down again both each "
        "whole all through thrice these those section part order and then mend or"
    ),
    "made": "dance section part motif whole scene music film tap join order phrase",
    "thing": "beat thread water wave sand river machine engine tune story line time word",
    "person": (
        "each-other other others partner neighbour everyone everybody crowd dancer friend class "
        "body bodies people pupils person group groups traffic"
    ),
}

FAST = Saying(
    """
    v:@rapid !<@limb|n't !term|hour
    racing|galloping|sprinting|dashing|darting|whizzing|zooming|rushing|hurtling|bolting|
        scurrying !<@limb
    gallop|stampede|race !<@limb|the|which ~2 @go|to|around|round|across|into|in
    v:chase|charge !<in|@limb
    the|a chase|race is|be|starts|begins|on
    ^ run !@over
    =you|=all|everyone|everybody|and|then|now|they run !@over
    run|runs !<@limb|@made|@thing ?really|lightly|softly|quickly in|into|to|towards|around|round|
        across|between|past|freely|fast|quickly|lightly|anywhere|away|everywhere|from|among|like
    run|runs !<@limb|@made|@thing as|with ~2 if|light|long|small|quick|big|fast|though
    running !<@limb|@made|@thing !@over|order|commentary|total|time|water|late
    v:@go ~5 @fast !<@limb|@go|feet
    fast+|quick+|swift+ as|like ~3 lightning|wind|hare|arrow|rocket|flash|dart|bullet|cheetah|fire
    zigzag|rush|speed|tear|shoot|streak ~3 all|right|everywhere ~1 round|over|across|about
    @fast !<the|which|who ~3 v:@go !<@limb|not|slow
    at|full|top|double|great ~2 speed !of
    double|increase|pick ~2 speed
    off you go ~3 fast|quick
    as fast|quickly as ~2 can|wind|possible|like|you
    skate|cycle|drive|fly|swoop ~3 @fast
    dart|dash|zigzag ~3 between|among|through|from
    flat out
    fast+ and fast+
    """,
    _LISTS,
)
"""The class travels fast."""

FEET_STAY = Saying(
    """
    foot|feet ~3 leave|move|travel|lift
    """
)
"""Denied: feet that do not leave the spot."""

ON_THE_SPOT = Saying(
    """
    on|in ~1 spot|place
    stand|stay still|where
    """
)
"""Nobody goes anywhere."""

BACKWARDS = Saying(
    """
    v:@go ~~5 backwards|backward !<count|say|lean|bend|word|number|dance|order|film|letter
    @go ~4 in reverse
    reverse ~3 through|across|along|round|around|into|out|to|down|up|like|away|slowly|quickly|
        back !the|order
    v:reverse !<in|the|film !the|it|this|order|your|that|its|roles|direction|their|gear|a
    v:back away|up|out|off !<come|go|bring|roll|stand|get|the|in|right|straight
    moonwalk
    go|step|walk|run|travel|skip back|backwards without|blind
    travel|go|walk|run|move tail|bottom|back first
    """,
    _LISTS | {"go": f"{_LISTS['go']}".replace(" flow", "").replace(" swirl", "")},
)
"""Pupils travel backwards."""

LOOK_BACK = Saying(
    """
    look|glance|check|peep|peek|turn|twist|see ~~6 shoulder|behind|back|round|way|space
    over ~2 shoulder|shoulders
    =heads|=head ~2 turn|turned|round|checking|look
    slow+|careful|carefully|cautious|cautiously|gentle+|unhurried|crawl|snail
    small|short|little|tiny|few|baby|#1..3 ~2 step|steps|paces|count|counts
    step|steps|stride ~2 small|short|tiny|little
    space|room|way|path|gap ~3 clear|empty|free|behind|open
    clear|empty|free ~2 space|room|path|gap|lane|behind|way
    nobody|nothing|no ~2 behind
    ^ one at a time
    go|walk|run|travel|move|cross|step|dance|back|backwards|leave|start ~~4 one at a time
    one|own ~1 lane|line|track|row ~1 each
    own ~1 lane|track|line|corridor
    partner|other|friend|face|facing ~~8 watch|watches|guide|guides|call|calls|hold|holds|tell|
        tells|warn|warns|steer|stop|stops|say|says
    stop|stopping before|if|when ~~6 behind|feel|near|wall|close|touch
    """
)
"""Looking, and going slowly, in a way that fits travelling backwards."""

CLOSE = Saying(
    """
    v:huddle|cram|jostle
    huddled|squashed|crammed|bunched|squeezed|packed|crowded|jammed|wedged
    huddle|cluster|bunch|pack|squash|cram|crowd|squeeze|swarm|clump|gather|press|jam|
        rush ~3 together|up|tight|tightly|in|close|into|round|against
    squeeze|slip|thread|push|dart|dash|weave|dodge|zigzag|slide|duck|dive|race|run|brush ~2 through|
        past|between|among|amongst ~2 @person|gap|gaps
    weave|dodge|thread|zigzag|wind|dart ~2 in|through|between|among ?and ?out ~2 @person
    weave in and out
    dodge|weave !<basket|loom|cloth|thread ~2 each-other|between|through|past
    in and out of ~2 @person
    so|as|very|really|too close|near ~5 to|as|that|together|@person|can|touch
    close|near to|as ~3 @person ~3 can|possible
    as near|close|tight|tightly as ~2 can|possible|dare|like
    close|closely|tight|tightly together
    tight|tightly|close|squash|pack into|in|inside|round ~3 corner|middle|centre|hoop|ring|circle|
        ball|knot|mat|box
    within|almost|nearly ~3 finger|whisker|hair|inch|breath|centimetre|millimetre ~2 of
    brush ~3 shoulder|sleeve|elbow|past|against
    shoulder to shoulder
    nose to nose
    back to back !sit
    sardine|scrum|mosh
    everyone|everybody|all|class|rush|run|race|charge|gallop|dash|pile ~3 to|into ~1 middle|centre|
        same|one !of
    chase|chasing ~3 before|front|each-other|person|partner|ahead|one
    elbow to elbow
    tangle|knot|heap|pile ~2 of ~2 bodies|dancers|people|pupils|class
    """,
    _LISTS,
)
"""Pupils move close to others."""

CLOSE_BUT_APART = Saying(
    """
    gap|space|room|air|distance ~2 between|around|round|left|for|apart|each|to
    leave|keep ~3 gap|space|room|distance|air
    hand|arm|ruler|step|elbow|foot width|length|breadth|away|apart
    arm|arms|hand span|spans
    apart
    slow+|walk|walking|careful|carefully|gentle+|cautious|slow-motion|small|tiny|shuffles|steady+
    =elbows|=arms|hands ~2 in|tucked|down|sides|close|by
    tuck ~2 elbow|elbows|arms
    turn|move|veer|steer ~1 away|aside ~3 when|if|before|as
    stop|freeze|halt|pause ~3 before|if|when|while
    one at a time
    empty|clear ~1 space|gap|gaps|lane
    own space|lane|spot|path
    """
)
"""Room between dancers, or a pace at which they can stop."""

KEEP_APART = Saying(
    """
    bump|touch|knock|crash|contact|collide|collision
    """
)
"""Denied: nobody touches."""

ROOM_TO_OTHERS = Saying(
    """
    hand|arm|elbow|ruler|step ~1 width|length|widths|lengths|span ~2 between|from|to ~2 partner|
        partners|pair|pairs|dancer|dancers|@person
    hand|hands|arm|arms width|length|span|apart ~4 between|from ~2 partner|partners|pair|pairs|
        dancer|dancers|each-other|others|anyone
    """,
    _LISTS,
)
"""How much room there is between dancers, said of all that they do together."""

SAID_OF_BACKWARDS = Saying(
    """
    backwards|backward ~~8 look|slow+|shoulder|small|short|clear|empty|careful|carefully
    look|slow+|small|short|careful|carefully|clear|empty|nobody ~~8 backwards|backward
    room|space ~2 behind|for|to ~~6 backwards|backward|back
    step|walk|go|move|travel|creep|run ~3 back ~~6 slow+|small|short|look|careful|carefully|one
    slow+|careful|carefully ~2 step|walk|go|move|travel|creep ~1 back
    small|short|slow|#1..3 ~1 step|steps|paces ~2 back
    back ~3 small|short|slow|#1..3 ~1 step|steps|paces
    look|glance|check|peep|peek ~3 behind|shoulder
    over ~2 shoulder|shoulders
    """
)
"""A line about going backwards with care, in another step or for the whole lesson."""

TRAVEL = Saying(
    """
    walk|travel|skip|run|step|side-step|sidestep|stream|jog|march
    """
)
"""The class travels."""


def fast_travel(text: str) -> Said | None:
    """The first fast travelling that a text asks for; none where feet stay on the spot."""
    if FEET_STAY.denied(text):
        return None
    reading = read(text)
    for said in FAST.all_in(text):
        if not ON_THE_SPOT.said(reading.sentence_of(said.words[0])):
            return said
    return None
