"""Which words of a file name which field: the page's own, and what the trade writes besides.

The page's own words are taken from where the page has them. The others are common practice, no
source.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from types import MappingProxyType

from build_tools.views.lesson.grouping_in_words import grouping_in_words
from build_tools.views.lesson.lesson_wording import CHANGES, PHASES, TROUBLE
from build_tools.views.lesson.looking_said import LOOKED, LOOKERS

_GROUPINGS = ("alone", "pairs", "threes", "fours", "fives", "sixes", "half class", "whole class")
_STEPS = ("recall", "warm-up", "explore", "make", "develop", "join", "rehearse", "show",
          "look and talk", "cool-down")  # fmt: skip


def key(words: str) -> str:
    """The words of a label as it is looked up: no capitals, no number before, no mark behind."""
    plain = words.casefold().replace("’", "'").replace("\xa0", " ")
    plain = re.sub(r"^\s*\d+\s*[.)]\s*", "", plain)
    return " ".join(plain.strip(" :.?!…*").replace("…", " ").split())


def _keyed(found: Mapping[str, str]) -> Mapping[str, str]:
    return MappingProxyType({key(label): field for label, field in found.items()})


def _of(**labels: str) -> Mapping[str, str]:
    """Fields by their labels, which are written with commas between."""
    return _keyed({one: field for field, all_ in labels.items() for one in all_.split(",")})


STEP_LABELS = _of(
    minutes="minutes,time,mins,how long,duration",
    say="say,you say,teacher says,words to say",
    task="pupils,do,task,activity,what pupils do,what they do,children",
    you="you,teacher,what you do,teacher does,adult",
    does="what,in short,name,title",
    place="stand,where",
    facing="facing",
    look_for="look for,looking for,what to look for",
    ask="ask,question,questions,key question,key questions",
    counts="beat,counts",
    easier="easier,make it easier,support",
    harder="harder,make it harder,challenge,extension",
    grouping="groups,grouping,how pupils work,organisation",
    into="into groups,getting into groups",
    phase="phase,kind of step,part of the lesson",
)
"""Labels in the table of a step."""
LESSON_LABELS = _of(
    focus="what it is for,focus,learning objective,learning objectives,learning intention,"
    "objective,aim,aims",
    pupils_make="what pupils will make,pupils will make,outcome",
    not_dancing="can't dance today,for a pupil who cannot dance",
)
"""Labels before a line of a lesson, wherever it stands."""
SECTIONS = _of(
    collect="what to get,you need,what you need,resources,equipment,kit",
    classroom_first="in the classroom first",
    safety="before they move,safety,keeping safe,health and safety",
    story="the story so far",
    steps="step by step,steps",
    talk="look and talk,evaluation,evaluate",
    not_dancing="can't dance today",
    trouble="what if",
    change="change it to fit your class",
    words="words for today,words,vocabulary,key words,key vocabulary",
    focus="what it is for,focus,learning objective,learning objectives,learning intention,aims",
    notes="notes for you,notes,teacher's notes",
)
"""Headings inside a lesson, with what stands under them."""
TROUBLES = _keyed({label: name for name, label in TROUBLE.items()})
CHANGES_MADE = _keyed({label: name for name, label in CHANGES.items()})
TALK_LABELS = _of(looking_for="look for", ask="ask", seen="if you saw it", not_yet="if not yet")
PHASE_WORDS = _keyed(
    {**{one: one for one in _STEPS}, **{words: one for one, words in PHASES.items()},
     "warm up": "warm-up", "cool down": "cool-down"}
)  # fmt: skip
GROUPING_WORDS = _keyed(
    {**{one: one for one in _GROUPINGS}, **{grouping_in_words(one): one for one in _GROUPINGS},
     "on their own": "alone", "individually": "alone", "with a partner": "pairs"}
)  # fmt: skip
LOOKERS_SAID = _keyed({words: name for said in (LOOKERS, LOOKED) for name, words in said.items()})


def label_of(text: str) -> tuple[str, str]:
    """What stands before the first colon, where that is short enough for a label, and the rest."""
    label, colon, rest = text.partition(":")
    if colon and len(label) <= _LONGEST and rest.strip():
        return label.strip(), rest.strip()
    before, sign, after = text.partition("? ")
    if sign and key(f"{before}?") in _ASKED and after.strip():
        return f"{before}?", after.strip()
    return "", text


_LONGEST = 40
_ASKED = frozenset(TROUBLES)
