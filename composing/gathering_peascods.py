"""The tune of Gathering Peascods, as printed in The English Dancing Master (John Playford, 1651).

The notes of the tune are those that two modern copies of the book agree on; it is long out of
copyright. The chords, the drum and the recording are the bank's own. Three strains of 12, 12 and
16 counts, each played twice: 80 counts, which is one verse of the dance. Mood: bright and steady.
"""

from __future__ import annotations

from composing.instruments import drum, rattle, string, whistle
from composing.piece import Line, Note, Piece, moved, sung

TEMPO = 108
VERSE, VERSES = 80, 2
_A = (
    "74:1 74:1/2 74:1/2 71:3/4 72:1/4 74:1/2 74:1/2 76:1/2 74:1/2 72:1/2 71:1/2 "
    "69:3/2 71:1/2 69:1/2 67:1/2 67:1/2 66:1/2 "
)
_B = (
    "66:1/2 62:1/2 66:1/2 67:1/2 69:1 71:1/2 69:1/2 67:1/4 69:1/4 71:1/2 69:1/2 67:1/2 "
    "66:3/2 66:1/2 64:1/2 62:1/2 64:3/4 62:1/4 62:3/2 "
)
_C = (
    "71:1/2 67:1/2 67:1/2 69:1/4 71:1/4 72:3/2 72:1/2 71:1/2 67:1/2 67:1/2 69:1/4 71:1/4 "
    "72:3/2 74:1/2 71:1/2 67:1/2 67:1/2 69:1/4 71:1/4 72:3/4 74:1/4 76:1/2 74:1/4 72:1/4 "
    "71:1/2 72:1/4 71:1/4 69:3/4 67:1/4 67:3/2 "
)
_TUNE = sung(f"{_A} 67:2 {_A} 67:3/2 67:1/2 {_B} 67:1/2 {_B} 74:1/2 {_C} 74:1/2 {_C} r:1/2")
_G, _C_CHORD, _D, _A_CHORD = (43, 62, 67, 71), (48, 64, 67, 72), (50, 62, 66, 69), (45, 64, 69, 73)
_CHORDS_A = (_G, _G, _G, _G, _C_CHORD, _G, _D, _D, _C_CHORD, _D, _G, _G)
_CHORDS_B = (_D, _D, _D, _G, _G, _D, _D, _D, _A_CHORD, _A_CHORD, _D, _D)
_CHORDS_C = (
    *(_G, _G, _C_CHORD, _C_CHORD, _G, _G, _C_CHORD, _C_CHORD),
    *(_G, _G, _C_CHORD, _C_CHORD, _G, _D, _G, _G),
)
_CHORDS = (*_CHORDS_A, *_CHORDS_A, *_CHORDS_B, *_CHORDS_B, *_CHORDS_C, *_CHORDS_C)


def _plucked() -> tuple[Note, ...]:
    """A low note on each count and the chord half a count later."""
    found: list[Note] = []
    for n, (low, *high) in enumerate(_CHORDS):
        found.append(Note(n, 1, low, 1.0 if n % 2 == 0 else 0.8))
        found += [Note(n + 0.5, 0.5, pitch, 0.4) for pitch in high]
    return tuple(found)


def _verses(notes: tuple[Note, ...]) -> tuple[Note, ...]:
    return tuple(note for n in range(VERSES) for note in moved(notes, n * VERSE))


_ENDS = VERSE * VERSES
PIECE = Piece(
    file="gathering-peascods/media/gathering-peascods.mp3",
    tempo=TEMPO,
    counts=_ENDS,
    lines=(
        Line(whistle, _verses(_TUNE), 0.5),
        Line(whistle, moved(_TUNE, VERSE, up=12), 0.16),
        Line(string, (*_verses(_plucked()), Note(_ENDS, 3, 43), Note(_ENDS, 3, 67, 0.5)), 0.6, 0.0),
        Line(
            drum,
            tuple(Note(n, 0.7, 43, 1.0 if n % 4 == 0 else 0.6) for n in range(-4, _ENDS + 1)),
            0.55,
        ),
        Line(rattle, tuple(Note(n + 0.5, 0.4, 60, 0.6) for n in range(VERSE, _ENDS)), 0.18),
    ),
)
