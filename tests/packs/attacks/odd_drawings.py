"""Drawings in odd encodings, and files that are none."""

# fmt: off

from __future__ import annotations

import gzip

from tests.packs.attacks.drawings_that_act import drawing, svg
from tests.packs.attacks.pngs import png
from tests.packs.attacks.register import Rows
from tests.packs.attacks.zips import MB, Entry, write_zip

_S = svg("<script>alert(1)</script>", head='<?xml version="1.0" encoding="{e}"?>\n')
ENCODINGS_AND_WHAT_3: Rows = (("utf16-le-bom", "UTF-16", "utf-16"),
    ("utf16-be", "UTF-16BE", "utf-16-be"),
    ("utf16-le-none", "UTF-16LE", "utf-16-le"),
    ("utf32", "UTF-32", "utf-32"),
    ("utf7", "UTF-7", "utf-7"),
    ("ebcdic", "cp037", "cp037"),
    ("ebcdic-1140", "IBM01140", "cp1140"),
    ("latin1", "ISO-8859-1", "latin-1"),
    ("cp1252", "windows-1252", "cp1252"),
    ("shift-jis", "Shift_JIS", "shift_jis"),
    ("iso-2022-jp", "ISO-2022-JP", "iso2022_jp"),
    ("hz", "HZ-GB-2312", "hz"),
    ("gb18030", "GB18030", "gb18030"),
    ("koi8", "KOI8-R", "koi8_r")
    )
for _n, _e, _codec in ENCODINGS_AND_WHAT_3:
    drawing("coded-script-" + _n, f"a script in a drawing in {_e}", "refuse", _S.replace("{e}",
        _e).encode(_codec))
ENCODINGS_AND_WHAT_2: Rows = (("rot13", "rot13"),
    ("zlib", "zlib_codec"),
    ("unicode-escape", "unicode_escape"),
    ("raw-unicode-escape", "raw_unicode_escape"),
    ("idna", "idna"),
    ("punycode", "punycode"),
    ("undefined", "undefined"),
    ("unknown", "x-nobody"),
    ("nul", "UTF-8&#0;"),
    ("long", "u" * 40),
    ("utf8-sig", "utf-8-sig"),
    ("hex", "hex"),
    ("charmap", "charmap"),
    ("mbcs", "mbcs"),
    ("big5hkscs", "big5hkscs"),
    ("dot", "encodings.utf_8"),
    ("symbol", "symbol")
    )
for _n, _e in ENCODINGS_AND_WHAT_2:
    drawing("coded-declared-" + _n,
        f"a sound drawing that says encoding=\"{_e}\" (a Python codec or none)", "refuse", svg(
        head=f'<?xml version="1.0" encoding="{_e}"?>\n'))
drawing("coded-utf16-without-script", "a sound drawing in UTF-16", "harmless", svg(
    head='<?xml version="1.0" encoding="UTF-16"?>\n').encode("utf-16"),
    "a traceback; a drawing that the page shows as broken")
drawing("coded-two-boms", "two byte order marks", "refuse", b"\xef\xbb\xbf\xef\xbb\xbf" + svg(
    ).encode())
drawing("coded-iso2022-escape",
    "ASCII only, says ISO-2022-JP, escapes hide a script from who reads UTF-8", "refuse", svg(
    "<desc>\x1b$B</desc><script>alert(1)</script>\x1b(B</desc>".replace("\x1b", "&#27;"),
    head='<?xml version="1.0" encoding="ISO-2022-JP"?>\n'))
drawing("coded-xml-11", "XML 1.1 (control codes allowed)", "refuse", svg("<desc>&#1;</desc>",
    head='<?xml version="1.1"?>\n'))
drawing("coded-nul", "a NUL", "refuse", svg("<desc>\0</desc>"))
drawing("coded-nul-after", "NULs after the end", "refuse", svg() + "\0" * 100)
drawing("coded-invalid", "bytes that are no UTF-8", "refuse", svg("<desc>X</desc>").encode(
    ).replace(b"X", b"\xff\xfe"))
drawing("coded-surrogate", "&#xD800;", "refuse", svg("<desc>&#xD800;</desc>"))
drawing("coded-space-before-xml", "a space before the declaration", "refuse", " " + svg(
    head='<?xml version="1.0"?>\n'))
drawing("coded-standalone", "standalone='maybe'", "refuse", svg(
    head='<?xml version="1.0" standalone="maybe"?>\n'))
ENCODINGS_AND_WHAT_1: Rows = (("html", "an HTML page called .svg", "refuse",
    "<!doctype html><html><body><script>alert(1)</script></body></html>"),
    ("no-namespace", "no namespace", "refuse",
    '<svg viewBox="0 0 9 9"><rect width="9" height="9"/></svg>'),
    ("wrong-namespace", "another namespace", "refuse",
    '<svg xmlns="http://www.w3.org/2000/svg/" viewBox="0 0 9 9"/>'),
    ("root-g", "the root is g", "refuse", '<g xmlns="http://www.w3.org/2000/svg"/>'),
    ("root-html-ns", "svg in XHTML's namespace", "refuse",
    '<svg xmlns="http://www.w3.org/1999/xhtml"><script>alert(1)</script></svg>'),
    ("empty", "0 bytes", "refuse", ""),
    ("only-space", "a space", "refuse", " "),
    ("cut", "cut in the middle", "refuse", svg()[:90]),
    ("two-roots", "two drawings one after the other", "refuse", svg() + svg()),
    ("trailing-html", "a script after </svg>", "refuse", svg() + "<script>alert(1)</script>"),
    ("trailing-comment", "a script in a comment after </svg>", "harmless", svg() +
    "<!-- <script>alert(1)</script> -->"),
    ("svgz", "gzip", "refuse", gzip.compress(svg().encode(), mtime=0)),
    ("svgz-bomb", "gzip of 200 MB", "refuse", None),
    ("png", "a PNG called .svg", "refuse", None),
    ("pdf", "a PDF called .svg", "refuse",
    "%PDF-1.7\n1 0 obj<</OpenAction<</S/JavaScript/JS(app.alert(1))>>>>endobj\n"),
    ("zip-after", "a zip after the drawing", "refuse", None),
    ("empty-drawing", "nothing in it, no size", "harmless",
    '<svg xmlns="http://www.w3.org/2000/svg"/>'),
    ("no-size", "no viewBox, width 0", "harmless",
    '<svg xmlns="http://www.w3.org/2000/svg" width="0" height="0"/>'),
    ("size-10-9", "width and height of 10^9", "harmless", svg(
    box='width="1000000000" height="1000000000" viewBox="0 0 1 1"')),
    ("viewbox-nan", "a viewBox of nan and inf", "harmless", svg(box='viewBox="nan inf 1e999 -5"')),
    ("viewbox-zero", "a viewBox of 0 by 0", "harmless", svg(box='viewBox="0 0 0 0"')),
    ("viewbox-thin", "a viewBox of 10^9 by 1 (a page kilometres tall)", "harmless", svg(
    box='viewBox="0 0 1 1000000000"')),
    ("white-on-white", "words that say 'no drawing' hidden outside the frame; nothing is seen",
    "harmless", svg('<text x="9999" y="9999">x</text>')),
    ("personal-metadata",
    "the author's name, e-mail, home folder and place in metadata and editor attributes",
    "harmless", svg('<metadata><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#" '
    'xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:creator>Ann Body, jane@example.org, '
    '51.5 N 0.1 W</dc:creator></rdf:RDF></metadata>',
    ' xmlns:sodipodi="http://sodipodi.sourceforge.net/DTD/sodipodi-0.dtd" '
    'xmlns:inkscape="http://www.inkscape.org/namespaces/inkscape" '
    'sodipodi:docname="jane-doe.svg" inkscape:export-filename="C:\\Users\\jane.doe\\Deskt'
    'op\\x.png"')),
    ("personal-comment", "a name and a telephone number in a comment", "harmless", svg(
    "<!-- drawn by Ann Body, 01632 960000 -->")),
    ("bidi-text", "text turned round", "harmless", svg('<text y="20">\u202eabc</text>')),
    ("over-the-page",
    "overflow visible and a shape far outside the frame (covers a page if it stands in " "it)",
    "harmless", svg('<rect x="-9999" y="-9999" width="99999" height="99999"/>',
    ' overflow="visible" style="overflow:visible;position:fixed;inset:0;z-index:9999"')),
    ("ids-of-the-page", "ids and classes of the page itself (at-content, score-a)", "harmless", svg(
    '<pattern id="score-a" width="9" height="9"/><g id="at-content" '
    'class="skip"/><style>body,main,.first{display:none!important}</style>')),
    )
for _n, _what, _exp, _d in ENCODINGS_AND_WHAT_1:
    if _d is None:
        _d = {"svgz-bomb": lambda: gzip.compress(bytes(200 * MB), mtime=0), "png": lambda: png(8,
            8), "zip-after": lambda: svg().encode() + write_zip([Entry("evil.html",
            b"<script>alert(1)</script>")])}[_n]
    drawing("odd-" + _n, _what, _exp, _d, "believed to be a drawing though no browser shows it" if
        (_exp == "harmless" and "size" in _n) or "viewbox" in _n else (
        "personal data in what readers get" if "personal" in _n else ""))
