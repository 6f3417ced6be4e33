"""Every hostile pack, gathered from the modules that each make one kind; written by somebody who
had not read the code that reads packs.
"""

from __future__ import annotations

from tests.packs.attacks import (
    bombs,
    claims,
    declarations,
    doubles,
    drawings_that_act,
    drawings_that_ask,
    drawings_that_cost,
    ends,
    fields,
    jpegs,
    names,
    notes,
    odd_drawings,
    odd_pages,
    overlaps,
    pages,
    payload_lists,
    pngs,
    register,
    rights,
    senses,
    sizes,
    tag_files,
    webps,
    whose,
)

KINDS = (
    *(overlaps, sizes, doubles, ends, names, bombs, declarations, payload_lists, tag_files),
    *(notes, fields, senses, drawings_that_act, drawings_that_ask, drawings_that_cost),
    *(odd_drawings, pngs, jpegs, webps, pages, odd_pages, whose, claims, rights),
)
"""The modules that put what they make on the list when they are loaded."""
ATTACKS = {attack.name: attack for attack in register.RECIPES}
