"""The words by which rules of inclusion know a kind of pupil, a part apart, or no part at all."""

from __future__ import annotations

import re
from collections.abc import Set as AbstractSet

from build_tools.sentences.word_lists import word_list

_PUPILS = "pupils?|child|children|dancers?|learners?|students?"
KINDS_OF_PUPILS = re.compile(
    rf"""
      \b(?:less|least|more|most|very|highly) [ -] able\b
    | \bthe [ ] able\b | \bable [ ] (?:{_PUPILS})\b
    | \b(?:low|lower|high|higher) (?:er)? [ -]
        (?:ability|attaining|attainers?|achieving|achievers?)\b
    | \b(?:weak|weaker|weakest|strongest|stronger|slower|bright|brighter|clever|cleverer|abler
        |better|struggling|behind) [ ] (?:{_PUPILS})\b
    | \bslow [ ] learners?\b | \bstrugglers?\b | \bgifted\b | \bmore [ ] talented\b
    | \bspecial [ ] (?:educational [ ])? needs\b | \b(?:top|bottom) [ ] (?:group|set|table)\b
    | \bgirls\b | \bboys\b | \bdisabled\b | \bautistic\b | \badhd\b
    | \b(?-i:SEND?|EAL)\b
    """,
    re.VERBOSE | re.IGNORECASE,
)
"""Words for a kind of pupil, where a line is about to say what changes."""

KINDS_WORDS = word_list(
    "able ability attaining attainer attainers achieving achiever achievers weak weaker weakest "
    "strongest stronger slower bright brighter clever cleverer abler better struggling behind slow "
    "struggler strugglers gifted talented special top bottom girls boys disabled autistic "
    "adhd sen send eal"
)
"""One of these stands in every text that `KINDS_OF_PUPILS` finds something in."""

APART = re.compile(
    r"""
      \bseparate(?:ly)?\b | \bon [ ] (?:their|your|his|her) [ ] own [ ] with\b
    | \bworks? [ ] with [ ] (?:an?|the|their|your) [ ] (?:adult|assistant|helper|ta)\b
    | \banother [ ] (?:activity|room|task)\b | \ba [ ] different [ ] (?:activity|task|game)\b
    | \b(?:in|to) [ ] (?:a|the) [ ] corner\b | \boutside [ ] the [ ] hall\b | \belsewhere\b
    | \b(?:instead|in [ ] place) [ ] of [ ] (?:the [ ])? (?:dance|dancing)\b
    | \b(?:apart|away) [ ] from [ ] the [ ] class\b | \bopt [ ] out\b
    | \bback [ ] in [ ] (?:the [ ])? class(?:room)?\b
    """,
    re.VERBOSE | re.IGNORECASE,
)
"""Words for work apart from the class."""

APART_WORDS = word_list(
    "separate separately own adult assistant helper ta another different corner outside elsewhere "
    "instead place apart away opt classroom class"
)
"""One of these stands in every text that `APART` finds something in."""

_NO_PART = word_list(
    "a an and any at bench book books can chair class colouring colours do does doing "
    "dance dancers dancing everyone for from he help homework it in is just keep keeps "
    "lesson let look looking looks may mat my no none not nothing observe observes of off on or "
    "other others out own part pupil pupils put quiet quietly read reading reads rest rests room "
    "safely seat seated she side sit sits sitting stay stays still stand stands take takes that "
    "the their them they this to today until wait waiting waits wall was watch watched watches "
    "watching we while will with work you your"
)
_WORD = re.compile(r"[a-z]+")


def gives_no_part(text: str) -> bool:
    """Whether nothing is left to do but sit, watch, rest or read: "Sits and watches quietly"."""
    return _NO_PART.issuperset(_WORD.findall(text.lower()))


DEMONSTRATION = tuple(
    (phrase, frozenset(phrase.split()))
    for phrase in (
        "demonstrate",
        "demonstrates",
        "demonstrating",
        "demonstration",
        "show them how",
        "copy me",
        "watch me",
        "copy the teacher",
        "copy your teacher",
        "do as i do",
        "teacher shows",
        "teacher models",
        "model the",
        "model it",
    )
)
"""Phrases that leave a move to the teacher's own dancing, each with the words in it."""


def demonstrations(text_words: AbstractSet[str]) -> tuple[str, ...]:
    """The phrases of demonstration that may stand in a text with the words `text_words`."""
    return tuple(phrase for phrase, words in DEMONSTRATION if words <= text_words)


OTHER_WAY = re.compile(
    r"\b(?:cards?|pictures?|drawings?|photos?|photographs?|film|video|clip|diagrams?|notes|strip"
    r"|a pupil|pupils? (?:who|shows?)|a volunteer|volunteers?|a partner|your partner|each other"
    r"|another (?:pupil|group|pair)|words?|name (?:it|the moves?)|say (?:it|the moves?)|or)\b",
    re.IGNORECASE,
)
"""Words for another way to pass on a move than the teacher's dancing."""
