"""What reads a stranger's pack does it within walls: whatever is in the pack, an answer comes."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, TypeVar

from build_tools.disk.scratch import scratch
from build_tools.lifeline.walls import FellError, Limit, WallError, within_walls
from build_tools.problem import Problem

Answer = TypeVar("Answer")
_TOO_MUCH: Mapping[Limit, str] = {
    "time": "reading it takes more time than any unit needs",
    "memory": "reading it takes more memory than any unit needs",
    "disk": "reading it takes more room on the disk than any unit needs",
    "words": "there is more to say of it than anybody could read",
}


@dataclass(frozen=True, slots=True)
class Refused:
    """What speaks against a pack, in a reader's words; the problems of a unit that is broken."""

    why: str
    problems: tuple[Problem, ...] = ()


def walled(work: Callable[..., Answer], *given: Any) -> Answer | Refused:
    """What `work(*given)` gives, or the refusal that it takes too much. Nothing is left of it."""
    with scratch("judging") as room:
        try:
            return within_walls(work, *given, room=room)
        except WallError as wall:
            return Refused(_TOO_MUCH[wall.limit])
        except FellError as fell:
            last = str(fell).strip().splitlines()[-1]
            return Refused(f"this software cannot read it ({last:.200})")
