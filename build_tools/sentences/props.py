"""Things that lie where feet go."""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "prop": (
        "scarf ribbon streamer rope hoop beanbag cone =spots mat ball balloon stick baton cane "
        "pole cloth fabric sheet silk parachute blanket towel paper newspaper page card petal "
        "feather flower hat cap umbrella shaker drum tambourine bell instrument maraca claves "
        "tambour triangle box block brick cube shell stone pebble pompom puppet mask toy teddy "
        "book pencil pen chalk coat jumper shoe sock glove bottle cup lantern torch flag banner "
        "elastic band quoit frisbee skittle bucket basket chair stool bench tube pipe noodle "
        "sponge string wool yarn confetti glitter sequin foil tissue cardboard picture photo prop "
        "object item leaf leaves map letter napkin cushion pillow twig branch conker acorn wand "
        "sword shield crown cape cloak veil lid pan pot plate marker disc dome counter bag beads "
        "teabag label sticker tile log plank net crepe bunting rag shawl costume equipment hoops "
        "things bits pieces"
    ),
    "flat": (
        "scarf ribbon streamer rope hoop beanbag cone =spots mat ball balloon stick baton cane "
        "pole cloth fabric sheet silk parachute blanket towel newspaper card cushion pillow quoit "
        "block brick bench shaker beads confetti tissue foil string wool yarn chalk coat jumper "
        "bottle skittle frisbee noodle sponge marker disc crepe bunting rag costume hat bag page"
    ),
    "my": (
        "a an the your their his her our my all both each every some these those its one any "
        "everyone"
    ),
    "put": (
        "drop leave scatter lay put place throw toss fling strew spread discard abandon set spill "
        "litter dump release cast sprinkle shed lie rest shower tip pour deal lower sling chuck "
        "arrange line"
    ),
    "feet": (
        "leap jump run hop dance skip gallop step travel tread walk move rush dash race spin whirl "
        "prance tiptoe go bounce slide skate stamp stand trot charge bound weave"
    ),
    "floor": "floor ground hall room space middle centre stage carpet lino boards",
    "about": (
        "floor ground around round about everywhere across over behind beside wherever hall room "
        "space underfoot anywhere middle centre feet where here there front"
    ),
}

UNDERFOOT = Saying(
    """
    drop|discard|abandon|scatter|strew|fling|shed|dump|litter|spill|sprinkle ?all ?of ?@my ?* @prop
    let|lets go of ~2 @prop
    let|lets ~2 @prop ~1 go|fall|drop|land|lie
    @put ~3 @prop ~~4 @about
    throw|toss|fling|cast ?all ?of ?@my ?* @prop
    leave|put|lay ?@my ?* @prop where|lying|there|behind
    @feet ~5 on|onto|over|across|among|amongst|upon|along|around|between|through ~3 @flat
    @feet ~5 on|onto|over|across|among|amongst|upon|between|through ?the|a|each|your|their|every|
        all|some ?* @flat
    from @flat to @flat
    from|to one|each ?sheet|piece|bit ?of ~2 @flat to
    @feet ~3 on top of ~1 them|it|those
    gallop|hop|leap|jump|skip|step|run|dance ~2 over|among|across them|it
    @prop ~3 spread|scatter|lie|lay|strew|dot|litter ~~5 @floor
    @prop ~2 on|over|across|around|about|all ~3 floor|ground|hall|room|space|feet
    trail|drag ~4 foot|feet|behind|floor|ground
    @prop ~1 trail|drag
    on the floor ~2 be|lie|are|is ~2 @prop
    hall|floor|room|ground ~2 cover|litter|strew|scatter ~3 @prop
    underfoot
    """,
    _LISTS,
)
"""A thing is left, or lies, where pupils dance."""

_AWAY = Saying(
    """
    away|aside !<blow|float|drift|fly|roll|fade|melt|@feet !from
    in|into|to|by|inside|under|behind|on|onto|over|off|against|beside|at|along|round|near ~3 basket|
        bin|corner|
        cupboard|tray|shelf|edge|wall|bench|table|hook|bars|trolley|sideline|side|sides|edges|walls|
            box|bag|pocket|bucket|stage|chair|peg|drawer
    pick|collect|gather|scoop|take|lift|clear|bring|sweep|hand|tuck|pass|carry ~4 up|in|away|back
    go|walk|travel|dance|step|move|path|weave|run|steer ~1 round|around ~1 it|them|@prop|each
    out of ~2 way
    non-slip|grippy|taped
    v:stick|tape|fix|peg|pin|stuck|fixed ~2 down|floor
    keep|hold|grip|carry ~2 hold|high|hands|above|off|clear|@prop ~~3 all|until|throughout|end|
        high|off|above|tight|tightly|up|hands|hand
    keep hold
    catch
    clear ~2 floor|space|ground|path
    floor|space ~2 clear|empty
    """,
    _LISTS,
)
"""It is taken away, or gone round, or held."""

_STANDS_ON_A_MARK = Saying("stand on|upon ~3 =spots")
"""Who stands on a spot stands still, and most spots are a place of their own and no thing."""

_STEPPED_ON = Saying(
    """
    step|tread|dance|go|jump|stand|land|run|slip|trip
    """
)


def underfoot(text: str) -> Said | None:
    """The first thing that a text leaves or has where feet go."""
    for said in UNDERFOOT.all_in(text):
        if _STANDS_ON_A_MARK.said(said.text):
            continue
        if about_things(text) and not _IN_THE_AIR.said(read(text).sentence_of(said.words[0])):
            return said
    return None


def put_away(text: str) -> bool:
    """Whether a text takes things away, has them held, or has dancers go round them."""
    return bool(_AWAY.said(text) or _STEPPED_ON.denied(text))


def about_things(text: str) -> bool:
    """Whether a text speaks of a thing that could lie on the floor."""
    return _THING.mentioned(text) is not None


_THING = Saying(
    """
    @prop
    """,
    _LISTS,
)
_IN_THE_AIR = Saying(
    """
    throw|toss|fling ~~6 catch
    wave|swirl|float|flick ~3 @prop ~2 in|through|above|over
    """,
    _LISTS,
)
"""A thing that is thrown and caught."""
