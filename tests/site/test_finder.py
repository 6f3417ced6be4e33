"""The finder on the front page: a teacher with a topic, a class, a slot and a room."""

from __future__ import annotations

import re
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.support.browser import address_of, is_inside, reader
from tests.support.built_sites import CONTENT, build, html_pages
from tests.support.sound_bank import real_bank

POOL, MAGNETS = "Twelve hours in a rock pool", "Pull, push, stick"


@pytest.fixture(scope="module")
def two_units(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A site of two units: the rock pool, and the same lessons under other words and years."""
    folder = tmp_path_factory.mktemp("two units")
    content = folder / "content"
    shutil.copytree(CONTENT, content, ignore=lambda _, names: set(names) & {"units"})
    for slug in ("rock-pool", "magnets"):
        shutil.copytree(CONTENT / "units" / "rock-pool", content / "units" / slug)
    file = content / "units" / "magnets" / "unit.md"
    text = file.read_text(encoding="utf-8")
    for field, words in {
        "title": MAGNETS,
        "topics": "[magnets, forces]",
        "subjects": "[Science]",
        "summary": "Two ends pull together and two ends push apart.",
        "    years": "[5, 6]",
    }.items():
        text, changed = re.subn(f"^{field}: .*$", f"{field}: {words}", text, flags=re.MULTILINE)
        assert changed == 1, field
    file.write_text(text, encoding="utf-8")
    build(content, folder / "site")
    return folder / "site"


@pytest.fixture
def front(browser: Browser, two_units: Path) -> Iterator[Page]:
    """The front page of the site of two units."""
    with reader(browser, two_units) as at:
        at.page.goto(address_of(two_units, "index.html"))
        yield at.page


def shown(page: Page) -> list[str]:
    """The titles of the units that are to be seen."""
    titles = page.get_by_role("main").get_by_role("heading", level=3)
    return [title for title in titles.all_inner_texts() if title]


def look_for(page: Page, words: str) -> list[str]:
    """Type words into the finder and read the titles that are left."""
    page.get_by_role("searchbox").fill(words)
    return shown(page)


def told(page: Page) -> str:
    """What the finder says about what it found."""
    return page.locator('[role="status"]').text_content() or ""


def test_a_teacher_finds_a_unit_by_topic_and_opens_its_first_lesson(
    browser: Browser, site: Path
) -> None:
    with reader(browser, site) as at:
        at.page.goto(address_of(site, "index.html"))
        at.page.get_by_role("searchbox").press_sequentially("rock pools")
        assert POOL in shown(at.page)
        at.page.get_by_role("main").get_by_role("link", name=POOL).click()
        assert at.page.get_by_role("heading", level=1).inner_text() == POOL
        at.page.get_by_role("main").get_by_role("link", name="Lesson 1").first.click()
        assert at.page.url.endswith("/lesson-1.html")
        assert "Lesson 1 of" in at.page.get_by_role("main").inner_text()
        assert at.said == []
        assert [address for address in at.requests if not is_inside(address, site)] == []


def test_nothing_is_hidden_before_anything_is_asked(front: Page) -> None:
    assert shown(front) == sorted([POOL, MAGNETS])
    assert told(front) == ""


@pytest.mark.parametrize(
    ("words", "title"),
    [
        ("rock pools", POOL),
        ("Rock Pool", POOL),
        ("coast", POOL),
        ("magnet", MAGNETS),
        ("forces science", MAGNETS),
        # a slip: a letter lost, two swapped, one doubled, one wrong
        ("rok pools", POOL),
        ("cosats", POOL),
        ("maggnets", MAGNETS),
        ("magnits", MAGNETS),
        # a near word, from the list of topics
        ("seaside", POOL),
        ("rockpool", POOL),
        ("limpets", POOL),
        ("magnetism", MAGNETS),
        ("gravity", MAGNETS),
    ],
)
def test_a_topic_word_a_slip_and_a_near_word_find_the_one_unit(
    front: Page, words: str, title: str
) -> None:
    assert look_for(front, words) == [title]
    assert told(front) == "1 unit found."


def test_nonsense_says_so_and_offers_the_nearest(front: Page) -> None:
    assert look_for(front, "xqzv")
    assert "No unit for “xqzv”" in told(front)
    assert "The nearest: " in told(front)
    look_for(front, "magnificent magnetons")
    assert f"The nearest: {MAGNETS}" in told(front)


def test_the_words_can_be_taken_back(front: Page) -> None:
    look_for(front, "seaside")
    assert len(look_for(front, "")) == 2
    assert told(front) == ""


def test_a_year_leaves_the_units_for_that_year(front: Page) -> None:
    year = front.get_by_label("School year")
    year.select_option(label="Year 5 (England)")
    assert shown(front) == [MAGNETS]
    year.select_option(label="Year 3 (England)")
    assert shown(front) == [POOL]
    assert look_for(front, "magnets")
    assert "No unit for “magnets” for Year 3 (England)" in told(front)


def test_a_slot_leaves_the_units_whose_longest_lesson_fits(front: Page) -> None:
    bank = real_bank()
    unit = next(unit for unit in bank.units if unit.slug == "rock-pool")
    longest = max(lesson.minutes for lesson in unit.lessons)
    slot = front.get_by_label("Minutes")
    slot.fill(str(longest))
    assert len(shown(front)) == 2
    assert told(front) == "2 units found."
    slot.fill(str(longest - 1))
    assert f"{longest - 1} minutes" in told(front)
    assert "No unit" in told(front)


def test_a_space_says_how_each_unit_is_danced_there(front: Page) -> None:
    bank = real_bank()
    space = next(unit for unit in bank.units if unit.slug == "rock-pool").space
    ways = {"A hall": space.hall, "Half a hall": space.half_hall, "A classroom": space.classroom}
    for label, way in ways.items():
        front.get_by_label("Where you dance").select_option(label=label)
        text = front.get_by_role("main").inner_text()
        assert text.count(way) == 2
        assert not [other for other in ways.values() if other != way and other in text]


def test_without_script_every_unit_is_listed_and_no_dead_finder(
    browser: Browser, site: Path
) -> None:
    bank = real_bank()
    with reader(browser, site, script=False) as at:
        at.page.goto(address_of(site, "index.html"))
        assert shown(at.page) == sorted(unit.title for unit in bank.units if not unit.draft)
        assert not at.page.locator("form").is_visible()
    assert "index.html" in html_pages(site)
