"""Paths in a pack: what may stand in one, as laws, beside how Python reads paths of Windows."""

from __future__ import annotations

import ntpath
import posixpath
import string

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.packs.reading.names import refuse_clashes, refuse_path
from build_tools.packs.reading.refused_error import RefusedError

PLAIN = st.text(string.ascii_lowercase + string.digits + "-", min_size=1, max_size=12).filter(
    lambda name: not (name[:3] in ("con", "prn", "aux", "nul") or name[:3] in ("com", "lpt"))
)


@given(st.lists(PLAIN, min_size=1, max_size=5))
def test_plain_paths_may_stand(parts: list[str]) -> None:
    refuse_path("/".join(parts) + ".md")


@given(st.text(max_size=40))
def test_what_may_stand_stays_inside_on_every_computer(path: str) -> None:
    try:
        refuse_path(path)
    except RefusedError:
        return
    for flavour in (posixpath, ntpath):
        joined = flavour.normpath(flavour.join("top", path))
        assert joined.startswith("top" + flavour.sep)
        assert not flavour.isabs(path)
        assert flavour.splitdrive(path)[0] == ""
    for part in path.split("/"):
        assert not set(part) & set('<>:"|?*\\')
        assert part == part.rstrip(" .")


@pytest.mark.parametrize("name", ["con", "NUL.txt", "com1", "Lpt9.md", "aux .x", "COM¹"])
def test_devices_of_windows(name: str) -> None:
    """Microsoft, Naming Files, Paths, and Namespaces: reserved names, with any ending."""
    with pytest.raises(RefusedError, match="device"):
        refuse_path(f"a/{name}")


@given(st.lists(PLAIN, min_size=2, max_size=8, unique=True))
def test_different_plain_paths_do_not_clash(paths: list[str]) -> None:
    refuse_clashes(paths)


@given(PLAIN)
def test_the_same_letters_in_another_size_clash(name: str) -> None:
    if name.upper() != name:
        with pytest.raises(RefusedError, match="one file"):
            refuse_clashes([name, name.upper()])
