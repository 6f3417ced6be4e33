"""Who decides about safety, and what pupils are asked to wear."""

from __future__ import annotations

from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "above": (
        "policy rule procedure guidance assessment guideline handbook arrangement requirement "
        "instruction protocol regulation decision"
    ),
    "house": (
        "school setting employer authority trust council academy governor head headteacher "
        "federation county"
    ),
    "headwear": (
        "headscarf hijab turban patka veil kippah topknot headwear head-covering headdress durag "
        "bandana skullcap yarmulke niqab chunni dupatta"
    ),
    "tight": (
        "leotard unitard catsuit bodysuit tutu swimwear swimsuit swimming-costume lycra spandex "
        "costume bikini tights jazz-shoes sequin"
    ),
    "limb": "arm leg chest shoulder midriff tummy knee stomach back thigh shin middle calf",
}

DEFERENCE = Saying(
    """
    risk assessment|assessments
    assessment|assess ~2 risk|risks !<you|yourself
    @house ~4 @above
    @above ~3 of ~3 @house
    @house ~4 say|decide|allow|require|rule|ask|insist|permit|expect|forbid|come|go first|before|
        ours|otherwise|so
    what|whatever|everything ~2 @house ~3 laid|lays|set|sets|written|agreed|decided|says|wants|has
    laid down
    go|work by ~4 @house
    what ~1 @house ~2 say|decide|allow|require|ask|permit|expect
    defer|overrule|override|overrules|overrides|outrank|precedence|priority|trump ~~8 @house|@above|
        teacher
    @house|@above ~~6 overrule|override|outrank|precedence|priority|trump|win|first|last word
    local authority|council|trust
    teacher|head ~4 decide|decides|final|last say|word
    """,
    _LISTS,
)
"""The school's own assessment or policy decides."""

GARMENTS = Saying(
    """
    @tight
    crop|cropped ?top|t-shirt|tee
    sleeveless|strapless|backless|topless|shirtless
    jazz|ballet|tap|character|ballroom|dance shoe|shoes|slipper|slippers|pump|pumps|tights|skirt
    bare|uncovered|exposed|naked ~1 @limb
    fancy dress
    dress ?up as
    """,
    _LISTS,
)
"""Garments that not every pupil has, or wants to be seen in, wherever they are asked for."""

ASKED_OF_WEAR = Saying(
    """
    tight|clingy|skin-tight|close-fitting|figure-hugging|form-fitting|snug|fitted
    close|tight|form|figure fitting|fitted|hugging
    vest ?top|tops|and
    @limb ~4 bare|uncovered|exposed|showing|visible|seen
    tops|shirts|top|shirt off
    full|matching|special|proper|professional ~1 costume|outfit|kit|dancewear|uniform|clothes
    special|matching|identical|new|branded|brand t-shirt|tops|top|trainers|shoes|trousers|leggings|
        shirt|skirt|outfit
    buy|purchase|order|bought
    pound|pounds|cost|costs each|per|a|only|from
    school|online|dance|club shop|store
    """,
    _LISTS,
)
"""What else leaves no room, where a line is about what to wear."""

_HEADS_BARE = Saying(
    """
    @headwear|hat|cap|hood|head|scarf ~~5 off|remove|removed|leave|left|allowed|banned|away|undone|
        loose|permitted|taken|uncovered|bare
    remove|take|leave|avoid|undo|untie|unpin|put ~4 @headwear
    @headwear ~~8 way|danger|problem|hazard|hinder|catch
    head|heads ~1 uncovered|bare
    head covering|coverings|scarf|scarves ~~5 off|remove|removed|left|allowed|banned|away|taken
    remove|take|leave ~3 head ~1 covering|coverings|scarf|scarves
    """,
    _LISTS,
)
_NO_HEADWEAR = Saying(
    """
    no|without ~~5 @headwear
    no|without ~2 head covering|coverings|scarf|scarves|wear
    nothing on|covering ~1 head|heads
    nothing below ~1 knee|elbow
    no ~2 long|loose|baggy sleeve|sleeves|skirt|skirts|trousers|clothes|tops
    long|baggy|loose ~1 skirt|sleeve|trousers|clothes|top|dress ~~4 not|n't
    """,
    _LISTS,
)
"""The same, said of what nobody wears."""

_KEPT_ON = Saying(
    """
    @headwear|covering|coverings ~~4 stay|fine|welcome|keep|kept|tucked|pinned|worn|may|can
    keep|wear|leave ~3 @headwear|covering ~2 on
    @headwear|covering ~~4 on
    """,
    _LISTS,
)

A_CHOICE = Saying(
    """
    cover or|and bare
    bare or|and cover
    may|can|could ~4 cover|covered|long|stay|wear|choose|keep|worn|cover
    optional|choice|welcome|prefer|choose
    if|as ~3 like|wish|prefer|want|chooses
    or ~~5 tracksuit|trousers|loose|kit|usual|ordinary|anything|whatever|own|t-shirt|comfortable|
        joggers|plain
    anything|whatever|any ~3 clothes|comfortable|easy|move|stretch|bend|own|colour|wear
    nobody|no|n't|not ~3 need|have|has ~2 to ?buy|wear
    without|no ~2 costume|costumes !no
    not|n't needed|required|necessary|compulsory|expected
    borrow|lend|spare|provide|provided|cupboard|free
    covered
    """
)
"""What is worn is left to pupils and their families."""


def dressed(text: str, about_wear: bool) -> Said | None:
    """The first piece of dress that a text asks for and that leaves no room.

    `about_wear`: the whole text is about what to wear, so that "tight" is said of clothes.
    """
    if about_wear:
        heads = _HEADS_BARE.said(text) or _NO_HEADWEAR.mentioned(text)
        if heads and not _KEPT_ON.said(text):
            return heads
        if said := ASKED_OF_WEAR.said(text):
            return said
    elif (said := _NO_SCARVES.said(text)) and not _KEPT_ON.said(text):
        return said
    return GARMENTS.said(text)


def dress_is_a_choice(text: str) -> bool:
    """Whether a text says that what is worn is a choice; bare heads are none."""
    return A_CHOICE.mentioned(text) is not None


_NO_SCARVES = Saying(
    """
    remove|take|leave|untie|unpin|put ~4 @headwear ?off|behind|away
    @headwear ~4 off|removed|away
    """,
    _LISTS,
)
"""Head coverings are to come off."""

ABOUT_DRESS = Saying(
    "\n".join(
        one.phrases for one in (GARMENTS, ASKED_OF_WEAR, _HEADS_BARE, _NO_HEADWEAR, _NO_SCARVES)
    ),
    _LISTS,
)
"""Anything that `dressed` may find."""
