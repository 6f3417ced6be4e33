"""Pages inside a pack whose policy, encoding or length is odd, and files with no place."""

# fmt: off

from __future__ import annotations

import re
from typing import Any

from tests.packs.attacks.drawings_that_act import EVIL
from tests.packs.attacks.pages import in_pages, page
from tests.packs.attacks.register import Rows

_POLICIES = [("gone", ""), ("script-before", None), ("unsafe-inline",
    "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'"), ("star",
    "default-src * data: 'unsafe-inline' 'unsafe-eval'"), ("empty", ""), ("no-semicolon",
    "default-src 'none' style-src 'unsafe-inline' img-src data:"), ("comma",
    "default-src 'none', default-src * 'unsafe-inline'"), ("duplicate-directive",
    "default-src * 'unsafe-inline'; default-src 'none'"), ("elem-directive",
    "default-src 'none'; script-src-elem 'unsafe-inline'; script-src-attr 'unsafe-inline'"), (
    "wide-img", "default-src 'none'; img-src *; style-src 'unsafe-inline'"), ("connect",
    "default-src 'none'; connect-src *; frame-src *; worker-src *"), ("fullwidth-none",
    "default-src 'ｎｏｎｅ'; script-src 'unsafe-inline'"), ("report",
    f"default-src 'none'; report-uri {EVIL}/; report-to x"), ("hash-of-script",
    "default-src 'none'; script-src 'sha256-bhHHL3z2vDgxUt0W3dWQOrprscmda2Y5pLsLg4GF+pI='"), (
    "nonce", "default-src 'none'; script-src 'nonce-a'"), ("sandbox",
    "sandbox allow-scripts allow-top-navigation"), ("form-action-star",
    "default-src 'none'; form-action *; base-uri *"),]
for _n, _p in _POLICIES:
    if _n == "script-before":
        page("policy-script-before", "a script before the policy (it does not reach back)",
            "<script>alert(1)</script>", at="before-csp")
    elif _n == "gone":
        page("policy-gone", "the page without its policy, nothing else changed", "", at="for-csp")
    else:
        page("policy-" + _n, _p or "an empty policy",
            f'<meta http-equiv="Content-Security-Policy" content="{_p}"><script>alert(1)<'
            '/script>' if _n not in ("wide-img", "report", "connect", "form-action-star") else
            f'<meta http-equiv="Content-Security-Policy" content="{_p}">', at="for-csp")
_CSP = ("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; "
    "font-src data:; base-uri 'none'; form-action 'none'\">")
THE_PAGES_OWN_1: Rows = (("in-comment", "the policy stands in a comment",
    f"<!-- {_CSP} --><script>alert(1)</script>"),
    ("in-noscript", "in noscript (void where scripts run)",
    f"<noscript>{_CSP}</noscript><script>alert(1)</script>"),
    ("in-template", "in a template", f"<template>{_CSP}</template><script>alert(1)</script>"),
    ("in-title", "in the title", f"<title>{_CSP}</title><script>alert(1)</script>"),
    ("in-textarea", "in a textarea", f"<textarea>{_CSP}</textarea><script>alert(1)</script>"),
    ("in-attribute", "in an attribute",
    f"<p title='{_CSP.replace(chr(39), '')}'></p><script>alert(1)</script>"),
    ("after-p", "after a paragraph that ends the head (a policy in the body is void)",
    f"<p>x</p>{_CSP}<script>alert(1)</script>"),
    ("after-space-text", "after a letter that ends the head", f"x{_CSP}<script>alert(1)</script>"),
    ("report-only", "as report only", _CSP.replace("Policy", "Policy-Report-Only") +
    "<script>alert(1)</script>"),
    ("name-not-equiv", "as name=, not http-equiv=", _CSP.replace("http-equiv", "name") +
    "<script>alert(1)</script>"),
    ("equiv-space", "with a space in its name", _CSP.replace("Content-Security-Policy",
    " Content-Security-Policy") + "<script>alert(1)</script>"),
    ("equiv-duplicate", "with a first http-equiv that is another", _CSP.replace("http-equiv=",
    "http-equiv=x http-equiv=") + "<script>alert(1)</script>"),
    ("content-duplicate", "with a first content that is empty", _CSP.replace("content=",
    "content='' content=") + "<script>alert(1)</script>"),
    ("in-svg", "in a drawing", f"<svg>{_CSP}</svg><script>alert(1)</script>"),
    ("slash-meta", "as </meta>", "</" + _CSP[1:] + "<script>alert(1)</script>"),
    ("dotless", "its name with a Kelvin sign or a long s", _CSP.replace("Security", "\u017fecurity")
    + "<script>alert(1)</script>"),
    ("in-style", "in a style element", f"<style>{_CSP}</style><script>alert(1)</script>"),
    ("content-newline", "with a NUL inside", _CSP.replace("'none';", "'none'\0;", 1) +
    "<script>alert(1)</script>"),
    )
for _n, _what, _s in THE_PAGES_OWN_1:
    page("policy-" + _n, "the policy is " + _what, _s, at="for-csp")
page("policy-second-wider", "a second, wider policy (both hold: harmless to scripts)",
    "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src *\">", "harmless",
    "after-csp")
page("policy-second-hides-style", "a second policy that forbids the page's own style",
    "<meta http-equiv=\"Content-Security-Policy\" content=\"style-src 'none'\">", "harmless",
    "after-csp", must_not="a page that teachers cannot read believed to be sound")


def coded_page(name: str, what: str, expected: str, change: Any, must_not: str = "") -> None:
    in_pages("coded-page-" + name, what, expected, lambda p: p.put("data/pages/lesson-1.html",
        change(p.files["data/pages/lesson-1.html"])), must_not)


coded_page("utf16-bom", "the page in UTF-16 with a script, meta says UTF-8", "refuse", lambda b:
    b.replace(b"</main>", b"<script>alert(1)</script></main>").decode().encode("utf-16"))
coded_page("utf16-prefix", "a UTF-16 mark before a UTF-8 page: to browsers all of it is Chinese",
    "refuse", lambda b: b"\xff\xfe" + b)
coded_page("utf7", "meta charset=utf-7 and +ADw-script+AD4-", "refuse", lambda b: b.replace(
    b'charset="utf-8"', b'charset="utf-7"').replace(b"</main>",
    b"+ADw-script+AD4-alert(1)+ADw-/script+AD4-</main>"))
coded_page("iso-2022-jp",
    "meta charset=iso-2022-jp and escapes that swallow a quote (valid UTF-8 bytes)", "refuse",
    lambda b: b.replace(b'charset="utf-8"', b'charset="iso-2022-jp"').replace(b"</main>",
    b'<img alt="\x1b$B" src=x><p title="\x1b(B onerror=alert(1) x=">x</p></main>'))
coded_page("iso-2022-jp-no-escape",
    "meta charset=iso-2022-jp, nothing else changed (others may add escapes)", "refuse", lambda b:
    b.replace(b'charset="utf-8"', b'charset="iso-2022-jp"'))
coded_page("shift-jis", "meta charset=shift_jis", "refuse", lambda b: b.replace(b'charset="utf-8"',
    b'charset="shift_jis"'))
coded_page("windows-1252", "meta charset=windows-1252 (letters go wrong)", "refuse", lambda b:
    b.replace(b'charset="utf-8"', b'charset="windows-1252"'))
coded_page("x-user-defined", "meta charset=x-user-defined", "refuse", lambda b: b.replace(
    b'charset="utf-8"', b'charset="x-user-defined"'))
coded_page("charset-missing",
    "no meta charset, an ISO-2022-JP escape early on (guessed by the browser)", "refuse", lambda b:
    b.replace(b'<meta charset="utf-8">', b"<!-- \x1b$B$3\x1b(B -->"))
coded_page("charset-late", "meta charset after 2 kB of comment", "harmless", lambda b: b.replace(
    b'<meta charset="utf-8">', b"<!--" + b"x" * 2048 + b'--><meta charset="utf-8">'))
coded_page("charset-second", "a first meta of another charset in a comment-like place", "refuse",
    lambda b: b.replace(b'<meta charset="utf-8">',
    b'<meta http-equiv="Content-Type" content="text/html; charset=iso-2022-jp"><meta '
    b'charset="utf-8">'))
coded_page("xml-encoding", "<?xml encoding=…?> before the doctype (WebKit and Chromium heed it)",
    "refuse", lambda b: b'<?xml version="1.0" encoding="iso-2022-jp"?>' + b)
coded_page("bom", "a UTF-8 mark in front", "harmless", lambda b: b"\xef\xbb\xbf" + b)
coded_page("nul-in-tags", "NULs in <scr NUL ipt>", "refuse", lambda b: b.replace(b"</main>",
    b"<scr\0ipt>alert(1)</scr\0ipt></main>"))
coded_page("invalid-utf8", "bytes that are no UTF-8, and a quote behind them", "refuse", lambda b:
    b.replace(b"</main>", b'<p title="\xe0">x" onclick="alert(1)">y</p></main>'))
coded_page("overlong-lt", "overlong UTF-8 for <script>", "refuse", lambda b: b.replace(b"</main>",
    b"\xc0\xbcscript\xc0\xbealert(1)</main>"))
coded_page("doctype-gone", "no doctype (quirks mode)", "refuse", lambda b: b.replace(
    b"<!doctype html>\n", b""))
coded_page("doctype-xhtml", "XHTML's doctype with entities", "refuse", lambda b: b.replace(
    b"<!doctype html>", b'<!DOCTYPE html PUBLIC "-//W3C//DTD XHTML 1.0 Strict//EN" '
    b'"http://127.0.0.1:9/x.dtd" [<!ENTITY x "y">]>'))
coded_page("empty", "an empty page", "refuse", lambda _b: b"")
coded_page("cut", "cut in the middle", "refuse", lambda b: b[:len(b) // 2])
coded_page("text-only", "a page of plain text", "refuse", lambda _b: b"Go to http://127.0.0.1:9/")
coded_page("other-words", "the words of the page changed: 'land on your head'", "harmless", lambda
    b: b.replace(b"Land softly, knees bent", b"Land on your head, hard"),
    "those words on any page the bank shows; or believed to be the unit's")
coded_page("other-publisher", "the foot of the page names another publisher", "harmless", lambda b:
    b.replace(b"The dance unit bank", b"A ministry of schools"),
    "that name on any page the bank shows")
coded_page("svg-inline-hides", "a style attribute that covers the page by a false notice", "refuse",
    lambda b: b.replace(b"</main>",
    b'<p style="position:fixed;inset:0;background:#fff">Out of date: get the new one at '
    b'127.0.0.1</p></main>'))
coded_page("is-xhtml", "XHTML with its namespace and CDATA", "refuse", lambda _b:
    b'<?xml version="1.0"?><html xmlns="http://www.w3.org/1999/xhtml"><body><script><![CD'
    b'ATA[alert(1)]]></script></body></html>')
coded_page("is-mhtml", "MHTML called .html", "refuse", lambda _b:
    b"MIME-Version: 1.0\r\nContent-Type: multipart/related; "
    b"boundary=x\r\n\r\n--x\r\nContent-Type: text/html\r\n\r\n<script>alert(1)</script>\r"
    b"\n--x--")
coded_page("mark-of-web", "the mark of the web in the first line (Internet Explorer's zones)",
    "harmless", lambda b: b.replace(b"<!doctype html>",
    b"<!doctype html>\n<!-- saved from url=(0014)about:internet -->"))
coded_page("style-changed",
    "the page's style changed: everything hidden, or its hash kept and the text changed", "refuse",
    lambda b: b.replace(b"* { box-sizing: border-box; }", b"* { display: none !important; }"))
coded_page("style-end-in-comment", "the style holds </style> in a CSS comment", "refuse", lambda b:
    b.replace(b"/* drawings */", b"/* </style><img src=x onerror=alert(1)> */"))


TEXTS_OF_A_1: Rows = (("lt", "<", 100_000),
    ("open-a", "<a b", 100_000),
    ("open-a-quote", '<a b="', 100_000),
    ("open-a-single", "<a b='", 100_000),
    ("attr-equals", "<a =", 100_000),
    ("comment", "<!--", 100_000),
    ("comment-dash", "<!-- -", 100_000),
    ("comment-bang", "<!--!>", 100_000),
    ("declaration", "<!", 100_000),
    ("marked", "<![", 100_000),
    ("marked-if", "<![if x]>", 100_000),
    ("cdata", "<![CDATA[", 100_000),
    ("pi", "<?", 100_000),
    ("end", "</", 100_000),
    ("end-a", "</a ", 100_000),
    ("amp", "&", 200_000),
    ("amp-hash", "&#", 200_000),
    ("amp-x", "&#x", 200_000),
    ("amp-name", "&notin", 200_000),
    ("amp-long", "&" + "a" * 40, 200_000),
    ("spaces-in-tag", None, 0),
    ("slashes-in-tag", None, 1),
    ("attrs-many", None, 2),
    ("script-open", "<script>", 100_000),
    ("script-comment", "<script><!--<script>", 100_000),
    ("style-open", "<style>", 100_000),
    ("title-open", "<title>", 100_000),
    ("textarea-open", "<textarea>", 100_000),
    ("div-deep", "<div>", 600_000),
    ("b-deep-aaa", "<b><i><a><p>", 100_000),
    ("table-deep", "<table><tr><td>", 100_000),
    ("svg-deep", "<svg>", 200_000),
    ("formatting-adoption", "<b></p><i></b>", 100_000),
    ("end-br", "</br>", 200_000),
    ("p-million", "<p>", 3_000_000),
    ("nul", "\0", 200_000),
    ("attr-newlines", None, 3)
    )
for _n, _tok, _k in TEXTS_OF_A_1:
    def _slow(tok: Any = _tok, k: Any = _k) -> Any:
        if tok is None:
            return ["<p" + " " * 300_000 + ">x</p>", "<p" + "/" * 300_000 + ">x</p>", "<p " +
                " ".join(f"a{i}=b" for i in range(50_000)) + ">x</p>", "<p title=\"" + "\n" *
                300_000 + "\">x</p>"][k]
        return tok * (k // len(tok))
    page("slow-page-" + _n, f"a page with {_tok or _n!r} repeated ({max(_k, 300_000) // 1000} kB)",
        _slow, "refuse", "end")


_EXTRA = [("sw.js", b"self.addEventListener('fetch',e=>{})"), ("x.js", b"alert(1)"), ("x.css",
    b"@import 'http://127.0.0.1:9/';"), ("manifest.json", b'{"start_url":"http://127.0.0.1:9/"}'), (
    "x.js.map", b'{"version":3,"sources":["http://127.0.0.1:9/"]}'), (".htaccess",
    b"AddType text/html .svg\n"), ("web.config", b"<configuration/>"), ("_headers",
    b"/*\n  Content-Security-Policy: default-src *\n"), ("_redirects",
    b"/* http://127.0.0.1:9/ 302\n"), ("index.htm", b"<script>alert(1)</script>"), ("default.html",
    b"<script>alert(1)</script>"), ("INDEX.HTML", b"<script>alert(1)</script>"), ("index.html.exe",
    b"MZ"), ("lesson-1.html.lnk", b"L\0\0\0\1\x14\2\0"), ("open-me.url",
    b"[InternetShortcut]\r\nURL=file://127.0.0.1/share/x.exe\r\nIconFile=\\\\127.0.0.1\\s"
    b"hare\\i.ico\r\n"), ("open-me.desktop", b"[Desktop Entry]\nExec=id\nType=Application\n"), (
    "x.scf", b"[Shell]\r\nIconFile=\\\\127.0.0.1\\share\\i.ico\r\n"), ("x.library-ms",
    b"<libraryDescription/>"), ("x.hta", b"<script>new ActiveXObject('WScript.Shell')</script>"), (
    "x.mht", b"MIME-Version: 1.0\r\n"), ("x.xhtml",
    b"<html xmlns='http://www.w3.org/1999/xhtml'><script>alert(1)</script></html>"), ("x.xml",
    b"<?xml-stylesheet href='x.xsl' type='text/xsl'?><a/>"), ("x.shtml", b"<!--#exec cmd='id' -->"),
    ("x.php", b"<?php system($_GET[0]);"), ("x.pdf", b"%PDF-1.7"), ("x.svg",
    b"<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>"), ("x.wasm", b"\0asm\1\0\0\0"), (
    "x.swf", b"CWS"), ("lesson-7.html", b"<script>alert(1)</script>"), ("lesson-01.html",
    b"<p>x</p>"), ("sub/index.html", b"<script>alert(1)</script>"), ("robots.txt",
    b"User-agent: *\n"), ("favicon.ico", b"\0\0\1\0"), ("404.html", b"<script>alert(1)</script>"), (
    ".well-known/x", b"x"), ("fonts/x.woff2", b"wOF2"), ("crossdomain.xml",
    b"<cross-domain-policy><allow-access-from domain='*'/></cross-domain-policy>"), (
    "appcache.manifest", b"CACHE MANIFEST\n/\n")]
for _f, _d in _EXTRA:
    in_pages("extra-" + re.sub(r"[^a-z0-9]+", "-", _f.lower() if _f != "INDEX.HTML" else
        "index-html-upper").strip("-"), f"a listed file data/pages/{_f}", "refuse", lambda p, f=_f,
        d=_d: p.put("data/pages/" + f, d))
in_pages("extra-page-from-lesson-1-copied", "a copy of a sound page under another name", "harmless",
    lambda p: p.put("data/pages/copy.html", p.files["data/pages/lesson-1.html"]),
    "shown or kept anywhere")
in_pages("pages-missing-one", "lesson-1.html is missing (the links to it are dead)", "refuse",
    lambda p: (p.files.pop("data/pages/lesson-1.html"), p)[1])
in_pages("pages-missing-all", "no pages", "harmless", lambda p: ([p.files.pop(n) for n in p.pages(
    )], p)[1])
in_pages("pages-swapped", "two lessons' pages exchanged", "harmless", lambda p: (lambda a, b: p.put(
    "data/pages/lesson-1.html", b).put("data/pages/lesson-2.html", a))(p.files[
    "data/pages/lesson-1.html"], p.files["data/pages/lesson-2.html"]),
    "the false page shown by the bank")
in_pages("pages-other-unit", "index.html is wholly another unit's text with the same policy",
    "harmless", lambda p: p.put("data/pages/index.html", re.sub(r"<h1>.*?</h1>",
    "<h1>Another unit</h1>", p.text("data/pages/index.html"), count=1)),
    "the false page shown by the bank")
page("link-lookalike-page", "a link to lesson‑1.html with U+2011",
    '<a href="lesson\u20111.html">x</a>', "refuse")
page("text-bidi", "text turned round in a page", "<p>\u202eabc</p>", "harmless",
    must_not="the page believed to say what its letters say")
page("ids-clobber", "ids and names that hide the page's own",
    '<p id="at-content">x</p><p id="at-steps">y</p><img name="body" src="data:,">', "harmless")
page("dialog-open-covers", "an open dialog over the page",
    "<dialog open>Your session is over. Ring 01632 960000.</dialog>", "refuse")
page("marquee-blink", "marquee that flashes",
    "<marquee scrollamount=999 scrolldelay=1>FLASH</marquee>", "refuse")
page("contenteditable", "a page that can be written in, with autofocus",
    "<p contenteditable autofocus tabindex=1 accesskey=s>x</p>", "refuse")
page("math-mathml-plain", "plain MathML", "<math><mi>x</mi></math>", "harmless")
page("after-html-script", "a script after </html>", "<script>alert(1)</script>", at="after")
page("first-script", "a script before the doctype", "<script>alert(1)</script>", at="first")
page("head-style-attr-script", "a second head", "<head><script>alert(1)</script></head>", at="body")
page("text-script-in-h1", "a script in the title of the page", "<script>alert(1)</script>",
    at="text")
page("index-refresh", "the unit's first page leaves for another place",
    f'<meta http-equiv=refresh content="0;url={EVIL}/">', at="after-csp",
    which="data/pages/index.html")
