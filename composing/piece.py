"""A piece of music as lines of notes, and what is made of it: one channel of samples, and a file.

Every piece begins with four beats to count in; then comes the first count of the dance.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import soundfile

from build_tools.movement.sounding import COUNT_IN
from composing.instruments import RATE, Instrument, Samples, hertz
from composing.loudness import levelled

_TAIL = 2.0
"""Seconds in which what sounds at the end dies away."""


@dataclass(frozen=True, slots=True)
class Note:
    """One note: from which count (0 is the first), how many counts long, which MIDI number."""

    at: float
    counts: float
    pitch: float
    loud: float = 1.0


@dataclass(frozen=True, slots=True)
class Line:
    """What one instrument plays; `gap` is how much of each note is left silent at its end."""

    plays: Instrument
    notes: tuple[Note, ...]
    level: float
    gap: float = 0.08


@dataclass(frozen=True, slots=True)
class Piece:
    """A whole piece, its tempo in counts a minute, and its recording's place among the units."""

    file: str
    tempo: int
    counts: int
    lines: tuple[Line, ...]

    @property
    def seconds(self) -> float:
        """How long its recording lasts."""
        return (COUNT_IN + self.counts) * 60 / self.tempo + _TAIL


def sung(notation: str, at: float = 0.0, loud: float = 1.0) -> tuple[Note, ...]:
    """Notes written one after another as pitch:counts; `r` is a rest, as in "67:1 69:1/2 r:1/2"."""
    found = []
    for word in notation.split():
        pitch, _, length = word.partition(":")
        over, _, under = length.partition("/")
        counts = float(over) / float(under or 1)
        if pitch != "r":
            found.append(Note(at, counts, float(pitch), loud))
        at += counts
    return tuple(found)


def moved(notes: Iterable[Note], counts: float, up: float = 0.0) -> tuple[Note, ...]:
    """The same notes so many counts later, and so many half tones higher."""
    return tuple(Note(n.at + counts, n.counts, n.pitch + up, n.loud) for n in notes)


def rendered(piece: Piece) -> Samples:
    """The piece as samples of one channel, at the bank's loudness."""
    beat = 60 / piece.tempo
    whole = np.zeros(int(piece.seconds * RATE) + RATE)
    for line in piece.lines:
        for note in line.notes:
            sound = line.plays(hertz(note.pitch), note.counts * beat * (1 - line.gap))
            start = round((COUNT_IN + note.at) * beat * RATE)
            part = sound[: len(whole) - start]
            whole[start : start + len(part)] += line.level * note.loud * part
    whole = whole[: int(piece.seconds * RATE)]
    fade = int(_TAIL / 2 * RATE)
    whole[-fade:] *= np.linspace(1, 0, fade) ** 2
    return levelled(whole, RATE)


def recorded(piece: Piece, units: Path) -> Path:
    """Write the piece's recording below the folder of units, and give its place."""
    path = units / piece.file
    path.parent.mkdir(parents=True, exist_ok=True)
    with soundfile.SoundFile(
        path, "w", RATE, 1, "MPEG_LAYER_III", format="MP3", bitrate_mode="CONSTANT",
        compression_level=0.7,
    ) as file:  # fmt: skip
        file.write(rendered(piece))
    return path
