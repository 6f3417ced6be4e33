"""Words that carry the beat are written out, one for each count.

"The class whispers the words; no tap" over sixteen counts: five-year-olds whisper them in eleven or
in twenty. Where the class says words in place of a beat, `says` has one for each count, or a part
of one, or a hyphen for a count on which nothing is said.

Bad:
    sound: {kind: voice, what: The class whispers the words, follows: dancers follow the sound}
    heard: [{counts: 8, sound: voice, by: class}]
Good:
    sound: {kind: voice, what: The class whispers the words, follows: dancers follow the sound}
    heard: [{counts: 8, sound: voice, by: class, says: [tight, tight, burst, go, go, go, set, tle]}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Section
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.words.plain_words import counts_in_words

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_DRUMMED = frozenset({"beat", "soft beat", "claps", "recording", "shaker", "bell"})
_SAYS_WORDS = Saying(
    """
    @who ~2 @say ~5 word|words|rhyme|verse|line|lines|names|song|poem|what
    @who ~2 tell|tells ~2 story|tale
    word|words|rhyme|verse|poem|line|song ~~1 @said ~3 by ~2 @who
    words ~3 whispered|spoken|said|chanted|passed
    whispered|spoken|chanted words
    """,
    {
        "who": "class pupils pupil everyone everybody all dancers half each",
        "say": "say whisper chant speak sing recite mutter call shout",
        "said": "=whispered =spoken =said =chanted =sung =recited =called",
    },
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each counted section whose words are not written out."""
    for letter, section in unit.dance.sections.items():
        if section.counts is None or section.sound.kind == "recorded" or not section.heard:
            continue
        if section.returns and "heard" not in section.changes:
            continue
        said = _SAYS_WORDS.said(section.sound.what)
        if said is None or any(piece.says for piece in section.heard) or _has_beat(section):
            continue
        own = section.sound is not unit.dance.sound
        path = ("sections", letter, "sound", "what") if own else ("sections", letter, "heard", 0)
        yield Finding(
            unit.file,
            path,
            f'section {letter} is danced to words ("{said.text}") for '
            f"{counts_in_words(section.counts)} without a beat, and `says` gives none of them",
            "write in `says` a word for each count, with a hyphen where nothing is said",
        )


def _has_beat(section: Section) -> bool:
    return any(piece.sound in _DRUMMED for piece in section.heard)
