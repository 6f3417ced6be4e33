"""A browser with no network that tells everything it was asked for and everything it said."""

from __future__ import annotations

import mimetypes
import os
import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from urllib.parse import unquote, urlsplit

from playwright.sync_api import Browser, BrowserContext, Page, Route, sync_playwright

ARGUMENTS = (
    "--disable-gpu",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    # letters as wide as in print, whatever the machine does to them on a screen
    "--font-render-hinting=none",
)
SERVED_AT = "http://bank.test/any/path/"
LISTEN = """
window.violations = [];
document.addEventListener("securitypolicyviolation", (event) => {
  window.violations.push(`${event.effectiveDirective} ${event.blockedURI} ${event.sourceFile}`);
});
"""


@contextmanager
def launched() -> Iterator[Browser]:
    """The browser that the tests' tools found, for as long as the block lasts."""
    as_root = hasattr(os, "geteuid") and os.geteuid() == 0
    arguments = [*ARGUMENTS, *(["--no-sandbox"] if as_root else [])]
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(
            executable_path=os.environ["BANK_CHROMIUM"], args=arguments
        )
        try:
            yield browser
        finally:
            browser.close()


@dataclass(slots=True)
class Reader:
    """One reader at one browser tab: the page, the addresses it asked for, what it complained of.

    `requests` holds every address, those of other machines and folders too; `said` holds every
    line of the console and every uncaught error.
    """

    page: Page
    requests: list[str] = field(default_factory=list)
    said: list[str] = field(default_factory=list)

    def violations(self) -> list[str]:
        """What the content security policy stopped on the page that is open now."""
        found: list[str] = self.page.evaluate("window.violations")
        return found


@contextmanager
def reader(
    browser: Browser,
    folder: Path,
    *,
    width: int = 1280,
    dark: bool = False,
    script: bool = True,
    served: bool = False,
    extra_script: str = "",
) -> Iterator[Reader]:
    """A fresh reader, cut off from the network, to whom only the files of `folder` are given.

    With `served` the pages are at `SERVED_AT`, as on a web server, otherwise at file://.
    `extra_script` runs before each page's own scripts, as a browser's own tools do, so that the
    page's policy stays in force.
    """
    context = browser.new_context(
        viewport={"width": width, "height": 900},
        color_scheme="dark" if dark else "light",
        reduced_motion="reduce",
        java_script_enabled=script,
        offline=True,
    )
    try:
        if script:
            context.add_init_script(LISTEN + extra_script)
        give_only(context, folder, served)
        seen = Reader(context.new_page())
        context.on("request", lambda request: seen.requests.append(request.url))
        context.on("console", lambda message: seen.said.append(f"{message.type}: {message.text}"))
        context.on("weberror", lambda fault: seen.said.append(f"uncaught: {fault.error}"))
        yield seen
    finally:
        context.close()


def give_only(context: BrowserContext, folder: Path, served: bool) -> None:
    """Answer requests for the files of `folder` and for nothing else."""

    def answer(route: Route) -> None:
        address = route.request.url
        if served and address.startswith(SERVED_AT):
            give_file(route, folder / unquote(urlsplit(address).path[len("/any/path/") :]))
        elif not served and is_inside(address, folder):
            route.continue_()
        else:
            route.abort()

    # what a folder gives by itself is not asked about here, which takes longer than giving it
    inside = re.escape(f"{folder.resolve().as_uri()}/")
    context.route("**/*" if served else re.compile(rf"^(?!{inside}(?!.*/\.\./))"), answer)


def give_file(route: Route, path: Path) -> None:
    """Answer as a plain web server would."""
    if path.is_file():
        kind = mimetypes.guess_type(path.name)[0] or "application/octet-stream"
        route.fulfill(body=path.read_bytes(), content_type=kind)
    else:
        route.fulfill(status=404, body="")


def is_inside(address: str, folder: Path) -> bool:
    """Whether an address is that of a file in the folder."""
    return address.startswith(folder.resolve().as_uri() + "/") and "/../" not in address


def address_of(folder: Path, path: str, *, served: bool = False) -> str:
    """The address of a page of the folder, as `reader` opens it."""
    file, mark, place = path.partition("#")
    return (SERVED_AT + file if served else (folder / file).resolve().as_uri()) + mark + place
