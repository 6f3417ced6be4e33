"""A stimulus that can trouble a pupil comes with a content note.

Somebody in the class may have fled a war, lost a grandparent last week, or seen a house burn. A
note tells the teacher what is in it, so that nobody meets it unprepared, and what to do.

Bad:
    what: A photograph of a street after the flood
Good:
    what: A photograph of a street after the flood
    content_note: Some pupils may have been flooded. Ask first; use the river picture in its place.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.trouble import TROUBLE, trouble
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = frozenset({"what", "show", "title", "text_version"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first trouble in the stimulus, if there is no content note."""
    if unit.stimulus.content_note:
        return
    for found in unit_text(unit).saying(TROUBLE, _KINDS, meant=False):
        if found.field.path[:1] != ("stimulus",):
            continue
        said = trouble(found.field.text)
        if said is None:
            continue
        yield Finding(
            found.file,
            found.field.path,
            f'`{found.field.kind}` has "{said.text}", which can trouble a pupil, and the stimulus '
            "has no `content_note`",
            "write a `content_note`: what is in it, whom it may upset and what to do then",
        )
        return
