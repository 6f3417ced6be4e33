"""A move can be passed on without the teacher dancing it.

Not every teacher can or will dance, and a pupil at the back cannot see. Words for each move,
a card, a picture or a pupil who has it do the same work. Warm-ups and cool-downs, which anyone can
lead, are left alone.

Bad:
    task: Watch me and copy.
Good:
    say: Lean away, side-step twice, jump, and sink for two.
    task: Copy the card that goes up.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.development import roots
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.shown_by_teacher import BY_HAND, BY_TEACHER, MOVES_IN_WORDS
from build_tools.views.dance.when_made import inside
from build_tools.views.written.unit_text import Found, unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "common practice, no source; Skorji and McKenzie, Developmental Medicine and Child Neurology "
    "39, 1997, on how easily the order of moves is lost"
)
NEEDS = ("unknown-name",)
FIELDS = ("say", "task", "you")
LED = ("warm-up", "cool-down")
ENOUGH = 2
"""So many moves told in words say what to do."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that leaves its moves to the teacher's dancing alone."""
    done: set[tuple[int, int]] = set()
    for found in unit_text(unit).saying(BY_TEACHER, FIELDS):
        place = _step_of(found)
        if place is None or place in done:
            continue
        done.add(place)
        step = unit.lessons[place[0]].steps[place[1]]
        if step.phase in LED or _said_in_words(unit.dance, step) or _other_way(step):
            continue
        yield Finding(
            found.file,
            found.field.path,
            f"step {place[1] + 1} needs the teacher to dance it "
            f'("{found.said.text}"), and gives no words, card or picture for the moves',
            "say the moves in words with their counts, or name a card or a pupil to copy",
        )


def _step_of(found: Found) -> tuple[int, int] | None:
    """The lesson and the step, both from 0."""
    path = found.field.path
    return (found.document - 1, int(path[1])) if path[:1] == ("steps",) else None


def _said_in_words(dance: Dance, step: Step) -> bool:
    """Whether what the step names has pupils' words on every action."""
    names = inside(dance, (*step.makes, *step.develops, *step.dances, *step.joins, *step.shows))
    motifs = [
        dance.motifs[m] for name in names if name not in dance.sections for m in roots(dance, name)
    ]
    return bool(motifs) and all(action.word for motif in motifs for action in motif.actions)


def _other_way(step: Step) -> bool:
    texts = (step.say, step.task, step.you, step.easier)
    told = {said.text for text in texts for said in MOVES_IN_WORDS.all_in(text)}
    return len(told) >= ENOUGH or BY_HAND.in_any((*texts, step.look_for))
