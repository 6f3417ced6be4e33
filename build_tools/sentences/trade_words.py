"""Words of the dance trade that a class and a teacher new to dance have to be told.

Those of class dance stand in the bank's own list of words, those of the studio do not. Everyday
words that dance also uses, such as turn, level or freeze, are left out: nobody is stopped by them.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from collections.abc import Set as AbstractSet
from functools import cache

from build_tools.sentences.plain import plain_letters
from build_tools.sentences.word_lists import word_list

HARD_WORDS = frozenset(
    {
        "accumulation",
        "binary",
        "canon",
        "cumulative form",
        "dynamics",
        "embellishment",
        "fragmentation",
        "improvise",
        "motif",
        "retrograde",
        "rondo",
        "stimulus",
        "tempo",
        "ternary",
        "theme and variations",
        "transfer of weight",
        "transition",
        "unison",
    }
)
"""Words that stop a teacher who has never taught dance."""

TECHNIQUE_WORDS = frozenset(
    {
        *word_list(
            "chasse releve plie tendu soutenu arabesque jete pirouette battement echappe glissade "
            "adage adagio changement entrechat developpe fouette sissonne chaine kinesphere "
            "proxemic "
            "counterpoint distal distally proximal proximally augmentation diminution isolation "
            "turnout ostinato polyrhythm syncopation syncopated choreographic locomotor axial "
            "juxtapose juxtaposition laban kinaesthetic kinesthetic antiphony hemiola floorwork "
            "downstage upstage rubato polycentric polyrhythmic spatial contrapuntal grapevine "
            "leitmotif proxemics transference dissonance virtuosity epaulement contraction "
            "spotting cambre sagittal"
        ),
        "port de bras",
        "pas de bourree",
        "pas de chat",
        "pas de deux",
        "rond de jambe",
        "grand battement",
        "bound flow",
        "free flow",
        "indirect effort",
        "direct effort",
        "contact improvisation",
        "fall and recovery",
        "contract and release",
        "contraction and release",
        "first position",
        "second position",
        "fifth position",
        "parallel position",
        "core engaged",
        "engage your core",
        "engage the core",
        "ball change",
        "kick ball change",
        "box step",
        "jazz square",
        "stage left",
        "stage right",
        "centre stage",
        "choreographic intent",
        "ground bass",
        "action content",
        "spatial content",
        "negative space",
        "theme and variation",
    }
)
"""Words of the studio and the theory, which the bank does not use, in letters without accents."""

PUPILS_WORDS = HARD_WORDS | {"climax", "formation", "gesture", "pathway", "sustained"}
"""Words that stop pupils who have not been taught them."""

QUESTION_WORDS = PUPILS_WORDS | {
    "abstraction",
    "antiphony",
    "augmentation",
    "call and response",
    "choreographer",
    "choreographic",
    "choreography",
    "counterpoint",
    "crescendo",
    "diminution",
    "genre",
    "inversion",
    "isolation",
    "juxtaposition",
    "kinaesthetic",
    "kinesphere",
    "laban",
    "legato",
    "leitmotif",
    "locomotor",
    "ostinato",
    "palindrome",
    "phrasing",
    "plie",
    "pirouette",
    "polyrhythm",
    "proxemics",
    "retrograded",
    "spatial",
    "staccato",
    "syncopation",
    "tableau",
}
"""Words that no class knows unless it has been told, where it is asked about dance."""

_TOLD_AFTER = re.compile(
    r"""["'”’]?\s*(?:
      ,?\s*(?:which|that)\s(?:is|means|are|was)\b | ,?\s*(?:meaning|that\sis|i\.e\.|or)\b[^,?]{6,}
    | \s?(?:means?|is\swhen|is\swhere|is\sanother\sword|is\s(?:the|a|an)\s[^?]{12,}\.)
    | ,\s(?:the|a|an|when|where|all|one)\b[^,?]{12,} | [(:–—-]\s?\w
    )""",
    re.VERBOSE,
)
_TOLD_BEFORE = re.compile(
    r"(?:\(that\sis|\bcall(?:ed|s)?(?:\s(?:it|that|this|them))?|\bnamed|\bknown\sas|\bword\s(?:for\s\w+\s)?is|\bsay)"
    r"\s(?:an?\s)?[\"'“‘]?$"
)
_FORMS = {"improvise": "improvis", "stimulus": "stimul"}
"""What all forms of a word begin with, where it is not the word itself."""
_WORD = re.compile(r"[a-z]+")


def trade_words_in(text: str, words: Iterable[str]) -> list[str]:
    """Those of `words` that stand in `text` in any case and form."""
    low = plain_letters(text)
    return [word for word in words if _stem(word) in low and _pattern(word).search(low)]


def explained_beside(text: str, word: str) -> bool:
    """Whether a text that uses `word` says right there what it means.

    As in: in unison, which means all at once; we call that canon; their motif, the little pattern
    that keeps coming back.
    """
    low = text.lower()
    return any(
        _TOLD_AFTER.match(low[found.end() :]) or _TOLD_BEFORE.search(low[: found.start()])
        for found in _pattern(word).finditer(low)
    )


def in_sight(words: Iterable[str], text_words: AbstractSet[str]) -> tuple[str, ...]:
    """Those of `words` that may stand in a text with the words `text_words`, in order."""
    return tuple(sorted(word for word in words if not text_words.isdisjoint(_forms(word))))


def covered(word: str, explained: Iterable[str]) -> bool:
    """Whether one of the entries `explained` is the word or holds it: canon in canon in turn."""
    return any(trade_words_in(entry, (word,)) for entry in explained)


@cache
def _forms(word: str) -> frozenset[str]:
    """Forms of the last word of `word`: text has one of them wherever it uses the word."""
    stem = _stem(_WORD.findall(word)[-1])
    endings = ("", "s", "e", "es", "ed", "ing", "ation", "ations", "us", "i")
    return frozenset(stem + ending for ending in endings)


def _stem(word: str) -> str:
    return _FORMS.get(word, word)


@cache
def _pattern(word: str) -> re.Pattern[str]:
    return re.compile(rf"\b{_stem(word)}(?:[a-z]+|s?)\b" if word in _FORMS else rf"\b{word}s?\b")
