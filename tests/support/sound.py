"""Hearing a sound file: where its strokes begin, and the tempo that a beat tracker finds in it."""

from __future__ import annotations

import io
import wave
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

Samples = NDArray[np.float32]
Times = NDArray[np.float64]
FRAME = 0.001
QUIET_BEFORE = 0.02
LOUD_AFTER = 0.003
LOUDER = 8.0
APART = 0.1
HOP = 512
"""Samples from one frame of tones to the next."""


def heard(file: Path) -> tuple[Samples, int]:
    """The samples of a WAV file of one channel and 16 bits, from -1 to 1, and its rate."""
    return heard_bytes(file.read_bytes())


def heard_bytes(saved: bytes) -> tuple[Samples, int]:
    """The same of the bytes of such a file."""
    with wave.open(io.BytesIO(saved)) as opened:
        assert (opened.getnchannels(), opened.getsampwidth()) == (1, 2)
        raw = np.frombuffer(opened.readframes(opened.getnframes()), "<i2")
        return (raw / 32768).astype(np.float32), opened.getframerate()


def loudness(samples: Samples) -> float:
    """The root mean square of samples from -1 to 1; 0 where there are none."""
    return float(np.sqrt(np.mean(samples.astype(np.float64) ** 2))) if len(samples) else 0.0


def strokes_a_second(samples: Samples, rate: int, least: float = 3, most: float = 30) -> float:
    """How often quick strokes swell: the strongest line in the spectrum of loudness, in hertz."""
    step = round(rate * FRAME)
    energy = np.sqrt(
        np.add.reduceat(samples.astype(np.float64) ** 2, np.arange(0, len(samples), step))
    )
    # padded, so that a second or two still tells tenths of a hertz
    spectrum = np.abs(np.fft.rfft(energy - energy.mean(), n=1 << 16))
    hertz = np.fft.rfftfreq(1 << 16, FRAME)
    among = (hertz >= least) & (hertz <= most)
    return float(hertz[among][spectrum[among].argmax()])


def onsets(samples: Samples, rate: int) -> Times:
    """Where strokes begin, in seconds: where the sound is suddenly far louder than just before."""
    step = round(rate * FRAME)
    energy = np.add.reduceat(samples.astype(np.float64) ** 2, np.arange(0, len(samples), step))
    before, after = round(QUIET_BEFORE / FRAME), round(LOUD_AFTER / FRAME)
    padded = np.concatenate([np.zeros(before), energy, np.zeros(after)])
    sums = np.concatenate([[0.0], np.cumsum(padded)])
    at = np.arange(len(energy)) + before
    quiet = (sums[at] - sums[at - before]) / before
    loud = (sums[at + after] - sums[at]) / after
    found: list[float] = []
    least = float(energy.max()) / 1000
    for place in np.flatnonzero((loud > least) & (loud > LOUDER * quiet)):
        time = float(place) * step / rate
        if not found or time - found[-1] > APART:
            found.append(time)
    return np.array(found)


def pulse(samples: NDArray[Any], rate: int, about: float) -> float:
    """Beats a minute: of all tempos near by, the one whose beats meet most of what is struck.

    What is struck is how much louder all tones get from frame to frame, by scipy's transform.
    """
    # Loading it takes a second, and what tests there are is gathered by both workers.
    from scipy.signal import stft

    _, _, tones = stft(samples, rate, nperseg=2048, noverlap=2048 - HOP)
    struck = np.maximum(np.diff(np.log1p(100 * np.abs(tones)), axis=1), 0).mean(axis=0)
    seconds = np.arange(len(struck)) * HOP / rate
    tempos = about * np.linspace(0.85, 1.15, 601)
    turns = np.exp(2j * np.pi * np.outer(tempos / 60, seconds))
    return float(tempos[np.abs(turns @ (struck - struck.mean())).argmax()])


def tracked_tempo(samples: Samples, rate: int) -> float:
    """Beats a minute, by librosa's beat tracker and a straight line through its beats.

    For the long run alone: a fresh machine takes most of a minute to make librosa ready.
    """
    import librosa

    _, beats = librosa.beat.beat_track(y=samples, sr=rate, units="time", hop_length=256, trim=False)
    numbered = np.round((beats - beats[0]) / np.median(np.diff(beats)))
    slope: float = np.polyfit(numbered, beats, 1)[0]
    return 60 / slope


def off_schedule(found: Times, due: Times) -> Times:
    """How far each onset is from its place, in seconds, after removing one constant offset."""
    assert len(found) == len(due)
    apart = found - due
    return np.asarray(apart - np.median(apart))
