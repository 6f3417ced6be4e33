"""Whether one word is another with a slip of the hand in it."""

from __future__ import annotations

_SHORTEST = 4
_LONG = 7
"""Letters of a word from which on two slips are still nearer than another word."""


def is_a_slip(typed: str, word: str) -> bool:
    """Whether `typed` is `word` with a letter left out, doubled, changed or swapped with the next.

    In a word of four letters nothing is changed, since that makes other words: step and stop. In a
    long one there may be two slips.
    """
    if min(len(typed), len(word)) < _SHORTEST or typed == word or typed[:1] != word[:1]:
        return False
    far = slips_between(typed, word)
    if len(word) == _SHORTEST:
        return far == 1 and (len(typed) != len(word) or sorted(typed) == sorted(word))
    return far <= (2 if len(word) >= _LONG else 1)


def slips_between(one: str, other: str) -> int:
    """The fewest letters left out, put in, changed or swapped with the next that lead from one word
    to the other (Damerau, 1964; each letter is touched once).
    """
    rows = [list(range(len(other) + 1))]
    for i, letter in enumerate(one, 1):
        row = [i]
        for j, wanted in enumerate(other, 1):
            least = min(rows[-1][j] + 1, row[-1] + 1, rows[-1][j - 1] + (letter != wanted))
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == wanted:
                least = min(least, rows[-2][j - 2] + 1)
            row.append(least)
        rows.append(row)
    return rows[-1][-1]
