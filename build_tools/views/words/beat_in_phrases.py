"""What is sounded over counts, told to who makes it: phrase by phrase, no count past a phrase's.

"Tap four soft eights, louder on each 6." A hand and a mouth can do that; nobody counts to 72.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import groupby

from build_tools.movement.counts import figures
from build_tools.movement.sounding import Piece
from build_tools.views.words.bars_heard import ON_EACH, Bar, Made, bars_heard
from build_tools.views.words.deeds_of_sound import NO_WORDS, OwnWords
from build_tools.views.words.phrases_counted import (
    nth_phrases,
    number_word,
    phrase_word,
    phrases_in_words,
)
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital

_TAPPED = frozenset({"beat", "soft beat"})
_TAPPERS = {"class": "the class, ", "dancers": "dancers, ", "player": "a player, "}
_FEWEST_IN_A_RUN = 3
_MOST_NAMES = 3
_HALF = Fraction(1, 2)
Begun = Mapping[Fraction, frozenset[str]]
"""The counts before each move begins, and the words of what begins there."""


def made_in_words(
    pieces: Sequence[Piece], phrase: int, own: OwnWords = NO_WORDS, begun: Begun | None = None
) -> str:
    """Over counted pieces: "Tap four soft eights, louder on each 6", as sentences.

    What is sounded in several phrases alike is told of one. Taps that fall where moves begin, and
    nowhere else, are told by the moves: `begun`.
    """
    lines = list(_in_turn(pieces, phrase, own, begun or {}))
    told = [*lines[:1], *(f"then {line}" for line in lines[1:])]
    return " ".join(f"{capital(line)}." for line in told)


def _in_turn(pieces: Sequence[Piece], phrase: int, own: OwnWords, begun: Begun) -> Iterator[str]:
    """One line for each stretch that is told as one."""
    before: list[Piece] = []
    for piece in pieces:
        by_moves = _by_moves(piece, phrase, begun)
        if by_moves is None:
            before.append(piece)
            continue
        yield from _bybars_heard(before, phrase, own, begun)
        before = []
        yield by_moves
    yield from _bybars_heard(before, phrase, own, begun)


def _by_moves(piece: Piece, phrase: int, begun: Begun) -> str | None:
    """Taps over more than a phrase, one as each move begins: five soft taps, swing, lean …"""
    at = [stroke.at for stroke in piece.strokes]
    moves = [place for place in begun if piece.start <= place < piece.end]
    if piece.sound not in _TAPPED or piece.length <= phrase or not at or at != moves:
        return None
    if piece.start % phrase or piece.end % phrase or len(at) == piece.length:
        return None
    words = [_one_word(begun[place]) for place in at]
    if not all(words):
        return None
    loud = {stroke.at for stroke in piece.strokes if stroke.loud}
    loud = set() if len(loud) == len(at) else {place for place in loud if place % phrase}
    said = [f"{word}{' (louder)' * (p in loud)}" for word, p in zip(words, at, strict=True)]
    soft = "soft " if piece.sound == "soft beat" else ""
    who = _TAPPERS.get(piece.by or "", "")
    return f"{who}{number_word(len(at))} {soft}taps, one as each move begins: {listed(said)}"


def _one_word(words: frozenset[str]) -> str:
    return next(iter(words)) if len(words) == 1 else ""


def _louder_by_name(pieces: Sequence[Piece], phrase: int, begun: Begun) -> str:
    """Of taps on every count, the louder ones by what is said or begun there: each clack.

    Empty where one of them has no name, or where the same is done or said on a soft one too.
    """
    strokes = [stroke for one in pieces for stroke in one.strokes]
    loud = {stroke.at for stroke in strokes if stroke.loud}
    said: dict[str, set[Fraction]] = {}
    for one in pieces:
        for word in one.words:
            said.setdefault(word.says.casefold(), set()).add(word.at)
    for place, words in begun.items():
        if any(one.start <= place < one.end for one in pieces):
            for begins in words - {""}:
                said.setdefault(begins, set()).add(place)
    wanted = {place for place in loud if place % phrase}
    names = [word for word, places in said.items() if places <= loud and len(places & wanted) > 1]
    left: dict[Fraction, list[int]] = {}
    for place in sorted(wanted - {place for word in names for place in said[word]}):
        left.setdefault(place % phrase, []).append(int(place // phrase))
    if not names or len(names) + len(left) > _MOST_NAMES:
        return ""
    others = [f"{figures(n + 1)} of {nth_phrases(bars, phrase)}" for n, bars in left.items()]
    return f", louder on {listed([f'each {listed(names)}', *others])}"


def _bybars_heard(
    pieces: Sequence[Piece], phrase: int, own: OwnWords, begun: Begun
) -> Iterator[str]:
    bars = bars_heard(pieces, phrase, own)
    long = _comes_again(bars)
    even = _evenly(bars, phrase) if long != 1 else None
    louder = _louder_by_name(pieces, phrase, begun) if even else ""
    if louder:
        yield f"{even}{louder}"
        return
    again = len(bars) // long if long else 1
    if long == 1 or again == 1:
        yield from _told(bars, phrase)
        return
    yield from _told(bars[:long], phrase)
    yield "the same again" if again == 2 else f"the same {number_word(again - 1)} times more"


def _evenly(bars: Sequence[Bar], phrase: int) -> str | None:
    """What is told of bars whose every count is sounded alike, but for how loud; else None."""
    plain = {replace(bar, made=tuple(replace(one, loud=()) for one in bar.made)) for bar in bars}
    if len(plain) != 1:
        return None
    bar = plain.pop()
    if len(bar.made) != 1 or bar.made[0].sound not in ON_EACH:
        return None
    return _whole(bar.made[0], bar, len(bars), phrase)


def _comes_again(bars: Sequence[Bar]) -> int:
    """The fewest bars after which all that is sounded comes again; 0 where nothing does."""
    return next(
        (
            n
            for n in range(1, len(bars) // 2 + 1)
            if len(bars) % n == 0 and all(b == bars[i % n] for i, b in enumerate(bars))
        ),
        0,
    )


def _told(bars: Sequence[Bar], phrase: int) -> Iterator[str]:
    """Bars that sound alike in a row are told together, and what is left of a phrase with them."""
    runs = [(bar, len(list(alike))) for bar, alike in groupby(bars)]
    if len(runs) > 1 and _goes_on(runs[-2][0], last := runs[-1][0], phrase):
        *before, (bar, many) = runs[:-1]
        yield from (_alike(*one, phrase) for one in before)
        yield f"{_alike(bar, many, phrase)} and {_left(last.length)} more"
        return
    yield from (_alike(*one, phrase) for one in runs)


def _goes_on(bar: Bar, last: Bar, phrase: int) -> bool:
    """Whether the last, shorter bar only goes on with what the one before it does all through."""
    if last.length == phrase or len(bar.made) != 1 or len(last.made) != 1:
        return False
    long, short = bar.made[0], last.made[0]
    alike = (long.sound, long.deed) == (short.sound, short.deed) and not (long.loud or short.loud)
    return alike and bool(_whole(long, bar, 2, phrase) and _whole(short, last, 1, phrase))


def _alike(bar: Bar, many: int, phrase: int) -> str:
    """So many bars in a row that sound alike."""
    if len(bar.made) == 1 and (whole := _whole(bar.made[0], bar, many, phrase)):
        return whole
    in_order = _one_after_another(bar)
    each = in_order or "; ".join(_in_bar(one, bar) for one in bar.made)
    if bar.length < phrase:
        return in_order or f"for {_left(bar.length)}: {each}"
    if many == 1:
        return in_order or f"for one {phrase_word(phrase)}: {each}"
    return f"in each of {phrases_in_words(many, phrase)}: {each}"


def _whole(made: Made, bar: Bar, many: int, phrase: int) -> str | None:
    """What goes on all through such bars: tap four soft eights; None where it does not."""
    if sum((b - a for a, b in made.spans), Fraction(0)) != bar.length:
        return None
    long = phrases_in_words(many, phrase) if bar.length == phrase else _left(bar.length)
    does, how = made.deed
    if made.sound == "recording":
        return does
    if made.sound not in ON_EACH:
        return f"{does} for {long}"
    if list(made.on) != [Fraction(n) for n in range(-(-bar.length // 1))]:
        return None
    each = "each " if many > 1 else ""
    loud = f", louder on {each}{_listed(made.loud)}" if made.loud else ""
    if does.endswith(("tap", "taps")) and bar.length == phrase:
        soft = "soft" if how else ""
        return f"{does} {phrases_in_words(many, phrase, soft)}{loud}"
    if bar.length < phrase and (few := _for_a_while(made)):
        return few
    return f"{does}{' ' * bool(how)}{how} on each count for {long}{loud}"


def _one_after_another(bar: Bar) -> str:
    """Sounds that follow one another without a gap: roll the drum for four, tap once."""
    in_order = sorted(bar.made, key=lambda one: one.spans)
    if [span for one in in_order for span in one.spans] != list(
        _laid_end_to_end(one.spans for one in in_order)
    ):
        return ""
    told = [_for_a_while(one) for one in in_order]
    return ", ".join(told) if all(told) else ""


def _laid_end_to_end(
    each: Iterable[tuple[tuple[Fraction, Fraction], ...]],
) -> Iterator[tuple[Fraction, Fraction]]:
    """The spans of sounds that have one each, as long as each begins where the last ends."""
    at = Fraction(0)
    for spans in each:
        if len(spans) != 1 or spans[0][0] != at:
            return
        at = spans[0][1]
        yield spans[0]


def _for_a_while(made: Made) -> str:
    """What is sounded on every count of its one span: tap four; empty where it is not on every."""
    start, end = made.spans[0]
    long = _left(end - start)
    does, how = made.deed
    if made.sound not in ON_EACH:
        return f"{does} for {long}"
    if made.loud or list(made.on) != [start + n for n in range(-(-(end - start) // 1))]:
        return ""
    if end - start == 1:
        return f"{does} once{' ' * bool(how)}{how}"
    return f"{does} {long}{' ' * bool(how)}{how}" if does.endswith(("tap", "taps")) else ""


def _in_bar(made: Made, bar: Bar) -> str:
    """What somebody does on some counts of a bar."""
    does, how = made.deed
    does = f"{does} {how}".rstrip()
    if made.sound not in ON_EACH:
        return f"{does} {_from_to(made.spans)}"
    loud = f", louder on {_listed(made.loud)}" if made.loud else ""
    twice = tuple(at for at in made.on if at + _HALF in made.on and at.denominator == 1)
    single = [at for at in made.on if at.denominator == 1]
    if twice and set(made.on) == {*single, *(at + _HALF for at in twice)}:
        every = single == [Fraction(n) for n in range(-(-bar.length // 1))]
        places = "each" if every else f"on {_listed(single)}"
        return f"{does} {places}, twice on {_listed(twice)}{loud}"
    return f"{does} on {_listed(made.on)}{loud}"


def _from_to(spans: Sequence[tuple[Fraction, Fraction]]) -> str:
    return listed(
        [
            f"on {figures(a + 1)}" if b - a == 1 else f"from {figures(a + 1)} to {figures(b)}"
            for a, b in spans
        ]
    )


def _listed(on: Sequence[Fraction]) -> str:
    """The counts as they are said, from 1; three or more in a row as from the first to the last."""
    found: list[list[Fraction]] = []
    for at in sorted(on):
        if found and at == found[-1][-1] + 1:
            found[-1].append(at)
        else:
            found.append([at])
    said: list[str] = []
    for run in found:
        if len(run) >= _FEWEST_IN_A_RUN:
            said.append(f"{figures(run[0] + 1)} to {figures(run[-1] + 1)}")
        else:
            said += [figures(at + 1) for at in run]
    return listed(said)


def _left(length: Fraction) -> str:
    return number_word(int(length)) if length.denominator == 1 else figures(length)
