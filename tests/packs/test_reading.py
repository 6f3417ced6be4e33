"""Sound bags of others are read: 0.97 and 1.0, other sums, line ends, ways to zip."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Callable
from pathlib import Path

import pytest

from build_tools.packs.bag import decoded, encoded
from build_tools.packs.reading.refused_error import RefusedError
from build_tools.packs.reading.verified import verified
from tests.support import packs
from tests.support.packs import bag, in_top, manifest, pack, unit_files, written, zipped

PAYLOAD = {name: data for name, data in bag().items() if name.startswith("data/")}


def streamed() -> bytes:
    """A pack zipped to a stream, so that sizes stand behind each file."""

    class Stream(io.RawIOBase):
        def __init__(self) -> None:
            self.data = bytearray()

        def writable(self) -> bool:
            return True

        def write(self, piece: object) -> int:
            data = bytes(memoryview(piece))  # type: ignore[arg-type]
            self.data += data
            return len(data)

    out = Stream()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in in_top(bag()).items():
            archive.writestr(name, data)
    return bytes(out.data)


SOUND: dict[str, Callable[[], bytes]] = {
    "1.0 with SHA-512": lambda: pack(),
    "deflated": lambda: zipped(in_top(bag()), zipfile.ZIP_DEFLATED),
    "zipped to a stream": streamed,
    "another folder's name": lambda: zipped(in_top(bag(), "a unit")),
    "SHA-256": lambda: pack(
        None, manifest_sha512=None, manifest_sha256=manifest(PAYLOAD, "sha256")
    ),
    "two manifests": lambda: pack(None, manifest_md5=manifest(PAYLOAD, "md5")),
    "line ends of Windows": lambda: pack(
        None,
        bagit=packs.DECLARATION.replace(b"\n", b"\r\n"),
        manifest_sha512=manifest(PAYLOAD).replace(b"\n", b"\r\n"),
    ),
    "digests in capitals": lambda: pack(
        None,
        manifest_sha512=b"\n".join(
            line[:128].upper() + line[128:] for line in manifest(PAYLOAD).splitlines()
        ),
    ),
    "0.97 with stars": lambda: pack(
        None,
        bagit=packs.DECLARATION.replace(b"1.0", b"0.97"),
        manifest_sha512=manifest(PAYLOAD).replace(b"  data", b" *data"),
    ),
    "0.97 with a short list of a weak kind": lambda: pack(
        None,
        bagit=packs.DECLARATION.replace(b"1.0", b"0.97"),
        manifest_md5=manifest({"data/about.json": PAYLOAD["data/about.json"]}, "md5"),
    ),
    "folded lines": lambda: pack(None, bag_info=b"Contact-Name: A\n  teacher\nEmpty:\n"),
}


@pytest.mark.parametrize("name", SOUND)
def test_it_is_read(name: str, tmp_path: Path) -> None:
    found = verified(written(tmp_path, SOUND[name]()))
    assert (found.slug, found.edition) == ("paper-boats", "1.0.0")
    assert dict(found.unit_files) == dict(unit_files())


def test_a_file_that_is_not_there(tmp_path: Path) -> None:
    with pytest.raises(RefusedError, match="cannot be opened"):
        verified(tmp_path / "gone.zip")


@pytest.mark.parametrize(
    ("name", "code"), [("a%b", "a%25b"), ("a\nb", "a%0Ab"), ("a\rb", "a%0Db"), ("a b", "a b")]
)
def test_paths_in_manifests(name: str, code: str) -> None:
    """RFC 8493, 2.1.3: CR, LF and the per cent sign are written as %0D, %0A and %25."""
    assert encoded(name) == code
    assert decoded(code) == name
