"""How often a text says that the whole dance has been run."""

from __future__ import annotations

from build_tools.sentences.reading import Reading, read
from build_tools.sentences.sayings import Said, Saying

_LISTS = {"run": "=run =ran =danced =performed =rehearsed =tried =practised"}
RUN = Saying(
    """
    whole|dance|all ~4 =run|=danced|=performed|=rehearsed|=tried !in|on|out|to
    @run ~1 =whole !class|hall|first|second|of
    @run ~1 whole|complete|entire|full dance
    =run it
    whole|dance ~~8 it ~1 been =run
    whole ~1 run|runs
    go|gone|went through ~1 dance|whole|everything
    dance ~3 gone through
    run|runs|run-through|run-throughs ~1 of ~1 whole|complete|entire|dance
    run-through|through ~1 of ~1 whole|dance
    """,
    _LISTS,
)
"""The whole dance has been run."""
_SEVERAL = Saying(
    """
    couple|few|number of ~1 time|run
    several|many time|run
    more than once
    second time
    both lesson
    """
)
"""More than one run, and nobody knows how many."""
_NEAR = 5


def runs_told(text: str) -> tuple[int, Said] | None:
    """The number of runs that the text tells of, 1 where it says none, and the words."""
    every = [said for said in RUN.all_in(text) if not _of_a_part(text, said)]
    if not every:
        return None
    said, reading = every[0], read(text)
    number = _number_said(reading, said)
    if number is not None:
        return number, said
    sentence = reading.sentence_of(said.words[0])
    if _SEVERAL.said(sentence):
        return 2, said
    apart = {reading.words[one.words[0]].clause for one in every}
    again = len(apart) > 1 and "again" in reading.forms
    return (2 if again else 1), said


def _of_a_part(text: str, said: Said) -> bool:
    """The whole of the first part is no run of the dance."""
    words = read(text).words
    after = [word.form for word in words[said.words[-1] + 1 : said.words[-1] + 4]]
    return after[:1] == ["of"] and "dance" not in after


def _number_said(reading: Reading, said: Said) -> int | None:
    """The number beside the words: run twice, one run, gone through three times."""
    words = reading.words
    last = words[said.words[-1]]
    for at in range(max(0, said.words[0] - 2), len(words)):
        word = words[at]
        if word.sentence != last.sentence:
            continue
        if word.clause > last.clause or at > said.words[-1] + _NEAR:
            break
        if word.number is None or word.clause < words[said.words[0]].clause:
            continue
        if word.form in ("once", "twice", "thrice"):
            than = at > 0 and words[at - 1].form == "than"
            return 2 if than else word.number
        if at + 1 < len(words) and words[at + 1].form in ("times", "runs", "run"):
            return word.number
    return None
