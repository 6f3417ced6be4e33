"""The job that holds everything together on Windows, by the calls that it makes."""

from __future__ import annotations

import ctypes
from typing import Any

import pytest

from build_tools.lifeline.windows_job import (
    ExtendedLimits,
    hold_together,
    hold_with,
    limit_this_process,
    limit_with,
)

JOB, OURSELVES = 40, 50


class Call:
    """One function of kernel32: what it was given, and what it gives back."""

    def __init__(self, gives: int) -> None:
        self.gives = gives
        self.given: list[tuple[Any, ...]] = []
        self.argtypes: object = None
        self.restype: object = None

    def __call__(self, *given: Any) -> int:
        self.given.append(given)
        return self.gives


class Kernel:
    def __init__(self, *, made: int = JOB, limited: int = 1, joined: int = 1) -> None:
        self.CreateJobObjectW = Call(made)
        self.GetCurrentProcess = Call(OURSELVES)
        self.SetInformationJobObject = Call(limited)
        self.AssignProcessToJobObject = Call(joined)


def test_this_process_joins_a_job_that_ends_with_it() -> None:
    kernel = Kernel()
    assert hold_with(kernel)
    job, what, limits, size = kernel.SetInformationJobObject.given[0]
    assert (job, what) == (JOB, 9)
    assert limits._obj.flags == 0x2000
    assert size == ctypes.sizeof(ExtendedLimits)
    assert kernel.AssignProcessToJobObject.given == [(JOB, OURSELVES)]
    # A handle cut to 32 bits would be another one.
    assert kernel.CreateJobObjectW.restype is ctypes.c_void_p
    assert kernel.GetCurrentProcess.restype is ctypes.c_void_p


def test_this_process_joins_a_job_in_which_it_can_only_use_so_much() -> None:
    """winnt.h: JOB_OBJECT_LIMIT_PROCESS_TIME is 2, _PROCESS_MEMORY 0x100; times in 100 ns."""
    kernel = Kernel()
    assert limit_with(kernel, 2.5, 1_000_000)
    limits = kernel.SetInformationJobObject.given[0][2]._obj
    assert limits.flags == 0x2102
    assert (limits.process_time, limits.process_memory) == (25_000_000, 1_000_000)
    assert kernel.AssignProcessToJobObject.given == [(JOB, OURSELVES)]
    assert ExtendedLimits.process_time.offset == 0
    assert ExtendedLimits.process_memory.offset == 112


@pytest.mark.parametrize("refused", ["made", "limited", "joined"])
def test_a_system_that_refuses_stops_nothing(refused: str) -> None:
    assert not hold_with(Kernel(**{refused: 0}))


def test_the_limits_have_the_shape_that_windows_reads() -> None:
    """The sizes are those that MinGW's winnt.h gives for 64 bits."""
    assert ctypes.sizeof(ExtendedLimits) == 144
    assert ExtendedLimits.flags.offset == 16
    assert ExtendedLimits.io_counters.offset == 64


def test_elsewhere_there_is_no_job() -> None:
    assert not hold_together()
    assert not limit_this_process(1.0, 1_000_000)
