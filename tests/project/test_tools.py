"""The checkers' programs come from the locks, and a missing one is named with its fix."""

from __future__ import annotations

import os
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest

from build_tools.building.browsers import (
    CHROMIUM,
    CHROMIUM_SHELL,
    FIREFOX,
    Kind,
    ToolMissingError,
    usual_places,
)
from build_tools.disk.places import PROJECT
from build_tools.lifeline import programs, system_packages
from build_tools.project import test as test_command
from build_tools.project import tools_for_tests


def test_node_and_npm_are_the_locks_own() -> None:
    done = subprocess.run(
        [*tools_for_tests.npm_command(), "--version"], capture_output=True, text=True, check=True
    )
    assert done.stdout.strip()[0].isdigit()
    assert Path(tools_for_tests.npm_command()[0]) == Path(os.environ["BANK_NODE"])


def test_the_locks_java_runs_the_html_checker(tmp_path: Path) -> None:
    page = tmp_path / "dänce page.html"
    page.write_text("<!doctype html><html lang=en><title>x</title><p>a</span>", encoding="utf-8")
    line = [os.environ["BANK_JAVA"], "-jar", os.environ["BANK_VNU_JAR"], "--format", "gnu"]
    done = subprocess.run([*line, str(page)], capture_output=True, encoding="utf-8", check=False)
    assert done.returncode == 1
    assert "Stray end tag" in done.stderr


@pytest.mark.parametrize("kind", [CHROMIUM, FIREFOX])
def test_no_browser_at_all_fails_with_the_fix(kind: Kind, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(tools_for_tests, "installed_browsers", lambda _: iter(()))
    monkeypatch.setattr(system_packages, "can_install", lambda: False)
    for may_install in (True, False):
        with pytest.raises(ToolMissingError, match=f"apt-get install {kind.package}"):
            tools_for_tests.browser(kind, may_install)


@pytest.mark.parametrize("kind", [CHROMIUM, FIREFOX])
@pytest.mark.parametrize("yes", [True, False])
def test_a_browser_is_installed_only_where_that_is_allowed(
    kind: Kind, yes: bool, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    there: list[Path] = []
    did: list[list[str]] = []

    def run(command: list[str], **_: object) -> subprocess.CompletedProcess[str]:
        did.append(command)
        there.append(tmp_path)
        return subprocess.CompletedProcess(command, 0)

    monkeypatch.setattr(tools_for_tests, "installed_browsers", lambda _: iter(there))
    monkeypatch.setattr(system_packages, "can_install", lambda: True)
    monkeypatch.setattr(system_packages, "allowed", lambda *_: yes)
    monkeypatch.setattr(programs, "run", run)
    with pytest.raises(ToolMissingError):
        tools_for_tests.browser(kind, may_install=False)
    if yes:
        assert tools_for_tests.browser(kind, may_install=True) == tmp_path
        assert [line[-1] for line in did] == ["update", kind.package]
    else:
        by_hand = f"run `apt-get install --no-install-recommends {kind.package}`"
        with pytest.raises(ToolMissingError, match=f"nothing was installed; {by_hand}"):
            tools_for_tests.browser(kind, may_install=True)
        assert did == []


@pytest.mark.parametrize("kind", [CHROMIUM, FIREFOX])
def test_a_browser_named_wrongly_fails_with_the_fix(
    kind: Kind, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setenv(kind.variable, str(tmp_path / "none"))
    with pytest.raises(ToolMissingError, match=f"{kind.variable} names .* no file: correct it"):
        tools_for_tests.browser(kind, may_install=True)


@pytest.mark.parametrize(
    ("there", "driven"),
    [
        ((CHROMIUM, CHROMIUM_SHELL), CHROMIUM_SHELL),
        ((CHROMIUM_SHELL,), CHROMIUM_SHELL),
        ((CHROMIUM,), CHROMIUM),
    ],
)
def test_the_headless_shell_is_driven_before_the_whole_of_chromium(
    there: tuple[Kind, ...], driven: Kind, monkeypatch: pytest.MonkeyPatch
) -> None:
    def installed(kind: Kind) -> Iterator[Path]:
        return iter([Path(kind.package)] if kind in there else [])

    monkeypatch.setattr(tools_for_tests, "installed_browsers", installed)
    monkeypatch.setattr(system_packages, "can_install", lambda: False)
    assert tools_for_tests.chromium(may_install=True) == Path(driven.package)


def test_where_there_is_neither_the_whole_of_chromium_is_asked_for(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(tools_for_tests, "installed_browsers", lambda _: iter(()))
    monkeypatch.setattr(system_packages, "can_install", lambda: False)
    with pytest.raises(ToolMissingError, match="apt-get install chromium`"):
        tools_for_tests.chromium(may_install=True)


def test_who_refuses_one_browser_is_not_asked_for_one_like_it(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    asked: list[str] = []

    def refuses(package: str, *_: object) -> bool:
        asked.append(package)
        return False

    monkeypatch.setattr(tools_for_tests, "installed_browsers", lambda _: iter(()))
    monkeypatch.setattr(system_packages, "can_install", lambda: True)
    monkeypatch.setattr(system_packages, "allowed", refuses)
    with pytest.raises(ToolMissingError, match="nothing was installed"):
        tools_for_tests.chromium(may_install=True)
    assert asked == [CHROMIUM_SHELL.package]


def test_browsers_are_looked_for_where_each_system_keeps_them() -> None:
    windows = usual_places(CHROMIUM, "win32", {"PROGRAMFILES": "C:/Program Files"})
    assert Path("C:/Program Files/Microsoft/Edge/Application/msedge.exe") in windows
    mac = usual_places(CHROMIUM, "darwin", {"HOME": "/Users/a"})
    assert Path("/Applications/Google Chrome.app/Contents/MacOS/Google Chrome") in mac
    assert Path("/Users/a/Applications/Chromium.app/Contents/MacOS/Chromium") in mac
    other = usual_places(FIREFOX, "win32", {"PROGRAMFILES": "C:/Program Files"})
    assert other == [Path("C:/Program Files/Mozilla Firefox/firefox.exe")]


def test_node_modules_of_another_lock_are_installed_anew(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    log = tmp_path / "node_modules"
    log.mkdir()
    (tmp_path / "package-lock.json").write_text("{}", encoding="utf-8")
    runs: list[list[str]] = []

    def npm(command: list[str], **_: object) -> subprocess.CompletedProcess[str]:
        runs.append(command)
        return subprocess.CompletedProcess(command, 0)

    monkeypatch.setattr(programs, "run", npm)
    tools_for_tests.make_sure_of_node_modules(tmp_path)
    tools_for_tests.make_sure_of_node_modules(tmp_path)
    assert [line[2] for line in runs] == ["ci"]
    (tmp_path / "package-lock.json").write_text("{ }", encoding="utf-8")
    tools_for_tests.make_sure_of_node_modules(tmp_path)
    assert [line[2] for line in runs] == ["ci", "ci"]


CHECKERS = ["ruff check", "ruff format", "mypy", "import contracts"]


def test_every_check_runs_after_a_failure_in_order_beside_the_tests(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setenv("PYTHONDONTWRITEBYTECODE", "1")
    ran: list[str] = []

    def run_check(
        check: test_command.Check, environment: dict[str, str], words: int | None = None
    ) -> test_command.CheckerResult:
        # what a checker says is kept until it is over; the tests speak at once
        assert (words is None) == (check.name == "pytest")
        assert environment["BANK_JAVA"]
        assert environment["PYTHONHASHSEED"] == "0"
        assert not environment["PYTHONDONTWRITEBYTECODE"]
        ran.append(check.name)
        return test_command.CheckerResult(check.name, 1 if check.name == "mypy" else 0, 0.0)

    monkeypatch.setattr(test_command, "run_check", run_check)
    assert not test_command.run(thorough=False, rest=[])
    assert sorted(ran) == sorted({*CHECKERS, "pytest"})
    assert [name for name in ran if name != "pytest"] == CHECKERS


def test_all_checks_passing_is_a_pass(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(
        test_command, "run_check", lambda check, *_: test_command.CheckerResult(check.name, 0, 0.0)
    )
    assert test_command.run(thorough=False, rest=[])


def test_a_missing_program_fails_the_command(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def missing(_: Path) -> tools_for_tests.Tools:
        raise ToolMissingError("no browser: install one")

    monkeypatch.setattr(test_command, "tools", missing)
    assert not test_command.run(thorough=False, rest=[])
    assert "no browser: install one" in capsys.readouterr().err


def test_a_checkers_exit_code_is_its_outcome() -> None:
    python = os.environ["BANK_NODE"]
    bad = test_command.run_check(
        test_command.Check("bad", (python, "-e", "process.exit(3)")), dict(os.environ)
    )
    gone = test_command.run_check(
        test_command.Check("gone", (str(PROJECT / "no-such-program"),)), dict(os.environ)
    )
    assert (bad.code, gone.code) == (3, 1)


def test_thorough_and_the_readers_arguments_reach_pytest() -> None:
    line = test_command.pytest_check(thorough=True, rest=["-k", "canon"]).command
    assert "--thorough" in line
    assert line[-2:] == ("-k", "canon")
    assert "--thorough" not in test_command.pytest_check(thorough=False, rest=[]).command
