"""How long publishing takes, and how large it is, beside three plain peers; one run, all timed.

    .venv/bin/python benchmarks/site_speed.py [--units 300] [--few 10]

The bank is made from all published units in turn. The peers: MkDocs with mkdocs-material over pages
with the same fields rendered (front matter as headings and lists, the body below it, search on, the
top page alone in the navigation); the same files' YAML read by PyYAML's C loader; and the bytes of
our site read and written again. Then: nothing changed, and one unit changed, each as a process of
its own, at all units and at a few.
"""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
import tempfile
from collections import Counter
from pathlib import Path
from typing import Any

import yaml
from check_speed import Run, show, timed
from make_bank import PROJECT, make_bank, published

SETTINGS = """\
site_name: The same fields
docs_dir: docs
site_dir: plain
theme:
  name: material
  font: false
use_directory_urls: false
plugins: [search]
nav:
  - index.md
"""
COPY = """
import sys
from pathlib import Path
source, goal = map(Path, sys.argv[1:])
for path in source.rglob("*"):
    if path.is_file():
        to = goal / path.relative_to(source)
        to.parent.mkdir(parents=True, exist_ok=True)
        to.write_bytes(path.read_bytes())
print("copied")
"""


def as_markdown(value: Any, depth: int = 0) -> str:
    """A field of front matter as an author of plain pages would show it: lists, names in bold."""
    pad = "    " * depth
    if isinstance(value, dict):
        return "".join(
            f"{pad}- **{name}**: {_plain(one)}\n"
            if not isinstance(one, dict | list)
            else f"{pad}- **{name}**:\n{as_markdown(one, depth + 1)}"
            for name, one in value.items()
        )
    return "".join(
        f"{pad}- {_plain(one)}\n"
        if not isinstance(one, dict | list)
        else f"{pad}-\n{as_markdown(one, depth + 1)}"
        for one in value
    )


def _plain(value: Any) -> str:
    return str(value).replace("\n", " ")


def plain_pages(bank: Path, folder: Path) -> int:
    """Write the peer's pages and settings into `folder`; gives how many pages."""
    docs = folder / "docs"
    count = 0
    for file in sorted(bank.glob("units/*/*.md")):
        _, head, body = file.read_text(encoding="utf-8").split("---\n", 2)
        fields = yaml.load(head, yaml.CSafeLoader)
        title = fields.get("title", file.stem)
        parts = [
            f"## {name}\n\n{as_markdown(one) if isinstance(one, dict | list) else _plain(one)}\n"
            for name, one in fields.items()
        ]
        goal = docs / file.relative_to(bank)
        goal.parent.mkdir(parents=True, exist_ok=True)
        goal.write_text(f"# {title}\n\n" + "\n".join(parts) + f"\n{body}", encoding="utf-8")
        count += 1
    (docs / "index.md").write_text("# The same fields\n", encoding="utf-8")
    (folder / "mkdocs.yml").write_text(SETTINGS, encoding="utf-8")
    return count + 1


def size(folder: Path) -> tuple[int, int, Counter[str]]:
    """Pages, bytes, and the bytes of each kind of file of a unit, by its name without numbers."""
    pages, total, kinds = 0, 0, Counter[str]()
    for path in folder.rglob("*"):
        if path.is_file():
            pages += path.suffix == ".html"
            total += path.stat().st_size
            if path.parent.parent.name == "units":
                kinds["".join(c for c in path.name if not c.isdigit())] += path.stat().st_size
    return pages, total, kinds


def site(bank: Path, out: Path) -> list[str]:
    """The command that publishes the bank."""
    command = [sys.executable, "-m", "build_tools", "site", "--content", str(bank)]
    return [*command, "--out", str(out)]


def edit(bank: Path) -> None:
    """Change a word of one lesson."""
    lesson = sorted(bank.glob("units/*/lesson-1.md"))[0]
    text = lesson.read_text(encoding="utf-8")
    lesson.write_text(text.replace("\nfocus: ", "\nfocus: Now, ", 1), encoding="utf-8")


def again(bank: Path, out: Path, compiled: Path) -> tuple[Run, Run]:
    """Nothing changed, then one unit changed."""
    nothing = timed(site(bank, out), compiled)
    edit(bank)
    return nothing, timed(site(bank, out), compiled)


def ratio(name: str, ours: Run, peer: Run) -> None:
    wall, cores = ours.wall / peer.wall, ours.cores / peer.cores
    print(f"{name}: {wall:.2f} of its wall time, {cores:.2f} of its core-seconds")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--units", type=int, default=300)
    parser.add_argument("--few", type=int, default=10)
    given = parser.parse_args()
    os.environ["NO_MKDOCS_2_WARNING"] = "true"
    with tempfile.TemporaryDirectory(prefix="bank-") as room:
        folder = Path(room)
        bank, out, compiled = folder / "content", folder / "site", folder / "compiled"
        made = make_bank(bank, given.units, published())
        few = make_bank(folder / "few" / "content", given.few, published())
        print(f"{given.units:,} units, {made.files:,} files; {few.files} files of {given.few}")
        cold = timed(site(bank, out), compiled)
        pages, total, kinds = size(out)
        plain = plain_pages(bank, folder)
        mkdocs = [sys.executable, "-c", "from mkdocs.__main__ import cli; cli()", "build", "-q"]
        peer = timed([*mkdocs, "-f", str(folder / "mkdocs.yml")], compiled)
        loader = str(Path(__file__).with_name("yaml_alone.py"))
        parsing = timed([sys.executable, loader, str(bank)], compiled)
        copying = timed([sys.executable, "-c", COPY, str(out), str(folder / "copy")], compiled)
        nothing, one = again(bank, out, compiled)
        anew = folder / "anew"
        subprocess.run([*site(bank, anew), "--anew"], cwd=PROJECT, check=True, capture_output=True)
        same = subprocess.run(["diff", "-r", str(out), str(anew)], check=False).returncode == 0
        small, few_bank = folder / "few" / "site", folder / "few" / "content"
        timed(site(few_bank, small), compiled)
        nothing_few, one_few = again(few_bank, small, compiled)
        peer_pages, peer_total, _ = size(folder / "plain")
    print(f"ours: {pages:,} pages, {total / 1e6:.1f} MB, {total / given.units / 1e3:.0f} kB a unit")
    for kind, weight in kinds.most_common():
        print(f"    {kind}: {weight / given.units / 1e3:.1f} kB a unit")
    print(f"plain: {peer_pages:,} pages of {plain:,}, {peer_total / 1e6:.1f} MB")
    show("publish, nothing kept", cold)
    show("plain mkdocs-material", peer)
    show("PyYAML alone", parsing)
    show("reading and writing our bytes", copying)
    for name, other in (("mkdocs-material", peer), ("YAML", parsing), ("bytes", copying)):
        ratio(f"publish / {name}", cold, other)
    show("nothing changed", nothing)
    show("one unit changed", one)
    show(f"nothing changed at {given.few}", nothing_few)
    show(f"one unit changed at {given.few}", one_few)
    print(f"one unit changed, all / few: {one.cores / one_few.cores:.2f} of its cores")
    print(
        f"the changed site has {'the bytes' if same else 'OTHER BYTES than that'} of one made anew"
    )


if __name__ == "__main__":
    main()
