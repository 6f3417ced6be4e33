"""A tab in Chromium with the words of the one in Firefox, so that a test can ask both; a server."""

from __future__ import annotations

import re
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any, Protocol

from playwright.sync_api import Browser, Error, Page

from tests.support.browser import LISTEN

WAIT_SECONDS = 20
# An entry page leads on at once, and a page's own script may lead on once more.
LEFT_WHILE_ASKED = 3
ELSEWHERE = re.compile(r"^(?!file:|http://127\.0\.0\.1:)")


class Tab(Protocol):
    """One reader at one tab, cut off from every other computer."""

    def fresh(self, width: int = 1280) -> None:
        """A reader of whom the browser knows nothing."""

    def open(self, address: str) -> None: ...

    def evaluate(self, words: str) -> Any: ...

    def click(self, what: str) -> None: ...

    def fill(self, what: str, words: str) -> None: ...

    def said(self) -> list[str]: ...


@dataclass(slots=True)
class ChromiumTab:
    """A tab in the browser that the tests drive anyway."""

    browser: Browser
    page: Page | None = None
    lines: list[str] = field(default_factory=list)

    def fresh(self, width: int = 1280) -> None:
        self.close()
        context = self.browser.new_context(viewport={"width": width, "height": 900})
        context.add_init_script(LISTEN)
        # what is on this computer is not asked about here, which takes longer than giving it
        context.route(ELSEWHERE, lambda route: route.abort())
        self.page, self.lines = context.new_page(), []
        context.on("console", lambda message: self.lines.append(f"{message.type}: {message.text}"))
        context.on("weberror", lambda fault: self.lines.append(f"uncaught: {fault.error}"))

    def open(self, address: str) -> None:
        self._page.goto(address)

    def evaluate(self, words: str) -> Any:
        """What the script `words` gives, asked again where the page left while it was asked."""
        for _ in range(LEFT_WHILE_ASKED):
            try:
                return self._page.evaluate(words)
            except Error as fault:
                if "context was destroyed" not in str(fault):
                    raise
                self._page.wait_for_load_state()
        return self._page.evaluate(words)

    def click(self, what: str) -> None:
        self._page.click(what)

    def fill(self, what: str, words: str) -> None:
        self._page.fill(what, words)

    def said(self) -> list[str]:
        return self.lines

    def close(self) -> None:
        if self.page:
            self.page.context.close()

    @property
    def _page(self) -> Page:
        assert self.page, "call `fresh` first"
        return self.page


def wait_for(tab: Tab, words: str) -> None:
    """Wait until the script `words` is true on the page.

    Asked again and again from outside: a page's own policy forbids what a browser's tools offer.
    """
    end = time.monotonic() + WAIT_SECONDS
    while True:
        try:
            if tab.evaluate(words):
                return
        except (Error, AssertionError):
            pass  # the page is on its way to another one
        assert time.monotonic() < end, f"never true: {words}"
        time.sleep(0.05)


def complaints(tab: Tab) -> list[str]:
    """What the open page's policy stopped, and the errors that were said since `fresh`."""
    stopped: list[str] = tab.evaluate("window.violations")
    return stopped + [line for line in tab.said() if line.startswith(("error", "uncaught"))]


class _Quiet(SimpleHTTPRequestHandler):
    """A plain server with the one setting that README.md asks of every server."""

    def end_headers(self) -> None:
        self.send_header("Cache-Control", "no-cache")
        super().end_headers()

    def log_message(self, format: str, *args: Any) -> None:
        pass


@contextmanager
def served(folder: Path) -> Iterator[str]:
    """The address at which a web server of this computer gives the files of `folder`."""
    handler = partial(_Quiet, directory=str(folder))
    with ThreadingHTTPServer(("127.0.0.1", 0), handler) as server:
        # half a second, which is usual, is what each test would wait for it to end
        threading.Thread(target=server.serve_forever, args=(0.01,), daemon=True).start()
        try:
            yield f"http://127.0.0.1:{server.server_address[1]}/"
        finally:
            server.shutdown()
