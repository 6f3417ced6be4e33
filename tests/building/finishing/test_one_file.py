"""A page made into one file: what comes inside, what goes, and what stays letter by letter.

Source: W3C, Content Security Policy Level 3, 2.3.1 (hash sources); RFC 2397 (data addresses).
"""

from __future__ import annotations

import base64
import hashlib
import re

import pytest

from build_tools.building.finishing.bound import bound
from build_tools.building.finishing.one_file import one_file
from build_tools.building.finishing.rewriting import Start, rewritten, with_value

FILES = {
    "../css/a.css": b'@font-face { src: url("../fonts/f.woff2") }\r\np { color: red }\n',
    "../css/b.css": b"p { background: url(dot.png) }",
    "../fonts/f.woff2": b"face",
    "../css/dot.png": b"dot",
    "media/sea shell.svg": b"<svg/>",
}
PAGE = """<!doctype html>
<html lang="en-GB" data-foot="At the foot">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'">
<title>One &amp; two</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="../css/a.css">
</head>
<body>
<header data-beside><a href="../index.html">Home</a></header>
<main id="at">
<p>Rock&nbsp;pool &#8211; <a href="#at">here</a>, <a href="b.html"><em>there</em></a>.</p>
<img src="media/sea%20shell.svg" alt="A shell">
<svg viewBox="0 0 1 1"><title>A line</title><path d="M0 0"/></svg>
<details hidden><summary>Sums</summary><details><p>1</p></details>2</details>
<details><summary>More</summary>All</details>
</main>
<link rel="stylesheet" href="../css/b.css">
<script defer src="../js/a.js"></script>
</body>
</html>
"""


def made() -> str:
    return one_file(PAGE, FILES.__getitem__)


def coded(text: bytes) -> str:
    return base64.b64encode(text).decode()


def test_a_link_to_a_page_beside_it_stays() -> None:
    html = one_file(PAGE, FILES.__getitem__, ("b.html",))
    assert '<a href="#at">here</a>, <a href="b.html"><em>there</em></a>.' in html
    assert "index.html" not in html


def test_styles_come_into_one_block_that_the_policy_names() -> None:
    (style,) = re.findall(r"<style>(.*?)</style>", made(), re.DOTALL)
    digest = coded(hashlib.sha256(style.encode()).digest())
    policy = (
        f"default-src 'none'; style-src 'sha256-{digest}'; img-src data:; font-src data:; "
        "base-uri 'none'; form-action 'none'"
    )
    assert made().count(f'content="{policy}"') == 1
    assert style == (
        f'@font-face {{ src: url("data:font/woff2;base64,{coded(b"face")}") }}\np {{ color: red }}'
        f'\np {{ background: url("data:image/png;base64,{coded(b"dot")}") }}'
    )


def test_pictures_come_inside() -> None:
    inside = f'src="data:image/svg+xml;base64,{coded(b"<svg/>")}" alt="A shell"'
    assert inside in made()


def test_scripts_hidden_parts_and_ways_to_other_pages_go() -> None:
    for gone in ("script", "stylesheet", "Home", "header", "Sums", "hidden", "index.html"):
        assert gone not in made(), gone
    assert "<details><summary>More</summary>All</details>" in made()


def test_a_link_to_another_file_leaves_its_words_and_one_to_a_place_stays() -> None:
    assert '<p>Rock&nbsp;pool &#8211; <a href="#at">here</a>, <em>there</em>.</p>' in made()


def test_everything_else_stays_as_it_stands() -> None:
    start = '<!doctype html>\n<html lang="en-GB" data-foot="At the foot" data-whole>\n<head>'
    assert made().startswith(start)
    assert '<svg viewBox="0 0 1 1"><title>A line</title><path d="M0 0"/></svg>' in made()
    assert rewritten(PAGE, lambda tag: tag.text) == PAGE


def test_what_cannot_come_inside_is_said() -> None:
    with pytest.raises(ValueError, match="cannot stand inside"):
        one_file(PAGE, (FILES | {"../css/b.css": b"p::after { content: '</style>' }"}).__getitem__)
    with pytest.raises(ValueError, match="what kind of file"):
        one_file('<img src="a.unheard" alt="">', lambda _: b"")
    with pytest.raises(KeyError):
        one_file(PAGE.replace("a.css", "gone.css"), FILES.__getitem__)


def test_a_value_is_written_so_that_it_reads_back() -> None:
    assert with_value('<a href="x" id="y">', "href", "a&b") == '<a href="a&amp;b" id="y">'
    with pytest.raises(ValueError, match="no href"):
        with_value("<a>", "href", "x")


def test_left_out_elements_may_hold_their_own_kind() -> None:
    def change(tag: Start) -> str | None:
        return None if tag.attributes.get("class") == "out" else tag.text

    html = '<div><div class="out">1<div>2</div><br>3</div>4</div><p>5</p>'
    assert rewritten(html, change) == "<div>4</div><p>5</p>"


def test_pages_are_bound_in_with_places_of_their_own() -> None:
    holder = (
        '<main><a href="#l-1">1</a><div id="l-1" data-bound="a.html"></div>'
        '<div id="l-2" data-bound="b.html"></div></main>'
    )
    page = (
        "<body><p>out</p><article><h1>T</h1>"
        '<h2 id="at">A</h2><section aria-labelledby="at other"></section>'
        '<a href="#at">1</a><a href="b.html">2</a><a href="c.html">3</a><nav data-beside>4</nav>'
        '<svg><path fill="url(#hatch)"/></svg></article></body>'
    )
    whole = bound(holder, {"a.html": page, "b.html": page.replace("A", "B")}.__getitem__)
    assert (
        '<div id="l-1" data-bound="a.html"><article><h2 class="title" id="l-1-title">T</h2>'
        '<h2 aria-level="3" id="l-1-at">A</h2>'
        '<section aria-labelledby="l-1-title l-1-at l-1-other"></section><a href="#l-1-at">1</a>'
        '<a href="#l-2">2</a><a href="c.html">3</a>'
        '<svg><path fill="url(#l-1-hatch)"/></svg></article></div>'
    ) in whole
    assert '<h2 aria-level="3" id="l-2-at">B</h2>' in whole
    assert "out" not in whole


def test_a_place_without_a_name_or_a_page_without_an_article_is_said() -> None:
    with pytest.raises(ValueError, match="has no id"):
        bound('<div data-bound="a.html"></div>', lambda _: "<article></article>")
    with pytest.raises(ValueError, match="no <article>"):
        bound('<div id="a" data-bound="a.html"></div>', lambda _: "<p></p>")
