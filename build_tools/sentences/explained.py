"""Whether a text says itself what a word of the trade means, or means something else by it."""

from __future__ import annotations

import re

from build_tools.sentences.plain import plain_letters
from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Saying

_SAYS_WHAT = Saying(
    """
    mean|meaning|=ie|=eg
    call|known|named|name ~2 it|that|this|these|them|as
    that|which|it|this be|is ?just|only|simply ~1 a|an|the|when|where|to|how|what|called|all|one
    that|which is
    ?is|be|be when|where
    word|name|term for
    other words
    stand for
    that|this ~2 step|move|turn|jump|action|thing is|be
    dancers|we|people ~1 say|call
    we call
    say ~3 word|name
    or ~1 just|simply
    long|special|french|dance|new|trade ~1 word|name|term
    """
)
_DESCRIBES = Saying(
    """
    ^ one|each|it|that|this|both|your|these|everyone|they !<than !time|now|again|with|should
    """
)
"""A sentence that goes on to tell, and asks nothing: "One foot chases the other"."""
_AFTER = re.compile(r"\s*(?:[:–—(]|-\s)\s*(?P<rest>[^.!?]*)")
_ENOUGH = 3
"""So many words after a colon say what a word means."""

LATER = Saying(
    """
    later|soon|tomorrow
    in|until|for ~2 lesson|week|time #2..
    lesson #2..
    next|another|coming|future week|lesson|time|day|month
    one|some day
    not|n't ~4 yet
    yet to
    will|shall ~3 make|come|meet|learn|find|see|become|call
    will|shall ~1 need !to
    weeks|days|lessons ~1 time|from
    come|get|turn to ~4 week|lesson|later|day
    still to ~1 make|come|learn|be
    """
)
"""What is announced for another day."""


def explains(text: str, word: str) -> bool:
    """Whether the text says what `word` means: "canon, that is, one after another"."""
    plain = plain_letters(text)
    at = plain.find(plain_letters(word))
    if at < 0:
        return False
    sentences = _sentences(plain)
    number = next(n for n, (start, end) in enumerate(sentences) if start <= at < end)
    start, end = sentences[number]
    sentence = text[start:end]
    if _SAYS_WHAT.said(sentence):
        return True
    after = _AFTER.match(
        plain, at + len(word) + (plain[at + len(word) : at + len(word) + 1] == "s")
    )
    if after and len(read(after.group("rest")).words) >= _ENOUGH:
        return True
    if number + 1 == len(sentences):
        return False
    follows = text[slice(*sentences[number + 1])]
    return bool(_SAYS_WHAT.said(follows) or _DESCRIBES.said(follows))


_OTHER_SENSE = {
    "canon": Saying(
        """
        canon ~6 cathedral|church|bishop|priest|vicar|gun
        cathedral|church ~6 canon
        """
    ),
    "accumulation": Saying("n:accumulation of !moves|actions|movements|steps|gestures|shapes"),
    "transition": Saying("transition ~3 school|class|year|playtime|classroom"),
    "tempo": Saying("tempo ~2 run|game|sport"),
    "isolation": Saying("isolation ~2 ward|room|hospital"),
    "stimulus": Saying("stimulus ~3 nerve|science|plant"),
    "dynamics": Saying("dynamics ~3 group|family|class"),
    "theme and variations": Saying("theme and variations ~3 composer|symphony|concert"),
}


def in_another_sense(text: str, word: str) -> bool:
    """Whether the text means something of every day by the word: the canon of a cathedral."""
    saying = _OTHER_SENSE.get(word)
    return saying is not None and saying.mentioned(text) is not None


def _sentences(text: str) -> list[tuple[int, int]]:
    """Where each sentence starts and ends in the text."""
    reading = read(text)
    found: list[tuple[int, int]] = []
    for word in reading.words:
        if word.sentence == len(found):
            found.append((word.start, word.end))
        found[-1] = (found[-1][0], word.end)
    return found
