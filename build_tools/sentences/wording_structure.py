"""Words by which the rules of structure and motif read a step. Where in doubt, they say yes.

Each list is common practice, no source.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache

from build_tools.model.lesson import Step


def text_of(step: Step) -> str:
    """Everything a step says to teacher and pupils, in small letters."""
    parts = [step.does, step.into, step.say, step.task, step.look_for]
    parts += [question.question for question in step.ask]
    return " ".join(part for part in parts if part).lower()


def says_twice(text: str) -> bool:
    """Whether a step dances the same thing more than once."""
    return _TWICE.search(text) is not None


def says_search(text: str) -> bool:
    """Whether pupils try things out."""
    return _SEARCH.search(text) is not None


def says_earlier(text: str) -> bool:
    """Whether a step goes back to what pupils know."""
    return _EARLIER.search(text) is not None


def says_returning(text: str) -> bool:
    """Whether a text says how something is when it comes back: the same or different."""
    return _RETURNING.search(text) is not None


def step_says_returning(step: Step) -> bool:
    """Whether a step says so; one that only dances something again, or twice, does not."""
    return says_returning(_RERUN.sub(" ", text_of(step)))


def says_choice(text: str) -> bool:
    """Whether pupils decide something."""
    return _CHOICE.search(text) is not None


def says_learned(text: str) -> bool:
    """Whether a dance is one that is learned as it is handed on."""
    return _LEARNED.search(text) is not None


def says_mime(text: str) -> bool:
    """Whether pupils act something out, and are not told to stop doing so."""
    return _MIME.search(_NO_MIME.sub(" ", text)) is not None


def says_left_out(text: str) -> bool:
    """Whether something made is put aside."""
    return _LEFT_OUT.search(text) is not None


def says_ending(text: str) -> bool:
    """Whether a text is about the end of the dance."""
    return _ENDING.search(text) is not None


def says_device(device: str, text: str) -> bool:
    """Whether a text names a device, or says in plain words what it does."""
    return device in text or _device(device).search(text) is not None


def word_in(word: str, text: str) -> bool:
    """Whether a word stands in a text as a whole word; both in small letters."""
    return re.search(rf"(?<![a-z]){re.escape(word)}(?![a-z])", text) is not None


_TWICE = re.compile(r"\b(twice|again|(two|2|three|3) (times|runs|goes)|second (time|run|go))\b")
_SEARCH = re.compile(
    r"\b(tr(y|ies|ying)|find|finding|explor\w+|discover\w*|experiment\w*|play\w*|search\w*|"
    r"invent\w*|improvis\w+|ways?|different|how many|what if|how (else|could|can|would)|choos\w+|"
    r"make up|making up|test\w*)\b"
)
_EARLIER = re.compile(
    r"\b(again|recall\w*|remember\w*|earlier|already|last (time|lesson|week)|once more|recap\w*|"
    r"lesson [0-9]+|revisit\w*|repeat\w*|so far|your own (motif|dance|moves))\b"
)
_RETURNING = re.compile(
    r"\b(same|again|back|return\w*|(first|last|second|third|each|every|next|final) (time|one)|"
    r"(last|second|final) (tide|round|part|verse)|twice|different\w*|unchanged|changed|"
    r"differs?|once more|repeat\w*|chorus|refrain|rondo|home|as before|comes? round|always)\b"
)
_RERUN = re.compile(r"\b(again|twice|once more|back to (the start|the beginning))\b")
_CHOICE = re.compile(
    r"\b(choos\w+|choices?|decid\w+|vote\w*|pick\w*|agree\w*|own|invent\w*|find|make up|making up|"
    r"made up|which (way|one)|any)\b"
)
_LEARNED = re.compile(
    r"\b(learn\w*\b(?! (that|to|how|what|why|when|where|more|about|from))|"
    r"hand(ed|s|ing) (down|on)|pass(ed|es|ing) (down|on)|tradition\w*|folk|country|"
    r"ceilidh|given dance|set dance)\b"
)
_MIME = re.compile(r"\b(mim(e|es|ed|ing)|pretend\w*|act(s|ed|ing)? (it |them |this )?out)\b")
_NO_MIME = re.compile(
    r"\b(not|n't|never|no|nobody|without|rather than|instead of|not just|more than)\s+(\w+\s+)?"
    r"(mim(e|es|ed|ing)|pretend\w*|act(s|ed|ing)? (it |them |this )?out)\b"
)
_LEFT_OUT = re.compile(
    r"\b(leav(e|es|ing) (\w+ ){0,4}out|left out|dropped|(?<!the )(?<!a )(?<!one )(?<!your )"
    r"drop(s|ping)? (it|them|this|that|these|those|the|your|one|two|what|any)|"
    r"(set|put|lay) (\w+ ){0,3}aside|"
    r"let (\w+ ){0,3}go|not (in|part of) the dance|not ke(ep|pt)|just to try|only to try|"
    r"for practice|no longer)\b"
)
_ENDING = re.compile(
    r"\b(endings?|the (very )?end|finish\w*|final\w*|bows?|last (shape|moment|section|part|pose))\b"
)

_DEVICE_WORDS: Mapping[str, str] = {
    "repetition": r"repeat\w*|twice|again|(two|three|four|[2-9]) times|each time",
    "retrograde": r"backwards|rewind\w*|reverse\w*|last (move|action) first|undo\w*|unwind\w*",
    "change of speed": r"slow\w*|fast\w*|quick\w*|speed\w*|tempo|twice as|half as|long(er)?",
    "change of rhythm": r"rhythm\w*|uneven\w*|syncopat\w*|short|long|beats?|pause\w*",
    "change of size": r"big\w*|small\w*|large\w*|tin(y|ier)|grow\w*|shrink\w*|size\w*|huge",
    "change of level": r"low\w*|high\w*|levels?|middle|floor|up|down|kneel\w*",
    "change of direction": r"direction\w*|backwards?|forwards?|sideways|sides?|other way|back|"
    r"diagonal\w*",
    "change of facing": r"fac(e|es|ing)|turn\w*|away|towards|back to|front|outwards?|inwards?",
    "change of pathway": r"path\w*|curv\w*|zigzag\w*|straight|lines?|circl\w*|spiral\w*|wind\w*",
    "change of dynamics": r"dynamic\w*|strong\w*|light\w*|sudden\w*|soft\w*|heav\w*|smooth\w*|"
    r"sharp\w*|gent\w*|sustained|float\w*|punch\w*|press\w*|flick\w*|feel\w*|calm\w*|jerk\w*",
    "change of body part": r"parts?|elbows?|shoulders?|knees?|feet|foot|hands?|arms?|hips?|heads?|"
    r"legs?|back|fingers?",
    "mirror": r"mirror\w*|other side|swap\w*|left|opposite\w*|reflect\w*|both sides|other way",
    "change of order": r"order\w*|shuffl\w*|rearrang\w*|first|mix\w*|jumbl\w*|swap\w*",
    "replacing an action": r"replac\w*|swap\w*|instead|in place of|new (move|action)|chang\w+|for",
    "leaving out": r"leav\w+|without|miss\w*|left out|drop\w*|skip\w*|only|take (away|out)",
    "embellishment": r"add\w*|decorat\w*|trim\w*|embellish\w*|extra|ornament\w*|more|put in",
    "fragmentation": r"only|just|parts?|pieces?|bits?|fragment\w*|break\w*|keep|half|one move",
    "accumulation": r"build\w*|accumulat\w*|add\w*|one, two|grow\w*|one more|each time",
    "combination": r"join\w*|combin\w*|link\w*|together|then|add\w*|put",
    "change of formation": r"formation\w*|lines?|circl\w*|scatter\w*|cluster\w*|files?|pairs?|"
    r"square\w*|shape\w*|spread\w*|stand\w*|space\w*",
    "change of number of dancers": r"alone|pairs?|threes?|fours?|fives?|sixes|halves|half|class|"
    r"all|everyone|partner\w*|groups?|solo|one at a time|together|number\w*",
    "change of relationship": r"canon|unison|mirror\w*|match\w*|lead\w*|follow\w*|question|"
    r"answer\w*|together|partner\w*|contrast\w*|facing|after|against|side by side|opposite",
}


@cache
def _device(device: str) -> re.Pattern[str]:
    return re.compile(rf"\b({_DEVICE_WORDS[device]})\b")
