"""The folder of a new unit: a name that is free, and all of its files at once or none."""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from build_tools.misuse import Misuse
from build_tools.source.folder import MOST_SLUG, is_slug

_READABLE = 0o755


def free_folder(content: Path, slug: str) -> Path:
    """The place of a new unit. Raises Misuse for a name that cannot be used or is taken."""
    if not is_slug(slug):
        raise Misuse(
            f"`{slug}` cannot name a folder everywhere; use small letters, figures and single "
            f"hyphens, {MOST_SLUG} at most, such as rock-pool"
        )
    folder = content / "units" / slug
    if folder.exists() or folder.is_symlink():
        raise Misuse(f"there is a unit {slug} already; choose another name, or edit {folder}")
    return folder


@contextmanager
def written_whole(folder: Path) -> Iterator[Path]:
    """A room to write the unit in, which becomes `folder` where the block ends without a fault.

    Raises Misuse where the disk refuses; nothing is left then.
    """
    units = folder.parent
    made_units = not units.exists()
    room: Path | None = None
    try:
        units.mkdir(exist_ok=True)
        # a name with a dot before it is not read as a unit, should this be cut off
        room = Path(tempfile.mkdtemp(prefix=".new-", dir=units))
        yield room
        room.chmod(_READABLE)
        room.rename(folder)
    except OSError as error:
        raise Misuse(f"nothing can be written in {units} ({error.strerror})") from None
    finally:
        if room is not None and room.exists():
            shutil.rmtree(room)
        if made_units and units.exists() and not any(units.iterdir()):
            units.rmdir()
