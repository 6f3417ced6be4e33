"""Fields that are no sound YAML, or not what they should be."""

# fmt: off

from __future__ import annotations

from tests.packs.attacks.notes import told
from tests.packs.attacks.zips import MB

BILLION = "\n".join([f"l{0}: &l0 [x,x,x,x,x,x,x,x,x]"] + [
    f"l{i}: &l{i} [{','.join([f'*l{i-1}'] * 9)}]" for i in range(1, 12)])
_FRONT = [("aliases-billion", "the billion laughs, by aliases", BILLION, "refuse", ""), (
    "alias-self", "a list that holds itself", "x: &a [*a]", "refuse", ""), ("alias-self-map",
    "a map that holds itself", "x: &a {b: *a}", "refuse", ""), ("merge-self",
    "a merge key of itself", "x: &a\n  <<: *a", "refuse", ""), ("merge-flood",
    "merge keys of merge keys, 25 levels of doubling", "\n".join(["m0: &m0 {a: 1}"] + [
    f"m{i}: &m{i} {{<<: [*m{i-1}, *m{i-1}], k{i}: 1}}" for i in range(1, 26)]), "refuse", ""), (
    "anchors-20000", "20,000 anchors", "\n".join(f"a{i}: &a{i} x" for i in range(20_000)), "refuse",
    ""), ("alias-unknown", "an alias of nothing", "x: *nothing", "refuse", ""), ("tag-python-apply",
    "!!python/object/apply", "x: !!python/object/apply:os.system ['touch /tmp/PWNED']", "refuse",
    ""), ("tag-python-name", "!!python/name", "x: !!python/name:os.system", "refuse", ""), (
    "tag-python-new", "!!python/object/new",
    "x: !!python/object/new:type {args: ['z', !!python/tuple [], {'extend': "
    "!!python/name:exec}], listitems: 'x'}", "refuse", ""), ("tag-unknown", "a tag nobody knows",
    "x: !nobody y", "refuse", ""), ("tag-binary", "!!binary", "x: !!binary aGVsbG8=", "refuse", ""),
    ("tag-set", "!!set", "x: !!set {a, b}", "refuse", ""), ("tag-int-of-text",
    "!!int of a text (ValueError)", "x: !!int hello", "refuse", ""), ("tag-float-of-map",
    "!!float of a map", "x: !!float {a: b}", "refuse", ""), ("tag-timestamp",
    "!!timestamp of nonsense", "x: !!timestamp hello", "refuse", ""), ("tag-null-of-list",
    "!!null of a list", "x: !!null [a]", "refuse", ""), ("tag-bool",
    "!!bool of nonsense (KeyError)", "x: !!bool maybe", "refuse", ""), ("tag-uri-huge",
    "a tag of 100 kB", "x: !<tag:" + "a" * 100_000 + "> y", "refuse", ""), ("omap",
    "!!omap of a text", "x: !!omap hello", "refuse", ""), ("pairs", "!!pairs of lists",
    "x: !!pairs [[a, b]]", "refuse", ""), ("flow-lists-5000", "5,000 nested [", "x: " + "[" * 5000 +
    "]" * 5000, "refuse", ""), ("flow-lists-open-100000", "100,000 [ never closed", "x: " + "[" *
    100_000, "refuse", ""), ("flow-maps-5000", "5,000 nested {a: ", "x: " + "{a: " * 5000 + "b" +
    "}" * 5000, "refuse", ""), ("block-lists-3000", "3,000 nested - ", "x:\n  " + "- " * 3000 + "a",
    "refuse", ""), ("block-maps-900", "900 maps, each in the last", "x:\n" + "".join("  " * (i + 1)
    + "a:\n" for i in range(900)), "refuse", ""), ("flow-lists-90",
    "90 nested [ (below most limits)", "x: " + "[" * 90 + "]" * 90, "refuse", ""), ("complex-keys",
    "2,000 nested ? ", "x:\n  " + "? " * 2000 + "a", "refuse", ""), ("key-list",
    "a list as a key (unhashable)", "? [a, b]\n: c", "refuse", ""), ("key-map", "a map as a key",
    "x: {? {a: b} : c}", "refuse", ""), ("key-null", "a null key", "? \n: c", "refuse", ""), (
    "key-int", "keys 1, 1.0 and true, equal in Python", "1: a\n1.0: b\ntrue: c", "refuse", ""), (
    "key-nan", "keys .nan twice", ".nan: a\n.NaN: b", "refuse", ""), ("key-date", "a date as a key",
    "2026-01-01: a", "refuse", ""), ("key-long", "a key of 5,000 letters", "k" * 5000 + ": a",
    "refuse", ""), ("key-proto", "keys __proto__, constructor, __class__",
    "__proto__: {a: b}\nconstructor: x\n__class__: y", "refuse", ""), ("key-control",
    "a key with terminal codes (shown in the message?)", "\"\\e[2J\\e]0;x\\a\\u202e\": a", "refuse",
    ""), ("key-html", "a key that is markup", "\"<script>alert(1)</script>\": a", "refuse", ""), (
    "keys-20000", "20,000 unknown keys", "\n".join(f"k{i}: a" for i in range(20_000)), "refuse",
    ""), ("duplicate-title", "title twice", "title: Another title", "refuse", ""), (
    "duplicate-publisher", "publisher twice", "publisher: A ministry of schools", "refuse", ""), (
    "duplicate-quoted", "the key publisher in quotes, a second time",
    "\"publish\\x65r\": A ministry of schools", "refuse", ""), ("duplicate-merge",
    "another publisher by a merge key", "<<: {publisher: A ministry of schools, status: x}",
    "refuse", ""), ("document-second", "a second document by '--- ' (not bare)",
    "--- # more\ntitle: Second", "refuse", ""), ("directive", "a %YAML directive in the middle",
    "...\n%YAML 9.9\n---", "refuse", ""), ("directive-tag", "a %TAG directive",
    "...\n%TAG ! tag:yaml.org,2002:python/\n--- !object:os.system x", "refuse", ""), ("colons",
    "50 kB of 'a: '", "x: " + "a: " * 17_000, "refuse", ""), ("question-marks", "50 kB of '? '",
    "? " * 25_000, "refuse", ""), ("dashes", "50 kB of '- '", "- " * 25_000, "refuse", ""), (
    "bangs", "50 kB of !", "x: " + "!" * 50_000, "refuse", ""), ("stars", "50 kB of '*'", "x: " +
    "*" * 50_000, "refuse", ""), ("ands", "50 kB of '&a '", "x: " + "&a " * 17_000, "refuse", ""), (
    "hashes", "500,000 comment lines", "# x\n" * 500_000, "refuse", ""), ("percent",
    "a line that starts with %", "%x: y", "refuse", ""), ("at-sign", "a reserved sign", "x: @y",
    "refuse", ""), ("back-tick", "a reserved sign", "x: `y", "refuse", ""), ("tab-indent",
    "a tab as indentation", "x:\n\ty: z", "refuse", ""), ("quote-open",
    "a quote that is never closed, 200 kB", "x: \"" + "a\n  " * 50_000, "refuse", ""), (
    "single-quotes", "100 kB of ''", "x: '" + "''" * 50_000 + "'", "refuse", ""), ("escapes",
    "60 kB of \\x41", "x: \"" + "\\x41" * 15_000 + "\"", "refuse", ""), ("escape-surrogate",
    "a lone surrogate by \\ud800", "x: \"\\ud800\"", "refuse", ""), ("escape-huge",
    "\\U00110000 (beyond Unicode: ValueError in chr)", "x: \"\\U00110000\"", "refuse", ""), (
    "escape-ffffffff", "\\UFFFFFFFF (OverflowError in chr)", "x: \"\\UFFFFFFFF\"", "refuse", ""), (
    "escape-nul", "\\0", "x: \"\\0\"", "refuse", ""), ("escape-unknown", "\\q", "x: \"\\q\"",
    "refuse", ""), ("folded-huge", "a folded text of 100,000 lines", "x: >\n" + "  a\n" * 100_000,
    "refuse", ""), ("literal-indent-huge", "an indentation indicator and spaces", "x: |9\n" + " " *
    50_000 + "a", "refuse", ""), ("scalar-plain-lines", "a plain text over 50,000 lines", "x: a\n" +
    "  a\n" * 50_000, "refuse", ""), ("scalar-3mb", "one text of 3 MB", "x: " + "a" * 3 * MB,
    "refuse", ""), ("spaces-after-colon", "200,000 spaces after a colon", "x:" + " " * 200_000 +
    "y", "refuse", ""), ("anchor-huge", "an anchor's name of 200 kB", "x: &" + "a" * 200_000 + " y",
    "refuse", ""), ("line-seps", "NEL, LS and PS as line ends", "x: a\x85y: b\u2028z: c", "refuse",
    ""), ("bom-inside", "a byte order mark inside", "\ufeffx: a", "refuse", ""), ("nonchar",
    "noncharacters", "x: \ufffe\uffff", "refuse", ""), ("c1", "C1 control codes", "x: \x80\x9b",
    "refuse", ""), ("del", "DEL", "x: a\x7fb", "refuse", ""),]
for _n, _what, _block, _exp, _mn in _FRONT:
    told("yaml-" + _n, "front matter: " + _what, _exp, lambda p, b=_block: p.add_front(b), _mn)

_VALUES = [("title-list", "title", "[a, b]"), ("title-map", "title", "{a: b}"), ("title-null",
    "title", "null"), ("title-true", "title", "yes"), ("title-int", "title", "12"), ("title-date",
    "title", "2026-01-01"), ("title-binary", "title", "!!binary aGVsbG8="), ("title-empty", "title",
    "\"\""), ("title-spaces", "title", "\"   \""), ("title-200kb", "title", "a" * 200_000), (
    "title-alias", "title", "&t Twelve hours"), ("format-float", "format", "1.0"), ("format-huge",
    "format", "9" * 5000), ("format-negative", "format", "-1"), ("format-text", "format", "\"1\""),
    ("format-2", "format", "2"), ("format-true", "format", "true"), ("format-list", "format",
    "[1]"), ("format-octal", "format", "0o1"), ("format-exp", "format", "1e0"), ("format-nan",
    "format", ".nan"), ("edition-float", "edition", "1.0"), ("edition-huge", "edition", "9" * 5000 +
    ".0.0"), ("edition-negative", "edition", "-1.0.0"), ("edition-path", "edition",
    "../../../1.0.0"), ("edition-arabic", "edition", "١.٠.٠"), ("edition-newline", "edition",
    "\"1.0.0\\n\""), ("edition-prerelease", "edition", "1.0.0-rc.1+x"), ("edition-leading-zero",
    "edition", "01.0.0"), ("issued-impossible", "issued", "2026-02-30"), ("issued-year-0", "issued",
    "0000-00-00"), ("issued-9999", "issued", "9999-12-31"), ("issued-time", "issued",
    "2026-11-25T99:99:99Z"), ("issued-tz", "issued", "2026-11-25T00:00:00+99:99"), (
    "issued-fraction", "issued", "2026-11-25 00:00:00." + "9" * 5000), ("issued-int", "issued",
    "20261125"), ("issued-text", "issued", "\"2026-11-25\\e[2J\""), ("years-aliased", "years",
    "&y [*y]"), ("years-null", "years", "null"), ("years-deep", "years", "[[[[[[[[]]]]]]]]"), (
    "years-huge", "years", "[{nation: England, years: [999999999999999999999999]}]"), ("years-nan",
    "years", "[{nation: England, years: [.nan, .inf, -.inf]}]"), ("years-negative", "years",
    "[{nation: England, years: [-5]}]"), ("years-100000", "years", "[{nation: England, years: [" +
    ",".join("3" for _ in range(100_000)) + "]}]"), ("years-bool", "years",
    "[{nation: England, years: [true, false]}]"), ("topics-100000", "topics", "[" + ",".join(f"t{i}"
    for i in range(100_000)) + "]"), ("topics-map", "topics", "{a: b}"), ("topics-paths", "topics",
    "[../../evil, /etc, CON, 'a\\0b']"), ("topics-markup", "topics",
    "['<script>alert(1)</script>']"), ("subjects-null", "subjects", "[null, true, 1.5, {a: b}]"), (
    "language-path", "language", "../../en"), ("language-markup", "language",
    "\"en\\\"><script>alert(1)</script>\""), ("language-long", "language", "x-" + "a" * 100_000), (
    "tempo-zero", "tempo", "0"), ("tempo-negative", "tempo", "-108"), ("tempo-huge", "tempo", "1" +
    "0" * 400), ("tempo-inf", "tempo", ".inf"), ("tempo-nan", "tempo", ".nan"), ("tempo-tiny",
    "tempo", "1e-320"), ("tempo-text", "tempo", "fast"), ("tempo-sexagesimal", "tempo", "1:48"), (
    "phrase-zero", "phrase", "0"), ("phrase-negative", "phrase", "-8"), ("phrase-huge", "phrase",
    "99999999999"), ("phrase-float", "phrase", "7.5"), ("phrase-1", "phrase", "1"), ("form-100000",
    "form", "A " * 50_000), ("form-26-squared", "form", " ".join(chr(65 + i // 26 % 26) + chr(65 + i
    % 26) for i in range(676))), ("form-unknown", "form", "A B Z"), ("form-markup", "form",
    "A <b> B"), ("form-empty", "form", "\"\""), ("form-lower", "form", "a ß ı"), ("form-list",
    "form", "[A, [B, [C]]]"), ("counts-billion", "counts", "1000000000"), ("counts-million",
    "counts", "1000000"), ("counts-zero", "counts", "0"), ("counts-negative", "counts", "-32"), (
    "counts-float", "counts", "32.5"), ("counts-inf", "counts", ".inf"), ("counts-digits-5000",
    "counts", "9" * 5000), ("minutes-huge", "minutes", "1e308"), ("minutes-negative", "minutes",
    "-6"), ("minutes-text", "minutes", "six"), ("minutes-bool", "minutes", "true"), ("seconds-huge",
    "seconds", "20 to 99999999999999999999"), ("seconds-reversed", "seconds", "30 to 20"), (
    "seconds-slow", "seconds", "20 " * 20_000), ("seconds-spaces", "seconds", "\"20" + " " * 60_000
    + "to\""), ("licence-path", "licence", "../../../etc/passwd"), ("licence-unknown", "licence",
    "All rights reserved"), ("licence-list", "licence", "[CC-BY-SA-4.0]"), ("licence-alias-of-none",
    "licence", "*x"), ("file-parent", "file", "../../../../etc/passwd"), ("file-absolute", "file",
    "/etc/passwd"), ("file-url", "file", "http://127.0.0.1:9/x.svg"), ("file-fileurl", "file",
    "file:///etc/passwd"), ("file-case", "file", "MEDIA/LOW-TIDE.SVG"), ("file-backslash", "file",
    "media\\low-tide.svg"), ("file-folder", "file", "media"), ("file-unit-md", "file", "unit.md"), (
    "file-nul", "file", "\"media/low-tide.svg\\0.png\""), ("file-query", "file",
    "media/low-tide.svg?x#y"), ("file-about", "file", "../about.json"), ("file-lesson", "file",
    "lesson-1.md"), ("file-dot", "file", "media/./low-tide.svg"), ("file-double-slash", "file",
    "media//low-tide.svg"), ("file-percent", "file", "media/low%2Dtide.svg"), ("file-markup",
    "file", "\"media/x\\\" onerror=\\\"alert(1).svg\""), ("file-data-url", "file",
    "data:image/svg+xml,<svg/>"),]
_HARMLESS_VALUES = {"title-int", "title-alias", "phrase-1", "edition-prerelease", "issued-9999",
    "issued-text", "seconds-reversed", "title-date"}
for _n, _key, _v in _VALUES:
    told("value-" + _n, f"unit.md: {_key}: {_v[:40]}", "harmless" if _n in _HARMLESS_VALUES else
        "refuse", lambda p, k=_key, v=_v: p.front(k, v),
        "a traceback; what is shown not being what is in the unit")
