"""Words for a place that is the old one, for going home, and for walking to a place."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

SAME_PLACE = Saying(
    """
    same|very|old ~1 place|spot|row|pool|circle|line|position
    where ~2 =began|=started|=stood|=start|=begin
    =home
    as|like at|before|in ~2 start|beginning|first
    own|your|their|first ~1 row|place|spot|pool
    back ~1 in|at|on|to|where ~3 place|spot|row|pool|start
    """
)
"""Said of where a section ends: nobody has got anywhere."""

COMES_HOME = Saying(
    """
    =home|homewards
    back|return|returns|returning ~2 to|in|into|where ~3 place|spot|pool|row|partner|start|
        space|began
    where ~2 =began|=started|=stood
    within|at|no ~3 #|step|arm's ~2 step|steps|length|place|most
    #|two|three|four|one|few step|steps ~2 most|only
    own|your|their|first ~1 row|place|spot|pool
    stay|stays|keep|keeps ~3 place|spot|pool|row|partner|near|close
    on the spot
    """
)
"""Said of a section that is made up: it keeps everybody near a place, or brings them back to it."""

WALKS_TO_A_PLACE = Saying(
    """
    walk|go|run|move|step|skip|march|creep|hurry|stride|travel|jog|tiptoe
        ~3 to|into|towards|onto ~4 place|row|spot|position|line|circle|partner|pool|group|space|four
    find|take ~2 place|row|spot|position|partner|group
    """
)
"""A way to a place that pupils are to go in a join."""
