"""What is sounded in one phrase, or in what is left of one: roll the drum for four, tap once."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from build_tools.movement.counts import figures
from build_tools.page_words.words import _
from build_tools.views.words.bars_heard import ON_EACH, Bar, Made
from build_tools.views.words.deeds_of_sound import OwnWords
from build_tools.views.words.phrases_counted import length_word
from build_tools.views.words.plain_words import listed
from build_tools.views.words.said_over import said_with

_FEWEST_IN_A_RUN = 3
_HALF = Fraction(1, 2)


def louder(what: str, made: Made, *, each: bool = False) -> str:
    """The same, with on which counts it is louder, where it is."""
    if not made.loud:
        return what
    if each:
        return _("{what}, louder on each {counts}", what=what, counts=_listed(made.loud))
    return _("{what}, louder on {counts}", what=what, counts=_listed(made.loud))


def one_after_another(bar: Bar, phrase: int, own: OwnWords) -> str:
    """Sounds that follow one another without a gap: roll the drum for four, tap once."""
    in_order = sorted(bar.made, key=lambda one: one.spans)
    if [span for one in in_order for span in one.spans] != list(
        _laid_end_to_end(one.spans for one in in_order)
    ):
        return ""
    told = [for_a_while(one) for one in in_order]
    if not all(told):
        return ""
    said = (said_with([one], phrase, own) for one in in_order)
    return ", ".join(f"{does}{words}" for does, words in zip(told, said, strict=True))


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


def for_a_while(made: Made) -> str:
    """What is sounded on every count of its one span: tap four; empty where it is not on every."""
    start, end = made.spans[0]
    long = length_word(end - start)
    does, how, taps = made.deed
    if made.sound not in ON_EACH:
        return _("{does} for {counts}", does=does, counts=long)
    if made.loud or list(made.on) != [start + n for n in range(-(-(end - start) // 1))]:
        return ""
    if end - start == 1:
        return f"{_once(does)} {how}".rstrip()
    return f"{_so_many(does, long)} {how}".rstrip() if taps else ""


def _once(does: str) -> str:
    return _("{does} once", does=does)


def _so_many(does: str, counts: str) -> str:
    return _("{does} {counts}", does=does, counts=counts)


def in_bar(made: Made, bar: Bar, phrase: int, own: OwnWords) -> str:
    """What somebody does and says on some counts of a bar."""
    return _on_counts(made, bar) + said_with([made], phrase, own)


def _on_counts(made: Made, bar: Bar) -> str:
    does = f"{made.deed.does} {made.deed.how}".rstrip()
    if made.sound not in ON_EACH:
        return f"{does} {_from_to(made.spans)}"
    twice = tuple(at for at in made.on if at + _HALF in made.on and at.denominator == 1)
    single = [at for at in made.on if at.denominator == 1]
    if twice and set(made.on) == {*single, *(at + _HALF for at in twice)}:
        every = single == [Fraction(n) for n in range(-(-bar.length // 1))]
        if every:
            return louder(_("{does} {counts}", does=does, counts=_with_and(single, twice)), made)
        told = _(
            "{does} on {counts}, twice on {twice}",
            does=does,
            counts=_listed(single),
            twice=_listed(twice),
        )
        return louder(told, made)
    return louder(_("{does} on {counts}", does=does, counts=_listed(made.on)), made)


def _with_and(single: Sequence[Fraction], twice: Sequence[Fraction]) -> str:
    """Counts as they are said, with an and where there are two strokes: 1 and 2 and 3, 4."""
    said = [(_("{count} and", count=figures(at + 1)), at in twice) for at in single]
    row = [both if two else figures(at + 1) for (both, two), at in zip(said, single, strict=True)]
    return " ".join(row)


def _from_to(spans: Sequence[tuple[Fraction, Fraction]]) -> str:
    return listed(
        [
            _("on {count}", count=figures(a + 1))
            if b - a == 1
            else _("from {first} to {last}", first=figures(a + 1), last=figures(b))
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
            said.append(_("{start} to {end}", start=figures(run[0] + 1), end=figures(run[-1] + 1)))
        else:
            said += [figures(at + 1) for at in run]
    return listed(said)
