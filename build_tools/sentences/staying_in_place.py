"""Words for a place that is the old one, for going home, and for walking to a place."""

from __future__ import annotations

from build_tools.sentences.sayings import Said, Saying

SAME_PLACE = Saying(
    """
    same|very|old|first|starting ~1 place|spot|row|pool|circle|line|position|mark
    where ~3 =began|=started|=stood|=start|=begin|=been
    place|spot|mark ~3 =began|=started|=stood|=set
    =home
    as|like at|before|in ~2 start|beginning|first
    own|your|their|first ~1 row|place|spot|pool
    back ~1 in|at|on|to|where ~3 place|spot|row|pool|start
    """
)
"""Said of where a section ends: nobody has got anywhere."""

_GOT_ON = Saying(
    """
    =left|leave|leaving ~2 place|spot|row|space|mark|pool
    near+|far|=closer ~6 than
    """
)
"""Said where it is denied: nobody has left their place, no nearer the front than before."""

_FURTHER_ON = Saying(
    """
    away from
    no longer
    but now
    # ~2 step|side-step|metre|pace ~2 on|to|=further|=nearer|forward|forwards|left|right|back
    """
)
"""The old place is named, and where they are now is another."""


def same_place(text: str) -> Said | None:
    """Where a text says that nobody has got anywhere."""
    if _FURTHER_ON.said(text):
        return None
    return SAME_PLACE.said(text) or _GOT_ON.denied(text)


COMES_HOME = Saying(
    """
    =home|homewards
    back|return|returns|returning ~2 to|in|into|where ~3 place|spot|pool|row|partner|start|
        space|began
    where ~2 =began|=started|=stood
    within|at|no ~3 #|step|arm's ~2 step|steps|length|place|most
    #|two|three|four|one|few step|steps ~2 most|only
    own|your|their|first ~1 row|place|spot|pool !<leave
    own space from ~2 start
    foot|feet ~1 stay|stays|keep|keeps|remain
    stay|stays|keep|keeps ~3 place|spot|pool|row|partner|near|close
    on the spot
    """
)
"""Said of a section that is made up: it keeps everybody near a place, or brings them back to it."""

_FAR = Saying("more|far|=further|=farther ~2 than ~3 step|stride|pace|length|metre")
"""Said where it is denied: never more than two steps from your first place."""


def stays_near(text: str | None) -> bool:
    """Whether a text of a section that is made up keeps pupils near, or brings them home."""
    return bool(COMES_HOME.said(text) or _FAR.denied(text))


_ON_ONE_SPOT = Saying(
    """
    on ~1 your|own|their|its ~1 spot|place|mark
    foot|feet|=planted ~3 spot|place|mark
    on the spot
    nobody ~2 travel|leave
    """
)
_GOES_AND_COMES = Saying(
    """
    back|return|come|comes|go|goes|walk|walks|end|ends|until|then
    """
)
"""Words with which a spot is one that they come to."""


def stays_on_one_spot(text: str | None) -> bool:
    """Whether a text of a section that is made up keeps everybody where they stand."""
    return bool(_ON_ONE_SPOT.said(text)) and not _GOES_AND_COMES.said(text)


WALKS_TO_A_PLACE = Saying(
    """
    walk|go|run|move|step|skip|march|creep|hurry|stride|travel|jog|tiptoe
        ~3 to|into|towards|onto ~4 place|row|spot|position|line|circle|partner|pool|group|space|four
    find|take ~2 place|row|spot|position|partner|group|space
    make|find ~1 way ~1 to|into
    return|off ~1 to|into ~3 place|row|spot|position|line|circle|pool|space
    get|form ~1 into ~2 row|line|circle|pair|four|group
    form ~2 row|line|circle
    line up
    walk|go|run|move|step ~1 , * ~1 , to|into ~3 row|place|spot|line|circle|space
    """
)
"""A way to a place that pupils are to go in a join."""
