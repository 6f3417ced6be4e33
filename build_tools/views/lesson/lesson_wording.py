"""The words that stand round an author's own on a lesson's page, on paper and on its card."""

from __future__ import annotations

import re

from build_tools.model.lesson import Lesson, LookAndTalk, Question, Step
from build_tools.model.unit import Unit
from build_tools.page_words.words import N_, _, ngettext, of_schema
from build_tools.views.lesson.shortening import can_be_shortened
from build_tools.views.words.plain_words import listed, minutes_in_words
from build_tools.views.words.punctuation import quoted, sentence, small

DEFERENCE = N_("Your school’s risk assessment and your employer’s policy come before this page.")
EVERY_TIME = N_(
    "Every time: floor clear and dry after lunch, hair tied, jewellery off or covered, never "
    "socks alone, inhalers near, stop signal tried."
)
WAY_TO_TALK = N_("What to look for and ask: Look and talk, below")
PHASES = {
    "recall": N_("dance it again"),
    "explore": N_("try things out"),
    "develop": N_("change it"),
    "rehearse": N_("practise"),
    "join": N_("join it up"),
}
"""What kind of step it is in plain words, where the schema's word is one of the trade's."""
CHANGES = {
    "cue": N_("A clearer signal"),
    "partners": N_("Fewer or other partners"),
    "room": N_("Less space"),
    "task": N_("Seated, or on wheels"),
    "things": N_("Something to hold"),
}
_SHORT = "short_of_time"
TROUBLE = {
    "stuck": N_("They are stuck"),
    "finished": N_("Some finish early"),
    "loud": N_("It gets loud"),
    "silly": N_("It gets silly"),
    "will_not_join": N_("One won’t join in"),
    _SHORT: N_("You are short of time"),
    "sound_fails": N_("The sound fails"),
    "lesson_lost": N_("The lesson is cancelled"),
}


def phase_in_words(phase: str) -> str:
    """What kind of step it is: practise, try things out."""
    return _(PHASES[phase]) if phase in PHASES else of_schema(phase)


def step_in_short(lesson: Lesson, number: int) -> str:
    """The step of this number, from 1, in the lesson's short lines."""
    return f"{number}.\N{NO-BREAK SPACE}{lesson.steps[number - 1].does}"


_FOR_THE_TEACHER = re.compile(
    r"(?:^|(?<=[.;] ))(?:If (?:one|a pair|two|somebody) (?:is|are) left|(?:One|Two) (?:left|over)"
    r"|An? \w+ (?:left )?over|In a mixed class)\b.*"
)
"""The last sentences of how groups are made, where they are about who is over."""


def into_in_words(into: str) -> str:
    """How groups are made: in quotation marks what pupils are told; what is for the teacher not."""
    found = _FOR_THE_TEACHER.search(into)
    told = into[: found.start()].strip() if found else into
    if not found or not told:
        return quoted(into)
    return f"{quoted(told)} {found[0]}"


def where_in_words(step: Step) -> str | None:
    """Where pupils stand for a step and which way they face, as sentences."""
    place = sentence(step.place) if step.place else ""
    facing = _faced(step.facing) if step.facing else ""
    return f"{place} {facing}".strip() or None


def _faced(facing: str) -> str:
    small = f"{facing[:1].lower()}{facing[1:]}"
    return sentence(_("facing: {facing}", facing=small))


def changes_in_order(lesson: Lesson) -> tuple[tuple[str, str], ...]:
    """The lines of `change`: a clearer signal first, which costs nothing, then other partners."""
    return tuple((key, lesson.change[key]) for key in CHANGES if key in lesson.change)


def heading_of_change(key: str) -> str:
    """Which pupils or which room a line of `change` is for: by need, in plain words."""
    return _(CHANGES[key]) if key in CHANGES else key


def has_way_to_talk(lesson: Lesson, step: Step) -> bool:
    """Whether the step is for looking and talking, and the lesson says further down what of."""
    return lesson.look_and_talk is not None and step.phase == "look and talk"


def answers_in_words(question: Question) -> str | None:
    """Answers pupils may give, with a full stop at their end."""
    words = "; ".join(question.answers)
    if not words:
        return None
    return words if words.endswith((".", "?", "!")) else f"{words}."


def question_said(question: Question, lesson: Lesson) -> str:
    """The question as it is asked: of the lesson before pupils know that it was last time.

    A class of five-year-olds knows no lesson 1.
    """
    back = question.looks_back_to
    if back is None or back != lesson.number - 1:
        return question.question
    return re.sub(rf"\bin lesson {back}\b", _("last time"), question.question)


def looks_back_in_words(question: Question) -> str | None:
    """The lesson that a question looks back to, in words."""
    back = question.looks_back_to
    return _("looks back to lesson {number}", number=back) if back else None


def what_comes_after(unit: Unit, lesson: Lesson) -> str:
    """The heading over where the next lesson starts, or where the class goes from the last."""
    place = unit.lessons.index(lesson)
    if lesson is unit.lessons[-1]:
        return _("Where the class goes from here")
    return _("Where lesson {number} starts", number=unit.lessons[place + 1].number)


def looked_for_last_time(talk: LookAndTalk) -> str:
    """What was looked for in the lesson before."""
    what = talk.looking_for.strip()
    if "?" in what:
        return _("Last time you looked: {what}", what=sentence(what))
    inside = small(what.rstrip(".!"))
    if inside[:1].isupper():
        # a name keeps its capital, and so nothing is lost where it is none
        return _("Last time you looked for this: {what}", what=sentence(what))
    return _("Last time you looked for {what}.", what=inside)


def never_did(unit: Unit, lesson: Lesson) -> str:
    """The question whether the lesson before was never taught."""
    place = unit.lessons.index(lesson)
    before = unit.lessons[place - 1].number if place else lesson.number - 1
    return _("Never did lesson {number}? Start here:", number=before)


def lesson_before(unit: Unit, lesson: Lesson) -> Lesson | None:
    """The lesson before, if there is one."""
    place = unit.lessons.index(lesson)
    return unit.lessons[place - 1] if place else None


def trouble_in_words(lesson: Lesson) -> tuple[tuple[str, str], ...]:
    """A label and one line for each thing that can go wrong."""
    return tuple(
        (
            _(label),
            _step_named(lesson, lesson.trouble[key]) + (_short(lesson) if key == _SHORT else ""),
        )
        for key, label in TROUBLE.items()
        if key in lesson.trouble
    )


def _line_of(lesson: Lesson, key: str) -> str:
    named = _step_named(lesson, lesson.trouble[key])
    return f"{named}{_short(lesson)}" if key == _SHORT else named


_MAKE_STEP = re.compile(r"\bthe (?:first )?make step\b")


def _step_named(lesson: Lesson, words: str) -> str:
    """The words with "the make step" by its number and name, which is what a teacher looks for."""
    place = next((n for n, step in enumerate(lesson.steps) if step.phase == "make"), None)
    if place is None:
        return words
    does = quoted(lesson.steps[place].does)
    named = _("step {number}, {does}", number=place + 1, does=does)
    return _MAKE_STEP.sub(lambda _found: named, words)


def _short(lesson: Lesson) -> str:
    words = lesson.trouble[_SHORT]
    named = _left_out_by_number(words)
    meant = _left_out_by_phase(lesson, words)
    shorter = named | meant | _shortened_already(lesson, words)
    return f"{_left_out(lesson, named, meant)}{_later(lesson, shorter)}"


_IN_STEP = re.compile(r"\b[Ii]n steps? (\d+(?:(?:, | and |, and )\d+)*)")
_ONCE = re.compile(r"\b(?:[Rr]un|[Rr]ehearse|[Pp]lay)\b[^.;]*\bonce\b|\b[Oo]ne run\b")


def _shortened_already(lesson: Lesson, words: str) -> frozenset[int]:
    """The steps that the author's line makes shorter: by number, or those that are run once."""
    said = (number for found in _IN_STEP.finditer(words) for number in _NUMBERS.findall(found[1]))
    once = _ONCE.search(words) is not None
    runs = {n for n, one in enumerate(lesson.steps, start=1) if once and one.phase == "rehearse"}
    return frozenset({*map(int, said), *runs})


_NUMBERS = re.compile(r"\d+")
_LEAVE_OUT = re.compile(
    r"(?<!never )(?<!not )(?<!n['’]t )\b[Ll]eave out steps? (\d+(?:(?:, | and |, and )\d+)*)"
)


def _left_out_by_number(words: str) -> frozenset[int]:
    """The steps that the author's line leaves out by their numbers."""
    said = (number for found in _LEAVE_OUT.finditer(words) for number in _NUMBERS.findall(found[1]))
    return frozenset(map(int, said))


_PHASE_LEFT_OUT = re.compile(
    r"(?<!never )(?<!not )(?<!n['’]t )\b[Ll]eave out (?:the )?(?:"
    r"(?P<explore>exploring|explore step)|(?P<recall>recalling|recall step)|"
    r"(?P<rehearse>rehearsing|rehearse step))\b"
)


def _left_out_by_phase(lesson: Lesson, words: str) -> frozenset[int]:
    """The steps that the author's line leaves out by what they are for: leave out exploring.

    Where steps are marked as such that can wait, those are meant, and nothing is guessed.
    """
    if any(step.can_wait for step in lesson.steps):
        return frozenset()
    phases = {found.lastgroup for found in _PHASE_LEFT_OUT.finditer(words)}
    return frozenset(n for n, step in enumerate(lesson.steps, start=1) if step.phase in phases)


def _left_out(lesson: Lesson, named: frozenset[int], meant: frozenset[int]) -> str:
    """Which steps the author's line on short time means, and the minutes that they save.

    `named` are those that it gives by number, `meant` those that it gives by what they are for.
    """
    known = named | meant
    waits = [n for n, step in enumerate(lesson.steps, start=1) if step.can_wait or n in known]
    if not waits:
        return ""
    saved = minutes_in_words(sum(lesson.steps[n - 1].minutes for n in waits))
    if named.issuperset(waits):
        return " " + _("That is {minutes} of the plan.", minutes=saved)
    numbers = listed([str(number) for number in waits])
    return " " + ngettext(
        "That is step {steps}, {minutes} of the plan.",
        "That is steps {steps}, {minutes} of the plan.",
        len(waits),
        steps=numbers,
        minutes=saved,
    )


def _later(lesson: Lesson, named: frozenset[int]) -> str:
    """What else can be shortened: by a teacher who notices after that, else only beforehand.

    Where the author's line is about a late step, the earlier ones are over by then.
    """
    still = [one for one in can_be_shortened(lesson) if one.step not in named]
    given = [
        _("{number} off step {step}", step=one.step, number=one.minutes)
        if n
        else _("{minutes} off step {step}", step=one.step, minutes=minutes_in_words(one.minutes))
        for n, one in enumerate(still)
    ]
    if not given:
        return ""
    waits = {n for n, step in enumerate(lesson.steps, start=1) if step.can_wait}
    if any(one.step < min(named | waits, default=0) for one in still):
        return " " + _(
            "If you know beforehand that time is short, take {steps}.", steps=listed(given)
        )
    return " " + _("If you run short after that, take {steps}.", steps=listed(given))
