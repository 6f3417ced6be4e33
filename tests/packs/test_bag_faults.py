"""Bags made here with one fault each, of the kinds that the public BagIt conformance suite has.

RFC 8493 (BagIt 1.0) and draft-kunze-bagit-14 (0.97); the sections are those of the RFC.
"""

from __future__ import annotations

import hashlib
from collections.abc import Mapping

import pytest

from build_tools.packs.bag import encoded
from build_tools.packs.reading.bag_check import payload_of
from build_tools.packs.reading.names import refuse_clashes, refuse_path
from build_tools.packs.reading.refused_error import RefusedError
from tests.support.packs import DECLARATION, in_top, manifest

Bag = dict[str, bytes | None]
FILES = {"data/a.txt": b"one\n", "data/deep/b.txt": b"two\n"}
OLD = DECLARATION.replace(b"1.0", b"0.97")
LIST, WEAK, TAGS = "manifest-sha512.txt", "manifest-md5.txt", "tagmanifest-sha512.txt"
INFO = "bag-info.txt"
ZEROS = b"0" * 128


def below_one_folder(changed: Mapping[str, bytes | None]) -> dict[str, bytes]:
    """The small bag with some files put in, changed or (None) left out, its manifest as it was."""
    made: Bag = {**FILES, "bagit.txt": DECLARATION, LIST: manifest(FILES), **changed}
    return in_top({name: data for name, data in made.items() if data is not None}, "bag")


def listed(files: Mapping[str, bytes], **more: bytes | None) -> dict[str, bytes]:
    """A bag with these payload files, all in its manifest as they should be."""
    written = {encoded(name): data for name, data in files.items()}
    gone: Bag = dict.fromkeys(FILES)
    return below_one_folder({**gone, **files, LIST: manifest(written), **more})


def line(name: str, data: bytes = b"one\n") -> bytes:
    """A line for a file in a manifest."""
    return f"{hashlib.sha512(data).hexdigest()}  {name}\n".encode()


BOTH = manifest(FILES)
OXUM = f"{sum(map(len, FILES.values()))}.{len(FILES)}".encode()
SOUND: dict[str, dict[str, bytes]] = {
    "as it should be": below_one_folder({}),
    "of version 0.97": below_one_folder({"bagit.txt": OLD}),
    "several manifests": below_one_folder({WEAK: manifest(FILES, "md5")}),
    "SHA-256": below_one_folder({LIST: None, "manifest-sha256.txt": manifest(FILES, "sha256")}),
    "an empty file": listed({"data/empty.txt": b""}),
    "letters of other scripts": listed({"data/caf\u00e9 \u6f6e.txt": b"one\n"}),
    "spaces in a name": listed({"data/a  b.txt": b"one\n"}),
    "a per cent sign in a name": listed({"data/100%.txt": b"one\n"}),
    "a tag manifest": below_one_folder({TAGS: manifest({"bagit.txt": DECLARATION, LIST: BOTH})}),
    "another tag file": below_one_folder({"notes/about.txt": b"\xff\xfe"}),
    "remarks in folded lines": below_one_folder({INFO: b"Note: one\n  two\n\tthree\n"}),
    "a label twice": below_one_folder({INFO: b"Note: one\nNote: two\n"}),
    "how much is in it": below_one_folder({INFO: b"Payload-Oxum: " + OXUM + b"\n"}),
    "line ends of Windows": below_one_folder({LIST: BOTH.replace(b"\n", b"\r\n")}),
    "no line end at the end": below_one_folder({LIST: BOTH.rstrip(b"\n")}),
    "digests in capitals": below_one_folder({LIST: line("data/a.txt").upper().replace(
        b"DATA/A.TXT", b"data/a.txt") + line("data/deep/b.txt", b"two\n")}),
    "a tab before the name": below_one_folder({LIST: BOTH.replace(b"  ", b"\t")}),
    "a star before the name, as 0.97 had it": below_one_folder(
        {"bagit.txt": OLD, LIST: BOTH.replace(b"  ", b" *")}
    ),
    "a bag in a bag": listed({"data/bagit.txt": DECLARATION, f"data/{LIST}": b"", "data/a": b""}),
}  # fmt: skip
FAULTY: dict[str, tuple[dict[str, bytes], str]] = {
    # 2.1.1, the declaration
    "no declaration": (below_one_folder({"bagit.txt": None}), "no bagit.txt"),
    "a byte order mark": (below_one_folder({"bagit.txt": b"\xef\xbb\xbf" + DECLARATION}), "mark"),
    "no version": (below_one_folder({"bagit.txt": DECLARATION.split(b"\n")[1]}), "two lines"),
    "no encoding": (below_one_folder({"bagit.txt": DECLARATION.split(b"\n")[0]}), "two lines"),
    "a version of words": (
        below_one_folder({"bagit.txt": DECLARATION.replace(b"1.0", b"one")}), "two lines"),
    "a version that never was": (
        below_one_folder({"bagit.txt": DECLARATION.replace(b"1.0", b"1.9")}), "version 1.9"),
    "more than two lines": (
        below_one_folder({"bagit.txt": DECLARATION + b"Note: a\n"}), "two lines"),
    "the lines in the other order": (
        below_one_folder({"bagit.txt": b"\n".join(DECLARATION.split(b"\n")[1::-1])}), "two lines"),
    "a space before the colon": (
        below_one_folder({"bagit.txt": DECLARATION.replace(b":", b" :")}), "two lines"),
    "an encoding that never was": (
        below_one_folder({"bagit.txt": DECLARATION.replace(b"UTF-8", b"UTF-9")}), "UTF-9"),
    "a list in another encoding than it says": (
        listed({"data/a.txt": b"one\n"}, **{LIST: line("data/a.txt").decode().encode("utf-16")}),
        "not written in UTF-8"),
    # 2.1.2 and 2.1.3, the payload and its manifests
    "no payload": (below_one_folder(dict.fromkeys(FILES)), "nothing in its folder data"),
    "no manifest": (below_one_folder({LIST: None}), "no manifest"),
    "an empty manifest": (below_one_folder({LIST: b""}), "was added"),
    "an unknown sum": (below_one_folder({"manifest-crc32.txt": b""}), "not known here"),
    "sums that can be forged": (
        below_one_folder({LIST: None, WEAK: manifest(FILES, "md5")}), "can be forged"),
    "a file that is not listed": (below_one_folder({"data/c.txt": b""}), "was added"),
    "a file that is not there": (below_one_folder({"data/a.txt": None}), "is missing"),
    "a file that was changed": (below_one_folder({"data/a.txt": b"other"}), "was changed"),
    "a file that was cut": (below_one_folder({"data/a.txt": b""}), "was changed"),
    "a file listed twice alike": (below_one_folder({LIST: BOTH + line("data/a.txt")}), "twice"),
    "a file listed twice otherwise": (
        below_one_folder({LIST: BOTH + ZEROS + b"  data/a.txt\n"}), "twice"),
    "a file in one of two lists only": (
        below_one_folder({WEAK: manifest({"data/a.txt": b"one\n"}, "md5")}), "was added"),
    "two lists of which one is wrong": (
        below_one_folder({WEAK: manifest({**FILES, "data/a.txt": b"x"}, "md5")}), "was changed"),
    "no digest": (below_one_folder({LIST: BOTH + b"data/a.txt\n"}), "no digest"),
    "a digest cut short": (below_one_folder({LIST: BOTH[1:]}), "no digest"),
    "a digest of another kind": (
        below_one_folder({LIST: manifest(FILES, "sha256")}), "no digest"),
    "a tag file in the payload's list": (
        below_one_folder({LIST: BOTH + line("bagit.txt", DECLARATION)}), "lies outside"),
    "a star before the name in 1.0": (
        below_one_folder({LIST: BOTH.replace(b"  ", b" *")}), "*data"),
    "a per cent sign that is not encoded": (
        below_one_folder({"data/a.txt": None, "data/a%0Ab.txt": b"one\n",
                          LIST: BOTH.replace(b"a.txt", b"a%0Ab.txt")}), "letter"),
    "a name in pieces of letters": (
        below_one_folder({"data/a.txt": None, "data/caf\u00e9": b"one\n",
                          LIST: BOTH.replace(b"a.txt", "cafe\u0301".encode())}), "pieces"),
    # 2.2.1 to 2.2.3, tag files
    "a tag file that was changed": (
        below_one_folder({TAGS: manifest({"bagit.txt": OLD})}), "was changed"),
    "a tag file that is not there": (
        below_one_folder({TAGS: manifest({"notes.txt": b""})}), "is missing"),
    "a list of tag files that lists itself": (
        below_one_folder({TAGS: manifest({TAGS: b""})}), "of its own kind"),
    "payload among the tag files": (
        below_one_folder({TAGS: manifest({"data/a.txt": b"one\n"})}), "lies in"),
    "another sum of bytes": (below_one_folder({INFO: b"Payload-Oxum: 9.2\n"}), "says 9.2"),
    "another sum of files": (below_one_folder({INFO: b"Payload-Oxum: 8.3\n"}), "says 8.3"),
    "a sum of words": (below_one_folder({INFO: b"Payload-Oxum: many\n"}), "says many"),
    "two sums": (
        below_one_folder({INFO: 2 * (b"Payload-Oxum: " + OXUM + b"\n")}), "says twice"),
    "a remark without a label": (below_one_folder({INFO: b"words\n"}), "no label"),
    "files to be fetched": (
        below_one_folder({"fetch.txt": b"https://example.org/a 4 data/a.txt\n"}), "fetched"),
    # 5.2, names that lead elsewhere or clash
    **{f"a list that leads to {path}": (below_one_folder({LIST: BOTH + line(path)}), words)
       for path, words in {"../a.txt": "up and out", "data/../../a.txt": "up and out",
                           "/etc/a.txt": "top of a disk", "~/a.txt": "home folder",
                           "C:/a.txt": "names a drive", "data\\a.txt": "backslash",
                           "data/con": "name of a device", "data/a. ": "ends with"}.items()},
    "a second bag beside it": ({**below_one_folder({}), "other/bagit.txt": b""}, "one folder"),
    "no folder around it": (dict(listed({"data/a.txt": b"one\n"}), **{"bagit.txt": b""}), "folder"),
}  # fmt: skip
NAMES_THAT_CLASH = {
    "by their capitals": ("bag/data/a.txt", "bag/data/A.TXT"),
    "by a folder's capitals": ("bag/data/a/b", "bag/data/A/c"),
    "by the form of a letter": ("bag/data/\u212b", "bag/data/\u00c5"),
}


@pytest.mark.parametrize("kind", SOUND)
def test_a_sound_bag_is_read(kind: str) -> None:
    found = payload_of(SOUND[kind])
    assert found
    assert {f"bag/data/{name}" for name in found} == {
        path for path in SOUND[kind] if path.startswith("bag/data/")
    }


@pytest.mark.parametrize("kind", FAULTY)
def test_a_faulty_bag_is_refused_in_words(kind: str) -> None:
    files, words = FAULTY[kind]
    with pytest.raises(RefusedError) as refused:
        payload_of(files)
    assert words in str(refused.value)


@pytest.mark.parametrize("kind", NAMES_THAT_CLASH)
def test_names_that_are_one_on_some_computer_are_refused(kind: str) -> None:
    with pytest.raises(RefusedError, match="they are one"):
        refuse_clashes(NAMES_THAT_CLASH[kind])


def test_the_names_of_sound_bags_are_names_that_any_computer_holds() -> None:
    for files in SOUND.values():
        refuse_clashes(files)
        for path in files:
            refuse_path(path)
