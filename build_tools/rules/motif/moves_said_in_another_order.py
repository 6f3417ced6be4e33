"""Where all moves of a motif are said in a row, they are said in an order in which it is danced.

Pupils chant the words to remember the moves. Two words that have changed places in one line of the
lesson are learned so, and the counts no longer fit. Where pupils choose the order, any will do.

Bad:
    actions: [{travel: 4, as: glide}, {jump: 2, as: hop}, {transfer: 2, as: melt}]
    notes: Say glide, melt, hop.
Good:
    actions: [{travel: 4, as: glide}, {jump: 2, as: hop}, {transfer: 2, as: melt}]
    notes: Say glide, hop, melt. Mirrored it is the same.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of, roots
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.parts_said import may_hold, stem
from build_tools.views.written.unit_text import UnitText, unit_text

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_FEWEST = 3
_WORD = re.compile(r"[a-z]+|[.;:!?\n]")
_SENTENCE_END = re.compile(r"[.;:!?\n](?:(?<!\.)|(?=\s|$))")
_READ = ("say", "task", "you", "notes", "stuck", "story_so_far", "look_for", "does")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each row of all a motif's moves in an order that it never has."""
    orders = _orders(unit.dance)
    if not orders:
        return
    stems = {name: _stems(known[0]) for name, known in orders.items()}
    for file, fields in _texts(unit_text(unit)):
        for path, text in fields:
            small = text.lower()
            named = [name for name, wanted in stems.items() if wanted and may_hold(small, wanted)]
            sentences = _in_stems(small) if named else ()
            for name in named:
                known, said = orders[name], _row(sentences, stems[name])
                if said is None or said in known:
                    continue
                yield Finding(
                    file,
                    path,
                    f"the moves of `{name}` are said as {', '.join(said)}, but they are danced as "
                    f"{' or as '.join(', '.join(order) for order in known[:2])}",
                    "say them in the order in which they are danced",
                )


def _orders(dance: Dance) -> Mapping[str, Sequence[tuple[str, ...]]]:
    """For each motif of enough different moves in a fixed order: every order it is danced in."""
    found: dict[str, list[tuple[str, ...]]] = {}
    for name, motif in dance.motifs.items():
        words = tuple(a.word.lower() for a in motif.actions if a.word)
        if len(words) < _FEWEST or len(words) < len(motif.actions) or len(set(words)) < len(words):
            continue
        made = [d for d in dance.developments.values() if name in roots(dance, d.name)]
        if any(d.device == "change of order" for d in made):
            continue
        others = [tuple((a.word or "").lower() for a in actions_of(dance, d.name)) for d in made]
        found[name] = [words, *dict.fromkeys(o for o in others if set(o) == set(words))]
    shared = [
        name
        for name, orders in found.items()
        if any(set(orders[0]) <= set(o[0]) for n, o in found.items() if n != name)
    ]
    return {name: orders for name, orders in found.items() if name not in shared}


def _texts(text: UnitText) -> Iterator[tuple[str, list[tuple[tuple[str | int, ...], str]]]]:
    for file, fields in text.documents:
        yield file, [(one.path, one.text) for one in fields if one.kind in _READ]


def _stems(words: tuple[str, ...]) -> Mapping[str, str]:
    """The words by their stems; none where two are alike, or one is no single word."""
    found = {stem(word): word for word in words if " " not in word}
    return found if len(found) == len(words) else {}


def _in_stems(text: str) -> Sequence[Sequence[str]]:
    """The sentences of a text in small letters, each as the stems of its words and its marks."""
    sentences = _SENTENCE_END.split(text)
    return [[stem(word) for word in _WORD.findall(sentence)] for sentence in sentences]


def _row(sentences: Sequence[Sequence[str]], wanted: Mapping[str, str]) -> tuple[str, ...] | None:
    """All the words in the order said, each once within one sentence; None where they are not."""
    for sentence in sentences:
        said = [wanted[stem] for stem in sentence if stem in wanted]
        if len(said) == len(wanted) and set(said) == set(wanted.values()):
            return tuple(said)
    return None
