"""The floor: bare feet on it, whether somebody has looked at it, and what lies on it."""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "floor": (
        "floor ground board floorboard surface hall playground tarmac grass lino carpet underfoot "
        "space area room"
    ),
    "look": (
        "check inspect look walk sweep mop wipe clean dry clear examine test see scan survey "
        "glance sure ensure find brush vacuum hoover verify confirm view search try prepare judge "
        "pass"
    ),
    "good": (
        "dry clean clear swept safe free slippery smooth checked inspected mopped wiped warm tidy "
        "level good suitable fit even cleared cleaned sound"
    ),
    "litter": (
        "splinter spill spillage puddle grit crumb glass staple nail water wet ice mud dirt dust "
        "food lunch cable wire polish pin stone rubbish litter debris object obstacle hazard "
        "anything beanbag damp slip trip pea rice sand"
    ),
    "shoes": (
        "shoe sock trainer plimsoll footwear pump boot slipper tight stocking sandal daps footgear"
    ),
    "foot": "foot toe sole heel ankle",
}

LOOKED_AT = Saying(
    """
    @look ~~6 floor|ground|floorboard|board|boards|surface|playground|tarmac|underfoot
    sweep|mop|hoover|vacuum|inspect|brush|wipe ~~6 @floor
    floor|ground|board|boards|floorboard|surface|playground|tarmac ~~8 @good
    hall|gym|space|room ~~4 swept|mopped|swept|clean|dry|checked|inspected
    @good ~1 floor|ground|board|boards|surface|underfoot
    check|look|watch|search|feel|scan|hunt ~~3 for|out ~~4 @litter
    check|look ~~5 spill|wet|slippery|splinter|puddle|underfoot
    sweep|mop|wipe|pick|remove|brush ~~6 @litter
    see|attend to ~2 @litter
    look|check|scan|search|hunt|go ~~6 for|over ~4 @litter
    hall|gym|space|room ~3 vacuumed|hoovered|swept|mopped|brushed|cleaned|checked
    clear|dry|tape|tidy|move|take ~3 @litter ~2 away|up|off|down|from|first|before|out
    sweep|mop|wipe|pick|dry|brush|tidy|clear up ~~6 wet|spill|spilt|water|crumb|loose
    @litter ~2 wiped|swept|mopped|cleared|removed|dried|picked
    floor|ground|boards ~2 allow|permit|let
    nothing|anything|things|something ~2 on|across|over|along ~2 floor|ground|boards
    wet|slippery|dirty|dusty|damp|sticky|polished|uneven|icy ~1 floor|ground|boards|surface|patch|
        patches|spot|spots|leaves
    floor|ground|boards|surface ~4 polished|washed|wet|slippery|sticky|dusty|dirty|uneven|damp|icy
    floor|boards|ground|surface ~~8 greasy|mopped|dried|swept|wiped|inspected|checked|brushed|
        cleaned
    feel ~3 floor|ground|boards ~1 with|for|first
    anything ~1 sharp|wet|slippery|loose|spilt|broken|hard|underfoot
    @litter ~3 off|from|on ~2 floor|ground|boards|hall
    floor|ground|boards|surface|hall ~3 must|should|needs|has ~3 @good
    trip|slip ~2 hazard|hazards|over|on
    fit ~2 to|for ~1 dance|dancing|feet
    underfoot
    ^ =is|=are the|your|this floor|boards|ground|surface|hall
    """,
    _LISTS,
)
"""Somebody looks whether the floor is fit to dance on."""

_DEPENDS = Saying(
    """
    if|where|when|once|provided|unless|only|depend|wherever|whenever|after|until|check|
        decide ~~9 @floor
    @floor ~~4 permitting|allowing|allows|permits|depending
    caretaker|check ~~4 @floor
    @floor ~~6 if|where|when|once|only|first
    """,
    _LISTS,
)
"""Something hangs on the floor."""

BARE = Saying(
    """
    bare ?and ?clean|little|pointed @foot !get|slip|hurt|freeze|stub|suffer|risk|bruise
    @foot ~3 bare !of
    barefoot|barefooted|barefeet|shoeless|sockless|unshod
    shoe|sock|trainer|plimsoll|footwear ~2 off
    take|slip|kick|peel|pull|leave|get ~1 off ~2 @shoes
    remove|shed ~2 @shoes
    @shoes ~2 removed
    off with ~2 @shoes
    leave ~3 @shoes ~3 by|at|outside|under|behind|in
    """,
    _LISTS,
)
"""Feet are to be bare."""

NO_SHOES = Saying(
    """
    no|without footwear|shoes|shoe
    no socks|trainers|pumps or|and|nor shoes|socks|trainers|plimsolls|pumps
    without socks|trainers|shoes or|and shoes|socks|trainers
    nothing on ~2 feet|foot
    nothing ~2 between ~2 feet|toes|soles
    """
)
"""The same, said of what is not worn."""

BARE_OR_NO_SHOES = Saying(f"{BARE.phrases}\n{NO_SHOES.phrases}", _LISTS)

_AGAINST = Saying(
    """
    bare|barefoot ?@foot be|get|would|could|can ?be not|never|cold|unsafe|banned|out|forbidden|
        dangerous|slippery|risky|stubbed|hurt|sore
    """,
    _LISTS,
)
"""Bare feet are spoken against."""

_SHOES_ON = Saying(
    """
    in|into|put|change|with|wear|have|bring ~3 trainer|plimsoll|pump|slipper|daps|shoe !off|away
    trainer|plimsoll|pump|slipper|shoe on
    """
)


def bare_feet(text: str) -> Said | None:
    """The first words by which feet are to be bare."""
    bare = BARE.said(text)
    found = bare or NO_SHOES.mentioned(text)
    if found is None or _AGAINST.mentioned(text) or _kept_for_elsewhere(text, found):
        return None
    if bare and "off" in bare.text.lower() and _SHOES_ON.said(text):
        return None
    return found


def floor_decides(text: str) -> bool:
    """Whether a text makes something hang on the floor, or has it looked at."""
    return bool(LOOKED_AT.mentioned(text) or _DEPENDS.mentioned(text))


def _kept_for_elsewhere(text: str, found: Said) -> bool:
    before = {word.form for word in read(text.partition(found.text)[0]).words[-3:]}
    return bool(before & {"save", "keep", "avoid", "stop", "never", "instead"})
