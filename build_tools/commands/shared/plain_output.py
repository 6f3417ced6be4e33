"""The edge where words reach a terminal: nothing that strangers wrote steers it.

ECMA-48 for the control codes; Unicode Standard Annex 9 for the marks that turn text round.
"""

from __future__ import annotations

import os
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
        with self._heard_or_not():
            self._stream.write(plain(text).encode(encoding, "replace").decode(encoding))
        return len(text)

    def flush(self) -> None:
        """Bring what was written to the terminal."""
        with self._heard_or_not():
            self._stream.flush()

    @contextmanager
    def _heard_or_not(self) -> Iterator[None]:
        """Go on with the work where whoever listened has gone, as `head` does after ten lines."""
        try:
            yield
        except BrokenPipeError:
            nowhere = os.open(os.devnull, os.O_WRONLY)
            os.dup2(nowhere, self._stream.fileno())
            os.close(nowhere)

    def isatty(self) -> bool:
        """Whether somebody reads it as it is written."""
        return self._stream.isatty()


@contextmanager
def plain_output() -> Iterator[None]:
    """Let all that is printed, here and by whatever is called, be plain."""
    out, err = PlainStream(sys.stdout), PlainStream(sys.stderr)
    with redirect_stdout(out), redirect_stderr(err):
        yield
        out.flush()
