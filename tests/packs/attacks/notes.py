"""Notes that are long, deep, repeated or would be live on a page."""

# fmt: off

from __future__ import annotations

import json
import re
from typing import Any

from tests.packs.attacks.packed import Pack
from tests.packs.attacks.register import Made, Maker, Rows, recipe
from tests.packs.attacks.zips import MB


def told(name: str, what: str, expected: str, make: Maker, must_not: str = "", sound: bool =
    True) -> None:
    recipe(name, "texts", what, expected, make, must_not, sound)


SLOW = "take-in, check, site, compare or adapt over 5 s or 200 MiB, or a traceback"
LIVE = "any of it live (element, attribute, script, request) on a page of the site or the preview"


def note(name: str, what: str, text: Any, expected: str = "harmless", must_not: str = SLOW, where:
    Any = "unit", keep: Any = False) -> Any:
    def make(p: Pack) -> Made:
        t = text() if callable(text) else text
        return p.notes(t, "data/unit/unit.md" if where == "unit" else p.lessons()[0], keep)
    told("note-" + name, "notes: " + what, expected, make, must_not)


_TOKENS = [("emph-openers", "*a ", "openers of emphasis that nobody closes"), ("strong-nested",
    "*a **a ", "emphasis in strong in emphasis"), ("under-openers", "_a ", "underscore openers"), (
    "closers", "a** ", "closers without openers"), ("mismatch", "*a_ ",
    "openers and closers of unlike kinds"), ("multiple-of-3", "a**b" + "c* ", "the rule of three"),
    ("links-open", "[a", "opened links"), ("links-close", "a]", "closed links"), ("link-emph",
    "[ a_", "links and emphasis"), ("link-paren", "[ (](", "brackets and parentheses"), (
    "image-links", "![[]()", "pictures of links"), ("link-angle", "[a](<b",
    "link targets in angles, not closed"), ("link-target", "[a](b", "link targets not closed"), (
    "link-title", "[a](b \"", "link titles not closed"), ("link-nested-paren",
    "[a](((((((((((((((((((((((((((((((((", "nested parentheses in targets"), ("backslash", "\\",
    "backslashes"), ("backslash-bracket", "\\[", "escaped brackets"), ("entity", "&", "ampersands"),
    ("entity-hash", "&#", "starts of entities"), ("entity-long", "&abcdefghijklmnopqrstuvwxyz",
    "long names of entities"), ("html-open", "<a b ", "open tags"), ("html-comment", "<!-- ",
    "open comments"), ("html-pi", "<? ", "open instructions"), ("html-declaration", "<!A ",
    "open declarations"), ("html-cdata", "<![CDATA[ ", "open CDATA"), ("html-attr", "<a b=\"",
    "open attributes"), ("html-close", "</", "closing tags"), ("autolink", "<http:",
    "open autolinks"), ("autolink-mail", "<a@", "open mail autolinks"), ("at", "a@",
    "mail addresses in one breath"), ("at-dots", "a@b.", "long mail hosts"), ("www", "www.",
    "www. in one breath"), ("http", "http://", "http:// in one breath"), ("http-dots", "http://a.",
    "long web hosts"), ("colon-slashes", "://", "://"), ("mailto", "mailto:", "mailto:"), ("strike",
    "~~a ", "strike-through"), ("tilde", "~", "tildes"), ("backticks-growing", None,
    "runs of back-ticks, each longer than the last"), ("dollar", "$a ", "dollars"), ("quotes", "\"",
    "quotation marks (smart quotes)"), ("apostrophes", "'", "apostrophes"), ("quote-mix", "\"'",
    "both"), ("dashes", "-", "hyphens in one line"), ("dots", ".", "full stops"), ("spaces", " ",
    "spaces in one line"), ("spaces-then-x", None, "spaces before the end of many lines"), ("tabs",
    "\t", "tabs"), ("nbsp", "\u00a0", "no-break spaces"), ("footnote", "[^a]", "footnote marks"), (
    "footnote-open", "[^", "open footnote marks"), ("brace", "{", "braces"), ("template",
    "{{ x }} ", "template marks"), ("jinja", "{% ", "template statements"), ("pipe", "|", "pipes"),
    ("star-space", "* ", "bullets in one line"), ("dash-space", "- ", "nested bullets in one line"),
    ("plus-space", "+ ", "nested bullets in one line"), ("quote-mark", "> ",
    "nested quotations in one line"), ("number-dot", "1. ", "nested numbers in one line"), (
    "number-paren", "1) ", "nested numbers in one line"), ("list-quote", "- > ",
    "lists in quotations in lists"), ("hash", "#", "hash signs"), ("hash-space", "# ",
    "headings in one line"), ("equals", "=", "equals signs"), ("surrogate-pair-emoji", "👩\u200d",
    "emoji joined without end"), ("combining", "\u0301", "combining accents on one letter"), (
    "bidi", "\u202e", "right-to-left overrides"), ("rtl-letters", "\u05d0(",
    "Hebrew letters and brackets"), ("zero-width", "\u200b", "zero width spaces"), ("long-word",
    "a", "one word without a break"), ("digits", "9", "one number"), ("cjk", "漢",
    "CJK without a space"), ("thai", "\u0e01\u0e33", "Thai without a space"), ("word-dot", "Mr. ",
    "full stops that end no sentence (sentence splitters)"), ("ellipsis-quote", ".\" ",
    "ends of sentences in quotes"), ("vowels", "aeiouy", "syllables to count"), ("apostrophe-words",
    "n't'", "contractions"), ("hyphen-words", "a-", "hyphenated without end"), ("comma", ",",
    "commas"), ("semicolon", "a;", "semicolons"), ("colon", "a:", "colons"), ("slash", "a/",
    "slashes"), ("crlf", "\r", "carriage returns"), ("formfeed", "\x0c", "form feeds"),]
for _n, _tok, _what in _TOKENS:
    def _text(tok: Any = _tok, n: Any = _n) -> Any:
        if n == "backticks-growing":
            return "".join("e" + "`" * x for x in range(1, 420)) + "\n"
        if n == "spaces-then-x":
            return ("a" + " " * 2000 + "b\n") * 40
        return tok * max(1, 80_000 // len(tok.encode())) + "\n"
    note("flood-" + _n, f"80 kB of {_what}", _text)
for _n, _tok, _what in [*_TOKENS[:60:4], ("brackets", "[", "opened brackets"),
    ("bang", "![", "opened pictures")]:
    if _tok:
        note("flood-2kb-" + _n, f"2 kB (below any length rule) of {_what}, in a lesson", _tok * (
            2000 // len(_tok.encode())) + "\n", where="lesson")
TOKENS_REPEATED_1: Rows = (("brackets", "["),
    ("emphasis", "*a "),
    ("quotes", "> "),
    ("bullets", "- "),
    ("words", "word "),
    ("html", "<a b ")
    )
for _n, _tok in TOKENS_REPEATED_1:
    note("flood-4mb-" + _n, f"4 MB of {_tok!r}", lambda tok=_tok: tok * (4 * MB // len(tok)),
        "refuse")


def nest(n: Any, item: Any, step: Any) -> Any:
    return "".join(" " * step * i + f"{item} a\n" for i in range(n))


SHAPES_1: Rows = (("bullets", "-", 2),
    ("numbers", "1.", 3),
    ("numbers-paren", "1)", 3),
    ("stars", "*", 2),
    ("numbers-9-digits", "123456789.", 11)
    )
for _n, _item, _step in SHAPES_1:
    for _k in (40, 400):
        note(f"nested-{_n}-{_k}", f"lists nested {_k} deep, one item a line", lambda n=_k, i=_item,
            s=_step: nest(n, i, s))
note("nested-mixed-120", "bullets, numbers and quotations by turns, 120 deep", lambda: "".join(" " *
    3 * i + ("- a\n", "1. a\n", "> a\n")[i % 3] for i in range(120)))
note("nested-quotes-1000", "a quotation 1,000 deep", "> " * 1000 + "a\n")
note("nested-brackets", "20,000 [ and as many ]", lambda: "[" * 20_000 + "a" + "]" * 20_000 + "\n")
note("nested-emphasis", "2,500 nested strong and emphasis, all closed", lambda: "*a **a " * 2500 +
    "b" + " a** a*" * 2500 + "\n")
note("nested-links-images", "1,500 pictures in links in pictures, closed", lambda: "![a" * 1500 +
    "](b)" * 1500 + "\n")
note("nested-html", "10,000 <div> or <b>, closed", lambda: "<b>" * 10_000 + "a" + "</b>" * 10_000 +
    "\n")
note("deep-blanks", "- - - … then 20,000 blank lines", lambda: "- " * 2000 + "x" + "\n" * 20_000)
note("references-20000", "20,000 link references, each used", lambda: "".join(f"[r{i}]: /u\n" for i
    in range(20_000)) + "\n" + "[r1] " * 20_000)
note("references-expand", "one reference of 20 kB used 20,000 times (400 MB of page)", lambda:
    "[r]: /" + "u" * 20_000 + "\n\n" + "[r]" * 20_000 + "\n")
note("references-same-label", "a label of 900 letters in 500 case variants", lambda: "".join(
    f"[{'ß' * 900}{i}]: /u\n" for i in range(500)))
note("footnotes-cycle", "footnotes that name each other",
    "[^a]\n\n[^a]: see [^b]\n\n[^b]: see [^a]\n")
note("table-autocomplete", "a table of 2,000 columns and 2,000 rows of one cell (4 million cells)",
    lambda: "|x" * 2000 + "|\n" + "|-" * 2000 + "|\n" + "|x\n" * 2000)
note("table-wide", "a table of 20,000 columns", lambda: "|x" * 20_000 + "|\n" + "|-" * 20_000 +
    "|\n")
note("setext-flood", "40,000 underlined headings", "a\n-\n" * 20_000)
note("fences-flood", "40,000 code fences", "```\n" * 40_000)
note("fence-unclosed-3mb", "a code fence that is not closed, 3 MB of lines", lambda: "```\n" + "x\n"
    * 1_500_000, "refuse")
note("hard-breaks", "40,000 hard line breaks", "a  \n" * 40_000)
note("paragraphs-100000", "100,000 paragraphs of one letter", "a\n\n" * 100_000)
note("headings-20000", "20,000 headings of one name (ids made unique one by one)", "### a\n\n" *
    20_000)
note("lists-loose-30000", "a list of 30,000 items", "- a\n" * 30_000)
note("list-number-huge", "a list that starts at a number of 400 digits", "1" * 400 +
    ". a\n\n999999999. b\n\n9999999999. c\n")
note("lazy-quotes", "20,000 lines of lazy continuation", "> a\n" + "b\n" * 20_000)
note("indent-growing", "900 lines, each indented by one space more", lambda: "".join(" " * i + "a\n"
    for i in range(900)))
note("indent-tabs-growing", "500 lines of bullets, each by one tab more", lambda: "".join("\t" * i +
    "- a\n" for i in range(500)))
note("blank-lines-2mb", "2 MB of blank lines", lambda: "a" + "\n" * 2 * MB + "b\n", "refuse")
note("front-matter-again", "a second front matter in the notes",
    "---\ntitle: Another\npublisher: A ministry of schools\n---\nText\n",
    must_not="the second believed")
note("front-matter-dots", "'...' and '---' lines", "...\n---\ntitle: x\n...\n",
    must_not="the second believed")


_MARKUP = [("script", "<script>alert(1)</script>"), ("script-upper-split",
    "<ScRiPt\n>alert(1)</sCrIpT\n>"), ("img-onerror", "<img src=x onerror=alert(1)>"), (
    "svg-onload", "<svg/onload=alert(1)>"), ("iframe-srcdoc",
    "<iframe srcdoc='&lt;script&gt;alert(1)&lt;/script&gt;'></iframe>"), ("meta-refresh",
    "<meta http-equiv=refresh content='0;url=http://127.0.0.1:9/'>"), ("base",
    "<base href=http://127.0.0.1:9/>"), ("link-js", "[a](javascript:alert(1))"), ("link-js-entity",
    "[a](java&#x0A;script&colon;alert(1))"), ("link-js-tab", "[a](<java\tscript:alert(1)>)"), (
    "link-js-control", "[a](\x01javascript:alert(1))"), ("link-vbscript", "[a](vbscript:x)"), (
    "link-data", "[a](data:text/html;base64,PHNjcmlwdD5hbGVydCgxKTwvc2NyaXB0Pg==)"), ("link-file",
    "[a](file:///etc/passwd)"), ("link-unc", "[a](\\\\\\\\127.0.0.1\\\\share)"), (
    "link-relative-proto", "[a](//127.0.0.1:9/x)"), ("link-title-break",
    "[a](https://example.org \"x\\\" onmouseover=alert(1) y=\\\"\")"), ("link-quote-break",
    "[a](https://example.org/\"onmouseover=alert(1)//)"), ("link-angle-break",
    "[a](<https://example.org/\"><script>alert(1)</script>>)"), ("autolink-js",
    "<javascript:alert(1)>"), ("reference-js", "[a][b]\n\n[b]: javascript:alert(1)"), (
    "image-remote", "![a](http://127.0.0.1:9/x.png)"), ("image-onerror",
    "![a\" onerror=\"alert(1)](x.png)"), ("image-parent", "![a](../../../../etc/passwd)"), (
    "image-data-svg",
    "![a](data:image/svg+xml,<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>)"), (
    "code-break", "`</code><script>alert(1)</script>`"), ("fence-info-break",
    "```\"><script>alert(1)</script>\nx\n```"), ("heading-id-break",
    "### x\" onclick=\"alert(1)\n"), ("entity-lt",
    "&lt;script&gt;alert(1)&lt;/script&gt; &#60;script&#62; &#x3c;img src=x "
    "onerror=alert(1)&#x3e;"), ("entity-numeric-zero",
    "&#0; &#xD800; &#x110000; &#99999999999999999999; &#x0000000000000000000000041;"), (
    "comment-close", "--> <!-- --!> <script>alert(1)</script>"), ("script-end",
    "</script><script>alert(1)</script>"), ("style-end", "</style><script>alert(1)</script>"), (
    "textarea-end", "</textarea></title></noscript></template><script>alert(1)</script>"), (
    "json-break", "</script> \u2028 \u2029 \\u003c ]]> <!--<script>"), ("template-injection",
    "{{7*7}} ${7*7} <%= 7*7 %> #{7*7} {% include '/etc/passwd' %} {0.__class__.__mro__} "
    "%(password)s"), ("style-attribute", "<p style='background:url(http://127.0.0.1:9/)'>x</p>"), (
    "form", "<form action=http://127.0.0.1:9/><input name=a><button>Go</button></form>"), (
    "nul-in-tag", "<scr\0ipt>alert(1)</scr\0ipt>"), ("long-s-tag",
    "<\u017fcript>alert(1)</\u017fcript>"), ("fullwidth-lt", "＜script＞alert(1)＜/script＞"), (
    "csv-formula", "=HYPERLINK(\"http://127.0.0.1:9/\",\"x\")"), ("id-clobber",
    "<a id=at-content name=body></a><form name=querySelector></form>"),]
for _n, _m in _MARKUP:
    note("live-" + _n, _m[:60].replace("\n", " "), "Some words first.\n\n" + _m +
        "\n\nSome words last.\n", must_not=LIVE)


def everywhere(name: str, what: str, text: Any, expected: str = "harmless", must_not: str =
    LIVE) -> Any:
    """The same in every text field that is a plain line, in quotation marks."""
    def make(p: Pack) -> Made:
        for n in ["data/unit/unit.md", *p.lessons()]:
            front, rest = p.split(n)
            front = re.sub(
                r"^( *(?:- )?(?:idea|what|show|where|look_for|say|task|easier|harder|does"
                r"|focus|pupils_make|summary|text_version|cue|how|stuck|finished|loud|sil"
                r"ly|cue|room|things|by|source|who|in_words|met_by)): (?![>{\[|\"]).*$", lambda m:
                m[1] + ": " + json.dumps(text, ensure_ascii=True), front, flags=re.M)
            p.put(n, front + rest)
        return p
    told("fields-" + name, "every text field: " + what, expected, make, must_not)


everywhere("markup", "an element with a handler",
    "<img src=x onerror=alert(1)>\"'><script>alert(1)</script>")
everywhere("attribute-break", "quotes and a handler", "x\" onmouseover=\"alert(1)\" x='")
everywhere("script-json-break", "what ends a script, a comment, CDATA",
    "</script><!--<script>]]>--!>\u2028\u2029")
everywhere("template", "template marks", "{{7*7}}${7*7}%s%n{0}{x.__class__}\\g<0>\\1")
everywhere("markdown", "markdown links and pictures",
    "[x](javascript:alert(1)) ![y](http://127.0.0.1:9/) <http://x>")
everywhere("escape", "terminal codes by \\u001b", "\x1b[2J\x1b]0;owned\x07\x9b31m", "harmless",
    "control codes on the terminal or on a page")
everywhere("bidi", "overrides and isolates, never closed", "\u202e\u2066\u2067 abc", "harmless",
    "the rest of the page or the terminal line turned round")
everywhere("lone-surrogate", "a lone surrogate by \\ud800", "a\ud800b", "refuse")
everywhere("nul", "NUL by \\u0000", "a\u0000b", "refuse")
everywhere("long", "20 kB of one word", "a" * 20_000, must_not=SLOW)
everywhere("combining", "500 accents on one letter", "a" + "\u0301" * 500, must_not=SLOW)
everywhere("empty", "empty strings", "", "harmless", "a traceback")
