"""Firefox with no network, driven by `firefox.mjs` through the WebDriver BiDi standard."""

from __future__ import annotations

import json
import os
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import IO, Any

DRIVER = Path(__file__).with_suffix(".mjs")


@dataclass(frozen=True, slots=True)
class Firefox:
    """One reader at one tab of the running browser; `fresh` gives one of whom it knows nothing."""

    asked: IO[str]
    answers: IO[str]

    def fresh(self, width: int = 1280) -> None:
        self._ask("reader", width=width)

    def resize(self, width: int) -> None:
        """Make the window so wide, and wait until the page has it."""
        self._ask("resize", width=width)

    def open(self, address: str) -> None:
        self._ask("open", address=address)

    def evaluate(self, words: str) -> Any:
        return self._ask("evaluate", words=words)

    def click(self, what: str) -> None:
        self._ask("click", what=what)

    def fill(self, what: str, words: str) -> None:
        self._ask("fill", what=what, words=words)

    def said(self) -> list[str]:
        """Every line of the console and every uncaught error since the reader was fresh."""
        found: list[str] = self._ask("said")
        return found

    def _ask(self, command: str, **given: object) -> Any:
        self.asked.write(json.dumps({"command": command, **given}) + "\n")
        self.asked.flush()
        answer = json.loads(self.answers.readline() or '{"failed": "the browser is gone"}')
        assert "failed" not in answer, answer["failed"]
        return answer["gives"]


@contextmanager
def launched(listener: int | None = None) -> Iterator[Firefox]:
    """The system's Firefox, for as long as the block lasts.

    Whatever it asks for goes to the port `listener`; without it, what is not on this computer goes
    nowhere.
    """
    driver = subprocess.Popen(
        [os.environ["BANK_NODE"], str(DRIVER), *([str(listener)] if listener else [])],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
        encoding="utf-8",
    )
    assert driver.stdin
    assert driver.stdout
    try:
        yield Firefox(driver.stdin, driver.stdout)
    finally:
        driver.stdin.close()
        driver.wait(timeout=60)
