"""Something wound or tied round a part of the body."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "wind": "wind wound wrap loop coil twist tie knot fasten",
    "thing": "scarf thread string rope cord wool line yarn twine",
    "harm": "can may could hurts cuts will would must",
    "part": "finger thumb hand wrist neck ankle waist =fingers =hands =wrists =thumbs =ankles",
}

TIED = Saying(
    """
    @wind ~3 @thing ~4 round|around|about|to|on ~3 @part !@harm
    @thing ~~4 @wind|wound ~3 round|around|about|to ~3 @part !@harm
    @wind it|one|them ~3 round|around|about|to ~3 @part !@harm
    @wind ~2 round|around ~2 finger|wrist|neck|thumb ~~4 @thing
    @thing ~~3 round|around ~1 your|their|the|a ~1 @part !@harm
    """,
    _LISTS,
)
"""A thread round a finger, a scarf round a hand."""
