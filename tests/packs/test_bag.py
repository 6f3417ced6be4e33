"""A bag as RFC 8493, BagIt 1.0, has it; the numbers in brackets are its sections."""

from __future__ import annotations

import hashlib

from build_tools.packs.bag import bagged, decoded, encoded

FILES = bagged({"b/two.txt": b"two\n", "a 100%.txt": b"one\n"}, [("Title", "a\nb"), ("X", "1")])


def test_the_declaration_is_the_two_lines_of_2_1_1() -> None:
    assert FILES["bagit.txt"] == b"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"


def test_the_payload_lies_in_data_2_1_2() -> None:
    assert FILES["data/b/two.txt"] == b"two\n"
    assert {name for name in FILES if name.startswith("data/")} == {
        "data/b/two.txt",
        "data/a 100%.txt",
    }


def test_the_manifest_names_every_payload_file_with_its_digest_2_1_3() -> None:
    one, two = (hashlib.sha512(data).hexdigest() for data in (b"one\n", b"two\n"))
    expected = f"{one}  data/a 100%25.txt\n{two}  data/b/two.txt\n"
    assert FILES["manifest-sha512.txt"].decode() == expected


def test_the_tag_manifest_names_every_tag_file_but_itself_2_2_1() -> None:
    assert FILES["tagmanifest-sha512.txt"].decode() == "".join(
        f"{hashlib.sha512(FILES[name]).hexdigest()}  {name}\n"
        for name in ("bag-info.txt", "bagit.txt", "manifest-sha512.txt")
    )


def test_the_info_holds_a_line_for_each_label_and_how_much_there_is_2_2_2() -> None:
    assert FILES["bag-info.txt"] == b"Title: a b\nX: 1\nPayload-Oxum: 8.2\n"


def test_only_line_ends_and_the_per_cent_sign_are_encoded_2_1_3() -> None:
    for name, written in (("a\nb\rc%d", "a%0Ab%0Dc%25d"), ("é ~*", "é ~*"), ("%0A", "%250A")):
        assert encoded(name) == written
        assert decoded(written) == name
