"""A credit names somebody who can be credited.

Whoever made a picture, a poem or a sound is owed their name wherever it travels, and a licence
holds only with it. "Unknown", "image search" or "copied" name nobody: such a thing stays out of a
unit that others copy and change.

Bad:
    by: Found on the internet
Good:
    by: The dance unit bank, with drawings by a year 5 class
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.credits import credits_nobody
from build_tools.views.written.works import works_written

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Copyright, Designs and Patents Act 1988, section 77: the right to be identified as author; "
    "Creative Commons BY 4.0, section 3(a)(1): identify the creator"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each thing in the unit whose maker could not be credited."""
    for one in works_written(unit):
        item = one.work
        if item.by == unit.publisher or not credits_nobody(item.by):
            continue
        yield Finding(
            one.file,
            (*one.path, "by"),
            f'`by` says "{item.by}", which names nobody who could be credited',
            "name who made it, or use a picture, sound or poem of your own in its place",
        )
