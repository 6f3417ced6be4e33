"""A rule that only asks whether some fields say one thing, and tells it where they do."""

from __future__ import annotations

from collections.abc import Collection, Iterator

from build_tools.model.unit import Unit
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.written.unit_text import unit_text


def said_in_fields(
    unit: Unit,
    saying: Saying,
    kinds: Collection[str],
    what: str,
    help_: str,
    with_not: Saying | None = None,
) -> Iterator[Finding]:
    """A finding for each field of `kinds` that says it and means it: which, `what`, the words.

    `with_not` says the same with a no or a not among its own words: nobody opts out.
    """
    text = unit_text(unit)
    told = list(text.saying(saying, kinds))
    if with_not is not None:
        places = {(found.file, found.path) for found in told}
        ruled_out = text.saying(with_not, kinds, meant=False)
        told += [found for found in ruled_out if (found.file, found.path) not in places]
    for found in told:
        message = f'`{found.field.kind}` {what} ("{found.said.text}")'
        yield Finding(found.file, found.path, message, help_)
