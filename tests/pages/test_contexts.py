"""Page contexts: every field explained, every field used, and nothing else asked for."""

from __future__ import annotations

import ast
import dataclasses
import json
import posixpath
import tomllib
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import fields, is_dataclass, replace
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from jinja2 import Environment

from build_tools.building.templates import templates
from build_tools.disk.places import OVERRIDES, PACKAGE
from build_tools.pages.about.about import Notice
from build_tools.pages.assemble import listed, shared_pages, unit_pages
from build_tools.pages.page import Page
from build_tools.pages.page_scripts import PAGE_SCRIPTS
from build_tools.pages.rules.rules import RuleEntry
from build_tools.rules.catalogue import all_rules
from build_tools.shapes.schemas import schema
from tests.support.banks import ROOT
from tests.support.drawn import Seen, seen_in
from tests.support.sound_bank import real_bank, real_unit

POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
    "media-src 'self'; "
    "font-src 'self'; base-uri 'none'; form-action 'none'"
)
SHOWN = ("unit", "lesson", "shared", "bank", "topics", "words", "near", "pictures")
KILOBYTE = 1000


def environment() -> Environment:
    return templates()


@cache
def pages() -> tuple[Page, ...]:
    rules = [RuleEntry(r.name, r.family, r.grade, r.manual, r.source) for r in all_rules()]
    said = json.loads((ROOT / "NOTICES.json").read_text(encoding="utf-8"))
    notices = [Notice(**one) for one in (*said["bundled"], *said["packages"])]
    bank = real_bank()
    units = [listed(bank, unit) for unit in bank.units]
    shared = shared_pages(bank, units, rules, notices, {name: schema(name) for name in SHOWN})
    every = {unit.slug for unit in bank.units}
    own = [page for unit in bank.units for page in unit_pages(bank, unit, every)]
    return (*shared, *own)


@cache
def html(path: str) -> str:
    (page,) = (page for page in pages() if page.path == path)
    return environment().get_template(page.template).render(view=page.context)


@cache
def everything() -> tuple[tuple[Page, Seen], ...]:
    """Every page and what is in it, which nobody changes."""
    return tuple((page, seen_in(html(page.path))) for page in pages())


class Watched:
    """A context that lets only its documented fields be read and notes which were."""

    def __init__(self, value: Any, used: dict[type, set[str]]) -> None:
        self._value, self._used = value, used

    def __getattr__(self, name: str) -> Any:
        kind = type(self._value)
        if name not in {field.name for field in fields(kind)}:
            raise AttributeError(f"{kind.__name__} has no field {name}")
        self._used[kind].add(name)
        return watched(getattr(self._value, name), self._used)


def watched(value: Any, used: dict[type, set[str]]) -> Any:
    if is_dataclass(value):
        return Watched(value, used)
    if isinstance(value, tuple):
        return tuple(watched(one, used) for one in value)
    return value


def classes_of(file: Path) -> Iterator[ast.ClassDef]:
    for node in ast.parse(file.read_text(encoding="utf-8")).body:
        if isinstance(node, ast.ClassDef):
            yield node


def unexplained(node: ast.ClassDef) -> list[str]:
    """The fields of a class with no words below them."""
    found = []
    for place, statement in enumerate(node.body):
        if not isinstance(statement, ast.AnnAssign):
            continue
        after = node.body[place + 1] if place + 1 < len(node.body) else None
        explained = (
            isinstance(after, ast.Expr)
            and isinstance(after.value, ast.Constant)
            and isinstance(after.value.value, str)
        )
        if not explained:
            found.append(ast.unparse(statement.target))
    return found


def test_a_pages_parts_are_found_by_its_name() -> None:
    for page in pages():
        folder = page.template.partition("/")[0]
        assert page.template == f"{folder}/{folder}.html"
        assert type(page.context).__module__ == f"build_tools.pages.{folder}.{folder}"
        styles = {file.name for file in (OVERRIDES / folder).glob("*.css")}
        # a lesson's first screen is joined to the look
        assert styles - {"first_screen.css"} <= {f"{folder}.css"}


def test_the_contract_between_pages_names_them_all() -> None:
    contracts = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    (kept,) = (
        set(one["modules"])
        for one in contracts["tool"]["importlinter"]["contracts"]
        if one["type"] == "independence"
    )
    alone = {"review", "year_plan"}
    folders = {page.template.partition("/")[0] for page in pages()} | alone
    assert kept == {f"build_tools.pages.{folder}" for folder in folders}


def test_every_field_of_every_context_is_explained() -> None:
    modules = [file for file in sorted((PACKAGE / "pages").rglob("*.py")) if file.name != "page.py"]
    views = [node for file in modules for node in classes_of(file)]
    assert "LessonView" in {node.name for node in views}
    assert {node.name: found for node in views if (found := unexplained(node))} == {}


def test_the_check_on_explanations_sees_a_silent_field() -> None:
    (node,) = ast.parse('class V:\n    said: int\n    """Words."""\n    silent: str\n').body
    assert isinstance(node, ast.ClassDef)
    assert unexplained(node) == ["silent"]


def test_templates_use_every_field_and_ask_for_no_other() -> None:
    used: dict[type, set[str]] = defaultdict(set)
    for page in pages():
        template = environment().get_template(page.template)
        assert template.render(view=watched(page.context, used)) == html(page.path)
    unused = {
        kind.__name__: sorted(idle)
        for kind, names in used.items()
        if (idle := {field.name for field in fields(kind)} - names)
    }
    assert unused == {}


def test_a_template_that_asks_for_more_fails() -> None:
    page = pages()[0]
    asking = environment().from_string("{{ view.frame.colour }}")
    with pytest.raises(Exception, match="colour"):
        asking.render(view=page.context)


def test_contexts_are_frozen_and_hold_no_models() -> None:
    def walk(value: Any) -> Iterator[type]:
        if is_dataclass(value) and not isinstance(value, type):
            yield type(value)
            for field in fields(value):
                yield from walk(getattr(value, field.name))
        elif isinstance(value, tuple):
            for one in value:
                yield from walk(one)

    kinds = {kind for page in pages() for kind in walk(page.context)}
    assert all(kind.__module__.startswith("build_tools.pages.") for kind in kinds)
    for page in pages():
        with pytest.raises(dataclasses.FrozenInstanceError):
            page.context.frame = None  # type: ignore[attr-defined]


def test_every_page_carries_the_policy_and_nothing_it_refuses() -> None:
    for page, seen in everything():
        policies = [a["content"] for n, a in seen.elements if n == "meta" and "http-equiv" in a]
        assert policies == [POLICY], page.path
        for name, attributes in seen.elements:
            assert name != "style", page.path
            assert name != "script" or set(attributes) == {"defer", "src"}, page.path
            refused = [a for a in attributes if a == "style" or a.startswith("on")]
            assert refused == [], (page.path, name)


def test_ids_are_used_once_and_every_label_finds_its_own() -> None:
    for page, seen in everything():
        ids = seen.ids()
        assert len(ids) == len(set(ids)), page.path
        pointed = [
            a[key] for _, a in seen.elements for key in ("aria-labelledby", "for") if key in a
        ]
        assert set(pointed) <= set(ids), page.path


def test_every_link_goes_to_a_page_or_a_place_on_it() -> None:
    ids = {page.path: set(seen.ids()) for page, seen in everything()}
    media = {
        f"units/{unit.slug}/{item.file}"
        for unit in real_bank().units
        for item in unit.stimulus.items
        if item.file
    }
    for page, seen in everything():
        folder = posixpath.dirname(page.path)
        for href in seen.values("a", "href"):
            assert "://" not in href, (page.path, href)
            path, _, place = href.partition("#")
            goal = posixpath.normpath(posixpath.join(folder, path)) if path else page.path
            if "/media/" in goal:
                assert goal in media, (page.path, href)
                continue
            assert goal in ids, (page.path, href)
            assert not place or place in ids[goal], (page.path, href)


def test_styles_scripts_and_pictures_are_where_the_pages_look() -> None:
    made = {f"units/{u.slug}/{file}" for u in real_bank().units for file in u.media}
    made |= {f"units/{u.slug}/card.svg" for u in real_bank().units}
    made |= {f"assets/js/{name}" for name in PAGE_SCRIPTS}
    made |= {f"assets/css/{style.name}" for style in OVERRIDES.glob("*/*.css")}
    for page, seen in everything():
        folder = posixpath.dirname(page.path)
        wanted = [
            *seen.values("script", "src"),
            *seen.values("img", "src"),
            *(a["href"] for n, a in seen.elements if n == "link" and a["rel"] == "stylesheet"),
        ]
        for address in wanted:
            goal = posixpath.normpath(posixpath.join(folder, address))
            assert goal in made, (page.path, address)


def test_every_script_is_loaded_and_every_page_is_linked_from_another() -> None:
    loaded, linked = set[str](), {"index.html"}
    for page, seen in everything():
        folder = posixpath.dirname(page.path)
        loaded |= {posixpath.basename(address) for address in seen.values("script", "src")}
        # the finder fetches the rest of itself when somebody comes near it
        loaded |= {posixpath.basename(address) for address in seen.values("form", "data-finding")}
        goals = {
            posixpath.normpath(posixpath.join(folder, href.partition("#")[0]))
            for href in seen.values("a", "href")
            if not href.startswith("#")
        }
        linked |= goals - {page.path}
    # a lesson its card, at an address of its own; and the floor, as the dance from above who dances
    # at once, when somebody says which hall it is
    loaded |= {"card.js", "floor.js", "room.js"}
    # a year plan is a page of a folder of its own; none of these units has a recording
    loaded |= {"year_plan.js", "music.js"}
    assert set(PAGE_SCRIPTS) - loaded == set(), "give its name to frame(…, script=…)"
    assert {page.path for page in pages()} - linked == set(), "no page links to it"


def test_every_drawing_on_a_page_has_a_title_or_is_silent() -> None:
    for page, seen in everything():
        for (name, attributes), following in zip(seen.elements, seen.elements[1:], strict=False):
            if name == "svg" and attributes.get("aria-hidden") != "true":
                assert attributes["role"] == "img", page.path
                assert following[0] == "title", page.path


def _bare(text: str) -> str:
    """The words without marks of speech: within what is said, the page sets single ones."""
    return " ".join(text.translate(dict.fromkeys(map(ord, "\"“”‘’'"))).split())


def test_a_lesson_says_what_a_teacher_needs_in_the_order_of_the_morning() -> None:
    for unit in real_bank().units:
        for lesson in unit.lessons:
            seen = seen_in(html(f"units/{unit.slug}/lesson-{lesson.number}.html"))
            text = seen.text()
            order = [
                f"Lesson {lesson.number} of {len(unit.lessons)}",
                lesson.pupils_make,
                "You do not need to demonstrate.",
                "The lesson in short",
                "Before they move",
                "Step by step",
                "Look and talk",
                "Can’t dance today",
                "What if",
                "Your school’s risk assessment",
            ]
            found = [text.rindex(words) for words in order]
            assert found == sorted(found), (unit.slug, lesson.number)
            for step in lesson.steps:
                for words in (
                    step.say,
                    step.task,
                    step.look_for,
                    step.easier,
                    step.harder,
                    step.into,
                ):
                    assert words is None or _bare(words) in _bare(text)


def test_what_authors_write_is_escaped() -> None:
    unit = replace(real_unit(), title='Less < more & "so on"')
    page = unit_pages(real_bank(), unit)[0]
    shown = environment().get_template(page.template).render(view=page.context)
    assert "Less &lt; more &amp; &#34;so on&#34;" in shown
    assert "Less < more" not in shown


def test_a_units_pages_do_not_change_with_other_units() -> None:
    alone = replace(real_bank(), units=(real_unit(),))
    assert unit_pages(real_bank(), real_unit()) == unit_pages(alone, real_unit())


def test_a_bank_without_units_says_so() -> None:
    front = shared_pages(real_bank(), [], [], [], {name: schema(name) for name in SHOWN})[0]
    shown = environment().get_template("front/front.html").render(view=front.context)
    assert real_unit().title not in shown
    assert "No unit has been published yet." in shown


def test_styles_and_scripts_stay_small() -> None:
    """All together, as they are written, with the finder's 26 kB, the floor's 39 kB,
    the year plan's 12 kB, 38 kB for a hall of the day, 6 kB for what only scripts have use
    for on a lesson and its card, 3 kB to choose what one lesson hands out without a script, 7 kB
    to read what a page holds small, 3 kB for flocks that stand in clusters, 8 kB for groups that
    come side by side by columns and for who waits on the way there, 12 kB to make a card
    of its lesson, 1 kB to say which lesson is on the wall, 10 kB for the pictures part by part
    of the class of the day, 2 kB for whom a plan is drawn, 3 kB for
    who stands on a spot already and how far pairs stand in their rows, 1 kB for what would be wrong
    without another front or other steps, 4 kB for whose halves they are and what teams do to the
    minutes, 4 kB for one number of each thing to print, 1 kB for what makes room for the moves on
    paper, 4 kB for one team after another on the marks of a small hall, 1 kB for words beside a
    tall drawing on paper and what makes room there for teams, 1 kB for how figures are read, words
    as messages, 7 kB for what a step plays of a recording, 4 kB for a second further side and the
    head of a lesson in teams;
    what a page loads of them is held in tests/site/test_weight.py."""
    files = [*OVERRIDES.rglob("*.css"), *OVERRIDES.rglob("*.js")]
    assert sum(file.stat().st_size for file in files) < 486 * KILOBYTE


def test_the_guide_names_every_field_of_every_file() -> None:
    text = seen_in(html("writing.html")).text()
    for kind in ("unit", "lesson", "bank"):
        for name, field in schema(kind)["properties"].items():
            assert name in text
            if "description" in field:
                assert " ".join(field["description"].split()) in text
