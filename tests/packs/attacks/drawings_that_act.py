"""Drawings that run something."""

# fmt: off

from __future__ import annotations

from typing import Any

from tests.packs.attacks.packed import Pack
from tests.packs.attacks.register import Made, Rows, recipe

XL = ' xmlns:xlink="http://www.w3.org/1999/xlink"'
EVIL = "http://127.0.0.1:9"
TITLE = "<title>A drawing for the class</title>\n"
RECT = '<rect width="800" height="500" fill="#F6F1E4"/>\n'


def svg(inner: Any = "", attrs: Any = "", head: Any = "", title: Any = TITLE, box: Any =
    'viewBox="0 0 800 500"') -> Any:
    start = f'{head}<svg xmlns="http://www.w3.org/2000/svg" {box}{attrs}>'
    return f"{start}\n{title}{RECT}{inner}\n</svg>\n"


def drawing(name: str, what: str, expected: str, data: Any, must_not: str = "") -> Any:
    def make(p: Pack) -> Made:
        d = data() if callable(data) else data
        return p.set_drawing(d)
    recipe(name, "drawings", what, expected, make, must_not)


FREEZE = "the reader's browser busy for over 5 s or 1 GB; take-in over 5 s"


SCRIPTS_1: Rows = (("script", "a script", "<script>alert(1)</script>"),
    ("script-prefixed", "a script by a prefix of one's own",
    '<q:script xmlns:q="http://www.w3.org/2000/svg">alert(1)</q:script>'),
    ("script-xhtml", "XHTML's script",
    '<script xmlns="http://www.w3.org/1999/xhtml">alert(1)</script>'),
    ("script-xhtml-prefixed", "XHTML's script by a prefix",
    '<h:script xmlns:h="http://www.w3.org/1999/xhtml">alert(1)</h:script>'),
    ("script-href-data", "a script by data:", '<script href="data:text/javascript,alert(1)"/>'),
    ("script-cdata", "a script in CDATA", "<script><![CDATA[alert(1)]]></script>"),
    ("script-upper", "SCRIPT (dead in XML, alive once it stands in HTML)",
    "<SCRIPT>alert(1)</SCRIPT>"),
    ("script-in-defs", "a script in defs in a symbol",
    "<defs><symbol><g><script>alert(1)</script></g></symbol></defs>"),
    ("script-in-title", "a script in the title", "<desc><script>alert(1)</script></desc>"),
    ("script-in-metadata", "a script in metadata",
    "<metadata><script>alert(1)</script></metadata>"),
    ("onload-g", "a handler onload", '<g onload="alert(1)"/>'),
    ("onerror-image", "a handler onerror", '<image href="x" onerror="alert(1)"/>'),
    ("onbegin", "a handler of an animation",
    '<animate attributeName="x" dur="1s" onbegin="alert(1)"/>'),
    ("onfocus-autofocus", "a handler with tabindex and autofocus",
    '<a href="#x" tabindex="0" autofocus="" onfocus="alert(1)"><text>x</text></a>'),
    ("on-upper", "ONCLICK (dead in XML, alive in HTML)",
    '<rect width="9" height="9" ONCLICK="alert(1)"/>'),
    ("on-namespaced", "a handler in a namespace",
    '<rect xmlns:q="http://www.w3.org/2000/svg" q:onclick="alert(1)" width="9" ' 'height="9"/>'),
    ("on-unknown", "a handler no list knows",
    '<rect width="9" height="9" onscrollsnapchanging="alert(1)" ' 'onbeforematch="alert(1)"/>'),
    ("ev-listener", "XML Events",
    '<ev:listener xmlns:ev="http://www.w3.org/2001/xml-events" event="load" ' 'handler="#h"/>'),
    ("handler-tiny", "SVG Tiny's handler element",
    '<handler type="application/ecmascript">alert(1)</handler>'),
    ("foreign-object", "foreignObject with HTML",
    '<foreignObject width="9" height="9"><body xmlns="http://www.w3.org/1999/xhtml"><ifra'
    'me src="javascript:alert(1)"/></body></foreignObject>'),
    ("foreign-lower", "foreignobject in small letters",
    '<foreignobject width="9" height="9"><b>x</b></foreignobject>'),
    ("foreign-empty", "an empty foreignObject", '<foreignObject/>'),
    ("html-img", "XHTML's img",
    '<img xmlns="http://www.w3.org/1999/xhtml" src="x" onerror="alert(1)"/>'),
    ("html-iframe", "XHTML's iframe",
    '<h:iframe xmlns:h="http://www.w3.org/1999/xhtml" src="http://127.0.0.1:9/"/>'),
    ("html-meta-refresh", "XHTML's meta refresh",
    '<h:meta xmlns:h="http://www.w3.org/1999/xhtml" http-equiv="refresh" '
    'content="0;url=http://127.0.0.1:9/"/>'),
    ("html-link-style", "XHTML's link",
    '<h:link xmlns:h="http://www.w3.org/1999/xhtml" rel="stylesheet" '
    'href="http://127.0.0.1:9/"/>'),
    ("html-base", "XHTML's base",
    '<h:base xmlns:h="http://www.w3.org/1999/xhtml" href="http://127.0.0.1:9/"/>'),
    ("html-video", "SVG Tiny's video and audio",
    f'<video xlink:href="{EVIL}/v"{XL}/><audio xlink:href="{EVIL}/a"{XL}/>'),
    ("mathml", "MathML with a link",
    '<math xmlns="http://www.w3.org/1998/Math/MathML" href="javascript:alert(1)"><mtext>x'
    '</mtext></math>'),
    ("iframe-svg-ns", "iframe, object and embed in SVG's own namespace",
    f'<iframe src="{EVIL}/"/><object data="{EVIL}/"/><embed src="{EVIL}/"/>'),
    ("a-javascript", "a link javascript:",
    '<a href="javascript:alert(1)"><text y="20">x</text></a>'),
    ("a-javascript-tab", "a link java TAB script:",
    '<a href="java&#9;script:alert(1)"><text y="20">x</text></a>'),
    ("a-javascript-control", "a link with a control code before",
    '<a href="&#x20;&#xA;javascript:alert(1)"><text y="20">x</text></a>'),
    ("a-xlink-other-prefix", "xlink by another prefix",
    '<a xmlns:z="http://www.w3.org/1999/xlink" z:href="javascript:alert(1)"><text '
    'y="20">x</text></a>'),
    ("a-data", "a link data:text/html",
    '<a href="data:text/html,&lt;script&gt;alert(1)&lt;/script&gt;"><text ' 'y="20">x</text></a>'),
    ("a-web", "a link to the web", f'<a href="{EVIL}/" target="_top"><text y="20">x</text></a>'),
    ("animate-href", "an animation that sets a link to javascript:",
    '<a><text y="20">x</text><animate attributeName="href" ' 'values="javascript:alert(1)"/></a>'),
    ("set-onload", "set of a handler", '<set attributeName="onmouseover" to="alert(1)"/>'),
    ("animate-from-by", "an animation with to=javascript: by entities",
    '<a id="l"><text y="20">x</text></a><set href="#l" attributeName="href" '
    'to="&#106;avascript:alert(1)"/>'),
    ("animate-image-href", "an animation that loads a picture",
    f'<image width="9" height="9"><set attributeName="href" to="{EVIL}/x.png"/></image>'),
    ("discard", "discard with a link", '<discard href="#x" begin="0s"/>'),
    ("use-data", "use of a data: drawing with a script",
    '<use href="data:image/svg+xml,&lt;svg id=\'x\' xmlns=\'http://www.w3.org/2000/svg\'&'
    'gt;&lt;script&gt;alert(1)&lt;/script&gt;&lt;/svg&gt;#x"/>'),
    )
for _n, _what, _in, *_rest in SCRIPTS_1:
    drawing("active-" + _n, _what, "refuse", svg(_in, XL if "xlink:" in _in and "xmlns:xlink" not in
        _in else ""))
drawing("active-onload-root", "a handler on the root", "refuse", svg("", ' onload="alert(1)"'))
drawing("active-ns-default-swapped", "the root by a prefix, XHTML as default namespace", "refuse",
    '<s:svg xmlns:s="http://www.w3.org/2000/svg" xmlns="http://www.w3.org/1999/xhtml" '
    'viewBox="0 0 9 9"><script>alert(1)</script><s:rect width="9" height="9"/></s:svg>')
drawing("active-attlist-default", "a DTD that gives every g a handler by default", "refuse", svg(
    "<g/>", head='<!DOCTYPE svg [<!ATTLIST g onload CDATA "alert(1)"><!ATTLIST svg onload CDATA '
    '"alert(1)">]>\n'))
drawing("active-attlist-xmlns", "a DTD that moves an element into XHTML", "refuse", svg(
    '<script>alert(1)</script>', head=
    '<!DOCTYPE svg [<!ATTLIST script xmlns CDATA #FIXED "http://www.w3.org/1999/xhtml">]>' '\n'))
drawing("active-entity-script", "a script spelt by an entity of the DTD", "refuse", svg("&s;", head=
    '<!DOCTYPE svg [<!ENTITY s "<script xmlns=\'http://www.w3.org/2000/svg\'>alert(1)</sc'
    'ript>">]>\n'))
drawing("active-cdata-ends-style", "CDATA that closes <style> once the drawing stands in HTML",
    "refuse", svg("<style><![CDATA[</style><img src=x onerror=alert(1)>]]></style>"))
drawing("active-title-escaped", "a title whose escaped text is markup once unescaped", "harmless",
    svg("", title="<title>&lt;/title&gt;&lt;script&gt;alert(1)&lt;/script&gt;</title>"),
    "the script alive on a page that shows the title")
drawing("active-title-quote", "a title that breaks out of an alt attribute", "harmless", svg("",
    title='<title>x" onerror="alert(1)</title>'), "a handler on a page that shows the title")
drawing("active-comment-html", "a comment that ends earlier in HTML than in XML", "harmless", svg(
    "<!--><img src=x onerror=alert(1)>-->"), "live when the drawing stands in a page")
drawing("active-pi-html", "an instruction that ends at > in HTML", "refuse", svg(
    "<?x ><script>alert(1)</script> ?>"))
drawing("active-attr-lt", "an attribute that holds </svg><script> (XML: text)", "harmless", svg(
    '<text y="20" font-family="&lt;/svg&gt;&lt;script&gt;alert(1)&lt;/script&gt;">x</text' '>'),
    "live when the drawing stands in a page")
