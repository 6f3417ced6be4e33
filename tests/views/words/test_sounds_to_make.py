"""What the person who makes the sound is told where nothing is counted."""

from __future__ import annotations

from build_tools.model.dance import Heard
from build_tools.movement.sounding import Piece, laid
from build_tools.views.words.sounds_to_make import made_in_seconds


def pieces_of(*heard: Heard) -> tuple[Piece, ...]:
    found = laid(heard, counted=False, tempo=120, phrase=8)
    assert found is not None
    return found


def test_where_nothing_is_counted_each_sound_is_told_with_its_seconds() -> None:
    shaken = Heard("shaker", seconds=15, by="teacher")
    taps = Heard("soft beat", seconds=8, by="teacher")
    still = Heard("silence", seconds=4)
    told = made_in_seconds(pieces_of(shaken, still, taps), about=True)
    assert told == (
        "Shake the shaker for about 15 seconds, no sound for 4. "
        "Last, tap softly 8 times, one a second."
    )
    bell = Heard("bell", seconds=8, by="teacher")
    assert made_in_seconds(pieces_of(bell), about=False) == ("Ring the bell for 8 seconds.")
    roll = Heard("roll", seconds=4)
    rolls = made_in_seconds(pieces_of(roll, still, roll, still), about=False)
    assert rolls == "Roll the drum for 4 seconds, no sound for 4. All of it 2 times."
    twice = made_in_seconds(pieces_of(still, taps, still, bell), about=False)
    assert twice == (
        "No sound for 4 seconds. Tap softly 8 times, one a second. No sound for 4 seconds. "
        "Last, ring the bell for 8 seconds."
    )


def test_dancers_make_sounds_and_do_not_speak() -> None:
    """An adviser: they drip, hum and rattle; talk is just what the game must not be."""
    drip = Heard("voice", seconds=9, by="dancers")
    creak = Heard("voice", seconds=2, by="teacher")
    assert made_in_seconds(pieces_of(drip, creak), about=True) == (
        "Dancers make their sounds for about 9 seconds, make your sound for 2."
    )


def test_who_watches_sounds_what_follows_the_dancers_and_no_clock_says_when() -> None:
    """An adviser: the class is in the sky; by a watch one would shake over still birds."""
    still, shaken = Heard("silence", seconds=8), Heard("shaker", seconds=48, by="class")
    told = made_in_seconds(
        pieces_of(still, shaken), about=True, follows="the sound follows the dancers"
    )
    assert told == (
        "The sound follows the dancers, often like this. No sound for about 8 seconds. "
        "Last, those who watch sound the shaker for about 48 seconds."
    )
    assert "follows" not in made_in_seconds(
        pieces_of(still, shaken), about=True, follows="dancers follow the sound"
    )
