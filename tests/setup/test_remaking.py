"""`.venv` is made anew when it is half made or stale, and left alone when it is ready."""

from __future__ import annotations

import sys
import threading
import time
from pathlib import Path

import pytest

from build_tools import __main__ as starter


class FakeSystem:
    """Stands in for `venv`, `pip` and `apt-get`: keeps the lines and makes what they would make."""

    def __init__(self, root: Path) -> None:
        self.root = root
        self.lines: list[list[str]] = []
        self.fails_at = ""

    def run_step(self, command: list[str], failure: str) -> None:
        """Do what one step of the set-up would do, or fail where the test says so."""
        self.lines.append(command)
        if self.fails_at and self.fails_at in command:
            raise starter.SetUpError(failure)
        if "venv" in command:
            python = starter.python_of(starter.venv_of(self.root))
            python.parent.mkdir(parents=True)
            python.touch()

    def did(self, word: str) -> int:
        """How many steps had that word in their line."""
        return sum(word in line for line in self.lines)


@pytest.fixture
def system(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> FakeSystem:
    root = tmp_path / "dänce bank"
    root.mkdir()
    (root / "requirements.lock").write_text("first lock\n", encoding="utf-8")
    (root / "pyproject.toml").write_text("first project\n", encoding="utf-8")
    fake = FakeSystem(root)
    monkeypatch.setattr(starter, "run_step", fake.run_step)
    monkeypatch.setattr(starter, "can_make_venvs", lambda: True)
    return fake


def test_a_first_call_sets_up_and_a_second_does_nothing(system: FakeSystem) -> None:
    assert not starter.is_ready(system.root)
    starter.set_up(system.root)
    assert starter.is_ready(system.root)
    assert (system.did("venv"), system.did("--require-hashes"), system.did("-e")) == (1, 1, 1)
    starter.set_up(system.root)
    assert system.did("venv") == 1


def test_packages_come_with_hashes_and_as_wheels_alone(system: FakeSystem) -> None:
    starter.set_up(system.root)
    packages = next(line for line in system.lines if "--require-hashes" in line)
    assert packages[-5:] == [
        "--require-hashes",
        "--only-binary",
        ":all:",
        "-r",
        "requirements.lock",
    ]
    project = next(line for line in system.lines if "-e" in line)
    assert project[-4:] == ["--no-deps", "--no-build-isolation", "-e", "."]


@pytest.mark.parametrize("step", ["venv", "--require-hashes", "-e"])
def test_a_half_made_environment_is_made_anew(system: FakeSystem, step: str) -> None:
    system.fails_at = step
    with pytest.raises(starter.SetUpError):
        starter.set_up(system.root)
    assert not starter.is_ready(system.root)
    leftover = starter.venv_of(system.root) / "leftover"
    leftover.parent.mkdir(exist_ok=True)
    leftover.touch()
    system.fails_at = ""
    system.lines.clear()
    starter.set_up(system.root)
    assert starter.is_ready(system.root)
    assert system.did("--require-hashes") == 1
    assert not leftover.exists()


def test_a_failed_remaking_does_not_leave_the_old_stamp(system: FakeSystem) -> None:
    starter.set_up(system.root)
    (system.root / "requirements.lock").write_text("second lock\n", encoding="utf-8")
    system.fails_at = "--require-hashes"
    with pytest.raises(starter.SetUpError):
        starter.set_up(system.root)
    (system.root / "requirements.lock").write_text("first lock\n", encoding="utf-8")
    assert not starter.is_ready(system.root)


def test_a_changed_lock_makes_it_anew(system: FakeSystem) -> None:
    starter.set_up(system.root)
    (system.root / "requirements.lock").write_text("second lock\n", encoding="utf-8")
    assert not starter.is_ready(system.root)
    starter.set_up(system.root)
    assert (system.did("venv"), starter.is_ready(system.root)) == (2, True)


def test_another_python_makes_it_anew(system: FakeSystem, monkeypatch: pytest.MonkeyPatch) -> None:
    starter.set_up(system.root)
    monkeypatch.setattr(sys, "version_info", (3, 99, 0))
    assert not starter.is_ready(system.root)


def test_a_moved_checkout_makes_it_anew(system: FakeSystem) -> None:
    starter.set_up(system.root)
    moved = system.root.rename(system.root.with_name("moved"))
    assert not starter.is_ready(moved)


def test_an_environment_whose_python_is_gone_is_made_anew(system: FakeSystem) -> None:
    starter.set_up(system.root)
    starter.python_of(starter.venv_of(system.root)).unlink()
    assert not starter.is_ready(system.root)


def test_a_changed_pyproject_installs_the_project_alone(system: FakeSystem) -> None:
    starter.set_up(system.root)
    (system.root / "pyproject.toml").write_text("second project\n", encoding="utf-8")
    assert not starter.is_ready(system.root)
    starter.set_up(system.root)
    assert (system.did("venv"), system.did("-e"), starter.is_ready(system.root)) == (1, 2, True)


def test_two_set_ups_at_once_make_it_once(
    system: FakeSystem, monkeypatch: pytest.MonkeyPatch
) -> None:
    def slow(command: list[str], failure: str) -> None:
        time.sleep(0.05)
        system.run_step(command, failure)

    monkeypatch.setattr(starter, "run_step", slow)
    both = [threading.Thread(target=starter.set_up, args=(system.root,)) for _ in range(2)]
    for one in both:
        one.start()
    for one in both:
        one.join()
    assert (system.did("venv"), system.did("-e"), starter.is_ready(system.root)) == (1, 1, True)


def test_root_on_debian_installs_what_makes_environments(
    system: FakeSystem, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(starter, "can_install", lambda: True)
    monkeypatch.setattr(starter, "allowed", lambda *_: True)
    monkeypatch.setattr(starter, "can_make_venvs", lambda: system.did("python3-venv") > 0)
    starter.make_sure_of_venv_module()
    assert [line[-1] for line in system.lines] == ["update", "python3-venv"]


def test_elsewhere_one_line_says_what_to_install(
    system: FakeSystem, monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(starter, "ROOT", system.root)
    monkeypatch.setattr(starter, "can_install", lambda: False)
    monkeypatch.setattr(starter, "can_make_venvs", lambda: False)
    assert starter.main(["check"]) == 1
    said = capfd.readouterr()
    assert said.out == ""
    assert len(said.err.splitlines()) == 1
    assert "apt-get install python3-venv" in said.err
    assert system.lines == []


def test_a_step_that_fails_stops_with_the_fix(tmp_path: Path) -> None:
    with pytest.raises(starter.SetUpError, match="see above"):
        starter.run_step([sys.executable, "-c", "raise SystemExit(3)"], "see above")
    with pytest.raises(starter.SetUpError, match="no such step"):
        starter.run_step([str(tmp_path / "missing")], "no such step")
