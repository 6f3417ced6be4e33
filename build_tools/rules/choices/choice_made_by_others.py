"""A choice is made in the lesson by those who make it in the unit.

The unit has the class choose one way for all, and the step says "each for yourself": walkers,
skippers and side-steppers meet in one ring; or each is to choose, and the class votes it away.

Bad:
    choices: {our-step: {what: The step we use, from: [walk, skip], by: class, if_not: walk}}
    lesson 1: settles: [our-step], task: Choose your step, each for yourself.
Good:
    choices: {our-step: {what: The step we use, from: [walk, skip], by: class, if_not: walk}}
    lesson 1: settles: [our-step], task: Choose one step, as a class.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)
_BY = {
    "each pupil": Saying(
        """
        each|everyone|everybody|all ~2 for|by yourself|yourselves|themselves
        each|everyone|everybody ~1 keeps|chooses|picks|decides|choose|pick|decide|keep|takes !how
        each of you ~1 keep|choose|pick|decide|take
        choose|pick|keep|decide for|by yourself|yourselves|themselves
        choose|pick|keep|decide ~3 you|they ~1 =like ~1 best|most
        each ~2 one they|you ~1 like|prefer
        """
    ),
    "class": Saying(
        """
        as|for ~1 whole|a|the class
        class|all|everyone ~1 votes|vote
        vote ~2 for|on|by
        count|counting ~1 hands|votes
        hands up for
        """
    ),
}


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that has others settle a choice than the unit."""
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            by = {unit.dance.choices[one].by for one in step.settles if one in unit.dance.choices}
            if len(by) != 1 or len(step.settles) != 1:
                continue
            whose = next(iter(by))
            told = [(f, getattr(step, f) or "") for f in ("say", "task", "you")]
            if whose in _BY and _BY[whose].in_any(text for _, text in told[1:2]):
                continue
            for field, text in told:
                found = next((s for o, s in _BY.items() if o != whose and s.said(text)), None)
                if whose in ("pairs", "groups") or found is None:
                    continue
                said = found.said(text)
                yield Finding(
                    lesson.file,
                    ("steps", n, field),
                    f'`{field}` says "{said.text if said else text}", but `{step.settles[0]}` is '
                    f"chosen by {'the class' if whose == 'class' else whose}",
                    "let those choose who do in the unit, or mend `by` there",
                )
                break
