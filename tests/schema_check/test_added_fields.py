"""A field that is only in a schema yet: nothing stumbles over it, and it goes with its unit.

In a copy of the project, with a field of every type in every schema, one process runs every
command on a unit that uses them all.
"""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import zipfile
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from build_tools.source.front_matter import Document, read_data, read_markdown
from tests.support.added_fields import HERE, KINDS, TYPES, add_to, filled, meaning
from tests.support.banks import BASE_UNIT, ROOT, copy_base
from tests.support.copied_software import copied_software
from tests.support.writing_yaml import write_yaml

UNIT = f"units/{BASE_UNIT}"
FILES = {
    "bank.yml": "bank",
    "vocabulary/topics.yml": "topics",
    "vocabulary/words.yml": "words",
    "safety.md": "safety",
    f"{UNIT}/unit.md": "unit",
    **{f"{UNIT}/lesson-{n}.md": "lesson" for n in (1, 2, 3)},
}
RUN = """
import contextlib, io, json, sys
from pathlib import Path
from build_tools import cli
assert Path(cli.__file__).is_relative_to(Path.cwd()), cli.__file__
said = {}
for name, command in json.loads(sys.argv[1]).items():
    out = io.StringIO()
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(out):
        code = cli.main(command)
    said[name] = [code, out.getvalue()]
print(json.dumps(said))
"""


@dataclass(frozen=True)
class Copy:
    """The copy, its banks, and what each command gave and said."""

    root: Path
    said: Mapping[str, tuple[int, str]]

    def of(self, name: str) -> str:
        code, text = self.said[name]
        assert code == 0, text
        return text


def read(path: Path, file: str) -> Document:
    reader = read_markdown if file.endswith(".md") else read_data
    found = reader(file, path.read_bytes())
    assert isinstance(found, Document), found
    return found


def write(bank: Path, file: str, data: Any, body: str) -> None:
    text = write_yaml(data)
    whole = f"---\n{text}---\n{body}" if file.endswith(".md") else text
    (bank / file).write_text(whole, encoding="utf-8", newline="\n")


def fill(bank: Path, schemas: Mapping[str, Any], value: str, edition: str = "1.0.0") -> None:
    for file, kind in FILES.items():
        document = read(bank / file, file)
        data = filled(document.data, kind, schemas, value)
        if kind == "unit":
            data["edition"] = edition
        write(bank, file, data, document.body)


@pytest.fixture(scope="module")
def copy(tmp_path_factory: pytest.TempPathFactory) -> Copy:
    root = tmp_path_factory.mktemp("project")
    copied_software(root, "build_tools", "schema", "site_overrides")
    for file in (*ROOT.glob("*.toml"), *ROOT.glob("*.json"), *ROOT.glob("*.yml")):
        shutil.copy(file, root)
    add_to(root / "schema")
    schemas = {
        file.name.partition(".")[0]: json.loads(file.read_text(encoding="utf-8"))
        for file in (root / "schema").glob("*.json")
    }
    banks = {}
    for name in ("plain", "used", "other", "wrong", "receiving"):
        (root / name).mkdir()
        banks[name] = copy_base(root / name)
    fill(banks["used"], schemas, "value")
    fill(banks["other"], schemas, "other", "1.1.0")
    fill(banks["wrong"], schemas, "wrong")
    fill(banks["receiving"], schemas, "value")
    shutil.rmtree(banks["receiving"] / UNIT)
    units = {name: str(bank / UNIT) for name, bank in banks.items()}
    at = {name: ["--content", str(bank)] for name, bank in banks.items()}
    commands = {
        "check": ["check", *at["used"]],
        "check wrong": ["check", "--all", *at["wrong"]],
        "site": ["site", "--review", *at["used"], "--out", str(root / "site")],
        "compare added": ["compare", units["plain"], units["used"]],
        "compare changed": ["compare", units["used"], units["other"]],
        "compare taken out": ["compare", units["used"], units["plain"]],
        "pack": ["pack", BASE_UNIT, *at["used"], "--out", str(root / "packs")],
        "take-in": ["take-in", str(root / "packs" / f"{BASE_UNIT}-1.0.0.zip"), "--yes"],
        "adapt": ["adapt", BASE_UNIT, "my-boats", *at["used"]],
        "check again": ["check", *at["used"]],
    }
    commands["take-in"] += at["receiving"]
    done = subprocess.run(
        [sys.executable, "-P", "-c", RUN, json.dumps(commands)],
        cwd=root,
        env=dict(os.environ) | {"PYTHONPATH": str(root), "PYTHONUTF8": "1"},
        capture_output=True,
        encoding="utf-8",
        check=False,
    )
    assert done.returncode == 0, done.stderr
    return Copy(
        root, {name: (code, text) for name, (code, text) in json.loads(done.stdout).items()}
    )


def test_the_check_takes_them(copy: Copy) -> None:
    assert copy.of("check").endswith("no problems\n")


def test_the_check_says_what_is_wrong_in_each(copy: Copy) -> None:
    code, said = copy.said["check wrong"]
    assert code == 1, said
    assert "fault of the bank's software" not in said
    for file in FILES:
        here = [line for line in said.splitlines() if line.startswith(f"content/{file}:")]
        assert len(here) >= len(TYPES) - 1, (file, here)


def test_the_guide_for_authors_explains_them(copy: Copy) -> None:
    copy.of("site")
    guide = (copy.root / "site" / "writing.html").read_text(encoding="utf-8")
    for kind in ("unit", "lesson"):
        for name in TYPES:
            assert meaning(name, f"the {kind}") in guide, (kind, name)


def lines_on(said: str, part: str) -> list[str]:
    return [line.strip() for line in said.splitlines() if line.strip().startswith(f"{part}: ")]


@pytest.mark.parametrize("which", ["added", "changed", "taken out"])
def test_a_comparison_names_them_by_what_their_schema_says(copy: Copy, which: str) -> None:
    said = copy.of(f"compare {which}")
    for name in TYPES:
        label = f"`{name}` (what {name.replace('_', ' ')} tells of the "
        assert any(f"{label}unit)" in line for line in lines_on(said, "the unit")), name
        assert any(f"{label}lesson)" in line for line in lines_on(said, "lesson 1")), name
    for where, kind in (("the stimulus", "unit"), ("step 1 of lesson 1", "lesson")):
        label = f"`{HERE}` (what added here tells of the {kind})"
        assert any(label in line for line in lines_on(said, where)), where
    assert "{" not in said


def test_a_pack_carries_them_to_another_bank(copy: Copy) -> None:
    copy.of("pack")
    copy.of("take-in")
    source = copy.root / "used" / "content" / UNIT
    taken = copy.root / "receiving" / "content" / UNIT
    with zipfile.ZipFile(copy.root / "packs" / f"{BASE_UNIT}-1.0.0.zip") as pack:
        for name in ("unit.md", "lesson-1.md", "lesson-2.md", "lesson-3.md"):
            inside = pack.read(f"{BASE_UNIT}-1.0.0/data/unit/{name}")
            assert inside == (source / name).read_bytes() == (taken / name).read_bytes()


def test_an_adapted_unit_keeps_them(copy: Copy) -> None:
    copy.of("adapt")
    copy.of("check again")
    bank = copy.root / "used" / "content"
    for name in ("unit.md", "lesson-1.md"):
        old = read(bank / UNIT / name, "unit.md").data
        new = read(bank / "units" / "my-boats" / name, "unit.md").data
        assert {n: new[n] for n in TYPES} == {n: old[n] for n in TYPES}
        assert new.get("stimulus", {}).get(HERE) == old.get("stimulus", {}).get(HERE)


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_of_file_has_every_type(copy: Copy, kind: str) -> None:
    file = next(file for file, one in FILES.items() if one == kind)
    data = read(copy.root / "used" / "content" / file, file).data
    holder = next(iter(data.values())) if kind in ("topics", "words") else data
    assert set(TYPES) <= set(holder)


def test_the_shared_parts_have_every_type(copy: Copy) -> None:
    unit = read(copy.root / "used" / "content" / UNIT / "unit.md", "unit.md").data
    (first, *_), *_ = (m["actions"] for m in unit["motifs"].values() if m.get("actions"))
    assert set(TYPES) <= set(first)
