"""Every file in commands/ is a command: its name, its help, its arguments and what it runs."""

from __future__ import annotations

import ast
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.commands.shared import exit_codes
from tests.support.banks import BASE, ROOT
from tests.support.copied_software import copied_software

FILES = sorted((ROOT / "build_tools" / "commands").glob("[!_]*.py"))
RUN = "import sys; from build_tools.cli import main; sys.exit(main(sys.argv[1:]))"
PLANTED = '''"""count-units: say how many units there are."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.commands.shared.exit_codes import DONE
from build_tools.commands.shared.folders import existing_content, take_content


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    take_content(parser)


def run(args: Namespace) -> int:
    """Give 0."""
    print(len(list((existing_content(args.content) / "units").iterdir())))
    return DONE
'''


def ran(folder: Path, *command: str) -> subprocess.CompletedProcess[str]:
    """Python run in a copy of the project, or in the project."""
    return subprocess.run(
        [sys.executable, *command],
        cwd=folder,
        env=dict(os.environ) | {"PYTHONPATH": str(folder), "PYTHONUTF8": "1"},
        capture_output=True,
        encoding="utf-8",
        check=False,
    )


@pytest.mark.parametrize("file", FILES, ids=[file.stem for file in FILES])
def test_its_help_starts_with_the_name_of_its_file(
    file: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    name = file.stem.replace("_", "-")
    assert file.read_text(encoding="utf-8").startswith(f'"""{name}: ')
    with pytest.raises(SystemExit) as ended:
        cli.main([name, "--help"])
    assert ended.value.code == 0
    assert capsys.readouterr().out.startswith(f"usage: python3 build_tools {name} ")


@pytest.mark.parametrize("file", FILES, ids=[file.stem for file in FILES])
def test_its_exit_codes_have_names(file: Path) -> None:
    tree = ast.parse(file.read_text(encoding="utf-8"))
    given = [node.value for node in ast.walk(tree) if isinstance(node, ast.Return)]
    bare = [one.value for one in given if isinstance(one, ast.Constant)]
    assert not {code for code in bare if type(code) is int}
    names = {node.id for node in ast.walk(tree) if isinstance(node, ast.Name)}
    assert names & {"DONE", "STOPPED", "stopped_if"}


def test_exit_codes_are_what_others_rely_on() -> None:
    codes = exit_codes.DONE, exit_codes.STOPPED, exit_codes.MISUSE, exit_codes.BUG
    assert codes == (0, 1, 2, 3)
    assert exit_codes.stopped_if(["a fault"]) == 1
    assert exit_codes.stopped_if([]) == 0


def test_the_help_lists_them_all(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit):
        cli.main(["--help"])
    listed = [line.split()[:1] for line in capsys.readouterr().out.splitlines()]
    for file in FILES:
        assert [file.stem.replace("_", "-")] in listed


@pytest.mark.parametrize("file", FILES, ids=[file.stem for file in FILES])
def test_it_is_told_of_to_those_who_use_the_bank_or_work_on_it(file: Path) -> None:
    name = file.stem.replace("_", "-")
    used = re.findall(r"`([a-z-]+)[^`]*`", (ROOT / "README.md").read_text(encoding="utf-8"))
    worked = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    assert name in used or f"python3 build_tools {name}" in worked


@pytest.mark.parametrize("given", [[], ["chekc"], ["--content", "x", "check"]])
def test_what_is_no_command_is_misuse(given: list[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        cli.main(given)
    assert ended.value.code == 2


def test_a_new_command_is_one_file(tmp_path: Path) -> None:
    copied_software(tmp_path, "build_tools", "schema")
    (tmp_path / "build_tools" / "commands" / "count_units.py").write_text(PLANTED, "utf-8")
    for name in ("one", "two"):
        (tmp_path / "content" / "units" / name).mkdir(parents=True)
    done = ran(tmp_path, "-c", RUN, "count-units")
    assert (done.returncode, done.stdout, done.stderr) == (0, "2\n", "")
    listed = " ".join(ran(tmp_path, "-c", RUN, "--help").stdout.split())
    assert " count-units say how many units there are " in listed


def test_checking_does_not_wait_for_the_publisher() -> None:
    loaded = "import sys; from build_tools.cli import main\n"
    loaded += f"main(['check', '--content', {str(BASE)!r}])\n"
    loaded += "print(sorted({'mkdocs', 'jinja2', 'watchdog'} & set(sys.modules)))"
    done = ran(ROOT, "-c", loaded)
    assert done.stdout.endswith("[]\n"), done.stdout + done.stderr
