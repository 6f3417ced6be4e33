"""A sound picture as PNG or JPEG, for files that hold no drawing: word-processor files."""

from __future__ import annotations

import io

from build_tools.pictures.drawings.tree import all_in
from build_tools.pictures.publishable import cleaned, read_clean_drawing

_WIDEST = 1200
"""Points across of a drawing: 14 cm at 218 to the inch, finer than a school's printer shows."""


def as_points(name: str, data: bytes) -> bytes | None:
    """The picture without what it carries unseen; None for a drawing with words in it.

    What letters look like depends on the typefaces of a computer, and a drawing has to come out the
    same on each.
    """
    clean = cleaned(name, data)
    if name.endswith(".svg"):
        return _drawn(clean)
    return _as_png(clean) if name.endswith(".webp") else clean


def _drawn(clean: bytes) -> bytes | None:
    if any(one.name in ("text", "tspan") for one in all_in(read_clean_drawing(clean))):
        return None
    import resvg_py

    return resvg_py.svg_to_bytes(
        svg_string=clean.decode(), width=_WIDEST, background="white", skip_system_fonts=True
    )


def _as_png(clean: bytes) -> bytes:
    from PIL import Image

    out = io.BytesIO()
    with Image.open(io.BytesIO(clean)) as picture:
        picture.convert("RGBA" if "A" in picture.getbands() else "RGB").save(out, "PNG")
    return out.getvalue()
