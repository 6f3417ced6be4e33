"""The one pointer: which edition readers get. It is a script, since pages opened from a folder
cannot read any other file.
"""

from __future__ import annotations

import json
from dataclasses import asdict, dataclass
from pathlib import Path

from build_tools.sure_files import write_whole

POINTER = "current.js"
_START, _END = "window.danceUnitBankEdition = ", ";\n"


@dataclass(frozen=True, slots=True)
class Pointer:
    """Where readers are sent."""

    current: str
    """The edition they get."""
    title: str
    """What the whole is called."""
    had: tuple[str, ...]
    """The editions that readers have had, the current one too; any other was never finished."""
    missing: tuple[str, ...] = ()
    """The pages that have an entry page, though the current edition does not hold them."""


def read_pointer(target: Path) -> Pointer | None:
    """The pointer of a published folder; None where there is none that can be read."""
    try:
        text = (target / POINTER).read_text(encoding="utf-8")
        read = json.loads(text.removeprefix(_START).removesuffix(_END))
        lists = [tuple(str(name) for name in read[key]) for key in ("had", "missing")]
        return Pointer(str(read["current"]), str(read["title"]), *lists)
    except (OSError, ValueError, KeyError, TypeError):
        return None


def replace_pointer(target: Path, pointer: Pointer) -> None:
    """Point to another edition, in one step."""
    said = asdict(pointer) | {"had": sorted(pointer.had), "missing": sorted(pointer.missing)}
    write_whole(target / POINTER, f"{_START}{json.dumps(said)}{_END}".encode())
