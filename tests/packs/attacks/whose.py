"""about.json that is broken, or says what the unit does not."""

# fmt: off

from __future__ import annotations

import functools
import json
from typing import Any

from tests.packs.attacks.drawings_that_act import EVIL
from tests.packs.attacks.register import Maker, Rows, recipe
from tests.packs.attacks.zips import MB


def metadata(name: str, what: str, expected: str, make: Maker, must_not: str = "", sound: bool =
    True) -> None:
    recipe(name, "metadata", what, expected, make, must_not, sound)


TERM = ("control codes, bidi marks, invisible letters or forged lines in what the terminal shows; "
    "markup live on a page")
CLAIM = "believed without a word that it is not proven; a unit here replaced"


def about_raw(name: str, what: str, text: Any, expected: str = "refuse", must_not: str =
    "") -> None:
    metadata("about-" + name, "about.json: " + what, expected, lambda p: p.put("data/about.json",
        text(p.text("data/about.json")) if callable(text) else text), must_not)


def about_set(name: str, what: str, expected: str = "refuse", must_not: str = "",
    change: dict[str, Any] | None = None, **kw: Any) -> None:
    told = {**kw, **(change or {})}
    metadata("about-" + name, "about.json: " + what, expected, lambda p: p.set_about(**told),
        must_not)


METADATA_2: Rows = (("empty", "empty", ""),
    ("null", "null", "null"),
    ("list", "a list", "[]"),
    ("text", "a text", '"x"'),
    ("number", "a number", "1"),
    ("nan", "NaN", "NaN"),
    ("empty-object", "{}", "{}"),
    ("two-values", "two values", lambda t: t + t),
    ("trailing-comma", "a comma too many", lambda t: t.replace('"1.1.0"', '"1.1.0",')),
    ("comment", "a comment", lambda t: "// x\n" + t),
    ("single-quotes", "single quotes", lambda t: t.replace('"', "'")),
    ("bom", "a byte order mark", lambda t: "\ufeff" + t),
    ("utf16", "UTF-16 (json.loads guesses it from bytes)", lambda t: t.encode("utf-16")),
    ("utf32", "UTF-32", lambda t: t.encode("utf-32")),
    ("utf16-no-bom", "UTF-16 without a mark", lambda t: t.encode("utf-16-le")),
    ("invalid-utf8", "bytes that are no UTF-8", lambda t: t.encode().replace(b'"title": "',
    b'"title": "\xff')),
    ("nul-end", "NULs at its end", lambda t: t + "\0\0"),
    ("nul-in-text", "a NUL in a text", lambda t: t.replace('"title": "', '"title": "\\u0000')),
    ("control-raw", "raw control codes in a text", lambda t: t.replace('"title": "',
    '"title": "\x1b[2J')),
    ("surrogate", "a lone surrogate", lambda t: t.replace('"title": "', '"title": "\\ud800')),
    ("surrogate-key", "a lone surrogate in a key", lambda t: t.replace("{", '{"\\udfff": 1,', 1)),
    ("depth-900", "900 nested lists", lambda t: t.replace("{", '{"x": ' + "[" * 900 + "]" * 900 +
    ",", 1)),
    ("depth-100000", "100,000 nested lists (RecursionError)", lambda t: t.replace("{", '{"x": ' +
    "[" * 100_000 + "]" * 100_000 + ",", 1)),
    ("depth-objects", "50,000 nested objects", lambda t: t.replace("{", '{"x": ' + '{"a":' * 50_000
    + "1" + "}" * 50_000 + ",", 1)),
    ("depth-open", "1,000,000 [ never closed", "[" * MB),
    ("digits-5000", "format: 5,000 digits (ValueError above 4,300)", lambda t: t.replace(
    '"format": 1,', '"format": ' + "1" * 5000 + ",", 1)),
    ("digits-4000", "format: 4,000 digits", lambda t: t.replace('"format": 1,', '"format": ' + "1" *
    4000 + ",", 1)),
    ("format-exponent", "format: 1e999999", lambda t: t.replace('"format": 1,',
    '"format": 1e999999,', 1)),
    ("format-infinity", "format: Infinity", lambda t: t.replace('"format": 1,',
    '"format": Infinity,', 1)),
    ("format-minus-infinity", "format: -Infinity", lambda t: t.replace('"format": 1,',
    '"format": -Infinity,', 1)),
    ("format-nan", "format: NaN", lambda t: t.replace('"format": 1,', '"format": NaN,', 1)),
    ("format-float", "format: 1.0 (equal to 1 in Python)", lambda t: t.replace('"format": 1,',
    '"format": 1.0,', 1)),
    ("format-true", "format: true (equal to 1 in Python)", lambda t: t.replace('"format": 1,',
    '"format": true,', 1)),
    ("format-minus-zero", "format: -0", lambda t: t.replace('"format": 1,', '"format": -0,', 1)),
    ("format-text", 'format: "1"', lambda t: t.replace('"format": 1,', '"format": "1",', 1)),
    ("format-99", "format: 99", lambda t: t.replace('"format": 1,', '"format": 99,', 1)),
    ("format-list", "format: [1]", lambda t: t.replace('"format": 1,', '"format": [1],', 1)),
    ("format-tiny", "format: 1.00000000000000000001", lambda t: t.replace('"format": 1,',
    '"format": 1.00000000000000000001,', 1)),
    ("duplicate-publisher", "publisher twice (the last wins in Python, the first elsewhere)", lambda
    t: t.replace('"publisher"', '"publisher": "A ministry of schools",\n  "publisher"')),
    ("duplicate-unit", "unit twice, the last a path", lambda t: t.replace("{", '{"unit": "x",',
    1).replace('"title"', '"unit": "../x", "title"', 1)),
    ("duplicate-escaped", "edition, and \\u0065dition", lambda t: t.replace("{",
    '{"\\u0065dition": "9.9.9",', 1)),
    ("keys-200000", "200,000 unknown keys", lambda t: t.replace("{", "{" + ",".join(f'"k{i}": 1' for
    i in range(200_000)) + ",", 1)),
    ("keys-colliding", "200,000 keys of one length", lambda t: t.replace("{", "{" + ",".join(
    f'"{i * 2654435761 % 2**32:010}": 1' for i in range(200_000)) + ",", 1)),
    ("key-proto", "__proto__, constructor and __class__", lambda t: t.replace("{",
    '{"__proto__": {"x": 1}, "constructor": 1, "__class__": 1,', 1)),
    ("key-codes", "an unknown key of terminal codes (shown in the message?)", lambda t: t.replace(
    "{", '{"\\u001b[2J\\u001b]0;x\\u0007\\u202e": 1,', 1)),
    ("spaces-8mb", "8 MB of spaces", lambda t: t + " " * 8 * MB),
    ("escapes-flood", "a title of 100,000 \\u0041", lambda t: t.replace('"title": "', '"title": "' +
    "\\u0041" * 100_000)),
    ("backslashes", "a title of 200,000 backslashes", lambda t: t.replace('"title": "', '"title": "'
    + "\\\\" * 100_000)),
    ("string-open", "a text that never ends, 2 MB", lambda t: t.rstrip("}\n") + ', "x": "' + "a" * 2
    * MB),
    )
for _n, _what, _t, *_rest in METADATA_2:
    about_raw(_n, _what, _t, *_rest)
METADATA_1: tuple[str, ...] = (
    "unit", "title", "edition", "issued", "publisher", "licence", "schema",
    "made_with"
    )
for _key in METADATA_1:
    for _n, _v in (("null", None), ("list", ["x"]), ("object", {"a": "b"}), ("number", 7), ("true",
        True), ("empty", "")):
        if (_key, _n) not in (("schema", "object"), ("made_with", "object")) and (_n in ("null",
            "object", "number") or _key in ("unit", "edition", "publisher")):
            about_set(f"{_key.replace('_', '-')}-{_n}", f"{_key} is {_n}", change={_key: _v})
    metadata(f"about-{_key.replace('_', '-')}-missing", f"about.json: no {_key}", "refuse", lambda
        p, k=_key: p.put("data/about.json", json.dumps({a: b for a, b in p.about().items() if a !=
        k})))
about_set("schema-sha-wrong", "the schema's digest is of nothing known", "harmless",
    "a schema named by a stranger trusted", schema={"format": 1, "sha512": "0" * 128})
about_set("schema-sha-number", "the schema's digest is a number", schema={"format": 1, "sha512": 7})
about_set("schema-format-huge", "the schema's format is 10^400", schema={"format": 10 ** 400,
    "sha512": "0" * 128})
about_set("schema-url", "the schema is an address", schema={"format": 1, "sha512": "0" * 128, "url":
    f"{EVIL}/schema.json"})
about_set("made-with-codes", "made_with holds terminal codes", "harmless", TERM, made_with={"name":
    "\x1b[2J\x1b]0;x\x07bank", "version": "\u202e9.9"})
about_set("made-with-huge", "made_with of 200 kB", made_with={"name": "x" * 200_000, "version":
    "1.1.0"})
about_set("made-with-version-path", "made_with version ../../x", "harmless", "a file chosen by it",
    made_with={"name": "dance unit bank", "version": "../../x"})
about_set("made-with-future", "made with version 99.0.0", "harmless", "pages trusted for that",
    made_with={"name": "dance unit bank", "version": "99.0.0"})
about_set("adapted-from-text", "adapted_from is a text", adapted_from="rock-pool")
about_set("adapted-from-loop", "adapted_from names this very unit and edition", adapted_from={
    "unit": "rock-pool", "title": "x", "edition": "1.0.0", "publisher": "The dance unit bank",
    "licence": "CC-BY-SA-4.0"})
about_set("adapted-from-deep", "adapted_from in adapted_from, 500 deep",
    adapted_from=functools.reduce(lambda d, _: {"title": "x", "adapted_from": d}, range(500), None))
about_set("adapted-from-markup", "adapted_from with markup and codes", adapted_from={"unit": "x",
    "title": "<script>alert(1)</script>\x1b[2J", "edition": "1.0.0", "publisher": "\u202eXYZ",
    "licence": "CC-BY-SA-4.0"})
about_set("adapted-from-claims", "adapted_from names a publisher, unit.md does not", "refuse",
    adapted_from={"unit": "weaving-shed", "title": "Over, under: the weaving shed", "edition":
    "1.0.0", "publisher": "A ministry of schools", "licence": "CC-BY-SA-4.0"})
about_set("title-differs", "another title than unit.md", title="A better title")
about_set("edition-differs", "edition 2.0.0, unit.md says 1.0.0", edition="2.0.0")
about_set("publisher-differs", "another publisher than unit.md", publisher="A ministry of schools")
about_set("licence-differs", "CC0-1.0, unit.md says CC-BY-SA-4.0", licence="CC0-1.0")
about_set("issued-differs", "another date than unit.md", issued="2020-01-01")
about_set("extra-key-big", "an extra key of 3 MB", note="x" * 3 * MB)
about_set("extra-key", "an extra harmless key", "harmless", "a traceback", note="x")
