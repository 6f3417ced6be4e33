"""Scripts joined into one file run as they would one after the other."""

from __future__ import annotations

import subprocess
from pathlib import Path

from build_tools.building.finishing.joining import joined
from build_tools.disk.places import OVERRIDES
from build_tools.pages.page_scripts import PAGE_SCRIPTS
from build_tools.project.tools_for_tests import node

SCRIPTS = OVERRIDES


TRICKY = r"""
// what it is, with a quote " and a `mark`
(() => {
  // what a statement has before it
  const a = 8, g = 2; /* beside
  over lines */
  const said = ["// in", 'it\'s /* in */', `two  spaces // and ${ a + + g } of ${ "`" }`];
  const found = "a//b".replace(/\/\/ "/g, "x").split(/[/"]/), half = a / g / 2; // 2
  const kept = a
  -g
  return_ = () => {
    return /x  y/.test("x  y") && a - -g
  }
  console.log(JSON.stringify([said, found, half, kept, return_()]))
})()
"""


def run(text: str, folder: Path) -> str:
    file = folder / "script.js"
    file.write_text(f"var return_;{text}", encoding="utf-8")
    done = subprocess.run([str(node()), str(file)], check=True, capture_output=True, text=True)
    return done.stdout


def test_remarks_and_indents_go_and_what_a_script_does_stays(tmp_path: Path) -> None:
    """Texts with what looks like a remark, patterns, divisions, and lines that end nothing."""
    short = joined([TRICKY])
    assert run(short, tmp_path) == run(TRICKY, tmp_path) != ""
    assert "what it is" not in short
    assert "what a statement has" not in short
    assert "over lines" not in short
    assert len(short) < len(TRICKY) * 0.8
    both = joined(["b(1, 2);\n", "a();"])
    assert both.splitlines() == ["b(1,2);", "a();"]


def test_every_script_of_the_site_is_on_a_page() -> None:
    there = {path.relative_to(SCRIPTS).as_posix() for path in SCRIPTS.rglob("*.js")}
    assert there == {part for parts in PAGE_SCRIPTS.values() for part in parts}


def test_no_line_within_a_text_looks_like_a_remark() -> None:
    """Between two backticks a line with a remark would be words; each script closes its texts."""
    for path in SCRIPTS.rglob("*.js"):
        inside = False
        for line in path.read_text(encoding="utf-8").splitlines():
            remark = line.lstrip().startswith("//")
            assert not (inside and remark), (path.name, line)
            inside ^= line.count("`") % 2 == 1 and not remark
        assert not inside, path.name


def test_each_joined_script_is_sound(tmp_path: Path) -> None:
    for name, parts in PAGE_SCRIPTS.items():
        file = tmp_path / name
        file.write_text(joined((SCRIPTS / part).read_text(encoding="utf-8") for part in parts))
        subprocess.run([str(node()), "--check", str(file)], check=True)
