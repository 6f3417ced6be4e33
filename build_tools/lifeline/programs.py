"""Other programs run so that they end with this one, however this one ends: Ctrl-C, `kill -9` …

A small guard reads a pipe whose other end this process alone holds. The system closes that end
when this process ends, and the guard then ends the program. Windows needs no guard: there
`windows_job` holds everything together.
"""

from __future__ import annotations

import contextlib
import os
import subprocess
import sys
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from collections.abc import Iterator

GRACE_SECONDS = 5.0
"""How long the program may take to end in order before it is ended at once."""

_GUARD = """
import os, signal, sys, time
said = sys.stdin.read().split()  # comes back once nobody can write any more
end = time.monotonic() + float(sys.argv[1])
try:
    if len(said) == 1:
        os.kill(int(said[0]), signal.SIGTERM)
        while time.monotonic() < end:
            time.sleep(0.02)
            os.kill(int(said[0]), 0)
        os.kill(int(said[0]), signal.SIGKILL)
except ProcessLookupError:
    pass
"""


def run(
    command: list[str], *, timeout: float | None = None, **options: Any
) -> subprocess.CompletedProcess[Any]:
    """Run a program that must not outlive this one; options are those of `subprocess.Popen`.

    Raises OSError where it cannot be started and TimeoutExpired after `timeout` seconds.
    """
    with _guarded() as guard, subprocess.Popen(command, **options) as process:
        _tell(guard, str(process.pid))
        try:
            out, err = process.communicate(timeout=timeout)
        finally:
            if process.returncode is None:
                process.kill()
    return subprocess.CompletedProcess(command, process.returncode, out, err)


@contextlib.contextmanager
def _guarded() -> Iterator[subprocess.Popen[bytes] | None]:
    """A guard for one program, told at the end that there is nothing left to end."""
    if os.name == "nt":
        yield None
        return
    with subprocess.Popen(
        [sys.executable, "-I", "-S", "-c", _GUARD, str(GRACE_SECONDS)],
        stdin=subprocess.PIPE,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        # Ctrl-C and a closed window reach all that share ours.
        start_new_session=True,
    ) as guard:
        try:
            yield guard
        finally:
            _tell(guard, "over")


def _tell(guard: subprocess.Popen[bytes] | None, word: str) -> None:
    """Say a word to the guard; where it is gone, nobody watches, and the work goes on."""
    if guard is not None and guard.stdin is not None:
        with contextlib.suppress(OSError):
            guard.stdin.write(f"{word}\n".encode())
            guard.stdin.flush()
