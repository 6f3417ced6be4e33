"""What a hand and a mouth are told over counts, read back stroke by stroke."""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Heard
from build_tools.movement.sounding import Piece, laid
from build_tools.sentences.numbers import number_of
from build_tools.views.words.beat_in_phrases import made_in_words
from build_tools.views.words.deeds_of_sound import OwnWords
from build_tools.views.words.marked_words import with_words, without_words

PHRASE = 8
_RUN = re.compile(r"(\d+)(?: to (\d+))?")
_AGAIN = re.compile(r"the same (?:again|(\w+) times more)")
_QUIET = re.compile(r"no sound for (?:(?P<n>\w+) eights?(?: and \w+ more)?|\w+)")
_EVEN = re.compile(
    r"(?P<who>.*?taps?) (?P<n>\w+) (?P<how>soft )?eights?(?: and (?P<more>\w+) more)?"
)
_EACH = re.compile(
    r"(?P<deed>.*) on each count for "
    r"(?:(?P<n>\w+) eights?(?: and (?P<more>\w+) more)?|(?P<left>\w+))"
)
_IN_EACH = re.compile(r"(?:in each of (?P<n>\w+) eights|for (?P<one>\w+)(?: eight)?): (?P<what>.*)")
_ON = re.compile(r"(?P<deed>.*) on (?P<places>\d[\d, a-z]*)")
_WHILE = re.compile(r"(?P<deed>.*?) (?P<long>once|\w+)(?P<how> softly)?")
_WHILES = re.compile(r"(?!.*\b(?:eights?|on)\b)[\w ,]+")
HEARD = st.lists(
    st.builds(
        lambda sound, by, counts, on, louder: Heard(
            sound,
            counts=Fraction(counts),
            by=by,
            on=tuple(sorted(Fraction(n) for n in on)),
            louder=tuple(sorted(Fraction(n) for n in louder)),
        ),
        st.sampled_from(["beat", "soft beat", "claps"]),
        st.sampled_from([None, "teacher", "class", "dancers"]),
        st.sampled_from([4, 8, 16, 40]),
        st.sets(st.integers(1, 4), max_size=4),
        st.sets(st.integers(1, 40), max_size=3),
    ),
    min_size=1,
    max_size=4,
)


def pieces_of(*heard: Heard) -> tuple[Piece, ...]:
    found = laid(heard, counted=True, tempo=120, phrase=PHRASE)
    assert found is not None
    return found


def number(word: str) -> int:
    said = {"once": 1, "twice": 2}.get(word) or number_of(word)
    assert said is not None, word
    return said


def in_bar(what: str) -> Iterator[tuple[str, int]]:
    """The strokes of one bar: what is done, and on which count of it, from 1."""
    if " on " not in what:
        at = 1
        for part in what.split(", "):
            one = _WHILE.fullmatch(part)
            assert one, part
            for n in range(number(one["long"])):
                yield one["deed"] + (one["how"] or ""), at + n
            at += number(one["long"])
        return
    for part in what.split("; "):
        one = _ON.fullmatch(part.partition(", louder")[0])
        assert one, part
        for run in _RUN.finditer(one["places"]):
            for n in range(int(run[1]), int(run[2] or run[1]) + 1):
                yield one["deed"], n


def struck_in(told: str) -> set[tuple[str, int]]:
    """Every stroke that is told: what is done, and on which count, from 1."""
    found: set[tuple[str, int]] = set()
    bar = 0
    for said in filter(None, (one.strip() for one in told.split("."))):
        line = said[:1].lower() + said[1:]
        line = line.removeprefix("then ")
        if quiet := _QUIET.fullmatch(line):
            bar += number(quiet["n"]) if quiet["n"] else 1
            continue
        if again := _AGAIN.fullmatch(line):
            once, long = set(found), bar
            for _ in range(number(again[1]) if again[1] else 1):
                found |= {(deed, at + bar * PHRASE) for deed, at in once}
                bar += long
            continue
        each = _IN_EACH.fullmatch(line)
        if each or _WHILES.fullmatch(line):
            many = number(each["n"]) if each and each["n"] else 1
            strokes = set(in_bar(each["what"] if each else line))
        else:
            plain = line.partition(", louder")[0]
            even = _EACH.fullmatch(plain) or _EVEN.fullmatch(plain)
            assert even, line
            groups = even.groupdict()
            deed = groups.get("deed") or groups["who"] + " softly" * bool(groups.get("how"))
            if groups.get("left"):
                many, counts = 1, number(groups["left"])
            else:
                many = number(groups["n"])
                counts = many * PHRASE + (number(groups["more"]) if groups.get("more") else 0)
            found |= {(deed, at + bar * PHRASE) for at in range(1, counts + 1)}
            bar += many
            continue
        found |= {(deed, at + (bar + n) * PHRASE) for deed, at in strokes for n in range(many)}
        bar += many
    return found


def deed_of(piece: Piece) -> str:
    verb = "clap" if piece.sound == "claps" else "tap"
    how = " softly" if piece.sound == "soft beat" else ""
    if piece.by == "class":
        return f"the class {verb}s{how}"
    return f"dancers sound{how}" if piece.by == "dancers" else f"{verb}{how}"


@given(HEARD)
def test_every_stroke_is_told_and_no_other(heard: list[Heard]) -> None:
    pieces = pieces_of(*heard)
    wanted = {(deed_of(one), int(stroke.at) + 1) for one in pieces for stroke in one.strokes}
    assert struck_in(made_in_words(pieces, PHRASE)) == wanted


@given(HEARD)
def test_no_count_is_told_past_a_phrase(heard: list[Heard]) -> None:
    """A teacher of ten years could not count to 72 while watching thirty pupils."""
    told = made_in_words(pieces_of(*heard), PHRASE)
    assert all(int(figure) <= PHRASE for figure in re.findall(r"\d+", told)), told


def test_louder_counts_are_told_of_one_phrase() -> None:
    plain = pieces_of(Heard("beat", counts=Fraction(16)))
    assert made_in_words(plain, PHRASE) == "Tap two eights."
    loud = Heard("soft beat", counts=Fraction(8), louder=(Fraction(6),), by="teacher")
    assert made_in_words(pieces_of(*[loud] * 4), PHRASE) == (
        "Tap four soft eights, louder on each 6."
    )


def test_taps_where_moves_begin_are_told_by_the_moves() -> None:
    """A teacher asked for this line in place of "on 17, 21, 24, 28 and 29, louder on 28"."""
    on = tuple(Fraction(n) for n in (1, 5, 8, 12, 13))
    soft = Heard("soft beat", counts=Fraction(16), on=on, louder=(Fraction(12),))
    pieces = pieces_of(Heard("beat", counts=Fraction(16)), soft)
    words = ("swing", "lean", "slide", "clack", "clamp")
    begun = {n + 15: frozenset([word]) for n, word in zip(on, words, strict=True)}
    assert made_in_words(pieces, PHRASE, begun=begun) == (
        "Tap two eights. Then five soft taps, one as each move begins: swing, lean, slide, "
        "clack (louder) and clamp."
    )
    late = {**begun, Fraction(30): frozenset(["look"])}
    assert "as each move begins" not in made_in_words(pieces, PHRASE, begun=late)


def test_louder_counts_that_differ_from_phrase_to_phrase_are_told_by_what_is_said_on_them() -> None:
    loud = tuple(Fraction(n) for n in (6, 8, 10, 12))
    says = tuple("clack" if n in loud else "-" for n in range(1, 17))
    chain = Heard("soft beat", counts=Fraction(16), louder=loud, says=says)
    assert without_words(made_in_words(pieces_of(chain, chain), PHRASE)) == (
        "Tap four soft eights, louder on each clack."
    )


def test_what_follows_without_a_gap_is_told_in_order() -> None:
    roll = Heard("roll", counts=Fraction(4))
    tap = Heard("beat", counts=Fraction(1), louder=(Fraction(1),))
    still = Heard("silence", counts=Fraction(3))
    assert made_in_words(pieces_of(*(roll, tap, still) * 4), PHRASE) == (
        "In each of four eights: roll the drum for four, tap once, no sound for three."
    )


def test_music_voice_and_silence_are_told_phrase_by_phrase() -> None:
    music = pieces_of(Heard("recording", counts=Fraction(24), by="player"))
    assert made_in_words(music, PHRASE) == "Play the music."
    words = Heard("voice", counts=Fraction(8), by="class", says=("tight", "burst"))
    beat = Heard("beat", counts=Fraction(8))
    assert with_words(made_in_words(pieces_of(beat, words), PHRASE)) == (
        "Tap one eight. Then the class says the words for one eight: “tight burst”."
    )
    counting = Heard("voice", counts=Fraction(12), says=tuple("123456781234"))
    assert made_in_words(pieces_of(counting), PHRASE) == "Count aloud for one eight and four more."
    assert made_in_words((), PHRASE) == ""


def test_what_dancers_sound_on_themselves_has_the_authors_word() -> None:
    """An adviser: nobody claps; they knock on thighs and chest. A burst is no sound."""
    knock = Heard(
        "claps", counts=Fraction(8), by="dancers", on=(Fraction(5),), says=(*"----", "knock")
    )
    burst = Heard(
        "claps", counts=Fraction(8), by="dancers", on=(Fraction(3),), says=(*"--", "burst")
    )
    moves = frozenset({"knock", "burst"})

    def told(heard: Heard, what: str, moves: frozenset[str] = moves) -> str:
        return without_words(made_in_words(pieces_of(heard), PHRASE, OwnWords(what, moves)))

    assert told(knock, "Hands and fists") == "For one eight: dancers knock on 5."
    assert told(knock, "Hands and fists", frozenset()) == "For one eight: dancers sound on 5."
    assert told(burst, "Each pupil claps once") == "For one eight: dancers clap on 3."


def test_a_tap_on_every_word_and_not_on_every_count_is_told_by_the_words() -> None:
    """A Reception teacher: "tap softly on 1, 3, 5 and 7" of trot, wait, trot, wait."""
    words = ("trot", "-", "trot", "-", "nib", "-", "ble", "-")
    on = tuple(Fraction(n) for n in (1, 3, 5, 7))
    slow = Heard("soft beat", counts=Fraction(8), by="teacher", on=on, says=words)
    told = made_in_words(pieces_of(slow, slow), PHRASE)
    assert with_words(told) == (
        "Tap softly once on each word, for two eights: “trot trot nib ble trot trot nib ble”."
    )
