"""Instruments, each a function from a pitch and a length to samples between -1 and 1."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import numpy.typing as npt

RATE = 44_100
"""Samples a second."""
Samples = npt.NDArray[np.float64]
Instrument = Callable[[float, float], Samples]
"""From a pitch in hertz and a length in seconds to samples, ending in silence."""
_CONCERT_A, _A_NUMBER = 440.0, 69
_FADE, RISE = 0.006, 0.0015
"""Seconds in which every sound ends and begins, so that no join clicks."""


def hertz(note: float) -> float:
    """The pitch of a MIDI note number."""
    return float(_CONCERT_A * 2 ** ((note - _A_NUMBER) / 12))


def _seconds(length: float) -> Samples:
    return np.arange(int(length * RATE)) / RATE


def _ended(sound: Samples) -> Samples:
    """The sound from nothing to nothing, whatever it is between."""
    fade, rise = min(len(sound), int(_FADE * RATE)), min(len(sound), int(RISE * RATE))
    if fade:
        sound[-fade:] *= np.linspace(1, 0, fade)
        sound[:rise] *= np.linspace(0, 1, rise)
    return sound


def whistle(pitch: float, length: float) -> Samples:
    """A wooden pipe: nearly pure, with a little breath, and a slow shake on long notes."""
    t = _seconds(length)
    shake = 0.004 * np.clip(t - 0.25, 0, 0.4) / 0.4 * np.sin(2 * np.pi * 5.2 * t)
    phase = 2 * np.pi * pitch * np.cumsum(1 + shake) / RATE
    tone = np.sin(phase) + 0.22 * np.sin(2 * phase) + 0.1 * np.sin(3 * phase)
    breath = np.random.default_rng(7).standard_normal(len(t)) * 0.02
    shape = np.minimum(1, t / 0.03) * np.minimum(1, np.maximum(0, (length - t) / 0.05))
    return _ended(0.5 * (tone + breath) * shape * (0.85 + 0.15 * np.exp(-t / 0.12)))


def string(pitch: float, length: float) -> Samples:
    """A plucked string (Karplus and Strong 1983, Computer Music Journal 7:2)."""
    period = max(2, round(RATE / pitch - 0.5))
    ring = np.random.default_rng(11).uniform(-1, 1, period)
    ring = (ring + np.roll(ring, 1) + np.roll(ring, 2)) / 3
    count = int(length * RATE)
    found = np.empty(count)
    for start in range(0, count, period):
        part = ring[: min(period, count - start)]
        found[start : start + len(part)] = part
        ring = 0.996 * 0.5 * (ring + np.roll(ring, 1))
    t = _seconds(length)
    return _ended(found * np.minimum(1, np.maximum(0, (length - t) / 0.08)))


def bell(pitch: float, length: float) -> Samples:
    """A soft bar of metal, struck."""
    t = _seconds(length)
    tone = (
        np.sin(2 * np.pi * pitch * t)
        + 0.4 * np.sin(2 * np.pi * 2.76 * pitch * t) * np.exp(-t / 0.15)
        + 0.2 * np.sin(2 * np.pi * 5.4 * pitch * t) * np.exp(-t / 0.05)
    )
    return _ended(0.5 * tone * np.exp(-t / 0.6) * np.minimum(1, t / 0.002))


def air(pitch: float, length: float) -> Samples:
    """Held, soft and wide: three voices a little apart, slow to come and to go."""
    t = _seconds(length)
    tone = sum(np.sin(2 * np.pi * pitch * bend * t) for bend in (0.997, 1.0, 1.003))
    shape = np.minimum(1, t / 0.35) * np.minimum(1, np.maximum(0, (length - t) / 0.35))
    return _ended(np.asarray(0.3 * tone * shape))


def drum(pitch: float, length: float) -> Samples:
    """A small drum, struck with one stick: a skin that falls in pitch, and the stroke on it."""
    t = _seconds(length)
    falling = np.cumsum(pitch * (1 + 0.8 * np.exp(-t / 0.02))) / RATE
    stroke = np.random.default_rng(3).standard_normal(len(t)) * np.exp(-t / 0.008)
    return _ended(np.sin(2 * np.pi * falling) * np.exp(-t / 0.09) + 0.25 * stroke)


def rattle(_pitch: float, length: float) -> Samples:
    """Dry seeds, shaken once."""
    t = _seconds(length)
    noise = np.diff(np.random.default_rng(5).standard_normal(len(t) + 1))
    return _ended(0.4 * noise * np.minimum(1, t / 0.01) * np.exp(-t / 0.035))
