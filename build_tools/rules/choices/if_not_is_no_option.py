"""What is done if pupils have not decided is one of the things they choose from.

The way out is there so that the lesson can go on. If it is nothing that pupils were offered, the
teacher gives a class something it has not tried.

Bad:
    from: [elbows, shoulders], if_not: One foot.
Good:
    from: [elbows, shoulders], if_not: Elbows.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.dance import Choice
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.reading import read
from build_tools.sentences.telling import telling_words
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"

_CAPITALS = re.compile(r"\b[A-Z]\b")
_NO_OPTION = telling_words(("like end stretch lead out",))
"""Words that any option may be said with."""
_OPEN = re.compile(r"\b(?:any|other|another|own|made up|makes? up|else)\b", re.IGNORECASE)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each choice whose way out has no word in common with any option."""
    for name, choice in unit.dance.choices.items():
        if _is_an_option(choice):
            continue
        yield Finding(
            unit.file,
            ("choices", name, "if_not"),
            f"`if_not` is `{choice.if_not.strip()}`, but pupils choose from "
            f"{listed([f'`{option}`' for option in choice.options], 'or')}",
            "write one of those, or add it to what pupils choose from",
        )


def _is_an_option(choice: Choice) -> bool:
    if any(_OPEN.search(option) for option in choice.options):
        return True
    out = _words(choice.if_not)
    return not out or any(out & _words(option) for option in choice.options)


def _words(text: str) -> frozenset[str]:
    """The telling words of what is meant: not the elbows, and not what it is only like."""
    meant = " ".join(word.form for word in read(text).words if not word.denied)
    return (telling_words((meant,)) - _NO_OPTION) | frozenset(_CAPITALS.findall(text))
