"""Units that make no sense or too much, and files in odd encodings."""

# fmt: off

from __future__ import annotations

import gzip
import re
from typing import Any

from tests.packs.attacks.drawings_that_act import svg
from tests.packs.attacks.notes import SLOW, told
from tests.packs.attacks.packed import Pack


def edit(name: str, what: str, expected: str, pattern: Any, new: Any, must_not: str = SLOW, which:
    Any = "unit") -> None:
    told("sense-" + name, what, expected, lambda p: p.sub("data/unit/unit.md" if which == "unit"
        else p.lessons()[0], pattern, new if isinstance(new, str) else new()), must_not)


edit("development-of-itself", "a development that is of itself", "refuse", r"^developments:\n",
    "developments:\n  loop: {of: loop, device: mirror}\n")
told("sense-development-cycle", "two developments, each of the other", "refuse", lambda p: p.sub(
    "data/unit/unit.md", r"^developments:\n",
    "developments:\n  loop-a: {of: loop-b, device: mirror}\n  loop-b: {of: loop-a, "
    "device: mirror}\n"))
told("sense-development-chain-3000", "a chain of 3,000 developments, each of the last (recursion)",
    "refuse", lambda p: p.sub("data/unit/unit.md", r"^developments:\n", "developments:\n" +
    f"  c0: {{of: {_motif(p)}, device: mirror}}\n" + "".join(
    f"  c{i}: {{of: c{i - 1}, device: mirror}}\n" for i in range(1, 3000))))
told("sense-development-doubling",
    "30 developments that repeat the last one twice, if the bank allows it (2^30 moves)", "refuse",
    lambda p: p.sub("data/unit/unit.md", r"^developments:\n", "developments:\n" +
    f"  d0: {{of: {_motif(p)}, device: repetition, times: 2}}\n" + "".join(
    f"  d{i}: {{of: d{i - 1}, device: repetition, times: 2}}\n" for i in range(1, 30))))
told("sense-motif-counts-huge", "a move of 10^9 counts in a motif (one tick drawn for each)",
    "refuse", lambda p: p.sub("data/unit/unit.md",
    r"\{(transfer|travel|jump|gesture|turn|stillness): \d+,", "{travel: 1000000000,"))
told("sense-motif-counts-fraction", "a move of 1e-300 counts", "refuse", lambda p: p.sub(
    "data/unit/unit.md", r"\{(transfer|travel|jump|gesture|turn|stillness): \d+,",
    "{travel: 1e-300,"))
told("sense-motif-5000-moves", "a motif of 5,000 moves", "refuse", lambda p: p.sub(
    "data/unit/unit.md", r"^    actions:\n", "    actions:\n" +
    "      - {jump: 1, as: hop, level: high}\n" * 5000))
told("sense-motifs-5000", "5,000 motifs that nobody dances", "refuse", lambda p: p.sub(
    "data/unit/unit.md", r"^motifs:\n", "motifs:\n" + "".join(
    f"  m{i}:\n    from: pupils\n    idea: One\n    actions:\n      - {{jump: 8, as: hop,"
    " level: high}\n" for i in range(5000))))
told("sense-parts-billion", "a canon in 10^9 parts", "refuse", lambda p: p.sub("data/unit/unit.md",
    r"parts: \d+", "parts: 1000000000"))
told("sense-after-zero", "a canon in which each comes in 0 counts after", "harmless", lambda p:
    p.sub("data/unit/unit.md", r"after: \d+", "after: 0"), "a traceback (division by zero)")
told("sense-development-counts-list", "a change of speed with 100,000 counts", "refuse", lambda p:
    p.sub("data/unit/unit.md", r"counts: \[[\d, ]+\]", "counts: [" + ", ".join(["1"] * 100_000) +
    "]"))
told("sense-keep-negative", "a fragment that keeps moves -1, 0 and 10^9", "refuse", lambda p: p.sub(
    "data/unit/unit.md", r"(keep|only): \[[\d, ]+\]", "keep: [-1, 0, 1000000000]"))
told("sense-sections-700", "676 sections, all in the form", "refuse", lambda p: _many_sections(p,
    676))
told("sense-items-3000", "3,000 items in the stimulus, all one drawing (3,000 times in each page)",
    "refuse", lambda p: _many_items(p, 3000))
told("sense-items-same-file-60", "60 items that show one drawing of 300 kB", "harmless", lambda p:
    _many_items(p, 60, True), "pages of over 20 MB")
told("sense-choices-5000", "5,000 choices of 20", "refuse", lambda p: p.sub("data/unit/unit.md",
    r"^choices:\n", "choices:\n" + "".join(
    f"  ch{i}:\n    what: The arm\n    from: [{', '.join(f'w{j}' for j in range(20))}]\n "
    "   by: groups\n    if_not: One\n" for i in range(5000))))
told("sense-end-points-3000", "3,000 end points", "refuse", lambda p: p.sub("data/unit/unit.md",
    r"^end_points:\n", "end_points:\n" + "".join(
    f"  e{i}:\n    every_pupil: starts\n    looks_like: So.\n    getting_there: Nearly.\n"
    "    going_further: More.\n" for i in range(3000))))
told("sense-words-20000", "20,000 words explained (each looked for in every line)", "refuse", lambda
    p: p.sub("data/unit/unit.md", r"^words:\n", "words:\n" + "".join(f"  word{i}: a word\n" for i in
    range(20_000))))
told("sense-words-regex", "words that are patterns: (a+)+$ and (.*)*", "harmless", lambda p: p.sub(
    "data/unit/unit.md", r"^words:\n",
    "words:\n  \"(a+)+$\": x\n  \"(.*)*(.*)*(.*)*z\": x\n  \"[\": x\n  \"\\\\\": x\n  "
    "\"(?P<\": x\n"), SLOW)
told("sense-steps-5000", "a lesson of 5,000 steps", "refuse", lambda p: _many_steps(p, 5000))
told("sense-steps-none", "a lesson without steps", "refuse", lambda p: p.sub(p.lessons()[0],
    r"^steps:\n(?:[ ].*\n)+", "steps: []\n"))
told("sense-ask-3000", "a step that asks 3,000 questions", "refuse", lambda p: p.sub(p.lessons()[0],
    r"^    ask:\n", "    ask:\n" + "      - question: Where?\n        answers: [there, here]\n" *
    3000))
told("sense-lesson-number-huge", "lesson: 10^30", "refuse", lambda p: p.front("lesson", "1" + "0" *
    30, p.lessons()[0]))
told("sense-lesson-number-twice", "two files say they are lesson 1", "refuse", lambda p: p.front(
    "lesson", "1", p.lessons()[1]))
told("sense-lesson-gap", "lesson-2.md is missing", "refuse", lambda p: (p.files.pop(
    "data/unit/lesson-2.md"), p)[1])
told("sense-lesson-0", "lesson-0.md and lesson-00.md", "refuse", lambda p: p.put(
    "data/unit/lesson-0.md", p.files[p.lessons()[0]]).put("data/unit/lesson-00.md", p.files[
    p.lessons()[0]]))
told("sense-lesson-leading-zero", "lesson-01.md beside lesson-1.md", "refuse", lambda p: p.put(
    "data/unit/lesson-01.md", p.files[p.lessons()[0]].replace(b"title:", b"title: Other,", 1)))
told("sense-lesson-number-name", "lesson-99999999999999999999.md", "refuse", lambda p: p.put(
    "data/unit/lesson-99999999999999999999.md", p.files[p.lessons()[0]]))
told("sense-lesson-digits-5000-in-text", "looks_back_to: a number of 5,000 digits", "refuse", lambda
    p: p.sub("data/unit/unit.md", r"^format: 1", "format: 1\nlooks_back_to: " + "9" * 5000))
told("sense-front-of-any-kind", "facing, formation and level that are markup", "refuse", lambda p:
    p.sub("data/unit/unit.md", r"formation: [a-z ]+",
    "formation: \"<img src=x onerror=alert(1)>\"").sub("data/unit/unit.md", r"level: [a-z ]+",
    "level: \"\\\"><script>\""))
told("sense-section-name-markup", "a section called <b>", "refuse", lambda p: p.put(
    "data/unit/unit.md", re.sub(r"^  A:$", '  "<img src=x onerror=alert(1)>":', p.unit, count=1,
    flags=re.M)))
told("sense-motif-name-markup", "a motif whose name breaks out of an attribute and an id", "refuse",
    lambda p: _rename_motif(p, "x\\\"onclick=alert(1)"))
told("sense-motif-name-200kb", "a motif whose name is 200 kB long", "refuse", lambda p:
    _rename_motif(p, "m" * 200_000))
told("sense-motif-name-proto", "a motif called __proto__", "refuse", lambda p: _rename_motif(p,
    "__proto__"))


def _motif(p: Pack) -> Any:
    found = re.search(r"^motifs:\n  ([a-z-]+):", p.unit, re.M)
    assert found
    return found[1]


def _rename_motif(p: Pack, new: Any) -> Any:
    m = _motif(p)
    p.put("data/unit/unit.md", re.sub(rf"^  {m}:$", lambda _: f'  "{new}":', p.unit, count=1,
        flags=re.M))
    for n in ["data/unit/unit.md", *p.lessons()]:
        p.put(n, re.sub(rf"\[{m}\]", lambda _: f'["{new}"]', re.sub(rf"of: {m},", lambda _:
            f'of: "{new}",', p.text(n))))
    return p


def _many_sections(p: Pack, n: Any) -> Any:
    u = p.unit
    m = re.search(r"^  A:\n((?:    .*\n)+)", u, re.M)
    assert m
    names = [chr(65 + i // 26 % 26) + chr(65 + i % 26) for i in range(n)]
    p.put("data/unit/unit.md", u.replace(m[0], m[0] + "".join(f"  {x}:\n{m[1]}" for x in names)))
    return p.front("form", "A " + " ".join(names))


def _many_items(p: Pack, n: Any, big: Any = False) -> Any:
    if big:
        p.set_drawing(svg("".join(
            f'<path d="M{i} 0C{i} 9 {i} 20 {i}.5 40" stroke="#123456" fill="none"/>' for i in range(
            4500))))
    m = re.search(r"^    - title: .*\n(?:      .*\n)+", p.unit, re.M)
    assert m
    return p.put("data/unit/unit.md", p.unit.replace(m[0], m[0] * n, 1))


def _many_steps(p: Pack, n: Any) -> Any:
    name = p.lessons()[0]
    m = re.search(r"^  - phase: .*\n(?:    .*\n)+", p.text(name), re.M)
    assert m
    return p.put(name, p.text(name).replace(m[0], m[0] * n, 1))


def coded(name: str, what: str, expected: str, change: Any, must_not: str = "", which: Any =
    "data/unit/unit.md") -> None:
    told("file-" + name, what, expected, lambda p: p.put(which, change(p.files[which])), must_not)


coded("bom", "unit.md with a byte order mark", "harmless", lambda b: b"\xef\xbb\xbf" + b)
coded("two-boms", "unit.md with two byte order marks", "refuse", lambda b: b"\xef\xbb\xbf" * 2 + b)
coded("utf16", "unit.md in UTF-16 with its mark", "refuse", lambda b: b.decode().encode("utf-16"))
coded("utf16-no-bom", "unit.md in UTF-16 without a mark", "refuse", lambda b: b.decode().encode(
    "utf-16-le"))
coded("utf32", "unit.md in UTF-32 (its mark starts like that of UTF-16)", "refuse", lambda b:
    b.decode().encode("utf-32"))
coded("latin1", "unit.md in Latin-1 with é", "refuse", lambda b: b.replace(b"title: ",
    b"title: caf\xe9 ", 1))
coded("overlong", "overlong UTF-8 for <", "refuse", lambda b: b + b"\n\xc0\xbcscript>\n")
coded("cesu", "surrogate pairs in UTF-8 (CESU-8)", "refuse", lambda b: b +
    b"\n\xed\xa0\xbd\xed\xb8\x80\n")
coded("lone-surrogate", "a lone surrogate in UTF-8", "refuse", lambda b: b + b"\n\xed\xa0\x80\n")
coded("beyond-unicode", "F5 80 80 80", "refuse", lambda b: b + b"\n\xf5\x80\x80\x80\n")
coded("cut-at-end", "the file ends in the middle of a letter", "refuse", lambda b: b + b"\xe2\x82")
coded("nul", "NUL in the notes", "refuse", lambda b: b + b"a\0b\n")
coded("nul-end", "20 kB of NULs at the end", "refuse", lambda b: b + bytes(20_000))
coded("controls", "every control code in the notes", "refuse", lambda b: b + bytes(i for i in range(
    1, 32) if i not in (9, 10, 13)) + b"\n")
coded("escape", "terminal codes in the notes", "refuse", lambda b: b +
    b"\x1b[2J\x1b]8;;http://127.0.0.1:9/\x07x\x1b]8;;\x07\n")
coded("c1", "C1 codes in the notes (CSI as C2 9B)", "harmless", lambda b: b + "\x9b2J\x90\n".encode(
    ), "control codes on the terminal or a page")
coded("cr-only", "CR as the only line end", "harmless", lambda b: b.replace(b"\n", b"\r"),
    "a traceback")
coded("crlf", "CRLF line ends", "harmless", lambda b: b.replace(b"\n", b"\r\n"), "a traceback")
coded("mixed-ends", "each kind of line end by turns", "harmless", lambda b: b"".join(one + (b"\n",
    b"\r\n", b"\r")[i % 3] for i, one in enumerate(b.split(b"\n"))), "a traceback")
coded("nel-ends", "NEL as line end (YAML 1.1 takes it, markdown does not)", "refuse", lambda b:
    b.replace(b"\n", "\x85".encode()))
coded("gzip", "unit.md is gzip", "refuse", lambda b: gzip.compress(b, mtime=0))
coded("empty", "unit.md is empty", "refuse", lambda _b: b"")
coded("only-dashes", "unit.md is '---'", "refuse", lambda _b: b"---")
coded("dashes-twice", "unit.md is two lines of dashes", "refuse", lambda _b: b"---\n---\n")
coded("no-front-end", "the front matter does not end", "refuse", lambda b: b.replace(b"\n---\n",
    b"\n", 1))
coded("no-front", "no front matter", "refuse", lambda b: b.split(b"\n---\n", 1)[1])
coded("front-is-list", "the front matter is a list", "refuse", lambda _b: b"---\n- a\n- b\n---\n")
coded("front-is-text", "the front matter is a text", "refuse", lambda _b: b"---\nhello\n---\n")
coded("front-is-null", "the front matter is null", "refuse", lambda _b: b"---\nnull\n---\n")
coded("dashes-with-spaces", "'---   ' with 100,000 spaces as its end", "harmless", lambda b:
    b.replace(b"\n---\n", b"\n---" + b" " * 100_000 + b"\n", 1), SLOW)
coded("dashes-40000-lines", "40,000 lines of --- (a front matter that may end anywhere)", "refuse",
    lambda b: b"---\n" * 40_000 + b)
coded("lesson-missing-front", "lesson 1 has no front matter", "refuse", lambda b: b.split(
    b"\n---\n", 1)[1], which="data/unit/lesson-1.md")
coded("lesson-bom", "lesson 1 with a byte order mark", "harmless", lambda b: b"\xef\xbb\xbf" + b,
    which="data/unit/lesson-1.md")
coded("lesson-nul", "lesson 1 with NULs", "refuse", lambda b: b + b"\0\0",
    which="data/unit/lesson-1.md")
