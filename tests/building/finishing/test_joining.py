"""Scripts joined into one file run as they would one after the other."""

from __future__ import annotations

import subprocess
from pathlib import Path

from build_tools.building.finishing.joining import joined
from build_tools.disk.places import OVERRIDES
from build_tools.pages.page_scripts import PAGE_SCRIPTS
from build_tools.project.tools_for_tests import node

SCRIPTS = OVERRIDES


def test_comment_lines_and_indents_go_and_all_else_stays() -> None:
    first = (
        '// what it is\n(() => {\n  const a = 1; // beside\n  // above\n  log("// in");\n})();\n\n'
    )
    assert joined([first, "(() => {})();"]) == (
        '(() => {\nconst a = 1;\nlog("// in");\n})();\n(() => {})();\n'
    )


def test_every_script_of_the_site_is_on_a_page() -> None:
    there = {path.relative_to(SCRIPTS).as_posix() for path in SCRIPTS.rglob("*.js")}
    assert there == {part for parts in PAGE_SCRIPTS.values() for part in parts}


def test_no_part_has_a_text_over_lines() -> None:
    """Indents and what looks like a comment inside such a text would go too."""
    for path in SCRIPTS.rglob("*.js"):
        texts = path.read_text(encoding="utf-8").split("`")[1::2]
        assert [text for text in texts if "\n" in text] == [], path


def test_each_joined_script_is_sound(tmp_path: Path) -> None:
    for name, parts in PAGE_SCRIPTS.items():
        file = tmp_path / name
        file.write_text(joined((SCRIPTS / part).read_text(encoding="utf-8") for part in parts))
        subprocess.run([str(node()), "--check", str(file)], check=True)
