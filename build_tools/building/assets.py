"""What pages load beside themselves: styles, the typeface, and a script for each kind of page."""

from __future__ import annotations

import json
from collections.abc import Mapping
from pathlib import Path

from build_tools.building.finishing.joining import joined
from build_tools.building.finishing.one_file import policy_for, style_of
from build_tools.building.finishing.plain_style import plain_style
from build_tools.building.finishing.strokes import stroke_rules
from build_tools.disk.places import OVERRIDES
from build_tools.disk.stray_files import is_stray
from build_tools.pages.page_scripts import PAGE_SCRIPTS

_IN_LOOK = ("colours", "print-every-page")
"""Styles of the frame that are joined to the look, its beginning and its end."""
_FIRST_SCREEN = OVERRIDES / "lesson" / "first_screen.css"
"""Joined to the look where that says so: the first screen waits for no other file."""
_STANDS_HERE = "/* here stands lesson/first_screen.css, when it is published */\n"


def asset_files() -> dict[str, bytes]:
    """Each of them by its path in the site, in assets/: css, fonts and js."""
    found = {
        f"assets/css/{style.name}": plain_style(_style(style)).encode()
        for style in sorted(OVERRIDES.glob("*/[a-z]*.css"))
        if style != _FIRST_SCREEN
    }
    look = "assets/css/look.css"
    colours, on_paper = (found.pop(f"assets/css/{name}.css") for name in _IN_LOOK)
    found[look] = stroke_rules().encode() + colours + found[look] + on_paper
    for font in sorted((OVERRIDES / "frame" / "fonts").iterdir()):
        if not is_stray(font.name):
            found[f"assets/fonts/{font.name}"] = font.read_bytes()
    for name, parts in PAGE_SCRIPTS.items():
        text = joined((OVERRIDES / part).read_text(encoding="utf-8") for part in parts)
        found[f"assets/js/{name}"] = text.encode()
    found["assets/js/kept-style.js"] = _kept_style(found)
    return found


def _style(file: Path) -> str:
    """A style as it is written, with the lesson's first screen in it where it says so."""
    before, here, after = file.read_text(encoding="utf-8").partition(_STANDS_HERE)
    return f"{before}{_FIRST_SCREEN.read_text(encoding='utf-8')}{after}" if here else before


def _kept_style(files: Mapping[str, bytes]) -> bytes:
    """The styles of a lesson with the typeface inside, as a script: a page keeps itself by it."""
    style = style_of(
        [f"assets/css/{name}.css" for name in ("look", "lesson", "typeface")], files.__getitem__
    )
    said = json.dumps({"style": style, "policy": policy_for(style)}, ensure_ascii=False)
    return f"(window.danceUnitBank ||= {{}}).keptStyle = {said};\n".encode()


def copy_assets(out: Path) -> None:
    """Write them below `out`."""
    for name, data in asset_files().items():
        (out / name).parent.mkdir(parents=True, exist_ok=True)
        (out / name).write_bytes(data)
