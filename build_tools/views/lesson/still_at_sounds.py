"""Whether a game stops by itself: pupils go while something sounds, and are still in between."""

from __future__ import annotations

import re

from build_tools.model.lesson import Step

_GO = re.compile(
    r"\bwhile (?:the|a|my) \w+ (?:rings|sounds|shakes|plays|rolls)\b"
    r"|\bbetween (?:rings|rolls|sounds)\b",
    re.IGNORECASE,
)
_STILL = re.compile(r"\b(?:still|freeze|settle)\b", re.IGNORECASE)


def is_still_at_sounds(step: Step) -> bool:
    """Whether its words say so, in whichever of its lines."""
    said = " ".join(filter(None, (step.say, step.task, step.you)))
    return _GO.search(said) is not None and _STILL.search(said) is not None
