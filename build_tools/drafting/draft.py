"""The files of a draft, by name."""

from __future__ import annotations

from build_tools.drafting.asked import Asked, BankFacts
from build_tools.drafting.lesson_fields import lesson_fields, lesson_notes
from build_tools.drafting.plan import Fields, plan
from build_tools.drafting.unit_fields import unit_fields, unit_notes
from build_tools.shapes.schemas import Kind
from build_tools.shapes.shape import shape_of
from build_tools.source.said_once.shortened import shortened
from build_tools.source.typed.canonical import canonical
from build_tools.source.typed.what_was_read import Reading


def draft(asked: Asked, facts: BankFacts) -> dict[str, str]:
    """The text of unit.md and of each lesson's file. The same answers give the same text.

    What follows from the rest is left out, as `tidy` leaves it out.
    """
    made = plan(asked)
    unit = shortened(unit_fields(asked, facts, made), "unit", "unit.md")
    found = {"unit.md": page("unit", unit, unit_notes(asked, made))}
    for number in range(1, asked.lessons + 1):
        file = f"lesson-{number}.md"
        fields = shortened(lesson_fields(asked, made, number), "lesson", file)
        found[file] = page("lesson", fields, lesson_notes(asked, made, number))
    return found


def page(kind: Kind, data: Fields, notes: str) -> str:
    """One Markdown file: its fields between two lines of three hyphens, then its notes."""
    return f"---\n{canonical(Reading(data=data), shape_of(kind))}---\n{notes}"
