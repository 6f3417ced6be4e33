"""Whether a harder task changes the dance, or only takes help away."""

from __future__ import annotations

import re

from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "help": (
        "count counting =counts card cards word words name names call calls picture pictures music "
        "drum board looking peep peeping peek peeking watching copying teacher leader help "
        "reminder reminders prompt prompts cue cues marker markers beat strip poster list notes "
        "chart arrows lines helper grown-up adult support tambourine sound diagram map script "
        "glance glancing hint hints talk talking speak speaking voice demonstration example model "
        "sheet key partner signals signal"
    ),
}

HELP_TAKEN = Saying(
    """
    take|cover|turn|hide|remove|put|switch|fold|wipe|rub|clear|shut ~3 @help ~2 away|up|off|over|
        out|
        down|round
    take|put|turn|switch|throw|pack away|off|up|over|out|down|round ~4 @help
    cover|hide|remove|lose|drop|ditch ~3 @help
    @help ~3 away|off|hidden|covered|removed|gone|out|silent|down|over|stops|stop
    =eyes ~2 shut|closed|covered
    shut|close|cover ~2 =eyes
    blindfold|blindfolded
    from memory
    by heart
    teacher|leader|adult|partner ~3 stop|stops|silent|quiet|nothing|leaves ~3 *
    teacher|leader ~2 stop|stops|stays
    board|cards|card|picture|poster|list|words ~3 round|turned|face|facing|hidden|covered|upside
    count|counting ~4 silently|head|silence|inside|whisper
    silently|silence|unaided|unprompted|independently
    memory|remember ~3 whole|all|it|alone
    """,
    _LISTS,
)
"""Help is taken away: cards, counting, looking, a teacher's call."""

NO_HELP = Saying(
    """
    @help !for
    look|watch|copy|peep|peek at|over|back|from|your|the|a
    aloud
    """,
    _LISTS,
)
"""Denied: without counting, no peeping."""

CHANGES = Saying(
    """
    change|add|replace|reverse|vary|mix|shuffle|double|halve|invent|combine|exaggerate|contrast|
        develop|alternate|swap !over
    choose|make|find|create|include|use|put ~3 new|another|different|own|turn|jump|level|moment|way|
        extra|second|third|move
    level|levels|direction|directions|speed|speeds|pathway|pathways|facing|size|sizes|height|
        heights|dynamics|rhythm|formation|canon|unison|mirror
    half|twice ~2 time|speed|as|counts|fast|slow
    fast+ !<as
    slow+ !<as
    quicker|higher|lower|bigger|smaller|further|farther|longer|shorter|deeper|wider|closer|earlier|
        later|stronger|lighter|sharper|larger
    backwards|sideways|diagonally|opposite|curved|zigzag|spiral|upside
    new|another|different ~2 *
    begin|start|end|finish ~4 after|before|on|with|low|high|facing|apart
    turn|jump|leap|travel|hop|balance|twist|roll !off|on|over|down|round|away|up|the
    on|with ~1 other|one|left|both ~1 side|leg|foot|arm|elbow
    in canon|pairs|turn
    """
)
"""The dance itself changes."""


SOUNDLESS = Saying(
    """
    land|jump|step|walk|tread|move|sink|fall|roll|come|go|patter|dance|stop ~5 no|without ~2 sound|
        noise
    without a|any|one ~1 sound|noise !from|of
    no sound|noise at all
    """
)
"""Lighter than before: no help is taken away where feet make no sound."""


def only_takes_help_away(text: str) -> Said | None:
    """What help a text takes away, if it changes nothing of the dance."""
    said = HELP_TAKEN.said(text) or NO_HELP.denied(text)
    return None if said is None or CHANGES.said(text) or SOUNDLESS.mentioned(text) else said


_HELPS = Saying(
    """
    beside|with|next|near ~3 grown-up|adult|assistant|helper|teacher
    hold on !to
    hold ~2 hand|rail|bar|wall|chair
    copy|follow|shadow ~3 leader|teacher|adult|grown-up|friend|neighbour
    watch ~3 first
    use|look ~3 card|cards|picture|poster !new|another
    """,
    _LISTS,
)
"""A help: somebody to hold, to copy, or a card."""
_FORBIDS = re.compile(
    r"(?:(?:and|but|please) )?"
    r"(?:don['’]?t|do not|never|nobody|no one|no(?= [a-z]+ing\b)|avoid|not)\b",
    re.IGNORECASE,
)
_A_TASK = re.compile(r"\b(?:same|twice|two|both|alike|repeat\w*|again)\b", re.IGNORECASE)
"""What is ruled out leaves something to find: no two moves at the same height."""
_CLAUSES = re.compile(r"[.!;]\s*|, (?=(?:and|but) )")


def only_forbids(text: str) -> bool:
    """Whether each sentence of a text says only what not to do."""
    told = [one for one in _CLAUSES.split(text.strip()) if one.strip()]
    if CHANGES.said(text) or _A_TASK.search(text):
        return False
    return bool(told) and all(_FORBIDS.match(one.strip()) for one in told)


def only_helps(text: str) -> Said | None:
    """What help a text gives, if it changes nothing of the dance."""
    said = _HELPS.said(text)
    return None if said is None or CHANGES.said(text) else said


ASKS_FOR_MORE = Saying(
    """
    hop|hops|hopping ~4 on|with ~1 one|left|right ~1 foot|leg
    balance|stand|turn|jump|spin ~3 on|with ~1 one|left|right ~1 foot|leg
    twice|double as|the|its fast|quick|speed
    at|in double|twice speed|time|pace
    half ~1 counts|time !<slow|take
    =eyes ~1 shut|closed
    shut|close ~1 =eyes
    from memory
    jump|leap|reach|kick ~1 higher|further
    faster|quicker !than
    add ~3 jump|turn|hop|leap|spin|move
    without ~3 card|cards|counting|help|looking|words
    as high as
    """,
    _LISTS,
)
"""More than the task asks for: one leg, twice the speed, eyes shut, one move more."""
