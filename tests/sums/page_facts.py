"""The facts of a lesson's steps as a page's script reads them off its page."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from html.parser import HTMLParser

from jinja2 import Template

from build_tools.building.templates import templates
from build_tools.model.lesson import Lesson as Written
from build_tools.model.unit import Unit
from build_tools.pages.pieces.for_scripts import step_data
from build_tools.views.lesson.step_facts import step_facts
from tests.sums.lessons import Lesson
from tests.support.page_script import Call, page_script

EACH_STEP = """
{%- from "pieces/step_data.html" import step_attributes -%}
{%- for step in steps %}<li {{ step_attributes(step) }}></li>{% endfor -%}
"""


def page_facts(unit: Unit, lesson: Written) -> Lesson:
    """What `bank.stepFacts` gives for the page's own attributes, written by its own template."""
    return facts_of_all([(unit, lesson)])[0]


def facts_of_all(lessons: Sequence[tuple[Unit, Written]]) -> list[Lesson]:
    """The same of many lessons, asked for in one go."""
    calls: list[Call] = []
    for unit, lesson in lessons:
        data = [step_data(facts) for facts in step_facts(unit, lesson)]
        calls.append(("stepFactsOf", (_attributes(_template().render(steps=data)),)))
    return page_script().answers(calls)


@cache
def _template() -> Template:
    return templates().from_string(EACH_STEP)


def _attributes(html: str) -> list[dict[str, str]]:
    """The data attributes of each element, by their names in a script."""
    found: list[dict[str, str]] = []

    class Reading(HTMLParser):
        def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
            assert tag == "li"
            found.append({_in_script(name): value or "" for name, value in attrs})

    Reading().feed(html)
    return found


def _in_script(attribute: str) -> str:
    first, *rest = attribute.removeprefix("data-").split("-")
    return first + "".join(word.capitalize() for word in rest)
