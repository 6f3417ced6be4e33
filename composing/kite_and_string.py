"""Music for Kite and string: two flights in the open, and a breeze with bells between them.

Composed for the bank. Mood: airy, calm and lifting. In each phrase of eight counts the tune rises
for two, hangs on the wind for three, is tugged on the sixth count, and flutters down for two, as
the dance does. 32 counts, 8 to change, 40 of breeze with a bell in the middle and three to end it,
8 to change back, and the 32 again.
"""

from __future__ import annotations

from composing.instruments import air, bell, drum, rattle, string, whistle
from composing.piece import Line, Note, Piece, moved, sung

TEMPO = 104
FLIGHT, CHANGE, BREEZE = 32, 8, 40
_OUT = "62:1 69:1 74:3/2 76:1/2 74:1 81:1 76:1/2 74:1/2 71:1/2 69:1/2"
_BACK = "64:1 69:1 73:3/2 76:1/2 73:1 81:1 78:1/2 76:1/2 73:1/2 69:1/2"
_HIGHER = "67:1 71:1 74:3/2 79:1/2 74:1 83:1 79:1/2 78:1/2 74:1/2 71:1/2"
_HOME = "64:1 69:1 73:3/2 76:1/2 73:1 81:1 76:1/2 73:1/2 74:1"
_TUNE = sung(f"{_OUT} {_BACK} {_HIGHER} {_HOME}")
_CHORDS = ((50, 62, 66, 69), (45, 64, 69, 73), (43, 62, 67, 71), (45, 64, 69, 73))
_BREEZES = (
    (50, 57, 64, 69),
    (47, 59, 62, 69),
    (43, 59, 62, 67),
    (50, 57, 64, 69),
    (45, 57, 64, 71),
)
_SECOND = FLIGHT + CHANGE + BREEZE + CHANGE
_ENDS = _SECOND + FLIGHT


def _flights(notes: tuple[Note, ...]) -> tuple[Note, ...]:
    return (*notes, *moved(notes, _SECOND))


def _plucked() -> tuple[Note, ...]:
    """Each chord broken up, a note on every half count."""
    found: list[Note] = []
    for n, (low, *high) in enumerate(_CHORDS):
        broken = (low, high[0], high[1], high[2]) * 4
        found += [Note(8 * n + at / 2, 2, note, 0.7) for at, note in enumerate(broken)]
    return tuple(found)


def _held() -> tuple[Note, ...]:
    """What is held under the breeze and the two changes, eight counts each."""
    start = FLIGHT
    chords = (_CHORDS[0], *_BREEZES, _CHORDS[3])
    return tuple(
        Note(start + 8 * n, 8.6, note + 12, 0.6) for n, chord in enumerate(chords) for note in chord
    )


def _bells() -> tuple[Note, ...]:
    """One bell to change over, three to end the breeze, and a few far off that mean nothing."""
    start = FLIGHT + CHANGE
    told = [Note(start + at, 3, pitch) for at, pitch in ((20, 86), (36, 86), (37, 83), (38, 81))]
    far = [Note(start + at, 2, pitch, 0.22) for at, pitch in ((3, 93), (9, 90), (14, 95), (27, 93))]
    return (*told, *far)


def _beats() -> tuple[Note, ...]:
    """The beat, soft all through, so that it can always be found."""
    breeze = range(FLIGHT, _SECOND)
    return tuple(
        Note(n, 0.7, 40, (1.0 if n % 8 == 0 else 0.7) * (0.7 if n in breeze else 1.0))
        for n in range(-4, _ENDS + 1)
    )


PIECE = Piece(
    file="kite-and-string/media/kite-and-string.mp3",
    tempo=TEMPO,
    counts=_ENDS,
    lines=(
        Line(whistle, _flights(_TUNE), 0.42),
        Line(
            string, (*_flights(_plucked()), Note(_ENDS, 3, 50), Note(_ENDS, 3, 74, 0.6)), 0.4, 0.0
        ),
        Line(
            air,
            (*_held(), *(Note(n, 8, 62, 0.5) for n in (0, 16, _SECOND, _SECOND + 16))),
            0.2,
            0.0,
        ),
        Line(
            bell,
            (*_bells(), *(Note(8 * n + 5, 1, 93, 0.3) for n in (0, 1, 2, 3, 11, 12, 13, 14))),
            0.4,
            0.0,
        ),
        Line(drum, _beats(), 0.5),
        Line(rattle, tuple(Note(n + 0.5, 0.45, 60, 0.5) for n in range(FLIGHT, _SECOND)), 0.2),
    ),
)
