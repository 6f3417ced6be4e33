"""The checkers work beside the tests: what each says is read whole, and any that fails counts."""

from __future__ import annotations

import sys
from types import SimpleNamespace

import pytest

from build_tools.project import test as whole
from build_tools.project.test import Check


def program(words: str) -> tuple[str, ...]:
    return (sys.executable, "-c", words)


PASSES = Check("one", program("print('one is right')"))
FAILS = Check("two", program("print('two is why'); raise SystemExit(3)"))


@pytest.fixture(autouse=True)
def _no_tools(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(whole, "tools", lambda _: SimpleNamespace(environment=dict))


def run(monkeypatch: pytest.MonkeyPatch, checkers: list[Check], tests: str) -> bool:
    monkeypatch.setattr(whole, "checks", lambda: checkers)
    monkeypatch.setattr(whole, "pytest_check", lambda *_: Check("pytest", program(tests)))
    return whole.run(thorough=False, rest=[])


def test_all_that_pass_pass(
    monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    assert run(monkeypatch, [PASSES, PASSES], "print('tested')")
    out = capfd.readouterr().out
    assert out.count("── one\none is right\n") == 2
    assert "tested\n" in out
    assert out.count("one: passed") == 2
    assert "pytest: passed" in out


@pytest.mark.parametrize(
    ("checkers", "tests"), [([FAILS, PASSES], "pass"), ([PASSES], "raise SystemExit(3)")]
)
def test_one_that_fails_fails_all(
    monkeypatch: pytest.MonkeyPatch,
    capfd: pytest.CaptureFixture[str],
    checkers: list[Check],
    tests: str,
) -> None:
    assert not run(monkeypatch, checkers, tests)
    out = capfd.readouterr().out
    assert "one: passed" in out
    assert "FAILED (exit code 3)" in out
    assert ("two is why" in out) == (FAILS in checkers)


def test_one_that_cannot_be_started_fails(
    monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    assert not run(monkeypatch, [Check("gone", ("/no/such/program",))], "pass")
    assert "gone: FAILED (exit code 1)" in capfd.readouterr().out
