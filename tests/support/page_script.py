"""The sums of a page's script, asked from here: one Node runs them for as long as the tests do."""

from __future__ import annotations

import atexit
import json
import os
import subprocess
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from build_tools.disk.places import OVERRIDES
from build_tools.pages.page_scripts import FITTED, FLOOR, IN_THE_HALL, ROOM, SUMS

SCRIPTS = OVERRIDES
WITHOUT_A_PAGE = (
    "pieces/page-words.js",
    "pieces/unsqueezed.js",
    *SUMS,
    *FLOOR,
    *ROOM,
    *IN_THE_HALL,
    *FITTED,
    "sums/plan-cover.js",
    "card/card-state.js",
    "playing/beat-times.js",
    "playing/bodies.js",
    "playing/paths.js",
    "playing/sound-samples.js",
    "playing/player.js",
    "counts/wav.js",
    "counts/midi.js",
    "front/finding/words-typed.js",
    "front/finding/alike.js",
    "front/finding/how-surely.js",
    "front/finding/narrowing.js",
    "front/finding/sayings.js",
)
RUNNER = Path(__file__).with_suffix(".mjs")

Call = tuple[str, tuple[Any, ...]]


class ScriptError(AssertionError):
    """The script threw; the text is what it threw, and for which call."""


@dataclass(slots=True)
class PageScript:
    """A Node that has the page's scripts loaded and answers one line at a time."""

    node: subprocess.Popen[str]

    def answers(self, calls: Iterable[Call]) -> list[Any]:
        """What the script gives for each call, all in one line there and back."""
        asked = list(calls)
        assert self.node.stdin
        assert self.node.stdout
        self.node.stdin.write(json.dumps(asked) + "\n")
        self.node.stdin.flush()
        found = json.loads(self.node.stdout.readline())
        for call, one in zip(asked, found, strict=True):
            if isinstance(one, dict) and set(one) == {"error"}:
                raise ScriptError(f"{one['error']}, for {call}")
        return list(found)


@cache
def page_script() -> PageScript:
    """The one Node of this process, with every script that needs no page."""
    files = [str(SCRIPTS / name) for name in WITHOUT_A_PAGE]
    node = subprocess.Popen(
        [os.environ["BANK_NODE"], str(RUNNER), *files],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        encoding="utf-8",
    )
    atexit.register(node.kill)
    return PageScript(node)


def ask(name: str, *given: Any) -> Any:
    """What the page's script gives for `danceUnitBank.<name>(...given)`."""
    return page_script().answers([(name, given)])[0]
