"""A task in lines of ten words at most, for a wall: cut where a reader would draw breath."""

from __future__ import annotations

MOST_WORDS = 10
_SENTENCE, _CLAUSE = (".", "?", "!"), (",", ";", ":", "\N{EN DASH}", "\N{EM DASH}")
_CLOSING = "\"'”’)"
_JOINING = frozenset(("and", "but", "for", "from", "if", "or", "so", "then", "to", "until", "with"))
_A_LINE, _A_SHORT_LINE, _A_TORN_LINE = 60, 40, 40
"""What a line costs; beside it one of fewer than three words, and one that begins a sentence
after the end of another and does not end it."""
_AT_SENTENCE, _AT_CLAUSE, _BEFORE_JOINING, _ELSEWHERE = 0, 30, 90, 200


def wall_lines(text: str) -> tuple[str, ...]:
    """`text` in as few lines as read well; joined with spaces they are the text again.

    Among all ways to cut it the one that costs least is taken: a cut costs nothing after a
    sentence, more after a clause, more again before a joining word, most anywhere else.
    """
    words = text.split()
    best: list[tuple[int, int]] = [(0, 0)]
    """For the first n words: what the cheapest way costs, and where its last line starts."""
    for end in range(1, len(words) + 1):
        best.append(
            min(
                (best[start][0] + _cost(words, start, end), start)
                for start in range(max(0, end - MOST_WORDS), end)
            )
        )
    lines: list[str] = []
    end = len(words)
    while end:
        start = best[end][1]
        lines.append(" ".join(words[start:end]))
        end = start
    return tuple(reversed(lines))


def _cost(words: list[str], start: int, end: int) -> int:
    length = end - start
    cost = _A_LINE + length * length // MOST_WORDS
    if length < 3 and length < len(words):
        cost += _A_SHORT_LINE
    if end < len(words):
        cost += _cut(words[end - 1], words[end])
    ends = [n for n in range(start, end) if _ends(words[n], _SENTENCE)]
    if ends and ends[-1] != end - 1:
        cost += _A_TORN_LINE
    return cost


def _cut(before: str, after: str) -> int:
    if _ends(before, _SENTENCE):
        return _AT_SENTENCE
    if _ends(before, _CLAUSE):
        return _AT_CLAUSE
    return _BEFORE_JOINING if after.lower() in _JOINING else _ELSEWHERE


def _ends(word: str, marks: tuple[str, ...]) -> bool:
    return word.rstrip(_CLOSING).endswith(marks)
