"""In England's key stages 2 and 3, a later lesson asks pupils to compare with an earlier one.

The national curriculum asks pupils of Years 3 to 9 to compare their performances with previous
ones. It takes one question: what is clearer than in lesson 1? Pupils then see that they improve.

Bad:
    years: [{nation: England, years: [3, 4]}]
    every lesson: questions: [{question: "What did you see first?", …}]
Good:
    years: [{nation: England, years: [3, 4]}]
    lesson 2: questions: [{question: "What is clearer than in lesson 1?", looks_back_to: 1, …}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.written.questions import asked, looks_back

GRADE: Grade = "question"
SOURCE = (
    "Department for Education, National curriculum in England: physical education, 2013: compare "
    "their performances with previous ones"
)
FIRST_YEAR, LAST_YEAR = 3, 9


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding if no question from the second lesson on looks back."""
    later = unit.lessons[1:]
    years = [
        int(year)
        for one in unit.years
        if one.nation == "England"
        for year in one.years
        if year.isdigit()
    ]
    if not later or not any(FIRST_YEAR <= year <= LAST_YEAR for year in years):
        return
    if any(looks_back(one.question) for lesson in later for one in asked(lesson)):
        return
    last = later[-1]
    talk = last.look_and_talk
    span = f"lesson {last.number}" if len(later) == 1 else f"lessons 2 to {last.number}"
    yield Finding(
        last.file,
        ("look_and_talk", "questions", len(talk.questions) - 1, "question")
        if talk
        else ("lesson",),
        f"no question in {span} compares with an earlier lesson, as England asks in Years 3 to 9",
        "ask what is clearer than in an earlier lesson, and give its number in `looks_back_to`",
    )
