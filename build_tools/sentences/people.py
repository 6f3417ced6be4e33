"""Words that point to one person: a name, a title, something about one child."""

from __future__ import annotations

import re
from collections.abc import Callable, Container

from build_tools.sentences.names import FIRST_NAMES, NO_NAMES, STORY_SURNAMES, TITLES
from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "child": "child pupil dancer student learner one youngster lad",
    "personal": (
        "asthma epilepsy epileptic diabetes diabetic allergy allergic hearing implant cochlear "
        "deaf blind brittle bone plaster cast broken fracture ankle crutch shunt autism autistic "
        "adhd dyspraxia dyspraxic dyslexia dyslexic tourette tic stammer stutter mute selective "
        "anxiety anxious depressed bereaved bereavement adopt foster care carer social hospital "
        "mother father parent dad mum mummy daddy brother sister divorce separate prison refugee "
        "asylum behaviour tantrum temper steal wet statement ehcp medication inhaler seizure fit "
        "heart condition brace eyesight overweight weight growth catheter cancer leukaemia "
        "arthritis palsy cerebral down's syndrome eczema hernia operation surgery died death fled "
        "protection court order probation free-school-meals poor clingy naughty bullied bully "
        "cries cry"
    ),
    "the": "the our my that this one your a",
}
ONE_CHILD = Saying(
    """
    boy|girl|daughter|son|nephew|niece|grandson|granddaughter !<=boys|=girls ~~1 with|who|whose|in|
        from|on !the|a
    boy|girl ~~1 with|who|whose|in|on ~3 *
    my|our|his|her daughter|son|niece|nephew|grandson|granddaughter
    @the ~2 @child !<any|every|each|no ~~2 with|who|whose|in|on ~5 @personal
    @child !<any|every|each|no with|who|whose ~5 @personal ~~9 dance|dances|lead|leads|sit|sits|may
    """,
    _LISTS,
)
"""Something about one child that the school knows."""

_IN_A_STORY = Saying(
    """
    story|picture|poem|book|tale|rhyme|painting|character|film|legend|myth|wolf|photograph|play|song
    be|become|imagine|pretend a|the boy|girl
    """
)

_WORD = r"[A-Z][a-zà-öø-ÿ]+(?:[-’'][A-Z][a-zà-öø-ÿ]+)*"
_TITLED = re.compile(rf"\b(?:{'|'.join(TITLES)})\.? (?:[A-Z]\.? )?({_WORD})")
_CAPITAL = re.compile(rf"(?<![\w’'-])({_WORD})(?:['’]s?\b)?")
_INSIDE = re.compile(r"(?<=[a-zà-ÿ,;)\d] )")
_PERSON_BEFORE = re.compile(
    r"\b(?:ask|asks|asked|put|let|tell|pair|give|choose|watch|copy|help|thank|with|and|by|from|as"
    r"|like|including|for|daughter|son|friend|partner|pupil|boy|girl|child|called|named|colleague"
    r"|teacher|assistant|head|follow|both|until|when|if|where|because|unless|only|that|to) $",
    re.IGNORECASE,
)
_LONGEST_BEFORE = 16
"""Letters that are looked at before a name: enough for the longest word there, and one more."""
_PERSON_AFTER = re.compile(
    r"^(?:['’]s\b| [A-Z]\.| (?:and|or) [A-Z]|, [A-Z]| (?:who|whose|is|was|has|had|can|cannot|can't"
    r"|may|will|needs?|likes?|leads?|follows?|makes?|made|finds?|found|finished|danced?|dances"
    r"|says?|said|decides?|goes|stands?|starts?|starting|sits?|calls?|holds?|keeps?|knows?|chose"
    r"|chooses|in year|from|did|does|joins?|should|comes?|came|wants?|tried|tries|uses?|gets?"
    r"|plays?)\b)"
)


def titled(text: str) -> str | None:
    """A person named with a title: Mrs Abernethy; not Mr Fox of a story."""
    for match in _TITLED.finditer(text):
        if match.group(1).lower() not in STORY_SURNAMES:
            return match.group()
    return None


def one_child(text: str) -> Said | None:
    """What a text says about one child, unless it is a child in a story."""
    said = ONE_CHILD.said(text)
    return None if said is None or _IN_A_STORY.mentioned(text) else said


def named_person(
    text: str, common: Callable[[], Container[str]], known: Container[str]
) -> str | None:
    """The first word of a text that looks like a person's name.

    `common` gives everyday words in small letters, and `known` names that are no secret here, such
    as those of the unit's own story. A common first name is found anywhere; another word with a
    capital only inside a sentence, where the words around it speak of a person.
    """
    for match in _CAPITAL.finditer(text):
        word = match.group(1)
        low = word.lower()
        if low in NO_NAMES or low in known:
            continue
        if low in FIRST_NAMES:
            return word
        if not _INSIDE.match(text, match.start()):
            continue
        before = text[max(0, match.start() - _LONGEST_BEFORE) : match.start()]
        if not _of_a_person(before, text[match.end(1) :]):
            continue
        if low not in common():
            return word
    return None


def _of_a_person(before: str, after: str) -> bool:
    return bool(_PERSON_BEFORE.search(before) or _PERSON_AFTER.search(after))


PUPIL_NAMED = Saying(
    """
    aged|age #3..18
    of|from|in !a|the|our|each|one|every|this * class|form !teacher|teachers
    #3..18 ~1 years|year ~1 old
    a|our|my ?former pupil|child|girl|boy of|from|at|in|who
    mr|mrs|miss|ms * ~~8 class|form
    """
)
"""A maker named as a pupil of some age, class or school."""
