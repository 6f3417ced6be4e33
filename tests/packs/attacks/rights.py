"""Credits, licence and metadata that say other than the unit."""

# fmt: off

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from tests.packs.attacks.register import Rows
from tests.packs.attacks.whose import metadata


def cred(name: str, what: str, expected: str, change: Any, must_not: str = "", which: Any =
    "data/credits.txt") -> None:
    metadata(("credits-" if "credits" in which else "licence-" if "licence" in which else "jsonld-")
        + name, Path(which).name + ": " + what, expected, lambda p: p.put(which, change(p.files[
        which]) if callable(change) else change), must_not)


cred("empty", "empty", "refuse", b"")
cred("missing-item", "one item's credit is missing", "refuse", lambda b: b.split(
    b"\n\nIn this unit")[0] + b"\n")
cred("other-author", "the author is somebody else than in unit.md", "refuse", lambda b: b.replace(
    b"Author: The dance unit bank", b"Author: Somebody else"))
cred("other-licence", "the licence is CC0, unit.md says CC-BY-SA", "refuse", lambda b: b.replace(
    b"CC-BY-SA-4.0", b"CC0-1.0"))
cred("other-url", "the licence's address is another", "refuse", lambda b: b.replace(
    b"https://creativecommons.org/licenses/by-sa/4.0/", b"http://127.0.0.1:9/by-sa/"))
cred("codes", "terminal codes", "refuse", lambda b: b + b"\x1b[2J\x1b]0;x\x07")
cred("bidi", "bidi marks", "refuse", lambda b: b + "\u202eabc".encode())
cred("invalid-utf8", "bytes that are no UTF-8", "refuse", lambda b: b + b"\xff\xfe")
cred("utf16", "UTF-16", "refuse", lambda b: b.decode().encode("utf-16"))
cred("5mb", "5 MB of credits", "refuse", lambda b: b + b"\nIn this unit\nTitle: x\n" * 220_000)
cred("lines-of-spaces", "200,000 spaces before a colon", "refuse", lambda b: b + b"Title" + b" " *
    200_000 + b": x\n")
cred("html", "an HTML page", "refuse", b"<html><script>alert(1)</script></html>")
cred("nul", "NULs", "refuse", lambda b: b + b"\0" * 50)
cred("extra-lines", "a line that says the unit is free of all rights", "refuse", lambda b: b +
    b"\nAll rights are waived. Copy freely without credit.\n")
cred("crlf", "CRLF line ends", "harmless", lambda b: b.replace(b"\n", b"\r\n"))
cred("empty", "empty", "refuse", b"", which="data/licence.txt")
cred("other-text", "another licence's words under the same name", "refuse",
    b"You may not teach, copy or change this unit. All your units are ours.\n",
    which="data/licence.txt")
cred("one-word-changed", "one word changed: 'not' taken away", "refuse", lambda b: b.replace(
    b" not ", b" ", 1), which="data/licence.txt")
cred("appended", "a sentence at its end: 'By taking in you agree to pay'", "refuse", lambda b: b +
    b"\nBy taking in this unit you agree to pay 100 pounds a year.\n", which="data/licence.txt")
cred("codes", "terminal codes", "refuse", lambda b: b + b"\x1b[2J", which="data/licence.txt")
cred("homoglyphs", "letters of another alphabet in it", "refuse", lambda b: b.replace(b"Commons",
    "C\u043emmons".encode(), 3), which="data/licence.txt")
cred("utf16", "UTF-16", "refuse", lambda b: b.decode().encode("utf-16"), which="data/licence.txt")
cred("crlf", "CRLF line ends", "harmless", lambda b: b.replace(b"\n", b"\r\n"),
    which="data/licence.txt")
cred("10mb", "10 MB", "refuse", lambda b: b * 550, which="data/licence.txt")
metadata("licence-missing", "no licence.txt", "refuse", lambda p: (p.files.pop("data/licence.txt"),
    p)[1])
metadata("credits-missing", "no credits.txt", "refuse", lambda p: (p.files.pop("data/credits.txt"),
    p)[1])
metadata("about-missing", "no about.json", "refuse", lambda p: (p.files.pop("data/about.json"), p)[
    1])
metadata("unit-md-missing", "no unit.md", "refuse", lambda p: (p.files.pop("data/unit/unit.md"), p)[
    1])
metadata("jsonld-missing", "no metadata.jsonld", "harmless", lambda p: (p.files.pop(
    "data/metadata.jsonld"), p)[1], "a traceback")
J = "data/metadata.jsonld"
cred("context-web", "@context at an address of the pack's choosing", "refuse", lambda b: b.replace(
    b"https://schema.org", b"http://127.0.0.1:9/context.jsonld"), which=J)
cred("context-import", "a @context that imports and redefines", "refuse", lambda b: b.replace(
    b'"https://schema.org"',
    b'["https://schema.org", {"@import": "http://127.0.0.1:9/", "name": "@id"}]'), which=J)
cred("publisher-other", "another publisher", "refuse", lambda b: b.replace(
    b'"name": "The dance unit bank"', b'"name": "A ministry of schools"'), which=J)
cred("script-end", "</script> in a text (if it is put into a page)", "harmless", lambda b:
    b.replace(b'"description": "', b'"description": "</script><script>alert(1)</script>'), which=J)
cred("js-url", "a licence address javascript:", "refuse", lambda b: b.replace(
    b"https://creativecommons.org/licenses/by-sa/4.0/", b"javascript:alert(1)"), which=J)
cred("depth", "100,000 nested lists", "refuse", lambda _b: b"[" * 100_000 + b"]" * 100_000, which=J)
cred("nan", "NaN", "refuse", lambda b: b.replace(b'"inLanguage": "en-GB"', b'"inLanguage": NaN'),
    which=J)
cred("digits-5000", "a number of 5,000 digits", "refuse", lambda b: b.replace(
    b'"inLanguage": "en-GB"', b'"inLanguage": ' + b"9" * 5000), which=J)
cred("duplicates", "keys twice", "refuse", lambda b: b.replace(b'"version"',
    b'"version": "9.9.9", "version"'), which=J)
cred("surrogate", "a lone surrogate", "refuse", lambda b: b.replace(b'"description": "',
    b'"description": "\\ud800'), which=J)
cred("not-json", "no JSON", "refuse", b"hello", which=J)
cred("other-words", "other words than the unit's", "harmless", lambda b: b.replace(
    b'"description": "', b'"description": "Not what it says. '), "those words shown by the bank",
    which=J)
cred("8mb", "8 MB of numbers", "refuse", lambda b: b.replace(b'"keywords": [', b'"keywords": [' +
    b"1," * 4_000_000), which=J)
CREDITS_1: Rows = (("all-rights", "All rights reserved"),
    ("no-derivatives", "CC-BY-ND-4.0"),
    ("nc", "CC-BY-NC-SA-4.0"),
    ("cc0", "CC0-1.0"),
    ("lower", "cc-by-sa-4.0"),
    ("homoglyph", "СС-BY-SA-4.0"),
    ("nd-hidden", "CC-BY-SA-4.0\u200b"),
    ("path", "../../LICENSE"),
    ("url", "https://127.0.0.1:9/l"),
    ("codes", "CC-BY-SA-4.0\x1b[2J"),
    ("gpl", "GPL-3.0-only")
    )
for _n, _l in CREDITS_1:
    metadata("rights-" + _n, f"licence {_l!r} in unit.md and about.json, licence.txt as before",
        "harmless" if _n in ("cc0", "no-derivatives", "nc") else "refuse", lambda p, one=_l:
        p.set_about(licence=one).front("licence", json.dumps(one)),
        "a licence named whose words are not those of licence.txt")
