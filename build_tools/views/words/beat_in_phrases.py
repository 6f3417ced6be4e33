"""What is sounded over counts, told to who makes it: phrase by phrase, no count past a phrase's.

"Tap four soft eights, louder on each 6." A hand and a mouth can do that; nobody counts to 72.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from fractions import Fraction
from functools import reduce
from itertools import groupby

from build_tools.movement.counts import figures
from build_tools.movement.sounding import Piece, Word
from build_tools.page_words.words import N_, _
from build_tools.views.words.bar_in_words import (
    for_a_while,
    in_bar,
    louder,
    one_after_another,
)
from build_tools.views.words.bars_heard import ON_EACH, Bar, Made, bars_heard
from build_tools.views.words.deeds_of_sound import NO_WORDS, OwnWords
from build_tools.views.words.marked_words import after_lines, without_words
from build_tools.views.words.phrases_counted import (
    length_word,
    nth_phrases,
    number_word,
    phrase_word,
    phrases_in_words,
)
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital
from build_tools.views.words.said_over import said_over

_TAPPED = frozenset({"beat", "soft beat"})
_TAPS = N_("{number} taps, one as each move begins: {moves}")
_SOFT_TAPS = N_("{number} soft taps, one as each move begins: {moves}")
_TAPPERS = {
    "class": N_("the class, {what}"),
    "dancers": N_("dancers, {what}"),
    "player": N_("a player, {what}"),
}
_MOST_NAMES = 3
Begun = Mapping[Fraction, frozenset[str]]
"""The counts before each move begins, and the words of what begins there."""


def made_in_words(
    pieces: Sequence[Piece], phrase: int, own: OwnWords = NO_WORDS, begun: Begun | None = None
) -> str:
    """Over counted pieces: "Tap four soft eights, louder on each 6", as sentences.

    What is sounded in several phrases alike is told of one. Taps that fall where moves begin, and
    nowhere else, are told by the moves: `begun`. Words that are said are told in order, marked.
    """
    lines = list(_in_turn(pieces, phrase, own, begun or {}))
    told = [*lines[:1], *(_("then {what}", what=line) for line in lines[1:])]
    return reduce(after_lines, (f"{capital(line)}." for line in told), "").lstrip()


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
    said = [
        _("{move} (louder)", move=word) if p in loud else word
        for word, p in zip(words, at, strict=True)
    ]
    taps = _SOFT_TAPS if piece.sound == "soft beat" else _TAPS
    told = _(taps, number=number_word(len(at)), moves=listed(said))
    who = _TAPPERS.get(piece.by or "")
    return _(who, what=told) if who else told


def _one_word(words: frozenset[str]) -> str:
    return next(iter(words)) if len(words) == 1 else ""


def _louder_by_name(pieces: Sequence[Piece], phrase: int, begun: Begun) -> str:
    """Of taps on every count, the louder ones by what is said or begun there: each clack.

    Empty where too many have no name, or where the same is done or said on a soft one too.
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
    few = len(left) == 1 if not names else len(names) + len(left) <= _MOST_NAMES
    if not few:
        return ""
    others = [
        _("{count} of {phrases}", count=figures(n + 1), phrases=nth_phrases(bars, phrase))
        for n, bars in left.items()
    ]
    return listed([*([_("each {words}", words=listed(names))] if names else []), *others])


def _bybars_heard(
    pieces: Sequence[Piece], phrase: int, own: OwnWords, begun: Begun
) -> Iterator[str]:
    bars = bars_heard(pieces, phrase, own)
    if len(bars) == 1 and (beats := _beats(bars[0], phrase)):
        yield beats + said_over(bars, phrase, own)
        return
    long = _comes_again(bars)
    even = _evenly(bars, phrase) if long != 1 else None
    names = _louder_by_name(pieces, phrase, begun) if even else ""
    if even and names:
        louder_there = _("{what}, louder on {counts}", what=even, counts=names)
        yield louder_there + said_over(bars, phrase, own)
        return
    again = len(bars) // long if long else 1
    other = long and any(_words_of(b) != _words_of(bars[n % long]) for n, b in enumerate(bars))
    if long == 1 or again == 1 or other:
        yield from _told(bars, phrase, own)
        return
    yield from _told(bars[:long], phrase, own)
    yield (
        _("the same again")
        if again == 2
        else _("the same {number} times more", number=number_word(again - 1))
    )


def _words_of(bar: Bar) -> tuple[tuple[Word, ...], ...]:
    return tuple(one.words for one in bar.made)


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


def _told(bars: Sequence[Bar], phrase: int, own: OwnWords) -> Iterator[str]:
    """Bars that sound alike in a row are told together, and what is left of a phrase with them."""
    runs = [list(alike) for _key, alike in groupby(bars, key=_alike_by)]
    if len(runs) > 1 and _goes_on(runs[-2][0], last := runs[-1][0], phrase):
        *before, long = runs[:-1]
        yield from (_alike(run, phrase, own) for run in before)
        before_it = without_words(_alike(long, phrase, own))
        more = _("{what} and {number} more", what=before_it, number=length_word(last.length))
        yield more + said_over([*long, last], phrase, own)
        return
    yield from (_alike(run, phrase, own) for run in runs)


def _alike_by(bar: Bar) -> tuple[Bar, tuple[tuple[Word, ...], ...]]:
    """What makes bars alike: where several things sound in one, the words said with each too."""
    return bar, _words_of(bar) if len(bar.made) > 1 else ()


def _goes_on(bar: Bar, last: Bar, phrase: int) -> bool:
    """Whether the last, shorter bar only goes on with what the one before it does all through."""
    if last.length == phrase or len(bar.made) != 1 or len(last.made) != 1:
        return False
    long, short = bar.made[0], last.made[0]
    alike = (long.sound, long.deed) == (short.sound, short.deed) and not (long.loud or short.loud)
    return alike and bool(_whole(long, bar, 2, phrase) and _whole(short, last, 1, phrase))


def _alike(bars: Sequence[Bar], phrase: int, own: OwnWords) -> str:
    """So many bars in a row that sound alike, with what is said in each."""
    bar, many = bars[0], len(bars)
    alone = len(bar.made) == 1
    if alone and (whole := _whole(bar.made[0], bar, many, phrase)):
        return whole + said_over(bars, phrase, own)
    if alone and bar.made[0].on_words and bar.length == phrase:
        deed = bar.made[0].deed
        told = _(
            "{does} once on each word, for {phrases}",
            does=f"{deed.does} {deed.how}".rstrip(),
            phrases=phrases_in_words(many, phrase),
        )
        return told + said_over(bars, phrase, own)
    in_order = one_after_another(bar, phrase, own)
    each = in_order or "; ".join(in_bar(one, bar, phrase, own) for one in bar.made)
    if bar.length < phrase:
        return in_order or _("for {counts}: {what}", counts=length_word(bar.length), what=each)
    if many == 1:
        return in_order or _("for one {eight}: {what}", eight=phrase_word(phrase), what=each)
    return _("in each of {phrases}: {what}", phrases=phrases_in_words(many, phrase), what=each)


def _whole(made: Made, bar: Bar, many: int, phrase: int) -> str | None:
    """What goes on all through such bars: tap four soft eights; None where it does not."""
    if sum((b - a for a, b in made.spans), Fraction(0)) != bar.length:
        return None
    whole = bar.length == phrase
    does, how = made.deed.does, made.deed.how
    if made.sound == "recording":
        return does
    if made.sound not in ON_EACH:
        if whole:
            return _("{does} for {phrases}", does=does, phrases=phrases_in_words(many, phrase))
        return _("{does} for {counts}", does=does, counts=length_word(bar.length))
    if list(made.on) != [Fraction(n) for n in range(-(-bar.length // 1))]:
        return None
    if made.deed.taps and whole:
        phrases = phrases_in_words(many, phrase, soft=bool(how))
        taps = _("{does} {phrases}", does=does, phrases=phrases)
        return louder(taps, made, each=many > 1)
    if not whole and (few := for_a_while(made)):
        return few
    does = f"{does} {how}".rstrip()
    told = (
        _("{does} on each count for {phrases}", does=does, phrases=phrases_in_words(many, phrase))
        if whole
        else _("{does} on each count for {counts}", does=does, counts=length_word(bar.length))
    )
    return louder(told, made, each=many > 1)


def _beats(bar: Bar, phrase: int) -> str:
    """One phrase of taps alone: tap eight beats, for a teacher who would ask what an eight is.

    Empty where it is anything else.
    """
    made = bar.made[0]
    plain = len(bar.made) == 1 and bar.length == phrase and made.deed.taps
    if not plain or list(made.on) != [Fraction(n) for n in range(phrase)]:
        return ""
    does, number = made.deed.does, number_word(phrase)
    taps = (
        _("{does} {number} soft beats", does=does, number=number)
        if made.deed.how
        else _("{does} {number} beats", does=does, number=number)
    )
    return louder(taps, made)
