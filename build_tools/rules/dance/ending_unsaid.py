"""Every pupil knows what to do at the very end of the dance.

The last thing watchers see is what they remember. Pupils with no ending walk off, or look at
the teacher. `does` tells how it ends, a held shape, stillness or a way off, for all who are in
`who`.

Bad:
    ending: [{who: ones, does: Sink and hold}]
Good:
    ending: [{who: ones, does: Sink and hold}, {who: twos, does: Reach up and hold}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import parts_in
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.endings import (
    EVERYONE,
    PART_OF_CLASS,
    ending_told,
    tells_some_only,
)
from build_tools.views.words.open_places import MARK
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where the ending leaves out a part that is dancing, or says no ending."""
    yield from _somebody_left_out(unit)
    for n, part in enumerate(unit.dance.ending):
        if MARK in part.does:
            continue
        if not ending_told(part.does):
            why = "does not say in what the dance ends"
        elif EVERYONE.said(part.who) and tells_some_only(part.does):
            why = f"is for `{part.who}`, and tells some of them only"
        else:
            continue
        yield Finding(
            unit.file,
            ("ending", n, "does"),
            f"`does` of the ending {why}",
            "say what each of them does at the very end, such as: hold the last shape for four",
        )


def _somebody_left_out(unit: Unit) -> Iterator[Finding]:
    dance = unit.dance
    who = [" ".join(part.who.split()) for part in dance.ending]
    if EVERYONE.in_any(who):
        return
    parts = 1
    if not dance.order_choice and (danced := dance.sections[dance.form[-1]].danced):
        parts = parts_in(danced[-1])
    needed = max(parts, 2 if len(who) == 1 and PART_OF_CLASS.said(who[0]) else 1)
    if len(who) >= needed:
        return
    yield Finding(
        unit.file,
        ("ending",),
        f"the ending is for {listed([f'`{one}`' for one in who])} only, but "
        + (
            f"{parts} parts are dancing in section {dance.form[-1]}"
            if parts > len(who)
            else "that is 1 part of the class"
        ),
        "add what the rest do, such as `{who: everyone else, does: hold still}`, or write "
        "`who: everyone`",
    )
