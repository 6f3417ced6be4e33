"""What pupils make is danced in a section, or a step says that it is left out.

Pupils remember what they made and wait for it. Leaving something out is a choice worth saying
aloud; losing it is not.

Bad:
    no section dances leaf, or anything made from it
    lesson 2: makes: [leaf]
Good:
    lesson 2: makes: [leaf]
    sections: {B: {danced: [{what: [leaf], as: unison}, …], …}}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Section
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.left_out import left_out
from build_tools.sentences.own_names import holds_word
from build_tools.views.dance.when_made import held, progress, sources, steps_in_order

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each motif or development made in a step and lost after it."""
    dance, ways = unit.dance, progress(unit)
    in_sections = held(dance, tuple(dance.sections))
    lost = [n for n, way in ways.items() if way.made and n not in in_sections]
    if not lost or all(not section.danced for section in dance.sections.values()):
        return
    come_from = {source for name in lost for source in sources(dance, name)}
    for name in lost:
        if name in come_from or _in_open_section(unit, name) or _said_to_go(unit, name):
            continue
        yield Finding(
            unit.file,
            ("motifs" if name in dance.motifs else "developments", name),
            f"`{name}` is made in {ways[name].made[0]}, but none of the {len(dance.sections)} "
            "sections dances it, and no step says it is left out",
            f"write `{name}` in the `danced` of a section, or say in a step that it is left out",
        )


def _in_open_section(unit: Unit, name: str) -> bool:
    """Whether it belongs to a section that does not write what is danced in it."""
    dance, ways = unit.dance, progress(unit)
    called = {name.replace("-", " ")}
    if name in dance.motifs:
        called |= {a.word.lower() for a in dance.motifs[name].actions if a.word}
    for letter, section in dance.sections.items():
        if section.danced:
            continue
        text = _written(section)
        if any(holds_word(text, word) for word in called):
            return True
        for _, _, step in steps_in_order(unit):
            if name in (*step.makes, *step.develops, *step.dances) and letter in (
                *step.makes,
                *step.dances,
            ):
                return True
        first = {place.lesson for place in ways[letter].made[:1]}
        if section.kind == "timed" and first == {ways[name].made[0].lesson}:
            return True
    return False


def _written(section: Section) -> str:
    texts = (section.idea, section.improvised_from or "", *section.improvised_rules)
    return " ".join(texts).lower()


def _said_to_go(unit: Unit, name: str) -> bool:
    called = name.replace("-", " ")
    for _, _, step in steps_in_order(unit):
        named = name in (*step.makes, *step.develops, *step.dances)
        if any(left_out(text, called, named) for text in (step.say, step.task)):
            return True
    return False
