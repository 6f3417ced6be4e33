"""Links and settings outlive an edition, from a folder and from a server, in two browsers.

How a page is found again, and what of an address a browser hands on, is said by the URL Standard
(WHATWG): a relative address takes over neither query nor fragment, so the entry page has to.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from build_tools.publishing.publish import publish
from build_tools.publishing.shared_folder import held
from build_tools.publishing.signposts import take_out
from tests.support.browser import address_of, reader
from tests.support.tabs import ChromiumTab, Tab, complaints, served, wait_for

UNIT = "through-the-gap"
"""Of pages that open soon: which unit they are of, nothing here asks."""
LESSON = f"units/{UNIT}/lesson-2.html"
HALL_AND_LESSON = ("lesson-2.html", "wall.html")
FITTED = "38-7-25-2-half"
SECOND = "of the second edition"
TITLE = "The dance unit bank"
CODE = "danceUnitBank.settings.code(danceUnitBank.settings.fit())"


@dataclass(frozen=True, slots=True)
class Share:
    """A folder that others read, and the address of its top as a browser opens it."""

    folder: Path
    address: str
    first: Path
    second: Path

    def publish(self, site: Path, keep: int = 1) -> Path:
        name = publish(site, self.folder, "2026-11-01", TITLE, keep).edition
        # Servers tell the age of a file in whole seconds, and these editions follow within one.
        pointer = self.folder / "current.js"
        made = pointer.stat().st_mtime - (10 if site == self.first else 0)
        os.utime(pointer, (made, made))
        return self.folder / "editions" / name

    def take_out(self, edition: Path) -> None:
        """As publishing does once an edition is old."""
        assert take_out(held(self.folder), [edition.name], TITLE) == (edition.name,)


@pytest.fixture(scope="module")
def first(site: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Of the site what is opened here: each test publishes it anew, twice or more."""
    folder = tmp_path_factory.mktemp("first") / "site"
    shutil.copytree(site / "assets", folder / "assets")
    wanted = [site / "index.html", *(site / "units" / UNIT / name for name in HALL_AND_LESSON)]
    wanted += (site / "units" / UNIT).rglob("*.js")
    wanted += (site / "units" / UNIT / "media").iterdir()
    for path in wanted:
        to = folder / path.relative_to(site)
        to.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy2(path, to)
    return folder


@pytest.fixture(scope="module")
def second(first: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The site of the next edition: every lesson and hall page says which it is."""
    folder = tmp_path_factory.mktemp("second") / "site"
    shutil.copytree(first, folder)
    for page in (folder / "units" / UNIT / name for name in HALL_AND_LESSON):
        text = page.read_text(encoding="utf-8")
        text = text.replace("</title>", f" {SECOND}</title>", 1)
        page.write_text(text, encoding="utf-8", newline="\n")
    return folder


WAYS = ("chromium-file", "chromium-http", "firefox-file", "firefox-http")


def tried(usually: str) -> pytest.MarkDecorator:
    """Each browser, from a folder and a server; in the usual run `usually` alone."""
    ways = [pytest.param(way, marks=() if way == usually else pytest.mark.thorough) for way in WAYS]
    return pytest.mark.parametrize("where", ways, indirect=True)


@pytest.fixture
def where(request: pytest.FixtureRequest) -> tuple[str, str]:
    """Which browser, and whether it opens a folder or asks a server."""
    browser, _, how = request.param.partition("-")
    return browser, how


@pytest.fixture
def share(where: tuple[str, str], first: Path, second: Path, tmp_path: Path) -> Iterator[Share]:
    folder = tmp_path / "what schools réad"
    folder.mkdir()
    if where[1] == "file":
        yield Share(folder, f"{folder.resolve().as_uri()}/", first, second)
        return
    with served(folder) as address:
        yield Share(folder, address, first, second)


@pytest.fixture
def tab(request: pytest.FixtureRequest, where: tuple[str, str], browser: Browser) -> Iterator[Tab]:
    """A tab in each browser; Firefox starts only where it is asked for."""
    if where[0] == "firefox":
        yield request.getfixturevalue("firefox")
        return
    own = ChromiumTab(browser)
    yield own
    own.close()


def arrived(tab: Tab) -> str:
    """The address of the edition's page that an entry page led to."""
    wait_for(tab, "location.href.includes('/editions/') && document.readyState === 'complete'")
    found: str = tab.evaluate("location.href")
    return found


@tried("chromium-file")
def test_a_settings_link_made_in_one_edition_opens_in_the_next(tab: Tab, share: Share) -> None:
    old = share.publish(share.first)
    tab.fresh()
    tab.open(share.address + LESSON)
    assert f"/editions/{old.name}/{LESSON}" in arrived(tab)
    tab.click("#at-fit > summary")
    for name, number in zip(
        ("available", "changing", "dancing", "watching"), FITTED.split("-"), strict=False
    ):
        tab.fill(f"#at-fit-{name}", number)
    wait_for(tab, "document.querySelector('[data-link]').value.includes('#fit=38-7-25-2-')")
    link = tab.evaluate("document.querySelector('[data-link]').value")
    made = tab.evaluate(CODE)
    minutes = "[...document.querySelectorAll('.step .minutes')].map((one) => one.textContent)"
    fitted = tab.evaluate(minutes)
    assert complaints(tab) == []

    new = share.publish(share.second)
    share.take_out(old)
    assert not (old / "assets").exists()
    tab.fresh()
    tab.open(link)
    assert arrived(tab).endswith(f"/editions/{new.name}/{LESSON}#fit={made}")
    assert tab.evaluate("document.title").endswith(SECOND)
    assert tab.evaluate(CODE) == made
    assert tab.evaluate(minutes) == fitted
    assert complaints(tab) == []


HALL_PAGES = {
    "chromium-http": "lesson-2.html?from=letter#card&",
    "chromium-file": "wall.html#lesson-2&",
}


@pytest.mark.parametrize(
    ("where", "page"),
    [
        pytest.param(way, page, marks=() if HALL_PAGES.get(way) == page else pytest.mark.thorough)
        for way in WAYS
        for page in HALL_PAGES.values()
    ],
    indirect=["where"],
)
def test_a_link_to_a_hall_page_opens_in_the_next_edition(tab: Tab, share: Share, page: str) -> None:
    share.publish(share.first)
    new = share.publish(share.second)
    path = f"units/{UNIT}/{page}fit={FITTED}"
    tab.fresh(width=390)
    tab.open(f"{share.address}{path}")
    assert arrived(tab).endswith(f"/editions/{new.name}/{path}")
    assert tab.evaluate(CODE) == FITTED
    assert complaints(tab) == []


@tried("chromium-http")
def test_what_is_kept_on_this_device_is_there_in_the_next_edition(tab: Tab, share: Share) -> None:
    share.publish(share.first, keep=2)
    tab.fresh()
    tab.open(share.address + LESSON)
    arrived(tab)
    tab.evaluate(f"danceUnitBank.settings.keepFit(danceUnitBank.settings.fromCode('{FITTED}'))")
    new = share.publish(share.second, keep=2)
    tab.open(share.address + LESSON)
    assert f"/{new.name}/" in arrived(tab)
    assert tab.evaluate(CODE) == FITTED


@tried("chromium-file")
def test_a_page_that_is_open_goes_on_in_its_own_edition(tab: Tab, share: Share) -> None:
    old = share.publish(share.first, keep=2)
    tab.fresh()
    tab.open(f"{share.address}{LESSON}#fit={FITTED}")
    arrived(tab)
    share.publish(share.second, keep=2)
    tab.click("a[href^='lesson-2.html#card']")
    wait_for(tab, "location.href.includes('card') && document.readyState === 'complete'")
    assert arrived(tab).endswith(
        f"/editions/{old.name}/units/{UNIT}/lesson-2.html#card&fit={FITTED}"
    )
    assert SECOND not in tab.evaluate("document.title")


@tried("chromium-http")
def test_open_pages_and_bookmarks_of_an_edition_taken_out_arrive(tab: Tab, share: Share) -> None:
    old = share.publish(share.first)
    tab.fresh()
    tab.open(f"{share.address}{LESSON}#fit={FITTED}")
    arrived(tab)
    new = share.publish(share.second)
    share.take_out(old)
    tab.click("a[href^='lesson-2.html#card']")
    wait_for(tab, f"location.href.includes('/{new.name}/') && location.href.includes('card')")
    assert arrived(tab).endswith(
        f"/editions/{new.name}/units/{UNIT}/lesson-2.html#card&fit={FITTED}"
    )
    tab.fresh()
    tab.open(f"{share.address}editions/{old.name}/{LESSON}?from=letter#fit={FITTED}")
    wait_for(tab, f"location.href.includes('/{new.name}/')")
    assert arrived(tab).endswith(f"/editions/{new.name}/{LESSON}?from=letter#fit={FITTED}")


@tried("chromium-file")
def test_an_address_that_the_current_edition_lacks_says_so(
    tab: Tab, share: Share, tmp_path: Path
) -> None:
    less = tmp_path / "less"
    shutil.copytree(share.second, less)
    (less / LESSON).unlink()
    share.publish(share.first)
    share.publish(less)
    tab.fresh()
    tab.open(f"{share.address}{LESSON}#fit={FITTED}")
    wait_for(tab, "document.querySelector('[data-say]').textContent.includes('not in the current')")
    tab.click("main a")
    wait_for(tab, "document.title.length && location.href.endsWith('current.html')")
    tab.click("main a")
    assert arrived(tab).endswith("/index.html")


@tried("chromium-http")
def test_a_pointer_that_cannot_be_read_says_so(tab: Tab, share: Share) -> None:
    share.publish(share.first)
    (share.folder / "current.js").unlink()
    tab.fresh()
    tab.open(share.address + LESSON)
    wait_for(tab, "document.querySelector('[data-say]').textContent.includes('in a minute')")


@pytest.mark.parametrize("at_server", [pytest.param(False, marks=pytest.mark.thorough), True])
def test_without_script_two_plain_links_lead_to_the_units(
    browser: Browser, first: Path, tmp_path: Path, at_server: bool
) -> None:
    folder = tmp_path / "share"
    folder.mkdir()
    publish(first, folder, "2026-11-01", "The dance unit bank")
    with reader(browser, folder, script=False, served=at_server) as seen:
        seen.page.goto(address_of(folder, LESSON, served=at_server))
        seen.page.click("main a")
        seen.page.click("main a")
        assert "/editions/" in seen.page.url
        assert seen.page.locator("h1").count() == 1
