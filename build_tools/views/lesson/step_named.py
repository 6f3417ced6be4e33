"""Which step of a lesson its notes mean: by its number, by what it is for, or by its heading."""

from __future__ import annotations

import re
from collections.abc import Sequence

from build_tools.model.lesson import Step
from build_tools.page_words.words import of_schema

_NUMBER = re.compile(r"step (\d+)\b")
_BEFORE = re.compile(r"^(?:in |for )?(?:the )?")
_ONCE_A_LESSON = frozenset({"warm-up", "cool-down", "look and talk"})
"""Kinds of step that are called so; what is said of making may be of any step."""


def step_named(steps: Sequence[Step], said: str) -> int | None:
    """The step that a text begins with: "Step 6", or "In the cool-down"."""
    begins = _begins(said)
    if (found := _NUMBER.match(begins)) and 0 < int(found[1]) <= len(steps):
        return int(found[1]) - 1
    for n, step in enumerate(steps):
        names = {step.phase, step.phase.replace("-", " "), of_schema(step.phase).casefold()}
        if step.phase in _ONCE_A_LESSON and any(_is_first(name, begins) for name in names):
            return n
    return None


def step_headed(steps: Sequence[Step], said: str) -> int | None:
    """The step of any kind whose heading begins with the words, else has them."""
    words = re.escape(_begins(said).rstrip(" .:"))
    if not words:
        return None
    for pattern in (rf"{words}", rf".*\b{words}"):
        for n, step in enumerate(steps):
            if re.match(pattern, step.does.casefold()):
                return n
    return None


def _begins(said: str) -> str:
    small = said.casefold().strip()
    return _BEFORE.sub("", small, count=1)


def _is_first(name: str, text: str) -> bool:
    return re.match(rf"{re.escape(name)}\b", text) is not None
