"""A small bank whose unit shows a picture that units share, and a lesson with one of its own."""

from __future__ import annotations

import io
from pathlib import Path

from PIL import Image

from tests.support.banks import BASE_UNIT, change, copy_base

UNIT = f"units/{BASE_UNIT}"
LIST = """harbour:
  title: The harbour at dawn
  by: The pupils of a Year 4 class
  licence: CC0-1.0
  source: Taken for this bank
  text_version: "Boats lie still on flat water: one has its sail up."
"""
ITEM = "  items:\n    - title: A paper boat"
OWN = """pictures:
  - shared: harbour
  - title: A whirl in a stream
    by: The dance unit bank
    licence: CC-BY-4.0
    source: Drawn for this lesson
    file: media/whirl.png
    text_version: Water turning round a stone.
"""
SECRET = "Morning class"


def photograph(colour: str = "navy") -> bytes:
    """A JPEG that lies on its side, 80 by 60 as it is seen, and says who took it."""
    told, made = Image.Exif(), io.BytesIO()
    told[0x0112], told[0x013B] = 6, SECRET
    Image.new("RGB", (60, 80), colour).save(made, "JPEG", exif=told)
    return made.getvalue()


def png(colour: str = "teal") -> bytes:
    """A small PNG."""
    made = io.BytesIO()
    Image.new("RGB", (40, 30), colour).save(made, "PNG")
    return made.getvalue()


def bank_that_shares(folder: Path) -> Path:
    """A bank in `folder`/content: pictures/Harbour.JPG, shown by the unit and by its lesson 2."""
    bank = copy_base(folder)
    (bank / "pictures").mkdir()
    (bank / "pictures" / "Harbour.JPG").write_bytes(photograph())
    (bank / "pictures" / "pictures.yml").write_text(LIST, encoding="utf-8")
    change(bank / UNIT / "unit.md", ITEM, ITEM.replace("    -", "    - shared: harbour\n    -"))
    change(bank / UNIT / "lesson-2.md", "steps:\n", f"{OWN}steps:\n")
    (bank / UNIT / "media" / "whirl.png").write_bytes(png())
    return bank
