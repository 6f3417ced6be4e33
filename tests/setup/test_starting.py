"""`python3 build_tools` starts from the standard library alone and passes everything on."""

from __future__ import annotations

import ast
import json
import os
import shutil
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from build_tools import __main__ as starter

ROOT = Path(__file__).resolve().parents[2]
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


def test_the_starter_imports_the_standard_library_alone() -> None:
    tree = ast.parse((ROOT / "build_tools" / "__main__.py").read_text(encoding="utf-8"))
    assert imports(tree) - sys.stdlib_module_names == {"build_tools"}


def test_the_starter_imports_the_project_only_once_it_runs_inside() -> None:
    tree = ast.parse((ROOT / "build_tools" / "__main__.py").read_text(encoding="utf-8"))
    guards = [
        node
        for node in ast.walk(tree)
        if isinstance(node, ast.If) and ast.unparse(node.test) == "is_inside(ROOT)"
    ]
    guarded = [found for guard in guards for found in own_imports(ast.Module(guard.body, []))]
    assert [node.module for node in own_imports(tree)] == ["build_tools.cli"]
    assert [node.module for node in guarded] == ["build_tools.cli"]


def test_no_part_of_the_project_hides_a_module_of_the_standard_library() -> None:
    # `python3 build_tools` puts this folder first on the search path.
    names = {path.stem for path in (ROOT / "build_tools").iterdir()} - {"__main__", "__init__"}
    assert names & sys.stdlib_module_names == set()


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
    for name in ("build_tools/__main__.py", "requirements.lock", "pyproject.toml"):
        shutil.copy(ROOT / name, root / name)
    subprocess.run([sys.executable, "-m", "venv", "--without-pip", str(root / ".venv")], check=True)
    library = next((root / ".venv").rglob("site-packages"))
    (library / "build_tools.py").write_text(SPY, encoding="utf-8")
    stamp = starter.packages_stamp(root) + starter.project_stamp(root)
    (root / ".venv" / starter.STAMP).write_text(stamp, encoding="utf-8")
    return root


def start(checkout: Path, folder: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    """Run the checkout's starter from a folder, as a reader would."""
    environment = {name: value for name, value in os.environ.items() if name != starter.INSIDE}
    return subprocess.run(
        [sys.executable, str(checkout / "build_tools"), *arguments],
        cwd=folder,
        env=environment | {"PYTHONPATH": str(folder)},
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


def test_an_interruption_waits_for_the_child_and_passes_its_code_on(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    def interrupted(command: list[str], **_: object) -> subprocess.CompletedProcess[bytes]:
        signal.raise_signal(signal.SIGINT)
        return subprocess.CompletedProcess(command, 130)

    before = signal.getsignal(signal.SIGINT)
    monkeypatch.setattr(subprocess, "run", interrupted)
    assert starter.run_inside(tmp_path, ["site"]) == 130
    assert signal.getsignal(signal.SIGINT) is before


def test_a_child_ended_by_a_signal_fails_as_a_shell_says_it(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(subprocess, "run", lambda line, **_: subprocess.CompletedProcess(line, -9))
    assert starter.run_inside(tmp_path, ["site"]) == 137


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
