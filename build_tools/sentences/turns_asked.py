"""How many whole turns a text asks for: two turns, spin three times, once round on each count."""

from __future__ import annotations

from build_tools.sentences.reading import Reading, read
from build_tools.sentences.sayings import Saying

_LISTS = {"whole": "full whole quick complete big small slow"}
_TURNS = Saying(
    """
    #2.. ?@whole =turns|=spins|=twirls
    turn|spin|whirl|twirl ~~2 #2.. times round|around
    v:turn|spin|whirl|twirl|rotate ~3 twice
    v:turn|spin|whirl|twirl|rotate ~2 #2.. times
    go|goes|going|get|gets ?all|right round|around ~1 #2.. ?times ~~4 spot|space|place
    """,
    _LISTS,
)
_ONE_EACH_WAY = Saying("# ?@whole turn|turns ~2 right|left ~~3 # ~2 back|right|left", _LISTS)
"""One turn right and one turn left; two to the right, then two back."""
_ONE_MORE = Saying("third|fourth|fifth turn|spin|whirl|twirl")
_NOT_ONE = Saying("one|once|two ?@whole turn|whirl|spin|twirl", _LISTS)
"""What is denied: not one whirl but two."""
_BUT = Saying("but #2..")
_EACH_COUNT = Saying("turn|spin|whirl|twirl ~1 once ~3 on every|each count|beat")
_NTH = {"third": 3, "fourth": 4, "fifth": 5}


def turns_asked(text: str) -> int:
    """The most whole turns that a text asks for in one go; 0 where it says no number."""
    reading = read(text)
    most = 0
    for said in _TURNS.all_in(text):
        most = max(most, *_numbers(reading, said.words), 0)
    for said in _ONE_EACH_WAY.all_in(text):
        most = max(most, sum(_numbers(reading, said.words)))
    for said in _ONE_MORE.all_in(text):
        most = max(most, *(_NTH.get(reading.words[at].form, 0) for at in said.words))
    if _NOT_ONE.denied(text):
        for said in _BUT.all_in(text):
            most = max(most, *_numbers(reading, said.words), 0)
    return most


def turns_on_each_count(text: str) -> bool:
    """Whether it asks for a turn on every count."""
    return _EACH_COUNT.said(text) is not None


def _numbers(reading: Reading, words: tuple[int, ...]) -> list[int]:
    return [number for at in words if (number := reading.words[at].number) is not None]
