"""How a teacher who never taught dance runs the minutes of a step in which pupils make something.

Try, keep, repeat, show a neighbour, where something is the pupils' own; in parts, then whole, where
all of it is given; play, say what worked and play again, where nothing is kept: common practice, no
source. No numbers of minutes, so that the same words hold where the lesson is fitted to a shorter
slot.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from build_tools.model.dance import Dance, Motif
from build_tools.model.lesson import Lesson, Step

LEAST_MINUTES = 3
"""A shorter step is over before it can be divided."""
_ASKS = re.compile(r"\b(?:choos\w*|try|tries|agree|pick|vote|decide|invent|find)\b", re.IGNORECASE)
"""Words of a task that leave something of the moves to pupils."""
_MAY_ASK = re.compile(r"\byour own\b|\bfrom the (?:\w+ )?cards\b", re.IGNORECASE)
"""Words that do so too, unless the task is to learn: learn it, with your own thing in mind."""
_LEARNS = re.compile(r"\blearn\b", re.IGNORECASE)
_JOINS_ONLY = re.compile(r"\bjoins only\b|\bonly the joins\b", re.IGNORECASE)
_HOW_OFTEN = re.compile(r"\bonce each\b|\bonce more\b|\brest\b.{1,8}\bagain\b", re.IGNORECASE)
"""Words of a task that limit the goes, as where two lean on one another: no more is asked then."""
_GOES = re.compile(
    r"\b(?:walk|dance|play|run|try|do|say|ring|tread|clap|name)\b[^.;]{0,30}\b"
    r"(?:(?<!at )once\b(?! round)|twice|(?:two|three|four|five|six) times)"
    r"|\b(?:two|three|four) goes\b|(?:^|[.;] )(?:twice|(?:two|three|four|five|six) times)\b",
    re.IGNORECASE,
)
"""Words with which an author says how many goes there are: no other number is given then."""
_IN_ORDER = re.compile(r"[.;] (?:then|rest|now)\b|\bagain\b|, then\b", re.IGNORECASE)
"""A task that says what is danced after what."""
_IN_SIDES = re.compile(
    r"\bchange over\b|\bchange (?:the )?sides\b|\bchange places\b|\beach (?:side|half)\b",
    re.IGNORECASE,
)
"""The class works in two sides, one after the other."""
_MINUTES_FOR_TWO_EACH = 6
"""In fewer, two sides have a go each. Common practice, no source."""
_WHO = {
    "alone": ("each pupil", "each pupil shows a neighbour"),
    "pairs": ("each pair", "each pair shows the pair beside it"),
    "threes": ("each three", "each three shows the three beside it"),
    "fours": ("each four", "each four shows the four beside it"),
    "fives": ("each five", "each five shows the five beside it"),
    "sixes": ("each six", "each six shows the six beside it"),
    "half class": ("each half", "each half shows the other"),
    "whole class": ("everyone", "half the class shows the other half"),
}


def run_in_words(dance: Dance, lesson: Lesson, index: int, helps: Sequence[str] = ()) -> str | None:
    """What the teacher does in the minutes of a step; None where its task tells all there is.

    `index` is the step's in the lesson, from 0. `helps` are the author's own paragraphs about it:
    where one says how to keep what was tried, nothing is added.
    """
    step = lesson.steps[index]
    if step.minutes < LEAST_MINUTES or any("keep" in text.casefold() for text in helps):
        return None
    goes_told = _tells_goes(step, helps)
    if step.phase == "explore":
        if _number_of_goes(step, helps):
            return "Between goes, name one thing that you saw, and let everyone try that."
        return (
            "Let them try for most of the time. Stop twice: name one thing that you saw, "
            "and let everyone try that."
        )
    if step.phase in ("make", "develop"):
        return _making(dance, step, shown_next=_shown_next(lesson, index), goes_told=goes_told)
    if step.phase == "join":
        return None if goes_told else _joining(dance, step)
    return None


def _tells_goes(step: Step, helps: Sequence[str]) -> bool:
    """Whether the author says how many goes the step has, or in what order."""
    return _IN_ORDER.search(step.task) is not None or _number_of_goes(step, helps)


def _number_of_goes(step: Step, helps: Sequence[str]) -> bool:
    return any(_GOES.search(text) for text in (step.task, step.you, step.say, *helps) if text)


def _making(dance: Dance, step: Step, *, shown_next: bool, goes_told: bool) -> str | None:
    if any(_improvised(dance, name) for name in step.makes):
        return _playing(step, goes_told=goes_told)
    who, show = _WHO[step.grouping]
    limited = _HOW_OFTEN.search(step.task) is not None
    at_last = "" if shown_next or limited else f" In the last minute, {show}."
    if goes_told and not limited:
        return _in_its_order(dance, step)
    if step.settles and all(dance.choices[name].by == "class" for name in step.settles):
        return (
            "Everybody tries each way once. Then they vote, and dance the one chosen a few times, "
            f"until they know it.{at_last}"
        )
    if _is_their_own(dance, step):
        if limited:
            return (
                f"First {who} tries, only as often as the task says. Then say “Keep one”, and they "
                "dance the one they kept once."
            )
        return (
            f"For about half the time, {who} tries ways of doing it. Then say “Keep one”. "
            f"Now they dance the one they kept a few times, until they know it.{at_last}"
        )
    if limited:
        return (
            f"{_what_is_given(dance, step)} Take it a piece at a time, slowly and with no counts; "
            "then as it is danced, only as often as the task says."
        )
    counted = all(dance.sections[n].kind == "counted" for n in step.makes if n in dance.sections)
    whole = "all of it with the counts; then as it is danced" if counted else "all of it as it goes"
    sides = any(_IN_SIDES.search(text) for text in (step.task, step.you, step.say) if text)
    if sides:
        often = "twice" if step.minutes >= _MINUTES_FOR_TWO_EACH else "once"
        return (
            f"{_what_is_given(dance, step)} Say it through once; then each side dances it {often}."
        )
    return (
        f"{_what_is_given(dance, step)} Take it a piece at a time, slowly and with no counts; then "
        f"{whole}, two or three times.{at_last}"
    )


def _playing(step: Step, *, goes_told: bool) -> str:
    """How what is made up on the spot is played again, and what of it is kept."""
    kept = (
        "Only what they choose is kept; the rest is new every time."
        if step.settles or _ASKS.search(step.task)
        else "Nothing is fixed or kept."
    )
    if goes_told:
        return f"Between goes, say one thing that you saw and want to see again. {kept}"
    return (
        "Play it once. Say one thing that you saw and want to see again. Play it again, another "
        f"way. {kept}"
    )


def _in_its_order(dance: Dance, step: Step) -> str | None:
    """Where goes and order are given: how long to try; None where there is nothing to try."""
    if not _is_their_own(dance, step):
        return None
    voted = step.settles and all(dance.choices[name].by == "class" for name in step.settles)
    then = "Then they vote" if voted else "Then say “Keep one”"
    return f"Keep to the order of the task; about half the time is for trying. {then}, and go on."


def _what_is_given(dance: Dance, step: Step) -> str:
    """Whether the moves are new to pupils, or theirs already and only changed or put together."""
    names = (*step.makes, *step.develops)
    if any(dance.motifs[name].made_by != "teacher" for name in names if name in dance.motifs):
        return "The moves are given: how each pupil does them is their own."
    if any(name in dance.motifs for name in names) or not names:
        return "It is given, so there is nothing to invent."
    if any(name in dance.developments for name in names):
        return (
            "They dance what they have already, changed in a way that is given: nothing to choose."
        )
    return "They put together what they have already, in an order that is given: nothing to choose."


def _joining(dance: Dance, step: Step) -> str:
    joined = [dance.sections[name] for name in step.joins if name in dance.sections]
    joins_only = _JOINS_ONLY.search(step.task) is not None
    what = "each join" if joins_only else "it"
    slowly = (
        f"Walk {what} through once with no counts, and once with counts."
        if not joined or any(one.kind == "counted" for one in joined)
        else f"Walk {what} through once slowly, saying each cue, and once as it goes."
    )
    if joins_only:
        return f"{slowly} Dance nothing yet."
    return (
        f"{slowly} Practise only the place where one part turns into the next. Then dance from the "
        "part before into it."
    )


def _is_their_own(dance: Dance, step: Step) -> bool:
    """Whether anything that the step makes, changes or settles is for the pupils to decide."""
    made = (dance.motifs[name] for name in step.makes if name in dance.motifs)
    named = (*step.makes, *step.develops)
    changed = (dance.developments[name] for name in named if name in dance.developments)
    return (
        bool(step.settles)
        or any(_leaves_something(motif, step) for motif in made)
        or any(development.choice is not None for development in changed)
    )


def _leaves_something(motif: Motif, step: Step) -> bool:
    """Whether pupils make some of a motif; where a teacher begins it, if the task asks for that."""
    if motif.made_by == "teacher then pupils":
        said = f"{step.task} {step.say or ''}"
        return bool(_ASKS.search(said) or (_MAY_ASK.search(said) and not _LEARNS.search(said)))
    return motif.made_by != "teacher"


def _improvised(dance: Dance, name: str) -> bool:
    return name in dance.sections and dance.sections[name].kind == "improvised"


def _shown_next(lesson: Lesson, index: int) -> bool:
    """Whether the step itself or the next one is the showing."""
    return any(step.shows for step in lesson.steps[index : index + 2])
