"""The edge where words reach a terminal: nothing that strangers wrote steers it.

ECMA-48 for the control codes; Unicode Standard Annex 9 for the marks that turn text round.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator
from contextlib import contextmanager, redirect_stderr, redirect_stdout
from typing import TextIO

_STEERS = re.compile(
    "[\x00-\x08\x0b-\x1f\x7f-\x9f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff"
    "\ufff9-\ufffb\ud800-\udfff\U000e0000-\U000e007f]"
)


def plain(text: str) -> str:
    """The text with a question mark for each sign that shows nothing and may steer a terminal."""
    return _STEERS.sub("?", text)


class PlainStream:
    """A stream that writes only what can be read, in the letters that the terminal knows."""

    def __init__(self, stream: TextIO) -> None:
        self._stream = stream

    def write(self, text: str) -> int:
        """Write the text, plain; gives how many letters were asked for."""
        encoding = getattr(self._stream, "encoding", None) or "utf-8"
        self._stream.write(plain(text).encode(encoding, "replace").decode(encoding))
        return len(text)

    def flush(self) -> None:
        """Bring what was written to the terminal."""
        self._stream.flush()

    def isatty(self) -> bool:
        """Whether somebody reads it as it is written."""
        return self._stream.isatty()


@contextmanager
def plain_output() -> Iterator[None]:
    """Let all that is printed, here and by whatever is called, be plain."""
    out, err = PlainStream(sys.stdout), PlainStream(sys.stderr)
    with redirect_stdout(out), redirect_stderr(err):
        yield
