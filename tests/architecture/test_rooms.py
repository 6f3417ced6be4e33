"""Rooms with one-way doors, small modules, and one place where every fault is caught."""

from __future__ import annotations

import ast
import os
import shutil
import subprocess
import sys
from functools import cache
from pathlib import Path

import pytest

from tests.support.banks import ROOT

MODULES = sorted((ROOT / "build_tools").rglob("*.py"))
MOST_LINES = 300
ROOMS = {p.name for p in (ROOT / "build_tools").iterdir() if (p / "__init__.py").is_file()}


def name_of(module: Path) -> str:
    return module.relative_to(ROOT).as_posix()


def contracts(project: Path) -> subprocess.CompletedProcess[str]:
    """The import contracts of the project in `project`, checked as the test command does."""
    program = Path(sys.executable).with_name("lint-imports" + (".exe" if os.name == "nt" else ""))
    return subprocess.run(
        [str(program), "--no-cache"],
        cwd=project,
        env=dict(os.environ) | {"PYTHONPATH": str(project), "PYTHONUTF8": "1"},
        capture_output=True,
        encoding="utf-8",
        check=False,
    )


@pytest.fixture
def copied(tmp_path: Path) -> Path:
    """A copy of the code and its contracts, to plant wrong imports in."""
    ignored = shutil.ignore_patterns("__pycache__")
    shutil.copytree(ROOT / "build_tools", tmp_path / "build_tools", ignore=ignored)
    shutil.copy(ROOT / "pyproject.toml", tmp_path)
    return tmp_path


def test_the_contracts_are_kept() -> None:
    done = contracts(ROOT)
    assert done.returncode == 0, done.stdout + done.stderr
    assert ", 0 broken" in done.stdout


PLANTED = (
    ("source/text.py", "import build_tools.checking.check_bank", "Rooms with one-way doors"),
    ("movement/counts.py", "import build_tools.views.lesson.timings", "Rooms with one-way doors"),
    ("problem.py", "import build_tools.source.text", "Rooms with one-way doors"),
    ("checking/report_text.py", "import mkdocs", "Only the adapter knows MkDocs"),
    ("movement/counts.py", "import build_tools.model.lesson", "Movement knows no lessons"),
    ("publishing/publish.py", "import build_tools.model.unit", "Publishing knows no dance"),
)


def test_planted_imports_are_reported(copied: Path) -> None:
    """All in one copy, which keeps the contracts before: reading the imports is what takes long."""
    assert contracts(copied).returncode == 0
    for module, planted, _ in PLANTED:
        path = copied / "build_tools" / module
        path.write_text(path.read_text(encoding="utf-8") + f"\n{planted}\n", encoding="utf-8")
    done = contracts(copied)
    assert done.returncode == 1
    broken = done.stdout.split("Broken contracts", 1)[1]
    for module, planted, contract in PLANTED:
        assert contract in broken
        told = f"{named(module)} -> {planted.removeprefix('import ')}"
        assert told in broken, told


def named(module: str) -> str:
    return "build_tools." + module.removesuffix(".py").replace("/", ".")


def test_a_room_that_nobody_placed_is_reported(copied: Path) -> None:
    (copied / "build_tools" / "helpers").mkdir()
    (copied / "build_tools" / "helpers" / "__init__.py").write_bytes(b"")
    done = contracts(copied)
    assert done.returncode == 1
    assert "helpers" in done.stdout


def test_no_module_is_long() -> None:
    # the starter is one file because nothing of the project may be imported before set-up
    lines = {
        name_of(module): len(module.read_text(encoding="utf-8").splitlines())
        for module in MODULES
        if module.name != "__main__.py"
    }
    assert {name: number for name, number in lines.items() if number > MOST_LINES} == {}


@cache
def nodes(module: Path) -> tuple[ast.AST, ...]:
    """Everything in a module, read once for the tests that look for something in it."""
    return tuple(ast.walk(ast.parse(module.read_text(encoding="utf-8"))))


def handlers(module: Path) -> list[int]:
    """The lines of handlers that catch everything, faults of our own among them."""
    found = []
    for node in nodes(module):
        if isinstance(node, ast.ExceptHandler) and caught(node) & {"Exception", "BaseException"}:
            found.append(node.lineno)
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "suppress":
            found += [node.lineno for a in node.args if getattr(a, "id", "") == "Exception"]
    return found


def caught(handler: ast.ExceptHandler) -> set[str]:
    if handler.type is None:
        return {"BaseException"}
    return {n.id for n in ast.walk(handler.type) if isinstance(n, ast.Name)}


def test_two_edges_alone_catch_everything() -> None:
    """The command line, and the far end of a process that works on what strangers send."""
    found = {name_of(m): handlers(m) for m in MODULES}
    edges = {"build_tools/cli.py", "build_tools/lifeline/walls.py"}
    assert {name for name, lines in found.items() if lines} == edges
    assert {len(found[name]) for name in edges} == {1}


@pytest.mark.parametrize(
    "text",
    ["except Exception:", "except:", "except (OSError, Exception) as e:", "except BaseException:"],
)
def test_the_search_for_handlers_finds_them(text: str, tmp_path: Path) -> None:
    module = tmp_path / "module.py"
    module.write_text(f"try:\n    pass\n{text}\n    pass\n", encoding="utf-8")
    assert handlers(module) == [3]


def test_no_room_is_for_this_and_that() -> None:
    names = {m.stem for m in MODULES} | ROOMS
    assert not names & {"utils", "util", "helpers", "common", "misc", "core", "base"}


@pytest.mark.parametrize("room", sorted(ROOMS))
def test_every_room_says_what_it_is_for(room: str) -> None:
    tree = ast.parse((ROOT / "build_tools" / room / "__init__.py").read_text(encoding="utf-8"))
    assert ast.get_docstring(tree)


def printers(module: Path) -> list[int]:
    return [
        node.lineno
        for node in nodes(module)
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") in ("print", "input", "exit")
    ]


def test_only_the_edge_prints() -> None:
    files = ("build_tools/cli.py", "build_tools/__main__.py")
    rooms = ("build_tools/commands/", "build_tools/project/")
    for module in MODULES:
        name = name_of(module)
        if name not in files and not name.startswith(rooms):
            assert printers(module) == [], name
