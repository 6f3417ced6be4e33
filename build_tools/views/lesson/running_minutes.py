"""How a teacher who never taught dance runs the minutes of a step in which pupils make something.

Try, keep, repeat, show a neighbour, where something is the pupils' own; in parts, then whole, where
all of it is given; play, say what worked and play again, where nothing is kept: common practice, no
source. The minutes to try in are half of the step's, and marked, so that a page can say those of
the day where the lesson is fitted to another slot.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from build_tools.model.dance import Dance, Motif
from build_tools.model.lesson import Lesson, Step
from build_tools.page_words.words import N_, _
from build_tools.sentences.stopping_at_sounds import stops_at_sounds
from build_tools.views.lesson.goes_said import after_a_go, number_of_goes, tells_goes
from build_tools.views.lesson.shown_at_last import shown_at_last
from build_tools.views.lesson.trying_said import (
    chosen_anew,
    minutes_to_try,
    one_thing_open,
    what_to_keep,
    who_tries,
)

LEAST_MINUTES = 3
"""A shorter step is over before it can be divided."""
_ASKS = re.compile(r"\b(?:choos\w*|try|tries|agree|pick|vote|decide|invent|find)\b", re.IGNORECASE)
"""Words of a task that leave something of the moves to pupils."""
_MAY_ASK = re.compile(r"\byour own\b|\bfrom the (?:\w+ )?cards\b", re.IGNORECASE)
"""Words that do so too, unless the task is to learn: learn it, with your own thing in mind."""
_LEARNS = re.compile(r"\blearn\b", re.IGNORECASE)
_JOINS_ONLY = re.compile(r"\bjoins only\b|\bonly the joins\b", re.IGNORECASE)
_HOW_OFTEN = re.compile(
    r"\bonce each\b|\beach \w+ once\b|\bonce more\b|\brest\b.{1,8}\bagain\b"
    r"|\brest (?:after|between)\b",
    re.IGNORECASE,
)
"""Words of a step that limit the goes, as where two lean on one another: no more is asked then."""
_LEARNED = N_(
    "All learn the moves together, to slow words; then in time; then do the tasks as written."
)
_IN_SIDES = re.compile(
    r"\bchange over\b|\bchange (?:the )?sides\b|\bchange places\b|\beach (?:side|half)\b",
    re.IGNORECASE,
)
"""The class works in two sides, one after the other."""
_MINUTES_FOR_TWO_EACH = 6
"""In fewer, two sides have a go each. Common practice, no source."""
_MINUTES_TO_SHOW, _MINUTES_TO_SHOW_WHAT_IS_GIVEN = 5, 6
"""In fewer, the last minute is wanted for dancing: of what is theirs there is more to see, of what
is given more to learn. Common practice, no source."""


def run_in_words(dance: Dance, lesson: Lesson, index: int, helps: Sequence[str] = ()) -> str | None:
    """What the teacher does in the minutes of a step; None where its task tells all there is.

    `index` is the step's in the lesson, from 0. `helps` are the author's own paragraphs about it:
    where one says how to keep what was tried, nothing is added.
    """
    step = lesson.steps[index]
    if step.minutes < LEAST_MINUTES or any("keep" in text.casefold() for text in helps):
        return None
    goes_told = tells_goes(step, helps)
    if step.phase == "explore":
        if number_of_goes(step, helps):
            return after_a_go(step, helps)
        if step.grouping == "half class":
            return _("When the halves change over, name one thing that you saw.")
        if stops_at_sounds(" ".join(filter(None, (step.say, step.task, step.you)))):
            return _(
                "Twice, while all are still, name one thing that you saw, and let everyone try "
                "that next."
            )
        return _(
            "Let them try for most of the time. Stop twice: name one thing that you saw, "
            "and let everyone try that."
        )
    if step.phase in ("make", "develop"):
        limited = _HOW_OFTEN.search(" ".join(filter(None, (step.task, step.you)))) is not None
        shown_next = _shown_next(lesson, index)
        return _making(
            dance,
            step,
            at_last=shown_at_last(lesson, index),
            shown_next=shown_next,
            goes_told=goes_told,
            limited=limited,
        )
    if step.phase == "join":
        return None if goes_told else _joining(dance, step)
    return None


def _making(
    dance: Dance, step: Step, *, at_last: str, shown_next: bool, goes_told: bool, limited: bool
) -> str | None:
    if any(_improvised(dance, name) for name in step.makes):
        return _playing(step, goes_told=goes_told)
    least = _MINUTES_TO_SHOW if _is_their_own(dance, step) else _MINUTES_TO_SHOW_WHAT_IS_GIVEN
    unshown = shown_next or limited or step.minutes < least
    shown = () if unshown else (at_last,)
    if goes_told and not limited:
        return _in_its_order(dance, step)
    if step.settles and all(dance.choices[name].by == "class" for name in step.settles):
        voted = _(
            "Everybody tries each way once. Then they vote, and dance the one chosen a few times, "
            "until they know it."
        )
        return " ".join([voted, *shown])
    if _is_their_own(dance, step):
        who = who_tries(dance, step)
        if limited:
            tried = _("First {who} tries, only as often as the step says.", who=who)
            once = _(
                "Then say “{keep}”, and they dance what they kept once.", keep=what_to_keep(step)
            )
            return f"{tried} {_then(dance, step, once)}"
        keep, what = what_to_keep(step), one_thing_open(dance, step)
        tried = (
            _(
                "For {minutes} {who} tries one thing: {what}.",
                minutes=minutes_to_try(step),
                who=who,
                what=what,
            )
            if what
            else _(
                "For {minutes} {who} tries ways of doing it.", minutes=minutes_to_try(step), who=who
            )
        )
        then = _(
            "Then say “{keep}”. Now they dance all of it with what they kept, a few times, until "
            "they know it.",
            keep=keep,
        )
        then = _then(dance, step, then)
        return " ".join([*(_taught(dance, step) if what else ()), tried, then, *shown])
    given = _what_is_given(dance, step)
    if limited:
        slowly = _(
            "Take it a piece at a time, slowly and with no counts; then as it is danced, only as "
            "often as the step says."
        )
        return f"{given} {slowly}"
    counted = all(dance.sections[n].kind == "counted" for n in step.makes if n in dance.sections)
    sides = any(_IN_SIDES.search(text) for text in (step.task, step.you, step.say) if text)
    if sides:
        often = (
            _("Say it through once; then each side dances it twice.")
            if step.minutes >= _MINUTES_FOR_TWO_EACH
            else _("Say it through once; then each side dances it once.")
        )
        return f"{given} {often}"
    whole = (
        _(
            "Take it a piece at a time, slowly and with no counts; then all of it, counted slowly; "
            "then at its own beat, two or three times."
        )
        if counted
        else _(
            "Take it a piece at a time, slowly and with no counts; then all of it as it goes, two "
            "or three times."
        )
    )
    return " ".join([given, whole, *shown])


def _playing(step: Step, *, goes_told: bool) -> str:
    """How what is made up on the spot is played again, and what of it is kept."""
    kept = (
        _("Only what they choose is kept; the rest is new every time.")
        if step.settles or _ASKS.search(step.task)
        else _("Nothing is fixed or kept.")
    )
    if goes_told:
        between = _("Between goes, say one thing that you saw and want to see again.")
        return f"{between} {kept}"
    played = _(
        "Play it once. Say one thing that you saw and want to see again. Play it again, another "
        "way."
    )
    return f"{played} {kept}"


def _in_its_order(dance: Dance, step: Step) -> str | None:
    """Where goes and order are given: how long to try, or else how the moves are learned.

    None where there is nothing to try and nothing new.
    """
    if not _is_their_own(dance, step):
        new = step.phase == "make" and any(name in dance.motifs for name in step.makes)
        return _(_LEARNED) if new or _LEARNS.search(step.task) else None
    voted = step.settles and all(dance.choices[name].by == "class" for name in step.settles)
    what = one_thing_open(dance, step)
    tries = (
        _("{minutes} to try, again and again: {what}.", minutes=minutes_to_try(step), what=what)
        if what
        else _("{minutes} to try, again and again, ways of doing it.", minutes=minutes_to_try(step))
    )
    then = (
        _("Then they vote, and dance it that way.")
        if voted
        else _("Then say “{keep}”, and dance the task with it.", keep=what_to_keep(step))
    )
    then = _then(dance, step, then)
    return " ".join([*(_taught(dance, step) if what else ()), tries, then])


def _then(dance: Dance, step: Step, kept: str) -> str:
    """What is said when trying is over; what may be chosen anew at any time is not kept."""
    return _("Before each go, say “You may choose again.”") if chosen_anew(dance, step) else kept


def _taught(dance: Dance, step: Step) -> Iterator[str]:
    """That the moves are the teacher's, where only one thing in them is open."""
    if any(name in dance.motifs for name in step.makes):
        yield _("Teach the moves first: they are given.")


def _what_is_given(dance: Dance, step: Step) -> str:
    """Whether the moves are new to pupils, or theirs already and only changed or put together."""
    names = (*step.makes, *step.develops)
    if any(dance.motifs[name].made_by != "teacher" for name in names if name in dance.motifs):
        return _("The moves are given: how each pupil does them is their own.")
    if any(name in dance.motifs for name in names) or not names:
        return _("It is given, so there is nothing to invent.")
    if any(name in dance.developments for name in names):
        return _(
            "They dance what they have already. How it is changed is given: they choose nothing."
        )
    return _("They put together what they have already. The order is given: they choose nothing.")


def _joining(dance: Dance, step: Step) -> str:
    joined = [dance.sections[name] for name in step.joins if name in dance.sections]
    joins_only = _JOINS_ONLY.search(step.task) is not None
    counted = not joined or any(one.kind == "counted" for one in joined)
    if joins_only:
        slowly = (
            _("Walk each join through once with no counts, and once with counts.")
            if counted
            else _("Walk each join through once slowly, saying each cue, and once as it goes.")
        )
        return slowly + " " + _("Dance nothing yet.")
    slowly = (
        _("Walk it through once with no counts, and once with counts.")
        if counted
        else _("Walk it through once slowly, saying each cue, and once as it goes.")
    )
    return f"{slowly} " + _(
        "Practise only the place where one part turns into the next. Then dance from the part "
        "before into it."
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
