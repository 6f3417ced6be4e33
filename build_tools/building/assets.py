"""What pages load beside themselves: styles, the typeface, and a script for each kind of page."""

from __future__ import annotations

import shutil
from pathlib import Path

from build_tools.building.finishing.joining import joined
from build_tools.building.finishing.plain_style import plain_style
from build_tools.disk.places import OVERRIDES
from build_tools.disk.stray_files import is_stray
from build_tools.pages.page_scripts import PAGE_SCRIPTS


def copy_assets(out: Path) -> None:
    """Write them below `out`, in assets/: css, fonts and js."""
    css, scripts = out / "assets" / "css", out / "assets" / "js"
    for folder in (css, scripts):
        folder.mkdir(parents=True, exist_ok=True)
    for style in sorted(OVERRIDES.glob("*/[a-z]*.css")):
        text = plain_style(style.read_text(encoding="utf-8"))
        (css / style.name).write_text(text, encoding="utf-8", newline="\n")
    shutil.copytree(
        OVERRIDES / "frame" / "fonts",
        out / "assets" / "fonts",
        dirs_exist_ok=True,
        copy_function=shutil.copyfile,
        ignore=lambda _, names: {name for name in names if is_stray(name)},
    )
    for name, parts in PAGE_SCRIPTS.items():
        text = joined((OVERRIDES / part).read_text(encoding="utf-8") for part in parts)
        (scripts / name).write_text(text, encoding="utf-8", newline="\n")
