"""What each part and field of a unit's file is called on the preview's pages: never by notation."""

from __future__ import annotations

from typing import Any

from build_tools.comparing.labels import LESSON, UNIT
from build_tools.problem import FieldPath
from build_tools.source.file_lines import at

FEW = 80
"""Letters that say which part is meant."""
_NAMED = frozenset(
    {"sections", "motifs", "developments", "choices", "end_points", "words", "allow", "roles"}
)
"""Fields that hold parts under names that the author gave."""
_ONE = {
    "steps": "Step",
    "items": "Picture, sound, poem or object",
    "pictures": "Picture",
    "ask": "Question",
    "questions": "Question",
    "answers": "Answer",
    "sections": "Section",
    "motifs": "Motif",
    "actions": "Move",
    "developments": "Changed motif",
    "choices": "Choice",
    "from": "Thing to choose from",
    "end_points": "End point",
    "transitions": "Way from section to section",
    "danced": "Line of what is danced",
    "heard": "Piece of what is heard",
    "skills": "Skill",
    "ending": "Part of the ending",
    "curriculum": "Curriculum link",
    "years": "School years of a nation",
    "read_by": "Reading",
    "words": "Word",
    "allow": "Rule that is broken on purpose",
    "roles": "Part in the group",
    "collect": "Thing to get",
    "classroom_first": "Thing to do first",
    "safety": "Thing to check",
    "rules": "Rule",
    "add": "Added move",
    "earlier": "Earlier unit",
}
"""One part of each list, and of what stands under names."""
_WHOLE = {
    "stimulus": "What the dance starts from",
    "dance": "The whole dance",
    "sections": "Sections of the dance",
    "motifs": "Motifs",
    "developments": "Changed motifs",
    "transitions": "From section to section",
    "choices": "Choices that pupils have",
    "end_points": "End points",
    "skills": "What pupils need first",
    "ending": "The very end",
    "curriculum": "Curriculum",
    "builds_on": "What it builds on",
    "leads_to": "What it leads to",
    "words": "Words pupils meet",
    "kit": "What to wear and collect",
    "space": "The room it needs",
    "tried": "Whether it has been taught",
    "allow": "Rules broken on purpose",
    "steps": "Steps",
    "look_and_talk": "Looking and talking",
    "next": "Where to start next",
    "change": "Ways to change the lesson",
    "if": "When something goes otherwise",
    "pictures": "Pictures of this lesson",
    "items": "Pictures, sounds, poems and objects",
    "sound": "The sound",
    "start": "How they stand at the start",
    "end": "How they stand at the end",
    "danced": "What is danced",
    "heard": "What is heard",
    "groups": "The groups and their parts",
    "roles": "The parts in a group",
    "sides": "Names of the hall’s sides",
    "adapted_from": "What it was made from",
    "read_by": "Who read it",
    "ask": "Questions to ask",
    "questions": "Questions to ask",
    "answers": "Answers pupils may give",
    "can_wait": "Whether it can wait",
    "draft": "Whether it is a draft",
}
"""Fields whose label is only good in a sentence about a change, or that have none."""
_BESIDES = {
    "motifs.*.actions[].as": "The class’s word for it",
    "motifs.*.actions[].with": "What is done at the same moment",
    "motifs.*.actions[].dynamics": "How it is done",
    "sections.*.danced[].as": "How the parts fit in time",
    "sections.*.danced[].what": "What is danced",
    "sections.*.danced[].who": "Who dances it",
    "sections.*.groups.size": "How many in a group",
    "sections.*.heard[].by": "Who makes the sound",
    "sections.*.heard[].on": "On which counts",
    "sections.*.heard[].louder": "Which counts are louder",
    "sections.*.heard[].says": "What is said on each count",
    "sections.*.start.within": "How a group stands",
    "sections.*.end.within": "How a group stands",
    "developments.*.of": "What it is made from",
    "developments.*.and": "What it is combined with",
    "steps[].ask[].looks_back_to": "The lesson it looks back to",
    "look_and_talk.questions[].looks_back_to": "The lesson it looks back to",
    "ending[].who": "Which pupils",
    "curriculum[].says": "Its words or code",
}
"""Fields inside of fields, that the sentences about a change have no label for."""
_TELLS = ("does", "title", "idea", "question", "as", "what", "every_pupil", "skill")
"""Fields by which one knows a part, the plainest first."""


def field_name(kind: str, path: FieldPath) -> str:
    """What the last field of `path` in a file of `kind`, unit or lesson, is called."""
    name = str(path[-1])
    if name in _WHOLE and not (len(path) > 1 and path[-2] in _NAMED) and "heard" not in path[:-1]:
        return _WHOLE[name]
    labels = UNIT if kind == "unit" else LESSON
    pattern = _pattern(path)
    label = labels.known.get(pattern)
    named = _BESIDES.get(pattern) or name.replace("_", " ")
    plain = label[0].removeprefix("the ") if label else named
    return plain[:1].upper() + plain[1:]


def thing_name(kind: str, path: FieldPath) -> str:
    """What the part of a file at `path` is called: Step 3, question 1."""
    parts: list[str] = []
    for n, step in enumerate(path):
        around = str(path[n - 1]) if n else ""
        one = _ONE.get(around)
        if isinstance(step, int):
            parts[-1] = f"{one or parts[-1]} {step + 1}"
        elif around in _NAMED:
            parts[-1] = f"{one} {step}"
        else:
            parts.append(field_name(kind, path[: n + 1]))
    if not parts:
        return "The whole unit" if kind == "unit" else "The whole lesson"
    return ": ".join((parts[0], *(part[:1].lower() + part[1:] for part in parts[1:])))


def one_of(path: FieldPath) -> str:
    """What one more part of the list, or of what stands under names, at `path` is called."""
    name = next((str(step) for step in reversed(path) if isinstance(step, str)), "")
    return _ONE.get(name, "One of them")


def any_in(path: FieldPath) -> str | int:
    """A step to any part of what stands at `path`: a name, or a place in a list."""
    return "*" if path and path[-1] in _NAMED else 0


def says_of(data: Any, path: FieldPath = ()) -> str:
    """A part of a file in a few words: the first text in it that is a sentence of its own."""
    part = at(data, path) if path else data
    if isinstance(part, dict):
        part = next((part[name] for name in _TELLS if isinstance(part.get(name), str)), part)
    while isinstance(part, dict | list) and part:
        held = list(part.values()) if isinstance(part, dict) else part
        texts = [one for one in held if isinstance(one, str)]
        part = texts[min(1, len(texts) - 1)] if texts else held[0]
    return "" if part is None or isinstance(part, bool) else str(part)[:FEW]


def _pattern(path: FieldPath) -> str:
    """The path as the labels are written: `[]` for a place in a list, `*` for a name."""
    made = ""
    for n, step in enumerate(path):
        if isinstance(step, int):
            made += "[]"
        else:
            named = n > 0 and path[n - 1] in _NAMED
            made += ("." if made else "") + ("*" if named else step)
    return made
