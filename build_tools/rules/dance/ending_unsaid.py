"""Every pupil knows what to do at the very end of the dance.

The last thing watchers see is what they remember. Pupils with no ending walk off, or look at
the teacher.

Bad:
    ending: [{who: ones, does: Sink and hold}]
Good:
    ending: [{who: ones, does: Sink and hold}, {who: twos, does: Reach up and hold}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.relationships import parts_in
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_lesson import EVERYONE, SOME_ONLY
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where the ending leaves out a part that is dancing."""
    dance = unit.dance
    who = [" ".join(part.who.split()) for part in dance.ending]
    if any(EVERYONE.search(one) for one in who):
        return
    parts = 1
    if not dance.order_choice and (danced := dance.sections[dance.form[-1]].danced):
        parts = parts_in(danced[-1])
    needed = max(parts, 2 if len(who) == 1 and SOME_ONLY.search(who[0]) else 1)
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
