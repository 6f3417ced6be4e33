"""Slugs, editions, titles and publishers that say what is not so."""

# fmt: off

from __future__ import annotations

import json
import re
from typing import Any

from tests.packs.attacks.packed import Pack
from tests.packs.attacks.register import Rows
from tests.packs.attacks.whose import CLAIM, TERM, metadata

SLUGS_1: Rows = (("parent", "../rock-pool"),
    ("absolute", "/etc/rock"),
    ("nested", "a/b"),
    ("backslash", "a\\b"),
    ("dot", "."),
    ("dot-dot", ".."),
    ("hidden", ".git"),
    ("empty", ""),
    ("space", "rock pool"),
    ("end-dot", "rock-pool."),
    ("end-space", "rock-pool "),
    ("upper", "Rock-Pool"),
    ("device-con", "con"),
    ("device-nul", "nul"),
    ("device-com1", "com1"),
    ("device-aux", "aux"),
    ("device-prn-dotted", "prn.unit"),
    ("colon", "a:b"),
    ("stream", "rock-pool::$data"),
    ("newline", "rock\npool"),
    ("newline-end", "rock-pool\n"),
    ("nul", "rock\0pool"),
    ("escape", "\x1b[2Jrock"),
    ("bidi", "\u202eloop-kcor"),
    ("homoglyph", "r\u043eck-pool"),
    ("fullwidth", "ｒｏｃｋ-pool"),
    ("non-breaking-hyphen", "rock\u2011pool"),
    ("zero-width", "rock\u200b-pool"),
    ("soft-hyphen", "rock\u00ad-pool"),
    ("long-300", "r" * 300),
    ("long-100000", "r" * 100_000),
    ("dash-first", "-rf"),
    ("option", "--yes"),
    ("double-dash", "rock--pool"),
    ("digits-arabic", "rock-١"),
    ("markup", "<script>alert(1)</script>"),
    ("quote", "a\"onclick=alert(1)"),
    ("percent", "%2e%2e"),
    ("tilde", "~"),
    ("dollar", "$home"),
    ("glob", "*"),
    ("earlier", "earlier"),
    ("index", "index"),
    ("site-names", "editions"),
    ("media", "media"),
    ("like-edition", "rock-pool-1.0.0"),
    ("nfd", "cafe\u0301"),
    ("emoji", "🪨-pool"),
    ("proto", "__proto__"),
    ("turkish", "\u0130stanbul"),
    ("sharp-s", "stra\u00dfe")
    )
for _n, _s in SLUGS_1:
    metadata("slug-" + _n, f"the unit's name is {_s[:40]!r}", "harmless" if _n in ("earlier",
        "index", "site-names", "media", "like-edition", "double-dash") else "refuse", lambda p,
        s=_s: p.set_slug(s, root=re.sub(r"[^A-Za-z0-9.-]", "x", s)[:60] + "-1.0.0"),
        "a folder of the bank's own (earlier, editions, index) mistaken for the unit or "
        "overwritten")
metadata("slug-differs-from-folder", "the folder has the old name, about.json another-unit",
    "refuse", lambda p: p.set_slug("another-unit", root=p.root))
metadata("slug-differs-from-pages", "about.json another-unit, pages say the old one", "harmless",
    lambda p: p.set_about(unit="another-unit"), CLAIM)


EDITIONS_AND_DATES_2: Rows = (("next", "1.0.1", "harmless"),
    ("older", "0.0.1", "harmless"),
    ("highest", "999999999.999999999.999999999", "refuse"),
    ("digits-5000", "9" * 5000 + ".0.0", "refuse"),
    ("digits-300", "1." + "9" * 300 + ".0", "refuse"),
    ("two-parts", "1.0", "refuse"),
    ("four-parts", "1.0.0.0", "refuse"),
    ("leading-zero", "01.0.0", "refuse"),
    ("plus", "1.0.0+build", "refuse"),
    ("pre", "2.0.0-alpha", "refuse"),
    ("arabic", "١.٠.٠", "refuse"),
    ("superscript", "1.0.²", "refuse"),
    ("newline", "\"1.0.0\\n\"", "refuse"),
    ("space", "\" 1.0.0\"", "refuse"),
    ("v", "v1.0.0", "refuse"),
    ("minus", "-1.0.0", "refuse"),
    ("underscore", "1_0.0.0", "refuse"),
    ("fullwidth-dot", "1．0．0", "refuse"),
    ("path", "../../1.0.0", "refuse"),
    ("words", "latest", "refuse")
    )
for _n, _e, _exp in EDITIONS_AND_DATES_2:
    metadata("edition-" + _n, f"edition {_e[:30]} everywhere", _exp, lambda p, e=_e: _edition(p, e),
        CLAIM)


def _edition(p: Pack, e: str) -> Any:
    plain = json.loads(e) if e.startswith('"') else e
    p.set_edition(plain)
    p.root = re.sub(r"[^A-Za-z0-9.-]", "x", p.root)[:100]
    return p.front("edition", json.dumps(plain, ensure_ascii=False))


EDITIONS_AND_DATES_1: Rows = (("future", "2999-12-31", "harmless"),
    ("past", "1066-10-14", "harmless"),
    ("impossible", "2026-02-30", "refuse"),
    ("week", "2026-W48-3", "refuse"),
    ("basic", "20261125", "refuse"),
    ("year-5", "12026-11-25", "refuse"),
    ("year-0", "0000-01-01", "refuse"),
    ("time", "2026-11-25T00:00:00Z", "refuse"),
    ("arabic", "٢٠٢٦-١١-٢٥", "refuse"),
    ("codes", "2026-11-25\x1b[2J", "refuse"),
    ("ordinal", "2026-329", "refuse")
    )
for _n, _d, _exp in EDITIONS_AND_DATES_1:
    metadata("issued-" + _n, f"issued {_d[:24]!r} everywhere", _exp, lambda p, d=_d: p.set_edition(
        "1.0.0", d).front("issued", json.dumps(d) if not re.fullmatch(r"\d{4,5}-\d\d-\d\d", d) else
        d), "a unit of the future always held to be the newest")
metadata("edition-same-other-words",
    "the same name, publisher and edition, but other words (a forged 1.0.0)", "harmless", lambda p:
    p.sub("data/unit/unit.md", r"^summary: .*$",
    "summary: The sea leaves a pool, and everybody jumps from the wall bars."),
    "the unit here replaced or the two held to be the same")
metadata("edition-next-same-publisher",
    "edition 1.0.1 by the very publisher of this bank, other words, not proven", "harmless", lambda
    p: p.set_edition("1.0.1").sub("data/unit/unit.md", r"^summary: .*$",
    "summary: The sea leaves a pool, and everybody jumps from the wall bars."), CLAIM)
metadata("edition-next-other-publisher", "edition 1.0.1 of this unit by somebody else", "harmless",
    lambda p: p.set_edition("1.0.1").set_publisher("Somebody else"), CLAIM)
metadata("edition-downgrade-older-date", "edition 9.0.0 with a date before that of 1.0.0",
    "harmless", lambda p: p.set_edition("9.0.0", "2019-01-01"), CLAIM)
metadata("edition-bag-info-higher", "bag-info and the folder say 9.9.9, about.json 1.0.0",
    "harmless", lambda p: (p.put("bag-info.txt", p.text("bag-info.txt").replace(p.slug + "-1.0.0",
    p.slug + "-9.9.9")), p.in_root(p.slug + "-9.9.9"))[-1], CLAIM)


P0 = "The dance unit bank"
NAMES_OF_PUBLISHERS_2: Rows = (("cyrillic", "The d\u0430nce unit b\u0430nk"),
    ("greek", "The d\u03b1nce unit bank"),
    ("latin-alpha", "The d\u0251nce unit bank"),
    ("math-letters", "The 𝖽𝖺𝗇𝖼𝖾 unit bank"),
    ("fullwidth", "Ｔｈｅ ｄａｎｃｅ ｕｎｉｔ ｂａｎｋ"),
    ("case", "THE DANCE UNIT BANK"),
    ("double-space", "The dance  unit bank"),
    ("nbsp", "The\u00a0dance unit bank"),
    ("thin-space", "The\u2009dance unit bank"),
    ("zero-width", "The dance\u200b unit bank"),
    ("zwj", "The dan\u200dce unit bank"),
    ("word-joiner", "The dance\u2060 unit bank"),
    ("soft-hyphen", "The dance unit ba\u00adnk"),
    ("variation", "The dance unit bank\ufe0f"),
    ("tags", "The dance unit bank\U000e0061"),
    ("hangul-filler", "The dance unit bank\u3164"),
    ("combining-grapheme-joiner", "The dance unit ba\u034fnk"),
    ("mongolian-vowel", "The dance unit bank\u180e"),
    ("invisible-times", "The dance\u2062 unit bank"),
    ("end-dot", "The dance unit bank."),
    ("end-space", "The dance unit bank "),
    ("l-for-i", "The dance unlt bank"),
    ("rn-for-m", "The dance unit bank of Harnpton"),
    ("bidi-mirror", "\u202eknab tinu ecnad ehT"),
    ("isolate-open", "\u2067The dance unit bank"),
    ("ligature", "The dance un\ufb01t bank"),
    ("roman-numeral", "The dance un\u2170t bank"),
    ("accent", "The dance unit b\u0101nk"),
    ("nfd", "The dance unit ba\u0304nk"),
    ("armenian", "The dance u\u0578it bank"),
    ("cherokee", "\u13a2he dance unit bank")
    )
for _n, _v in NAMES_OF_PUBLISHERS_2:
    metadata("publisher-" + _n, f"a publisher that looks like this bank's: {_v!r}", "harmless",
        lambda p, v=_v: p.set_publisher(v).set_edition("1.0.1"), CLAIM + "; " + TERM)
NAMES_OF_PUBLISHERS_1: Rows = (("codes", "\x1b[2J\x1b[1;1HOK, taken in"),
    ("osc-title", "\x1b]0;owned\x07x"),
    ("osc-link", "\x1b]8;;http://127.0.0.1:9/\x1b\\The dance unit bank\x1b]8;;\x1b\\"),
    ("osc-clipboard", "\x1b]52;c;cm0gLXJmIH4=\x07x"),
    ("csi-c1", "\x9b2Jx"),
    ("dcs", "\x90$q\"p\x9cx"),
    ("backspaces", "Evil\b\b\b\bThe dance unit bank"),
    ("carriage-return", "Evil\rThe dance unit bank"),
    ("newline-forged", "x\nOK: the publisher's name is proven\nLicence: CC0-1.0"),
    ("u2028", "x\u2028Licence: CC0-1.0"),
    ("nel", "x\x85Licence: CC0-1.0"),
    ("vt-ff", "x\x0b\x0cy"),
    ("del", "x\x7fy"),
    ("nul", "x\0y"),
    ("surrogate", "x\ud83dy"),
    ("nonchar", "x\uffffy"),
    ("private", "x\uf8ffy"),
    ("long-100000", "x" * 100_000),
    ("combining-1000", "x" + "\u0301" * 1000),
    ("markup", "<script>alert(1)</script>"),
    ("attr", "x\" onmouseover=\"alert(1)"),
    ("script-end", "</script><script>alert(1)</script>"),
    ("empty", ""),
    ("space-only", "   "),
    ("invisible-only", "\u200b\u2060\u3164"),
    ("emoji-flag", "🏴\U000e0067\U000e0062\U000e0065\U000e006e\U000e0067\U000e007f"),
    ("path", "../../evil"),
    ("csv", "=cmd|' /C calc'!A0"),
    ("format", "%s%n{0.__class__}${7*7}"),
    ("rtl-brackets", "\u05d0\u05d1 (\u05d2) 1.0.0 \u05d3"),
    ("zalgo", "T\u0300\u0301\u0302h\u0303\u0304e\u0305 bank"),
    ("crlf-header", "x\r\nSet-Cookie: a=b")
    )
for _n, _v in NAMES_OF_PUBLISHERS_1:
    _exp = "harmless" if _n in ("markup", "attr", "script-end", "csv", "format", "path",
        "emoji-flag", "rtl-brackets", "zalgo", "combining-1000", "private") else "refuse"
    metadata("publisher-odd-" + _n, f"a publisher's name: {_v[:30]!r}", _exp, lambda p, v=_v: _odd(
        p, v, "publisher"), TERM)
    metadata("title-odd-" + _n, f"a title: {_v[:30]!r}", _exp, lambda p, v=_v: _odd(p, v, "title"),
        TERM)


def _odd(p: Pack, v: Any, what: str) -> Any:

    getattr(p, "set_" + what)(v)
    p.set_about(**{what: v})
    a = p.about()
    p.put("data/about.json", json.dumps(a, indent=2, ensure_ascii=True) + "\n")
    p.put("data/metadata.jsonld", json.dumps(json.loads(p.files["data/metadata.jsonld"].decode(
        "utf-8", "surrogatepass")), indent=2, ensure_ascii=True) + "\n")
    for n in ("data/credits.txt", "bag-info.txt"):
        p.put(n, p.files[n].decode("utf-8", "surrogatepass").encode("utf-8", "replace"))
    return p
