"""Who made the music and who made the recording, as the words for a sound say it.

They are two works with two makers. A maker is a name, or words such as the unit's author.
"""

from __future__ import annotations

import re

from build_tools.sentences.sayings import Saying
from build_tools.sentences.word_lists import word_list

LEFT_TO_TEACHER = Saying(
    """
    any !part
    whatever|whichever
    choose|choice
    your|teacher|class own
    you have|may|like
    teacher ~2 pick|picks|chooses|brings|finds|has|decides
    teacher|class choice
    your school
    of ~2 choosing
    """
)
"""The sound is left to the teacher, so that nobody can be named."""
_NO_MUSIC = Saying(
    """
    no ~1 music
    traditional
    folk ~1 song|tune|dance|melody|air|reel|music|jig
    no known composer
    compose|write|make|arrange for this|the unit
    sound|sounds|noise of ~3 rain|sea|wind|bird|river|street|factory|loom|city|forest|wave|train
    rain|sea|wind|river|street|factory|loom|forest|wave|birds ~1 sounds
    birdsong
    """
)
"""Music without a maker to name, or none at all."""
_MAKES = word_list("written composed made arranged created wrote improvised devised")
_RECORDS = word_list(
    "recorded recording played performed sung spoken performer performers player players produced"
)
_OURS = word_list(
    "unit bank author teacher class school pupils band choir quartet orchestra dance friend museum "
    "her him them"
)
_BY = re.compile(r"\bby ((?:[a-z’']+ ){0,3})([\w’'-]+)")
_LABEL = re.compile(
    r"\b(music|composer|composed|written|words|recording|recorded|performers?|players?): *[A-Z]",
    re.IGNORECASE,
)
_MADE_LABELS = word_list("music composer composed written words")
_OWN_RECORDING = re.compile(r"\b(?:made|own|our|author's|teacher's|field) (?:this )?recording\b")
_FOR_THIS_UNIT = re.compile(r"\brecorded for (?:this|the) unit\b")


def made_by_somebody(sound: str) -> bool:
    """Whether it is said who made the music, or that there is nobody to name."""
    return bool(_NO_MUSIC.mentioned(sound)) or _MADE in _deeds(sound)


def recorded_by_somebody(sound: str) -> bool:
    """Whether it is said who made the recording."""
    low = sound.lower().replace("’", "'")
    if _OWN_RECORDING.search(low) or _FOR_THIS_UNIT.search(low):
        return True
    return _RECORDED in _deeds(sound)


_MADE, _RECORDED = "made", "recorded"


def _deeds(sound: str) -> set[str]:
    """What somebody is said to have done: made it, recorded it, or both."""
    found: set[str] = set()
    for label in _LABEL.finditer(sound):
        found.add(_MADE if label.group(1).lower() in _MADE_LABELS else _RECORDED)
    last = 0
    for match in _BY.finditer(sound):
        between, who = match.groups()
        if who[:1].isupper() or not _OURS.isdisjoint(
            re.findall("[a-z]+", f"{between}{who}".lower())
        ):
            found |= _deed(re.split(r"[.;:]", sound[last : match.start()])[-1])
        last = match.end()
    return found


def _deed(before: str) -> set[str]:
    """What the words before "by" say was done; a title alone was made."""
    words = re.findall(r"[a-z]+", before.lower())[-7:]
    if "recording" in words:
        return {_MADE, _RECORDED} if "both" in words else {_RECORDED}
    done = {_RECORDED} if not _RECORDS.isdisjoint(words) else set()
    if not done or not _MAKES.isdisjoint(words):
        done.add(_MADE)
    return done
