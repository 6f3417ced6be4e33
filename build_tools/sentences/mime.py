"""Everyday actions acted out, and what makes dance of them."""

from __future__ import annotations

from collections.abc import Iterable

from build_tools.sentences.sayings import Saying

_LISTS = {
    "chore": (
        "brush wash dry cook bake stir pour sip chew eat drink knead iron sweep hoover vacuum dust "
        "mop scrub polish dig plant water rake mow saw hammer nail screw drill paint sew knit sand "
        "type write post weigh pay buy sell shop drive steer ride dress zip button comb shave "
        "phone telephone text read open unlock fetch pack unpack chop slice peel spread butter "
        "lick milk feed groom fish row serve carry lift load stack pick dial yawn scratch wipe dip "
        "cut glue wrap make lay set clean tidy fold hang peg fill empty"
    ),
    "thing": (
        "tooth tea kettle cup mug plate dish cake bread dough pan spoon fork knife apple money "
        "change coat sock shoe boot shirt button zip letter stamp box bus car wheel handbrake van "
        "tractor wall brush bucket spaghetti soup sandwich toast egg cereal meal dinner breakfast "
        "lunch snack ice-cream lolly clothes washing towel bed pillow blanket hair face hands soap "
        "tap bath shower mirror floor window table chair door key lock seed flower plant garden "
        "lawn hedge tree log wood nail hammer saw screw newspaper book phone computer keyboard "
        "ball bat net racket dog cat horse cow baby pram trolley shopping basket till counter "
        "umbrella bag suitcase train ticket watch bike bicycle pedal iron shelf oven pot vegetable "
        "potato carrot onion pastry brick mortar dog line sheet pillow cheese jam butter milk "
        "sugar juice"
    ),
    "worker": (
        "shopkeeper baker painter decorator gardener farmer waiter waitress cook chef postman "
        "postwoman driver builder carpenter plumber doctor nurse dentist hairdresser barber "
        "teacher policeman firefighter fireman cleaner fisherman sailor mechanic bricklayer tailor "
        "cobbler blacksmith butcher grocer shopper customer librarian secretary clerk vet milkman "
        "juggler potter weaver spinner miner baker miller window-cleaner bus-driver lollipop "
        "person "
        "housewife mother father mum dad grandma grandad child"
    ),
}

ACTED_OUT = Saying(
    """
    mime|pantomime|role-play|roleplay|impersonate|re-enact|enact|mimic
    role play|playing
    act ~3 out
    act ~1 =as|like
    act ~1 scene|story
    pretend|make-believe
    exactly|just as|like ~1 you|they|we|people ~1 would|do|does
    imagine ?that ?you ?=are|=re ~2 @chore|@worker|in|at|a
    in ~1 mime
    =be|become|=re|play ?the|a|an ~2 @worker
    show|do|perform|copy|imitate|demonstrate ~3 how|what|action|movement|job|gesture ~6 @chore|
        @worker|do|dressed|ready|really
    as|exactly|just|very ~2 real|realistic|realistically|lifelike|life|accurate|accurately|really|
        true|
        natural|convincing|convincingly|believable
    true to life
    realistic+|lifelike|convincingly|believably
    make ~4 believe
    just|exactly as|like ~3 home|morning|night|school|kitchen|life
    @chore ~1 the|your|a|some|up|an|its|his|her ~2 @thing
    ^ @chore ?and ?@chore ~3 @thing
    wait|queue ~2 bus|train|shop
    get dressed|ready|up
    go|tuck ~1 bed|sleep|shop
    use ~2 real
    take|put|pull ~1 off|on ~3 @thing
    you ~1 be|are|re a|an|the @worker
    play ~1 at ~2 shop|school|house|home|doctors|hospital|restaurant|cafe
    walk ~2 dog|pram
    roll|cut|knead ~3 pastry|dough|shapes
    """,
    _LISTS,
)
"""An everyday action shown as it is done every day."""

MADE_DANCE = Saying(
    """
    dance !sequence|piece
    exaggerate|enlarge|magnify|abstract|abstraction|stylise|transform|develop|vary|distort
    big+|large+|enormous|huge+|giant|gigantic|massive|tiny|small+|larger|grow !apple|wheel|bag|box|
        bus
    slow+ ~1 motion|down|$
    in|at|very|so|really|too ?much slow+|fast+|quick+ !as
    slow+|quick+|fast+|speed|double ?and ~1 then|and|motion|speed|slow+|fast+|$
    change|alter|turn|transform|make ~4 into|to|it|size|speed|level|direction|shape|pattern|bigger
    become|becomes|turns !=a|an|the
    let your|the ~2 be
    mime|acting|pretend ~3 not|isn't ~2 enough
    become ~1 spaghetti|dough|steam|water
    whole|entire body
    with|by|using ~2 elbow|knee|back|hip|shoulder|foot|=feet|heel|head|nose|body|toe|chest|leg|ribs
    through ~1 back|spine|body|arm
    level|high|low ~3 low|high|level|middle|and
    leap|spin|spiral|swirl|lunge|sway|whirl|melt|glide|ripple|float|hover
    across|over ~2 hall|floor|room|space
    upside down
    pattern|rhythm|canon|unison|motif
    curve|curved|pathway|circles
    as|into a ~1 dance
    no|without|not|never|beyond|than|stop|more|enough ~4 mime|act|prop|pretend|real|realistic
    take ~3 further|bigger|away
    start|begin ~2 from|with
    borrow|steal|keep only|just
    try ~4 way|ways
    in ~1 way|different|new
    know
    """
)
"""What makes dance of it: another size, speed, level, body part, path or rhythm."""


def is_left_as_mime(texts: Iterable[str | None]) -> bool:
    """Whether something is acted out in the texts, and none of them says what makes it dance."""
    kept = [text for text in texts if text]
    acted = any(ACTED_OUT.mentioned(text) and not ACTED_OUT.denied(text) for text in kept)
    return acted and not MADE_DANCE.in_any(kept)
