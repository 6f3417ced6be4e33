"""What was accepted is opened by itself, as by who unzips a pack, with a listener on the network.

No script runs, nobody is asked for anything, and it is painted within a second, in two browsers.
"""

from __future__ import annotations

import io
import os
import time
import zipfile
from collections.abc import Iterator, Sequence
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Error, Page

from build_tools.pictures.publishable import cleaned
from build_tools.pictures.trouble import PictureError
from tests.packs.attacks.every import ATTACKS
from tests.packs.attacks.packed import Pack
from tests.pictures.attempts import EVERY, LISTENER, RUN, SVG
from tests.pictures.test_drawings import CASES, doubled, photo, with_photo
from tests.pictures.test_drawings import SVG as PLAIN
from tests.support.banks import THOROUGH
from tests.support.built_packs import SLUGS, packed, unpacked
from tests.support.built_sites import CONTENT, html_pages
from tests.support.firefox import Firefox, launched
from tests.support.listening import Listener, listening

MOST_SECONDS = 1.0
TRIES, BUSY = 5, 4
"""The quickest counts: other programs of this machine are no fault of a drawing."""
FEW, SOME = 2, 5
PAINTED = """new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(
  () => done(performance.now() / 1000))))"""
RAN = "document.documentElement.hasAttribute('data-ran')"
SEE_THROUGH = '<g opacity=".5"><rect width="99" height="99"/></g>'
HEAVY = (
    doubled(3, 12, "<rect width='9' height='9'/>"),
    f"{PLAIN}>{SEE_THROUGH * 60}</svg>",
    f"{PLAIN}><text>{'a' * 20_000}</text></svg>",
    f'{PLAIN}><path fill="none" stroke="red" d="M0 0{" L99 2 L1 99" * 9000}"/></svg>',
)


def accepted(text: str | bytes) -> list[bytes]:
    """The drawing as it came and as it is published; nothing where it is refused."""
    raw = text if isinstance(text, bytes) else text.encode()
    try:
        return [raw, cleaned("a.svg", raw)]
    except PictureError:
        return []


def drawings(room: Path) -> list[Path]:
    """Every accepted drawing of the tests and of the sample units, each in a file of its own."""
    texts: list[str | bytes] = [*HEAVY, *EVERY, with_photo(photo())]
    texts += [before.replace("{}", PLAIN) for before, _ in CASES.values()]
    texts += [path.read_bytes() for path in sorted((CONTENT / "units").rglob("*.svg"))]
    found = []
    for n, data in enumerate(dict.fromkeys(one for text in texts for one in accepted(text))):
        found.append(room / f"{n:03}.svg")
        found[-1].write_bytes(data)
    return found


def pages(room: Path) -> list[Path]:
    """Every page of the sample packs, of one in the usual run, unzipped."""
    slugs = SLUGS if os.environ.get(THOROUGH) else SLUGS[:1]
    tops = [unpacked(packed(slug).data, room / slug) / "data" / "pages" for slug in slugs]
    return [top / path for top in tops for path in html_pages(top)]


def chosen(files: Sequence[Path], most: int, thorough: bool) -> Sequence[Path]:
    """All of them in the long run, else so many, spread over them."""
    return files if thorough else files[:: max(1, len(files) // most)]


@pytest.fixture
def listener() -> Iterator[Listener]:
    with listening() as found:
        yield found


@pytest.fixture
def context(browser: Browser, listener: Listener) -> Iterator[BrowserContext]:
    """A reader whose every request goes to the listener, those to this computer too."""
    proxy = f"http://127.0.0.1:{listener.port}"
    made = browser.new_context(proxy={"server": proxy, "bypass": "<-loopback>"})
    yield made
    made.close()


def opened(context: BrowserContext, file: Path) -> tuple[float, list[str]]:
    """How soon a file was painted, in seconds, and what it did that it may not."""
    page = context.new_page()
    wrong: list[str] = []
    page.on("dialog", lambda dialog: wrong.append(dialog.message))
    page.on("popup", lambda other: wrong.append(other.url))
    page.on("request", lambda one: wrong.append(one.url) if outside(one.url, file) else None)
    begun = time.monotonic()
    page.goto(file.as_uri())
    picture(page)
    took = time.monotonic() - begun
    if page.evaluate(RAN) or page.url != file.as_uri():
        wrong.append(f"a script ran, or it led to {page.url}")
    page.close()
    return took, wrong


def picture(page: Page) -> None:
    """Have the page painted; a browser kept waiting may miss a frame, and is asked again."""
    try:
        page.screenshot()
    except Error as fault:
        if "Unable to capture screenshot" not in fault.message:
            raise
        page.screenshot()


def outside(address: str, file: Path) -> bool:
    return address != file.as_uri() and not address.startswith("data:")


def test_hostile_drawings_are_tried_in_many_ways() -> None:
    assert len(set(EVERY)) > 200
    refused = [text for text in EVERY if not accepted(text)]
    assert len(refused) > 150


def test_the_listener_hears_what_a_drawing_asks_and_sees_a_script(
    context: BrowserContext, listener: Listener, tmp_path: Path
) -> None:
    file = tmp_path / "a.svg"
    file.write_text(f"{SVG}><image href='{LISTENER}a.png'/><script>{RUN}</script></svg>")
    _, wrong = opened(context, file)
    assert len(wrong) == 2
    assert listener.asked_by_pages() == [f"{LISTENER}a.png"]


def drawings_of_attacks(room: Path) -> list[Path]:
    """Each drawing in the hostile packs that is accepted, as it came and as it is published."""
    good = Pack.read(packed("rock-pool").data)
    found: dict[bytes, str] = {}
    for name, attack in ATTACKS.items():
        if attack.family == "drawings":
            with zipfile.ZipFile(io.BytesIO(attack.made_of(good))) as archive:
                for entry in archive.namelist():
                    if entry.endswith(".svg"):
                        found.setdefault(archive.read(entry), name)
    files = []
    for data, name in found.items():
        for n, one in enumerate(accepted(data)):
            files.append(room / f"{name}-{n}.svg")
            files[-1].write_bytes(one)
    return files


@pytest.mark.thorough
def test_in_chromium_drawings_of_hostile_packs_do_nothing_but_show_themselves(
    context: BrowserContext, listener: Listener, tmp_path: Path
) -> None:
    files = drawings_of_attacks(tmp_path)
    assert len(files) > 50
    for file in files:
        tries = [opened(context, file) for _ in range(2)]
        assert tries[0][1] == [], file.name
        # Some take most of a second of a processor, of which a busy machine gives a share.
        assert min(took for took, _ in tries) <= BUSY * MOST_SECONDS, file.name
    assert listener.asked_by_pages() == []


@pytest.mark.parametrize("made", [drawings, pages])
def test_in_chromium_it_does_nothing_but_show_itself(
    context: BrowserContext, listener: Listener, tmp_path: Path, thorough: bool, made: object
) -> None:
    assert callable(made)
    files = made(tmp_path)
    for file in chosen(files, SOME, thorough):
        took, wrong = opened(context, file)
        for _ in range(TRIES - 1):
            took = took if took <= MOST_SECONDS else min(took, opened(context, file)[0])
        assert wrong == [], file.read_text(errors="replace")[:300]
        assert took <= MOST_SECONDS, (took, file.read_text(errors="replace")[:300])
    assert listener.asked_by_pages() == []
    assert len(files) > FEW


def in_firefox(firefox: Firefox, file: Path) -> None:
    """Open a file, and hold it to what it may do."""
    took = []
    for _ in range(TRIES):
        firefox.open(file.as_uri())
        took.append(firefox.evaluate(PAINTED))
        if took[-1] <= MOST_SECONDS:
            break
    assert min(took) <= MOST_SECONDS, (took, file.read_text(errors="replace")[:300])
    assert firefox.evaluate(RAN) is False
    assert firefox.evaluate("location.href") == file.as_uri()


@pytest.mark.thorough
def test_in_firefox_pages_do_nothing_but_show_themselves(tmp_path: Path) -> None:
    """Drawings are opened there in test_second_browser.py, beside the site's own pages."""
    with listening() as listener, launched(listener.port) as firefox:
        firefox.fresh()
        for file in pages(tmp_path):
            in_firefox(firefox, file)
        assert listener.asked_by_pages() == []
