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

import re
from collections.abc import Iterable, Iterator

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.development import roots
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_inclusion import OTHER_WAY, demonstrations
from build_tools.views.dance.progress import inside
from build_tools.views.written.unit_text import unit_text

_END = re.compile(r"[.!?]")

GRADE: Grade = "question"
SOURCE = (
    "common practice, no source; Skorji and McKenzie, Developmental Medicine and Child Neurology "
    "39, 1997, on how easily the order of moves is lost"
)
NEEDS = ("unknown-name",)
FIELDS = ("say", "task")
LED = ("warm-up", "cool-down")
ENOUGH, ENOUGH_LISTED = 8, 3
"""So many words beside the demonstration, or listed after a colon in it, say what to do."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that leaves its moves to the teacher's dancing alone."""
    text = unit_text(unit)
    phrases = tuple(p for p in demonstrations(text.words) if p in text.lower)
    if not phrases:
        return
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            if step.phase in LED:
                continue
            field = next((f for f in FIELDS if _holds(getattr(step, f), phrases)), None)
            if field is None or _said_in_words(unit.dance, step) or _other_way(step, phrases):
                continue
            yield Finding(
                lesson.file,
                ("steps", n, field),
                f"step {n + 1} needs the teacher to dance it, and gives no words, card or picture "
                "for the moves",
                "say the moves in words with their counts, or name a card or a pupil to copy",
            )


def _said_in_words(dance: Dance, step: Step) -> bool:
    """Whether what the step names has pupils' words on every action."""
    names = inside(dance, (*step.makes, *step.develops, *step.dances, *step.joins, *step.shows))
    motifs = [
        dance.motifs[m] for name in names if name not in dance.sections for m in roots(dance, name)
    ]
    return bool(motifs) and all(action.word for motif in motifs for action in motif.actions)


def _other_way(step: Step, phrases: tuple[str, ...]) -> bool:
    said = " ".join(filter(None, (step.say, step.task, step.easier, step.look_for)))
    if OTHER_WAY.search(said):
        return True
    sentences = _END.split(f"{step.say or ''} . {step.task}")
    beside = [one for one in sentences if not _holds(one, phrases)]
    listed = [one.partition(":")[2] for one in sentences if _holds(one, phrases)]
    return _words(beside) >= ENOUGH or _words(listed) >= ENOUGH_LISTED


def _words(texts: Iterable[str]) -> int:
    return sum(len(text.split()) for text in texts)


def _holds(text: str | None, phrases: tuple[str, ...]) -> bool:
    low = (text or "").lower()
    return any(phrase in low for phrase in phrases)
