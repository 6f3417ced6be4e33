"""The finder on the front page: a teacher with a topic, a class, a slot and a room."""

from __future__ import annotations

import re
import shutil
from collections.abc import Iterable, Iterator
from dataclasses import replace
from pathlib import Path

import pytest
import yaml
from playwright.sync_api import Browser, Locator, Page

from build_tools.building.finder_files import the_hall
from build_tools.model.unit import SchoolYears
from build_tools.pages.front.front import FEW
from build_tools.pages.lesson.lesson import lesson_page
from build_tools.views.lesson.sessions import lesson_needs, sessions
from tests.support.banks import CONTENT, LOOKED_AT
from tests.support.browser import address_of, is_inside, reader
from tests.support.few_pages import with_front, with_pages
from tests.support.sound_bank import real_bank, real_unit, whole_bank

SEARCHES = yaml.safe_load(
    Path(__file__).with_name("teachers_searches.yml").read_text(encoding="utf-8")
)
MOST = 60_000
"""Bytes of the front page with its styles, its script and three pictures, the typeface apart."""
RIGHT_FIRST = 27
"""How many of the thirty have to be answered with the right unit first."""
ANSWERED = """
() => document.querySelector("form[data-awake]")
  && document.querySelector("[data-part='results']:not([aria-busy])")
  && [...document.querySelectorAll(".unit-card h3")]
    .filter((one) => one.checkVisibility()).map((one) => one.innerText.trim())
"""
EACH_FOUND = """
async (asked) => {
  const box = document.querySelector("[type=search]");
  const answered = () => document.querySelector("form[data-awake]")
    && document.querySelector("[data-part='results']:not([aria-busy])");
  const found = [];
  for (const words of asked) {
    box.value = words;
    box.dispatchEvent(new Event("input", { bubbles: true }));
    do await new Promise((done) => setTimeout(done, 5)); while (!answered());
    found.push([
      [...document.querySelectorAll(".unit-card h3")]
        .filter((one) => one.checkVisibility()).map((one) => one.innerText.trim()),
      document.querySelector("[role=status]").textContent,
    ]);
  }
  return found;
}
"""
"""What the finder shows and tells of each of many questions, typed one after another.

Asked within the page, since each key and each look from outside takes as long as the answer.
"""
POOL, MAGNETS = "Twelve hours in a rock pool", "Pull, push, stick"


@pytest.fixture(scope="module")
def three_fronts(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The front page of the three units for which the thirty searches were written down."""
    bank = real_bank()
    units = [unit for unit in bank.units if unit.slug in LOOKED_AT]
    return with_front(tmp_path_factory.mktemp("three"), bank, units, CONTENT)


@pytest.fixture(scope="module")
def two_units(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The front page of two units: the rock pool, and the same lessons in other words and years."""
    folder = tmp_path_factory.mktemp("two units")
    bank, pool = real_bank(), real_unit()
    magnets = replace(
        pool,
        slug="magnets",
        title=MAGNETS,
        topics=("magnets", "forces"),
        subjects=("Science",),
        summary="Two ends pull together and two ends push apart.",
        years=(SchoolYears("England", ("5", "6")),),
    )
    for slug in ("rock-pool", "magnets"):
        shutil.copytree(CONTENT / "units" / "rock-pool", folder / "content" / "units" / slug)
    site = with_front(folder / "site", bank, [magnets, pool], folder / "content")
    return with_pages(site, [lesson_page(bank, pool, pool.lessons[0])])


@pytest.fixture(scope="module")
def window(browser: Browser, two_units: Path) -> Iterator[Page]:
    """A window on the site of two units, for each test to open its front page in."""
    with reader(browser, two_units) as at:
        yield at.page


@pytest.fixture
def front(window: Page, two_units: Path) -> Page:
    """The front page of the site of two units, with nothing asked yet."""
    # the same page with another question would be no page to go to
    window.goto("about:blank")
    window.goto(address_of(two_units, "index.html"))
    return window


def shown(page: Page) -> list[str]:
    """The titles of the units that are to be seen, once the finder has answered."""
    titles: list[str] = page.wait_for_function(ANSWERED).json_value()
    return titles


def look_for(page: Page, words: str) -> list[str]:
    """Type words into the finder and read the titles that are left."""
    page.get_by_role("searchbox").fill(words)
    return shown(page)


def each_found(page: Page, asked: Iterable[str]) -> list[tuple[list[str], str]]:
    """For each of the words the titles that are left, and what the finder says of them."""
    return [(titles, said) for titles, said in page.evaluate(EACH_FOUND, [*asked])]


def told(page: Page) -> str:
    """What the finder says about what it found."""
    return page.locator('[role="status"]').first.text_content() or ""


def card(page: Page, title: str) -> Locator:
    """The card of the unit."""
    return page.locator(".unit-card:visible").filter(has_text=title)


def test_thirty_teachers_find_their_unit_first_and_every_no_is_honest(
    browser: Browser, three_fronts: Path
) -> None:
    site = three_fronts
    titles = {unit.slug: unit.title for unit in real_bank().units}
    in_titles = {word for title in titles.values() for word in re.findall(r"\w{4,}", title.lower())}
    right, wrong = 0, []
    with reader(browser, site) as at:
        at.page.goto(address_of(site, "index.html"))
        finds, refuses = SEARCHES["finds"], SEARCHES["refuses"]
        answers = each_found(at.page, [one["typed"] for one in finds])
        for search, (found, _) in zip(finds, answers, strict=True):
            right += found[:1] == [titles[search["unit"]]]
            wrong += [] if found[:1] == [titles[search["unit"]]] else [(search, found)]
        answers = each_found(at.page, [one["typed"] for one in refuses])
        for search, (found, said) in zip(refuses, answers, strict=True):
            near = [titles[search["near"]]] if search["near"] else []
            assert found[:1] == near, (search, found)
            assert said.startswith("No unit "), search
        assert at.said == []
        assert [address for address in at.requests if not is_inside(address, site)] == []
    assert len(SEARCHES["finds"]) == 30
    assert right >= RIGHT_FIRST, wrong
    for search in SEARCHES["finds"]:
        typed = set(re.findall(r"\w{4,}", search["typed"].lower())) - {"under"}
        assert not typed & in_titles, search


def test_what_two_teachers_typed_finds_what_the_bank_has(browser: Browser, site: Path) -> None:
    titles = {unit.slug: unit.title for unit in whole_bank().units}
    with reader(browser, site) as at:
        at.page.goto(address_of(site, "index.html"))
        everywhere, first, among = (SEARCHES[name] for name in ("everywhere", "first", "among"))
        asked = [*everywhere, *(one["typed"] for one in (*first, *among))]
        answers = dict(zip(asked, each_found(at.page, asked), strict=True))
        for typed in everywhere:
            assert str(len(titles)) in answers[typed][1], typed
        for search in first:
            assert answers[search["typed"]][0][:1] == [titles[search["unit"]]], search
        for search in among:
            found, _ = answers[search["typed"]]
            assert titles[search["unit"]] in found, (search, found)


def test_from_the_front_page_to_the_first_words_to_say_it_is_two_clicks(
    browser: Browser, site: Path, thorough: bool
) -> None:
    """Of a unit that the front page shows before anything is asked; of each in the long run."""
    units = {unit.title: unit for unit in whole_bank().units}
    with reader(browser, site) as at:
        front = address_of(site, "index.html")
        at.page.goto(front)
        titles = at.page.locator(".unit-card h3").all_inner_texts()
        assert len(titles) == FEW
        for title in titles if thorough else titles[:1]:
            unit = units[title]
            first = next(step.say for step in unit.lessons[0].steps if step.say)
            if at.page.url != front:
                at.page.goto(front)
            card(at.page, title).locator(".jump a").first.click()
            assert at.page.url.endswith(f"{unit.slug}/lesson-1.html")
            at.page.wait_for_load_state()
            # the second click, where a lesson's first screen is not yet enough
            if first.split(".")[0] not in at.page.get_by_role("main").inner_text():
                at.page.locator("a[href*='#card']").first.click()
            assert first.split(".")[0] in at.page.get_by_role("main").inner_text()


def test_nothing_is_hidden_before_anything_is_asked(front: Page) -> None:
    assert {MAGNETS, POOL} == set(front.locator(".unit-card h3").all_inner_texts())
    assert told(front) == ""
    assert not front.locator("form[data-awake]").count()


ONE_UNIT = (
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
    # half a word
    ("magn", MAGNETS),
)


def test_a_topic_word_a_slip_and_a_near_word_find_the_one_unit(front: Page) -> None:
    answers = each_found(front, [words for words, _ in ONE_UNIT])
    for (words, title), (found, said) in zip(ONE_UNIT, answers, strict=True):
        assert found[:1] == [title], words
        assert "found." in said, words


def test_nonsense_is_answered_with_an_honest_no(front: Page) -> None:
    assert look_for(front, "xqzv") == []
    assert told(front).startswith("No unit has anything near “xqzv”.")
    assert look_for(front, "magnets xqzv") == [MAGNETS]
    assert told(front) == "Nothing has “xqzv”. 1 unit found."


def test_a_word_of_english_is_no_slip_for_another(front: Page) -> None:
    """A teacher who typed folk was shown forks: what is a word is looked for as it stands."""
    # one of the vocabulary, near rock by its letters; one that every unit says; a topic of the bank
    for word in ("lock", "floor", "folk"):
        assert look_for(front, word) == [], word
        assert told(front).startswith(f"No unit has anything near “{word}”."), word


def test_the_words_can_be_taken_back(front: Page) -> None:
    look_for(front, "seaside")
    front.get_by_role("button", name="Start again").click()
    assert set(shown(front)) == {POOL, MAGNETS}
    assert told(front) == ""
    assert front.get_by_role("searchbox").input_value() == ""


def test_a_year_leaves_the_units_for_that_year(front: Page) -> None:
    year = front.get_by_label("Year", exact=True)
    year.focus()
    shown(front)
    year.select_option(value="england-5")
    assert shown(front) == [MAGNETS]
    year.select_option(value="england-3")
    assert shown(front) == [POOL]
    assert look_for(front, "magnets") == [MAGNETS]
    assert "No unit is about “magnets” and is for Year 3 (England)." in told(front)
    assert "It is for Years 5 and 6." in card(front, MAGNETS).inner_text()
    assert told(front).endswith("1 unit, of other years.")


def test_a_year_a_stage_and_minutes_can_be_typed(front: Page) -> None:
    assert look_for(front, "dance for y5") == [MAGNETS]
    assert look_for(front, "year 4") == [POOL]
    assert set(look_for(front, "ks2")) == {POOL, MAGNETS}
    look_for(front, "magnets 45 mins")
    assert "Planned for your 45 minutes." in card(front, MAGNETS).inner_text()
    look_for(front, "year 9 magnets")
    assert "No unit is for that school year." in told(front)


def test_minutes_are_fitted_and_carried_to_the_lesson(front: Page) -> None:
    bank = real_bank()
    unit = next(unit for unit in bank.units if unit.slug == "rock-pool")
    needs = lesson_needs(unit)
    longest = max(one.at_once for one in needs)
    minutes = front.get_by_label("Minutes", exact=True)
    for slot in (longest, longest - 1, max(one.each_of_two or 0 for one in needs)):
        minutes.fill(str(slot))
        assert len(shown(front)) == 2
        taken = sessions(needs, slot)
        if taken == len(unit.lessons):
            words = f"Planned for {needs[0].planned} minutes, fits your {slot}."
        else:
            words = f"{taken} sessions in your {slot} minutes."
        assert words in card(front, POOL).inner_text()
    minutes.fill("10")
    assert len(shown(front)) == 2
    assert "No unit fits 10 minutes." in told(front)
    assert "Too long for 10 minutes" in card(front, POOL).inner_text()
    minutes.fill(str(longest))
    front.get_by_label("Room").select_option(label="Half a hall")
    shown(front)
    card(front, POOL).locator(".jump a").first.click()
    assert front.url.endswith(f"lesson-1.html#fit={longest}-0-30-0-half")


def test_a_room_says_how_each_unit_is_danced_there(front: Page) -> None:
    bank = real_bank()
    space = next(unit for unit in bank.units if unit.slug == "rock-pool").space
    half = "30 pupils dance in four teams, in turns."
    ways = {"A hall": the_hall(space.hall), "Half a hall": half, "A classroom": space.classroom}
    for label, way in ways.items():
        front.get_by_label("Room").select_option(label=label)
        shown(front)
        assert way in card(front, POOL).inner_text()


def test_lists_narrow_and_say_how_many_are_left(front: Page) -> None:
    front.get_by_text("More choices").click()
    assert set(shown(front)) == {POOL, MAGNETS}
    subject = front.get_by_label("Subject", exact=True)
    options = subject.locator("option").all_inner_texts()
    assert options == ["Any", "English – 1", "Geography – 1", "Science – 2"]
    subject.select_option(value="geography")
    assert shown(front) == [POOL]
    assert front.locator("#finder-year option").all_inner_texts()[1:] == [
        "Year 3 (England) – 1",
        "Year 4 (England) – 1",
        "Year 5 (England) – 0",
        "Year 6 (England) – 0",
    ]
    look_for(front, "magnets")
    assert "No unit is about “magnets” and has “Geography”." in told(front)
    assert "It does not have: Geography." in card(front, MAGNETS).inner_text()


def test_the_address_keeps_the_question(browser: Browser, two_units: Path) -> None:
    with reader(browser, two_units) as at:
        at.page.goto(address_of(two_units, "index.html"))
        look_for(at.page, "magnits & more")
        at.page.get_by_label("Minutes", exact=True).fill("40")
        shown(at.page)
        asked = at.page.url
        at.page.goto("about:blank")
        at.page.goto(asked)
        assert shown(at.page) == [MAGNETS]
        assert at.page.get_by_role("searchbox").input_value() == "magnits & more"
        assert at.page.get_by_label("Minutes", exact=True).input_value() == "40"
        assert at.said == []


def test_without_script_the_page_leads_everywhere_and_shows_no_dead_finder(
    browser: Browser, site: Path
) -> None:
    with reader(browser, site, script=False) as at:
        at.page.goto(address_of(site, "index.html"))
        assert not at.page.locator("form").is_visible()
        for button in at.page.locator("button").all():
            assert not button.is_visible()
        assert at.page.get_by_role("link", name="By topic").is_visible()


def test_the_front_page_and_its_pictures_weigh_little(site: Path) -> None:
    html = (site / "index.html").read_text(encoding="utf-8")
    named = re.findall(r'<(?:link|script|img)[^>]* (?:href|src)="?([^": >]+)[" >]', html)
    files = {"index.html", *named} - {"assets/css/typeface.css"}
    assert len([name for name in files if "card." in name]) == 3
    assert sum((site / name).stat().st_size for name in files) <= MOST
