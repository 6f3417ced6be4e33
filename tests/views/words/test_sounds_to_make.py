"""What the person who makes the sound is told, read back stroke by stroke."""

from __future__ import annotations

import re
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Heard
from build_tools.movement.sounding import Piece, laid
from build_tools.views.words.sounds_to_make import made_in_seconds, made_in_words

PHRASE = 8
_AGAIN = re.compile(r"In each (\d+): (.*)")
_ON = re.compile(r" on (?P<places>\d[\d, a-z]*)$")
_RUN = re.compile(r"(\d+)(?: to (\d+))?")
HEARD = st.lists(
    st.builds(
        lambda sound, by, counts, on: Heard(
            sound, counts=Fraction(counts), by=by, on=tuple(sorted(Fraction(n) for n in on))
        ),
        st.sampled_from(["beat", "soft beat", "claps"]),
        st.sampled_from([None, "teacher", "class", "dancers"]),
        st.sampled_from([4, 8, 16]),
        st.sets(st.integers(1, 4), max_size=4),
    ),
    min_size=1,
    max_size=4,
)


def pieces_of(*heard: Heard, counted: bool = True) -> tuple[Piece, ...]:
    found = laid(heard, counted=counted, tempo=120, phrase=PHRASE)
    assert found is not None
    return found


def struck_in(told: str, end: int) -> dict[str, set[int]]:
    """On which counts, from 1, each doing falls: taps, taps softly, the class claps."""
    every, found = end, {}
    if again := _AGAIN.fullmatch(told):
        every, told = int(again[1]), again[2]
    for sentence in filter(None, (one.strip() for one in told.split("."))):
        line = sentence.partition(", louder")[0].lower()
        if on := _ON.search(line):
            deed = line[: on.start()]
            places = {
                n
                for run in _RUN.finditer(on["places"])
                for n in range(int(run[1]), int(run[2] or run[1]) + 1)
            }
        else:
            deed, each, how = line.partition(" each")
            assert each, sentence
            deed, places = deed + how, set(range(1, every + 1))
        found[deed] = {n + more for n in places for more in range(0, end, every)}
    return found


def deed_of(piece: Piece) -> str:
    verb = "clap" if piece.sound == "claps" else "tap"
    how = " softly" if piece.sound == "soft beat" else ""
    if piece.by == "class":
        return f"the class {verb}s{how}"
    return f"dancers {verb}{how}" if piece.by == "dancers" else f"{verb}{how}"


@given(HEARD)
def test_every_stroke_is_told_and_no_other(heard: list[Heard]) -> None:
    pieces = pieces_of(*heard)
    end = int(pieces[-1].end)
    wanted: dict[str, set[int]] = {}
    for piece in pieces:
        at = {int(stroke.at) + 1 for stroke in piece.strokes}
        wanted[deed_of(piece)] = wanted.get(deed_of(piece), set()) | at
    told: dict[str, set[int]] = {}
    for deed, places in struck_in(made_in_words(pieces, PHRASE), end).items():
        told[deed] = told.get(deed, set()) | places
    assert told == wanted


def test_louder_counts_are_told_where_they_are_not_the_first_of_each_phrase() -> None:
    plain = pieces_of(Heard("beat", counts=Fraction(16)))
    assert made_in_words(plain, PHRASE) == "Tap each."
    loud = Heard("soft beat", counts=Fraction(8), louder=(Fraction(6),), by="teacher")
    assert made_in_words(pieces_of(loud, loud), PHRASE) == (
        "Tap each softly, louder on 6 of each 8."
    )


def test_of_few_counts_the_loudest_is_told() -> None:
    on = tuple(Fraction(n) for n in (1, 5, 8, 12, 13))
    soft = Heard("soft beat", counts=Fraction(16), on=on, louder=(Fraction(12),))
    assert made_in_words(pieces_of(soft), PHRASE) == (
        "Tap softly on 1, 5, 8, 12 and 13, louder on 12."
    )
    alike = Heard("soft beat", counts=Fraction(16), on=on, louder=on)
    assert "louder" not in made_in_words(pieces_of(alike), PHRASE)


def test_what_comes_again_in_each_phrase_is_told_once() -> None:
    roll = Heard("roll", counts=Fraction(4))
    tap = Heard("beat", counts=Fraction(1), louder=(Fraction(1),))
    still = Heard("silence", counts=Fraction(3))
    assert made_in_words(pieces_of(*(roll, tap, still) * 4), PHRASE) == (
        "In each 8: roll the drum from 1 to 4. Tap on 5. No sound from 6 to 8."
    )


def test_music_voice_and_silence_are_told_from_when_to_when() -> None:
    music = pieces_of(Heard("recording", counts=Fraction(24), by="player"))
    assert made_in_words(music, PHRASE) == "Play the music."
    words = Heard("voice", counts=Fraction(8), by="class", says=("tight", "burst"))
    beat = Heard("beat", counts=Fraction(8))
    assert made_in_words(pieces_of(beat, words), PHRASE) == (
        "Tap on 1 to 8. The class says the words from 9 to 16."
    )
    counting = Heard("voice", counts=Fraction(8), says=tuple("12345678"))
    assert made_in_words(pieces_of(counting), PHRASE) == "Count aloud."
    assert made_in_words((), PHRASE) == ""


def test_where_nothing_is_counted_each_sound_is_told_with_its_seconds() -> None:
    shaken = Heard("shaker", seconds=15, by="teacher")
    taps = Heard("soft beat", seconds=8, by="teacher")
    still = Heard("silence", seconds=4)
    told = made_in_seconds(pieces_of(shaken, still, taps, counted=False), about=True)
    assert told == (
        "Shake the shaker for about 15 seconds. No sound for about 4 seconds. "
        "Tap softly 8 times, one a second."
    )
    bell = Heard("bell", seconds=8, by="teacher")
    assert made_in_seconds(pieces_of(bell, counted=False), about=False) == (
        "Ring the bell for 8 seconds."
    )
    roll = Heard("roll", seconds=4)
    rolls = made_in_seconds(pieces_of(roll, still, roll, still, counted=False), about=False)
    assert rolls == "Roll the drum for 4 seconds. No sound for 4 seconds. All of it 2 times."
