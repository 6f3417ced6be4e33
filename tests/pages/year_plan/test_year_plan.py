"""The page of a year plan: what it says, that its template uses every field, and its policy."""

from __future__ import annotations

import dataclasses
from collections import defaultdict
from datetime import date

from build_tools.pages.page import Page
from build_tools.pages.year_plan.year_plan import year_plan_page
from build_tools.planning.asked import Asked, Slot
from build_tools.planning.year_plan import YearPlan, year_plan
from tests.pages.test_contexts import POLICY, environment, watched
from tests.support.drawn import seen_in
from tests.support.sound_bank import real_bank
from tests.views.teaching.made_covers import NOTHING, bare

UNITS = [
    bare("one", title='Boats & "sails"', words=NOTHING | {"actions": ("turn",)}),
    bare("two", words=NOTHING | {"actions": ("turn", "jump"), "space": ("V",)}),
    bare("three", words=NOTHING | {"dynamics": ("free",)}, lessons=9),
]
SLOTS = (Slot("Autumn", 6, date(2026, 9, 7)), Slot("Spring", 6), Slot("Summer", 6))


def page(units_at: str | None = "../site/units") -> Page:
    plan = year_plan(UNITS, Asked(("England", "2"), SLOTS))
    assert isinstance(plan, YearPlan)
    return year_plan_page(real_bank(), plan, ("See to this.",), "plan --year 2", units_at)


def html(of: Page) -> str:
    return environment().get_template(of.template).render(view=of.context)


def test_it_says_what_comes_once_again_and_not_at_all() -> None:
    text = seen_in(html(page())).text()
    for words in ("turn (2 times)", "V shape", "free flow", "7 September 2026", "See to this."):
        assert words in text
    assert "It covers 3 of the 4 things" in text
    assert "Nothing: no other unit fits here." in text


def test_it_leads_to_units_only_where_they_are() -> None:
    links = seen_in(html(page())).values("a", "href")
    assert set(links) == {"../site/units/one/index.html", "../site/units/two/index.html"}
    assert seen_in(html(page(None))).values("a", "href") == []


def test_the_template_uses_every_field() -> None:
    used: dict[type, set[str]] = defaultdict(set)
    plain = page()
    template = environment().get_template(plain.template)
    assert template.render(view=watched(plain.context, used)) == html(plain)
    idle = {
        kind.__name__: left
        for kind, names in used.items()
        if (left := {field.name for field in dataclasses.fields(kind)} - names)
    }
    # no ways to other pages are around a plan, which lies in a folder of its own, in English
    assert idle == {"Frame": {"home", "finder", "foot", "words"}}


def test_it_keeps_the_policy_and_escapes_what_authors_write() -> None:
    found = seen_in(html(page()))
    assert POLICY in [a.get("content") for n, a in found.elements if n == "meta"]
    assert not [n for n, a in found.elements if n == "style" or "style" in a]
    assert "Boats &amp; &#34;sails&#34;" in html(page())
