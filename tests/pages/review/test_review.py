"""The advisers' page: what it shows, what it counts, and that no other page knows of it."""

from __future__ import annotations

import dataclasses
from collections import defaultdict
from dataclasses import replace
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from build_tools.checking.check_bank import Allowance, Report
from build_tools.comparing.change import Change, Weight
from build_tools.comparing.comparison import Comparison, SinceLast
from build_tools.pages.review.review import review_page
from build_tools.pages.review.review_views import ReviewView
from build_tools.problem import Problem
from build_tools.rules.catalogue import all_rules
from build_tools.views.words.time_since import time_since, years_since
from tests.pages.review.built import SMALL, make
from tests.pages.test_contexts import POLICY, environment, unexplained, watched
from tests.support import axe
from tests.support.banks import CONTENT
from tests.support.browser import address_of, reader
from tests.support.built_sites import files
from tests.support.drawn import Seen, seen_in
from tests.support.shared import made_once
from tests.support.sound_bank import real_bank, real_unit

RULE = "open-place"
PLACE = f"rules.html#{RULE}"
NARROW, WIDE = 320, 1280


def problem(line: int, severity: str, rule: str = RULE) -> Problem:
    assert severity in ("error", "question", "note")
    return Problem(
        f"units/{real_unit().slug}/lesson-2.md", line, 3, rule,
        severity,  # type: ignore[arg-type]
        f"message {line} & more", f"mend {line}",
    )  # fmt: skip


REPORT = Report(
    real_bank(),
    (
        problem(9, "note"),
        problem(30, "question"),
        problem(12, "question", "file-unreadable"),
        Problem("bank.yml", 2, 1, RULE, "note", "the bank says `little`", "say more"),
    ),
    (Allowance(problem(40, "question"), "agreed for a long hall"),),
    0,
)


NONE_KEPT = SinceLast(None, None, ())


def view(report: Report = REPORT, since: SinceLast = NONE_KEPT) -> ReviewView:
    assert report.bank is not None
    earlier = {unit.slug: since for unit in report.bank.units}
    context = review_page(report.bank, report, earlier).context
    assert isinstance(context, ReviewView)
    return context


def html(report: Report = REPORT, since: SinceLast = NONE_KEPT) -> str:
    return environment().get_template("review/review.html").render(view=view(report, since))


def seen() -> Seen:
    return seen_in(html())


def test_each_problem_has_grade_place_message_help_and_the_way_to_its_rule() -> None:
    (unit,) = (u for u in view().units if u.title == real_unit().title)
    assert [(p.grade, p.place, p.message, p.help, p.rule.href) for p in unit.problems] == [
        ("question", "lesson-2.md, line 12", "Message 12 & more.", "Mend 12.", "rules.html"),
        ("question", "lesson-2.md, line 30", "Message 30 & more.", "Mend 30.", PLACE),
        ("note", "lesson-2.md, line 9", "Message 9 & more.", "Mend 9.", PLACE),
    ]  # fmt: skip
    assert [(a.place, a.reason) for a in unit.allowances] == [
        ("lesson-2.md, line 40", "Agreed for a long hall.")
    ]
    assert [p.message for p in view().bank_problems] == ["The bank says “little”"]
    assert "Message 12 &amp; more." in html()


def test_what_changed_since_the_edition_before_is_said_by_weight() -> None:
    changes = (
        Change("step 3 of lesson 2 is 2 minutes shorter (was 7, now 5)", Weight.TEACHING),
        Change("the licence changed & more", Weight.DANCE),
        Change("the title was reworded", Weight.WORDING),
    )
    comparison = Comparison("1.0.0", "1.1.0", changes, "2.0.0")
    since = SinceLast("earlier/paper-boats-1.0.0", comparison, ("earlier/odd: it is no zip file",))
    last = view(since=since).units[0].last
    assert last.since == "Compared with edition 1.0.0, kept in earlier/paper-boats-1.0.0."
    assert last.verdict == "These changes call for edition 2.0.0; the unit says 1.1.0."
    assert [part.changes for part in last.parts] == [
        ("The licence changed & more.",),
        ("Step 3 of lesson 2 is 2 minutes shorter (was 7, now 5).",),
        ("The title was reworded.",),
    ]  # fmt: skip
    page = html(since=since)
    assert "The licence changed &amp; more." in page
    assert "earlier/odd: it is no zip file" in page


def test_a_unit_without_an_edition_before_says_how_to_keep_one() -> None:
    last = view().units[0].last
    assert last.verdict == ""
    assert "content/earlier" in last.since
    assert "Kept, but" not in html()


def test_every_rule_has_its_place_on_the_rules_page() -> None:
    problems = tuple(problem(n, "note", r.name) for n, r in enumerate(all_rules(), start=1))
    report = replace(REPORT, problems=problems)
    (unit,) = (u for u in view(report).units if u.problems)
    assert {p.rule.href for p in unit.problems} == {f"rules.html#{r.name}" for r in all_rules()}


def test_it_ends_with_what_only_a_person_can_judge() -> None:
    tail = seen().text().rpartition("What only a person can judge")[2]
    for words in (
        "Imagination",
        "Truth to the stimulus",
        "The worth of the pupils’ choices",
        "Safety",
    ):
        assert words in tail


def test_licences_of_units_and_parts_are_there() -> None:
    text = seen().text()
    for unit in real_bank().units:
        for item in unit.stimulus.items:
            assert item.title in text
    assert text.count("CC BY-SA 4.0") >= len(real_bank().units)


@pytest.mark.parametrize(
    ("day", "as_of", "said"),
    [
        ("2026-11-25", "2026-11-25", "0 days"),
        ("2026-11-24", "2026-11-25", "1 day"),
        ("2024-02-28", "2024-03-01", "2 days"),
        ("2026-09-27", "2026-11-25", "59 days"),
        ("2026-09-26", "2026-11-25", "1 month"),
        ("2026-06-25", "2026-11-25", "5 months"),
        ("2026-06-26", "2026-11-25", "4 months"),
        ("2024-11-26", "2026-11-25", "23 months"),
        ("2024-11-25", "2026-11-25", "2 years"),
        ("2016-12-01", "2026-11-25", "9 years"),
        ("2026-12-01", "2026-11-25", "6 days after the bank's own day"),
        ("2026-02-30", "2026-11-25", "not a day of the calendar"),
    ],
)
def test_ages_are_counted_on_the_calendar(day: str, as_of: str, said: str) -> None:
    assert time_since(day, as_of) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ('"perform dances" (Department for Education, 2013)', "2013, 13 years"),
        ("first in 1999, then 2025", "2025, 1 year"),
        ("EXA 1-08a", "no year is given"),
        ("code 20131", "no year is given"),
        ("as of 2026", "2026, this year"),
    ],
)
def test_a_published_text_is_as_old_as_the_last_year_it_names(text: str, said: str) -> None:
    assert years_since(text, "2026-11-25") == said


def test_ages_follow_the_banks_day_and_not_the_clock() -> None:
    later = replace(real_bank(), as_of="2029-11-29")
    assert {u.age for u in view(replace(REPORT, bank=later)).units} == {"3 years"}
    assert "2013, 16 years" in {s.age for s in view(replace(REPORT, bank=later)).standards}


def test_drafts_are_reviewed_and_not_linked() -> None:
    draft = replace(real_unit(), draft=True)
    bank = replace(real_bank(), units=(draft,))
    shown = view(replace(REPORT, bank=bank))
    assert [(u.title, u.href) for u in shown.units] == [(f"{draft.title} (draft)", None)]


def test_the_template_uses_every_field_and_every_field_is_explained() -> None:
    used: dict[type, set[str]] = defaultdict(set)
    template = environment().get_template("review/review.html")
    assert template.render(view=watched(view(), used)) == html()
    idle = {
        kind.__name__: left
        for kind, names in used.items()
        if (left := {f.name for f in dataclasses.fields(kind)} - names)
    }
    assert idle == {}
    assert unexplained.__doc__


def test_it_keeps_the_policy_and_its_tables_can_be_read_and_reached() -> None:
    found = seen()
    assert POLICY in [a.get("content") for n, a in found.elements if n == "meta"]
    assert not [n for n, a in found.elements if n in ("style", "script") or "style" in a]
    assert len(found.ids()) == len(set(found.ids()))
    tables = [n for n, _ in found.elements if n == "table"]
    assert len(tables) == len([n for n, _ in found.elements if n == "caption"]) > 2
    frames = [a for n, a in found.elements if a.get("class") == "table"]
    assert len(frames) == len(tables)
    assert all(a["tabindex"] == "0" and a["aria-labelledby"] in found.ids() for a in frames)
    assert all(a.get("scope") in ("col", "row") for n, a in found.elements if n == "th")
    inside = [h for h in found.values("a", "href") if h.startswith("#")]
    assert {h[1:] for h in inside} <= set(found.ids())


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path]:
    """The site of the real bank with a question to show, without the page and with it."""
    folder = made_once(tmp_path_factory, "review", make)
    return folder / "plain", folder / "review"


def test_what_changed_is_on_the_built_page(built: tuple[Path, Path]) -> None:
    page = (built[1] / "review.html").read_text(encoding="utf-8")
    now = SMALL.edition
    whole, part, least = now.split(".")
    called = f"{whole}.{part}.{int(least) + 1}"
    assert f"These changes call for edition {called}; the unit says {now}." in page
    assert "Kept, but not to be read:" in page


def test_every_other_file_is_the_same_with_and_without_it(built: tuple[Path, Path]) -> None:
    plain, review = (files(folder) for folder in built)
    assert set(review) - set(plain) == {"review.html"}
    assert {name: review[name] for name in plain} == plain
    assert b"minutes-do-not-add-up" in review["review.html"]
    assert files(CONTENT)


@pytest.mark.parametrize(("width", "dark"), [(WIDE, False), (NARROW, True)])
def test_it_breaks_no_rule_of_access_and_fits_the_screen(
    built: tuple[Path, Path], browser: Browser, width: int, dark: bool
) -> None:
    with reader(
        browser, built[1], width=width, dark=dark, served=True, extra_script=axe.source()
    ) as at:
        at.page.goto(address_of(built[1], "review.html", served=True))
        found = axe.run(at.page)
        assert found.violations == ()
        wide = at.page.evaluate("document.documentElement.scrollWidth")
        assert wide <= width
