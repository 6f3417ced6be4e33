"""Run a module as `python -m` does, 400 days from now: python shifted_clock.py MODULE ARGUMENTS."""

from __future__ import annotations

import datetime
import runpy
import sys
import time

SECONDS = 400 * 24 * 60 * 60
_time, _localtime, _gmtime = time.time, time.localtime, time.gmtime


class Later(datetime.datetime):
    """A date and time whose present is shifted."""

    @classmethod
    def now(cls, tz: datetime.tzinfo | None = None) -> Later:
        return cls.fromtimestamp(time.time(), tz)

    @classmethod
    def utcnow(cls) -> Later:
        return cls.fromtimestamp(time.time(), datetime.UTC).replace(tzinfo=None)


if __name__ == "__main__":
    time.time = lambda: _time() + SECONDS
    time.localtime = lambda seconds=None: _localtime(time.time() if seconds is None else seconds)
    time.gmtime = lambda seconds=None: _gmtime(time.time() if seconds is None else seconds)
    datetime.datetime = Later  # type: ignore[misc]
    module = sys.argv[1]
    sys.argv[:2] = [module]
    runpy.run_module(module, run_name="__main__", alter_sys=True)
