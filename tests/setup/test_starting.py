"""`python3 build_tools` starts from the standard library alone and passes everything on."""

from __future__ import annotations

import ast
import json
import os
import shutil
import signal
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from build_tools import __main__ as starter
from build_tools.lifeline import windows_job
from tests.support.processes import (
    becomes_true,
    end_first,
    group,
    is_gone,
    nothing_left_of,
    said,
)

ROOT = Path(__file__).resolve().parents[2]
OF_THE_STARTER = {"build_tools.cli", "build_tools.commands.shared.exit_codes"}
SPY = """
import json, os, sys
print(json.dumps({
    "arguments": sys.argv[1:],
    "folder": os.getcwd(),
    "utf8": os.environ["PYTHONUTF8"],
    "path": os.environ.get("PYTHONPATH"),
}))
sys.exit(7)
"""


def imports(tree: ast.AST) -> set[str]:
    """The first word of every module that the source imports, at any depth."""
    found: set[str] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            found |= {alias.name.split(".")[0] for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            found.add((node.module or "").split(".")[0])
    return found


def own_imports(tree: ast.AST) -> list[ast.ImportFrom]:
    """The imports of the project's own code."""
    return [
        node
        for node in ast.walk(tree)
        if isinstance(node, ast.ImportFrom) and (node.module or "").startswith("build_tools")
    ]


def before_set_up() -> list[Path]:
    """The files that run before anything is installed."""
    package = ROOT / "build_tools"
    return [
        package / "__init__.py",
        package / "__main__.py",
        package / "commands" / "__init__.py",
        package / "commands" / "shared" / "__init__.py",
        package / "commands" / "shared" / "exit_codes.py",
        *sorted((package / "lifeline").glob("*.py")),
    ]


@pytest.mark.parametrize("file", before_set_up(), ids=lambda file: file.name)
def test_what_runs_before_set_up_imports_the_standard_library_alone(file: Path) -> None:
    tree = ast.parse(file.read_text(encoding="utf-8"))
    assert imports(tree) - sys.stdlib_module_names <= {"build_tools"}
    own = {node.module for node in own_imports(tree)}
    lifeline = {name for name in own if name and name.startswith("build_tools.lifeline.")}
    assert own - lifeline == (OF_THE_STARTER if file.name == "__main__.py" else set())


def test_the_starter_imports_the_command_only_once_it_runs_inside() -> None:
    tree = ast.parse((ROOT / "build_tools" / "__main__.py").read_text(encoding="utf-8"))
    guards = [
        node
        for node in ast.walk(tree)
        if isinstance(node, ast.If) and ast.unparse(node.test) == "is_inside(ROOT)"
    ]
    guarded = [found for guard in guards for found in own_imports(ast.Module(guard.body, []))]
    assert [node.module for node in guarded] == ["build_tools.cli"]


def test_the_command_is_run_again_by_the_projects_own_python() -> None:
    line = starter.command_line(Path("/a b/é"), ["site", "--to", "c d"])
    assert line[0] == str(starter.python_of(Path("/a b/é/.venv")))
    assert line[1:] == ["-P", "-m", "build_tools", "site", "--to", "c d"]


def test_the_child_gets_the_callers_environment_less_other_pythons_code() -> None:
    given = {"HOME": "/home/é", "PYTHONPATH": "/elsewhere", "PYTHONHOME": "/gone"}
    assert starter.child_environment(given) == {
        "HOME": "/home/é",
        "PYTHONUTF8": "1",
        starter.INSIDE: "1",
    }


@pytest.fixture
def checkout(tmp_path: Path) -> Path:
    """A checkout under a path with a space and an accent, with a ready `.venv` but no project.

    Its Python starts the spy above in place of the project, so nothing is downloaded.
    """
    root = tmp_path / "a teacher" / "dänce café"
    (root / "build_tools").mkdir(parents=True)
    for file in (*before_set_up(), ROOT / "requirements.lock", ROOT / "pyproject.toml"):
        copy = root / file.relative_to(ROOT)
        copy.parent.mkdir(exist_ok=True)
        shutil.copy(file, copy)
    subprocess.run([sys.executable, "-m", "venv", "--without-pip", str(root / ".venv")], check=True)
    library = next((root / ".venv").rglob("site-packages"))
    (library / "build_tools.py").write_text(SPY, encoding="utf-8")
    stamp = starter.packages_stamp(root) + starter.project_stamp(root)
    (root / ".venv" / starter.STAMP).write_text(stamp, encoding="utf-8")
    return root


def outside() -> dict[str, str]:
    """The environment of a reader, whose commands are not inside yet."""
    return {name: value for name, value in os.environ.items() if name != starter.INSIDE}


def start(checkout: Path, folder: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    """Run the checkout's starter from a folder, as a reader would."""
    return subprocess.run(
        [sys.executable, str(checkout / "build_tools"), *arguments],
        cwd=folder,
        env=outside() | {"PYTHONPATH": str(folder)},
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )


def test_it_works_from_another_folder_and_a_path_with_a_space_and_an_accent(
    checkout: Path, tmp_path: Path
) -> None:
    folder = tmp_path / "élsewhere here"
    folder.mkdir()
    # The caller's folder holds a trap: a package of the same name, that `-P` keeps out.
    (folder / "build_tools.py").write_text("raise SystemExit(99)", encoding="utf-8")
    done = start(checkout, folder, "check", "wörds in one", "--flag")
    assert done.returncode == 7, done.stderr
    said = json.loads(done.stdout)
    assert said["arguments"] == ["check", "wörds in one", "--flag"]
    assert Path(said["folder"]) == folder.resolve()
    assert said["utf8"] == "1"
    assert said["path"] is None


def test_a_ready_environment_is_not_touched(checkout: Path, tmp_path: Path) -> None:
    done = start(checkout, tmp_path, "check")
    assert done.stderr == ""
    assert not (checkout / ".venv.lock").exists()


@pytest.mark.parametrize("number", [signal.SIGKILL, signal.SIGTERM, signal.SIGINT])
def test_who_ends_the_first_process_ends_the_command(
    checkout: Path, tmp_path: Path, number: int
) -> None:
    library = next((checkout / ".venv").rglob("site-packages"))
    works = "import os, sys, time; print(os.getpid(), sys.prefix, flush=True); time.sleep(60)"
    (library / "build_tools.py").write_text(works, encoding="utf-8")
    command = [sys.executable, str(checkout / "build_tools"), "watch"]
    with group(command, tmp_path, outside()) as first:
        pid, _, prefix = said(first).partition(" ")
        assert Path(prefix) == checkout / ".venv"
        assert end_first(first, number) != 0
        assert is_gone(int(pid), seconds=10)
        assert nothing_left_of(first.pid, seconds=10)


def test_who_ends_the_first_process_ends_the_set_up(checkout: Path, tmp_path: Path) -> None:
    """Otherwise the next start would remove what the last one's pip is still writing."""
    (checkout / ".venv" / starter.STAMP).write_text(
        starter.packages_stamp(checkout), encoding="utf-8"
    )
    pip = next((checkout / ".venv").rglob("site-packages")) / "pip"
    pip.mkdir()
    (pip / "__init__.py").touch()
    writes = "import os, sys, time; print(os.getpid(), file=sys.stderr, flush=True); time.sleep(60)"
    (pip / "__main__.py").write_text(writes, encoding="utf-8")
    errors = tmp_path / "errors.txt"
    line = "import os, sys; f = os.open(sys.argv[1], os.O_CREAT | os.O_WRONLY); os.dup2(f, 2); "
    line += "os.execv(sys.executable, [sys.executable, *sys.argv[2:]])"
    command = [sys.executable, "-c", line, str(errors), str(checkout / "build_tools"), "site"]
    with group(command, tmp_path, outside()) as first:
        assert becomes_true(lambda: errors.exists() and errors.read_text().strip().isdigit(), 30)
        end_first(first, signal.SIGKILL)
        assert is_gone(int(errors.read_text()), seconds=20)


def test_where_no_process_can_become_another_it_waits_and_passes_the_code_on(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    def interrupted(command: list[str], **_: object) -> subprocess.CompletedProcess[bytes]:
        signal.raise_signal(signal.SIGINT)
        return subprocess.CompletedProcess(command, 130)

    before = signal.getsignal(signal.SIGINT)
    monkeypatch.setattr(subprocess, "run", interrupted)
    assert starter.run_and_wait(tmp_path, ["site"]) == 130
    assert signal.getsignal(signal.SIGINT) is before


def test_on_windows_all_is_held_together_before_anything_is_started(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    did: list[str] = []

    def did_it(word: str, gives: object) -> Callable[..., object]:
        def call(*_: object) -> object:
            did.append(word)
            return gives

        return call

    monkeypatch.setattr(starter, "is_inside", lambda _: False)
    monkeypatch.setattr(starter, "is_ready", lambda _: False)
    monkeypatch.setattr(windows_job, "hold_together", did_it("held together", True))
    monkeypatch.setattr(starter, "set_up", did_it("set up", None))
    monkeypatch.setattr(starter, "run_and_wait", did_it("run", 5))
    with monkeypatch.context() as patch:
        patch.setattr(os, "name", "nt")
        code = starter.main(["check"])
    assert (code, did) == (5, ["held together", "set up", "run"])


def test_an_interrupted_set_up_prints_no_traceback(
    monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    def interrupted(_: Path) -> bool:
        raise KeyboardInterrupt

    monkeypatch.setattr(starter, "is_inside", interrupted)
    assert starter.main(["site"]) == 130
    assert capfd.readouterr().err == ""


def test_the_plain_c_locale_does_not_hinder_a_path_with_an_accent() -> None:
    for plain in ("C", "POSIX"):
        assert starter.child_environment({"LC_ALL": plain})["LC_ALL"] == "C.UTF-8"
    assert starter.child_environment({"LC_ALL": "cy_GB.UTF-8"})["LC_ALL"] == "cy_GB.UTF-8"
    assert "LC_ALL" not in starter.child_environment({"LANG": "C"})
