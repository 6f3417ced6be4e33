"""How many goes a step has, and in what order, by the author's words; what is said between them."""

from __future__ import annotations

import re
from collections.abc import Sequence

from build_tools.model.lesson import Step
from build_tools.page_words.words import _
from build_tools.sentences.numbers import number_of
from build_tools.views.words.phrases_counted import nth_in_words

_GOES = re.compile(
    r"\b(?:walk|dance|play|run|try|do|say|ring|tread|clap|name)\b[^.;]{0,30}\b"
    r"(?:(?<!at )once\b(?! round)|twice|(?:two|three|four|five|six) times)"
    r"|\b(?:two|three|four) goes\b|(?:^|[.;] )(?:twice|(?:two|three|four|five|six) times)\b",
    re.IGNORECASE,
)
"""Words with which an author says how many goes there are: no other number is given then."""
_FEWEST_GOES, _MOST_GOES = 2, 6
_IN_ORDER = re.compile(r"[.;] (?:then|rest|now)\b|\bagain\b|, then\b", re.IGNORECASE)
"""A task that says what is danced after what."""


def tells_goes(step: Step, helps: Sequence[str]) -> bool:
    """Whether the author says how many goes the step has, or in what order."""
    return _IN_ORDER.search(step.task) is not None or number_of_goes(step, helps)


def number_of_goes(step: Step, helps: Sequence[str]) -> bool:
    """Whether the author says how many goes there are."""
    return any(_GOES.search(text) for text in (step.task, step.you, step.say, *helps) if text)


def after_a_go(step: Step, helps: Sequence[str]) -> str:
    """After which go something is named that was seen, where it is said how many there are."""
    texts = filter(None, (step.task, step.you, step.say, *helps))
    words = (word for text in texts for found in _GOES.findall(text) for word in found.split())
    numbers = (number_of(word) or 0 for word in words)
    goes = max((n for n in numbers if n <= _MOST_GOES), default=0)
    if goes < _FEWEST_GOES:
        return _("After a go, name one thing that you saw, and let everyone try that.")
    return _(
        "After the {nth} go, name one thing that you saw, and let everyone try that.",
        nth=nth_in_words(-(-goes // 2)),
    )
