"""What the page "Your first unit" says is done and seen, done and seen: each command, each word."""

from __future__ import annotations

import io
import os
import re
import shutil
import signal
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from build_tools import cli
from build_tools.pages.first_unit.first_unit import (
    CHECK,
    EXPLAIN,
    SITE,
    START,
    TAKE_OUT,
    WATCH,
    FirstUnitView,
    first_unit_page,
)
from build_tools.pages.first_unit.worked_example import ANSWERS, LESSON, MOVES, REST, SLUG
from build_tools.views.words.open_places import MARK
from tests.support.banks import CONTENT, ROOT
from tests.support.paper import read, squeezed
from tests.support.sound_bank import real_bank

UNIT = f"units/{SLUG}"
PATIENCE_SECONDS = 60
SHOWN = first_unit_page(real_bank()).context


class Typing(io.StringIO):
    """Somebody at a terminal who types these lines."""

    def isatty(self) -> bool:
        return True


def typed(command: str, content: Path) -> list[str]:
    """The arguments of a command as the page has it, for the bank in `content`."""
    python, tools, *words = command.split()
    assert (python, tools) == ("python3", "build_tools")
    return [str(content.parent / one) if one.startswith("content/") else one for one in words]


@pytest.fixture(scope="module")
def content(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A bank with no unit in it yet."""
    content = tmp_path_factory.mktemp("first") / "content"
    shutil.copytree(CONTENT, content, ignore=shutil.ignore_patterns("units"))
    (content / "units").mkdir()
    return content


def write(file: Path, hint: str, words: str) -> None:
    """Write over a mark and its hint, as in a text editor."""
    place = re.compile(re.escape(f"{MARK} {hint}") + r"(?= *\||;|\n)")
    text, number = place.subn(lambda _: words, file.read_text(encoding="utf-8"))
    assert number == 1, hint
    file.write_text(text, encoding="utf-8")


@contextmanager
def watching(content: Path) -> Iterator[str]:
    """`watch` as the page has it, on any free port; gives the address that it says."""
    command = [sys.executable, "-P", "-m", "build_tools", *typed(WATCH, content), "--port", "0"]
    process = subprocess.Popen(
        [*command, "--content", str(content)],
        cwd=ROOT,
        env=dict(os.environ) | {"PYTHONUTF8": "1"},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        encoding="utf-8",
        start_new_session=True,
    )
    try:
        assert process.stdout is not None
        for line in process.stdout:
            if line.startswith("preview on "):
                address = line.removeprefix("preview on ").strip().removesuffix("index.html")
            if line.strip() == "every page written":
                break
        yield address
    finally:
        os.killpg(process.pid, signal.SIGINT)
        process.communicate(timeout=PATIENCE_SECONDS)


@pytest.mark.parametrize("command", [START, WATCH, CHECK, EXPLAIN, SITE])
def test_the_page_shows_each_command(command: str) -> None:
    assert isinstance(SHOWN, FirstUnitView)
    assert command in {SHOWN.start, SHOWN.watch, SHOWN.check, SHOWN.explain, SHOWN.site}


def test_ten_minutes(
    content: Path,
    browser: Browser,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    assert isinstance(SHOWN, FirstUnitView)
    # 1. Start it
    monkeypatch.setattr(sys, "stdin", Typing("".join(f"{answer}\n" for _, answer in ANSWERS)))
    assert cli.main([*typed(START, content), "--content", str(content)]) == 0
    said = capsys.readouterr().out
    asked = [re.sub(r" *\(.*|:.*|, such.*|\?", "", question) for question, _ in ANSWERS]
    assert [one for one in asked if one not in said] == []
    assert f"{SHOWN.places} are still to write, each marked {MARK} with a hint of what" in said
    folder = content / UNIT
    # 2. Open it beside you
    with watching(content) as preview:
        page = browser.new_context().new_page()
        page.set_default_timeout(1000 * PATIENCE_SECONDS)
        page.goto(f"{preview}{UNIT}/lesson-1.html")
        says = page.locator("#preview-says")
        expect(says).to_contain_text(SHOWN.in_lesson)
        # 3. Write the lesson: the first by a click, the others in an editor; the page follows
        (hint, words), *others = LESSON
        _click_and_write(page, f"{MARK} {hint}", words)
        assert f"title: {words}\n" in (folder / "lesson-1.md").read_text(encoding="utf-8")
        for hint, words in others:
            write(folder / "lesson-1.md", hint, words)
        for hint, words in MOVES:
            write(folder / "unit.md", hint, words)
        expect(says).to_contain_text("Nothing in this lesson", timeout=1000 * PATIENCE_SECONDS)
        page.get_by_text("Glide", exact=False).first.wait_for()
        for hint, _ in (*LESSON, *MOVES):
            expect(page.locator("main")).not_to_contain_text(hint, timeout=1000 * PATIENCE_SECONDS)
        # 4. Print it
        pdf = page.pdf(format="A4", prefer_css_page_size=True)
        page.context.close()
    paper = read(pdf)
    assert len(paper.margins) == 3
    for words, side in (("A bird unfolds", 0), ("You do not need to dance.", 2)):
        assert squeezed(words) in "".join(one.text for one in paper.glyphs if one.side == side)
    assert paper.side_of(MARK) is None
    # After the ten minutes
    for hint, words in REST:
        write(folder / "unit.md", hint, words)
    unit = (folder / "unit.md").read_text(encoding="utf-8")
    assert f"\n{TAKE_OUT}\n" in unit
    (folder / "unit.md").write_text(unit.replace(f"\n{TAKE_OUT}\n", "\n"), encoding="utf-8")
    capsys.readouterr()
    assert cli.main([*typed(CHECK, content), "--content", str(content)]) == 0
    found = capsys.readouterr().out.splitlines()
    assert found[-1] == SHOWN.left
    assert f"[{EXPLAIN.split()[-1]}]" in found[0]
    assert cli.main(typed(EXPLAIN, content)) == 0
    out = tmp_path / "published"
    assert cli.main([*typed(SITE, content), "--content", str(content), "--out", str(out)]) == 0
    assert (out / UNIT / "lesson-1.html").is_file()


def _click_and_write(page: Page, was: str, words: str) -> None:
    page.locator(".preview-text", has_text=was).first.click()
    page.keyboard.press("Control+A")
    page.keyboard.type(words)
    page.keyboard.press("Enter")
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
