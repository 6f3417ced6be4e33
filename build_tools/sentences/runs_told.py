"""How often a text says that the whole dance has been run."""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

RUN = Saying(
    """
    whole|dance|all ~4 =run|=danced|=performed|=rehearsed !in|on|out|to
    run|danced|performed|rehearsed ~2 whole
    =run it
    whole|dance ~~8 it ~1 been =run
    whole ~1 run|runs
    """
)
"""The whole dance has been run."""


def runs_told(text: str) -> tuple[int, Said] | None:
    """The number of runs that the text tells of, 1 where it says none, and the words."""
    said = RUN.said(text)
    if said is None:
        return None
    words = read(text).words
    last = words[said.words[-1]]
    for at in range(said.words[0], len(words)):
        word = words[at]
        if word.sentence != last.sentence or word.clause > last.clause:
            break
        if word.form in ("once", "twice", "thrice") and word.number is not None:
            return word.number, said
        times = at + 1 < len(words) and words[at + 1].form in ("times", "runs")
        if word.number is not None and times:
            return word.number, said
    return 1, said
