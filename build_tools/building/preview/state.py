"""What the open pages of the preview ask for once a second."""

from __future__ import annotations

import json
import threading
from collections.abc import Iterable
from typing import Any


class State:
    """What the open pages ask for: a number that grows when pages change, and the problems."""

    def __init__(self, *, being_made: bool = False) -> None:
        self.being_made = being_made
        """Whether the pages are made for the first time just now."""
        self._lock = threading.Lock()
        self._number = 0
        self._problems = ""
        self._marks: list[dict[str, Any]] = []
        self._older: list[str] = []

    def say(self, problems: str, marks: Iterable[dict[str, Any]] = ()) -> None:
        """Show `problems` in the bar, and each of `marks` beside its place on its page."""
        with self._lock:
            self._problems, self._marks = problems, list(marks)

    def rebuilt(self) -> None:
        """Let every open page load itself anew."""
        with self._lock:
            self._number += 1

    def older(self, units: Iterable[str]) -> None:
        """Say on the pages of these units that they are older than the files."""
        with self._lock:
            self._older = sorted(units)

    def as_json(self) -> bytes:
        """The state as the pages read it."""
        with self._lock:
            return json.dumps(
                {
                    "number": self._number,
                    "problems": self._problems,
                    "marks": self._marks,
                    "older": self._older,
                }
            ).encode()
