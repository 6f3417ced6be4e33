"""The list for who signs is one side of A4 (ISO 216), with a box for each question."""

from __future__ import annotations

import io
from pathlib import Path

import pdfplumber
from playwright.sync_api import Browser

from build_tools.views.words.signing import ASPECTS
from tests.support.browser import address_of, reader


def test_it_is_one_side_of_paper(browser: Browser, site: Path) -> None:
    with reader(browser, site) as at:
        at.page.goto(address_of(site, "units/rock-pool/sign.html"))
        pdf = at.page.pdf(format="A4", prefer_css_page_size=True)
    with pdfplumber.open(io.BytesIO(pdf)) as document:
        (side,) = document.pages
        text = side.extract_text()
    assert "What you would change" in text
    assert text.count("Not yet") == len(ASPECTS)
