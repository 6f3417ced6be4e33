"""On Windows: one job for this process and all it starts, which the system ends with it.

Microsoft, "Job Objects": processes started by one of a job belong to it, and with the limit
JOB_OBJECT_LIMIT_KILL_ON_JOB_CLOSE all are ended when the last handle to the job is closed, which
the system does for a process that ends in whatever way.
"""

from __future__ import annotations

import ctypes
import sys
from typing import Any


class ExtendedLimits(ctypes.Structure):
    """JOBOBJECT_EXTENDED_LIMIT_INFORMATION of winnt.h, by sizes that are the same everywhere."""

    _fields_ = (
        ("process_time", ctypes.c_int64),
        ("job_time", ctypes.c_int64),
        ("flags", ctypes.c_uint32),
        ("least_working_set", ctypes.c_size_t),
        ("most_working_set", ctypes.c_size_t),
        ("most_processes", ctypes.c_uint32),
        ("affinity", ctypes.c_size_t),
        ("priority", ctypes.c_uint32),
        ("scheduling", ctypes.c_uint32),
        ("io_counters", ctypes.c_uint64 * 6),
        ("process_memory", ctypes.c_size_t),
        ("job_memory", ctypes.c_size_t),
        ("peak_process_memory", ctypes.c_size_t),
        ("peak_job_memory", ctypes.c_size_t),
    )


EXTENDED_LIMITS = 9
KILL_ON_JOB_CLOSE = 0x2000
PROCESS_TIME, PROCESS_MEMORY = 0x2, 0x100
OUT_OF_QUOTA = 1816
"""The exit code, ERROR_NOT_ENOUGH_QUOTA, of a process that used up its time."""
_IN_A_SECOND = 10_000_000


def hold_together() -> bool:
    """Put this process and all that it will start into a new job; gives whether that worked."""
    return sys.platform == "win32" and hold_with(ctypes.WinDLL("kernel32"))


def hold_with(kernel: Any) -> bool:
    """The same, by the calls of `kernel`, which is kernel32."""
    return _joined(kernel, ExtendedLimits(flags=KILL_ON_JOB_CLOSE))


def limit_this_process(seconds: float, memory: int) -> bool:
    """Let this process use so many processor seconds and bytes; gives whether that worked."""
    return sys.platform == "win32" and limit_with(ctypes.WinDLL("kernel32"), seconds, memory)


def limit_with(kernel: Any, seconds: float, memory: int) -> bool:
    """The same, by the calls of `kernel`, which is kernel32."""
    limits = ExtendedLimits(
        flags=KILL_ON_JOB_CLOSE | PROCESS_TIME | PROCESS_MEMORY,
        process_time=int(seconds * _IN_A_SECOND),
        process_memory=memory,
    )
    return _joined(kernel, limits)


def _joined(kernel: Any, limits: ExtendedLimits) -> bool:
    """Put this process into a new job with those limits, which may lie within another job."""
    handle = ctypes.c_void_p
    kernel.CreateJobObjectW.restype = handle
    kernel.CreateJobObjectW.argtypes = (handle, ctypes.c_wchar_p)
    kernel.GetCurrentProcess.restype = handle
    kernel.SetInformationJobObject.argtypes = (handle, ctypes.c_int, handle, ctypes.c_uint32)
    kernel.AssignProcessToJobObject.argtypes = (handle, handle)
    # Nobody closes this handle but the system, when this process ends.
    job = kernel.CreateJobObjectW(None, None)
    size = ctypes.sizeof(limits)
    return bool(
        job
        and kernel.SetInformationJobObject(job, EXTENDED_LIMITS, ctypes.byref(limits), size)
        and kernel.AssignProcessToJobObject(job, kernel.GetCurrentProcess())
    )
