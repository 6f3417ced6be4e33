"""Furniture and other things, put where the way out is, or stacked too high."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "put": "stack pile put push stand store leave move park lean carry set place",
    "thing": (
        "chair table bench desk mat box trolley bag coat furniture piano screen =things =stack "
        "=stacks =stools equipment"
    ),
    "door": "door doorway exit fire-exit doors entrance way-out",
}

IN_THE_WAY_OUT = Saying(
    """
    @put ~3 @thing ~~8 in front of ~2 @door
    @put ~3 @thing ~~8 against|across|before ~2 @door
    @thing ~~3 in front of ~2 @door
    @thing ~~3 across|against ~2 @door
    block|barricade ~2 @door !frame
    v:stack|pile ~3 @thing ~~3 as high|tall as
    stack|pile ~3 @thing ~~3 to ~1 ceiling|top|window|windows
    """,
    _LISTS,
)
"""Things in front of a door, or stacked as high as can be."""
