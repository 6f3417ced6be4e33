"""Drawings that ask for something from elsewhere, or hide pictures in themselves."""

# fmt: off

from __future__ import annotations

import base64
import functools
from typing import Any

from tests.packs.attacks.drawings_that_act import EVIL, XL, drawing, svg
from tests.packs.attacks.drawings_that_cost import use_bomb
from tests.packs.attacks.jpegs import jpeg_with
from tests.packs.attacks.pngs import exif_gps, png, png_bomb
from tests.packs.attacks.register import Rows

_URLS = [("http", f"{EVIL}/x"), ("scheme-relative", "//127.0.0.1:9/x"), ("file",
    "file:///etc/passwd"), ("relative", "other.svg#a"), ("parent", "../../../../etc/passwd#a")]
REQUESTS_2: Rows = (("image-href", "image", '<image href="{u}" width="9" height="9"/>'),
    ("image-xlink", "image by xlink", '<image xlink:href="{u}" width="9" height="9"/>'),
    ("use", "use", '<use href="{u}#a"/>'),
    ("fe-image", "feImage",
    '<filter id="f"><feImage href="{u}"/></filter><rect filter="url(#f)" width="9" '
    'height="9"/>'),
    ("pattern-href", "a pattern's href", '<pattern id="p" href="{u}#a"/>'),
    ("gradient-href", "a gradient's href", '<linearGradient id="p" xlink:href="{u}#a"/>'),
    ("textpath", "a text path", '<text><textPath href="{u}#a">x</textPath></text>'),
    ("mpath", "a motion path", '<animateMotion><mpath href="{u}#a"/></animateMotion>'),
    ("tref", "tref", '<text><tref xlink:href="{u}#a"/></text>'),
    ("fill", "fill", '<rect width="9" height="9" fill="url({u}#a)"/>'),
    ("stroke-upper", "stroke, in capitals",
    '<rect width="9" height="9" stroke="URL( \'{u}#a\' ) red"/>'),
    ("filter-attr", "filter", '<rect width="9" height="9" filter="url({u}#a)"/>'),
    ("clip-path", "clip-path", '<rect width="9" height="9" clip-path="url({u}#a)"/>'),
    ("mask", "mask", '<rect width="9" height="9" mask="url({u}#a)"/>'),
    ("mask-image", "mask-image as an attribute",
    '<rect width="9" height="9" mask-image="url({u})"/>'),
    ("marker", "marker-end", '<path d="M0 0h9" marker-end="url({u}#a)"/>'),
    ("cursor", "cursor", '<rect width="9" height="9" cursor="url({u}),auto"/>'),
    ("style-background", "a style attribute",
    '<rect width="9" height="9" style="background:url({u})"/>'),
    ("style-escape", "url written with escapes",
    r'<rect width="9" height="9" style="fill:\75\72\6c({u}#a)"/>'),
    ("style-comment", "url after comments",
    '<rect width="9" height="9" style="fill:/**/url(/**/{u}#a)"/>'),
    ("style-import", "@import", '<style>@import "{u}";</style>'),
    ("style-import-escape", "@import with escapes", r'<style>@\69m\70ort "{u}";</style>'),
    ("style-import-layer", "@import url() layer()",
    '<style>@import url({u}) layer(a) supports(display:grid);</style>'),
    ("style-font-face", "@font-face",
    '<style>@font-face{font-family:a;src:url({u})}text{font-family:a}</style><text '
    'y="20">x</text>'),
    ("style-image-set", "image-set of a text",
    '<style>rect{background-image:image-set("{u}" 1x)}</style>'),
    ("style-webkit-image-set", "-webkit-image-set",
    '<style>rect{mask-image:-webkit-image-set("{u}" 1x)}</style>'),
    ("style-cross-fade", "cross-fade", '<style>rect{mask-image:cross-fade(url({u}),red)}</style>'),
    ("style-src", "src()", '<style>rect{mask-image:src("{u}")}</style>'),
    ("style-var", "a custom property that carries url()",
    '<style>:root{--a:url({u})}rect{mask-image:var(--a)}</style>'),
    ("style-attr", "attr() as an address",
    '<style>rect{mask-image:image-set(attr(class type(&lt;string&gt;)))}</style><rect '
    'class="{u}" width="9" height="9"/>'),
    ("style-content", "content", '<style>text::before{content:url({u})}</style>'),
    ("style-namespace", "@namespace and @document",
    '<style>@namespace url({u});@document url({u}){a{b:c}}</style>'),
    ("style-cdata-split", "url split by CDATA",
    '<style>rect{mask-image:u<![CDATA[rl({u}]]>)}</style>'),
    ("style-split-by-elements", "url split by an element inside style",
    '<style>rect{mask-image:u<a/>rl({u})}</style>'),
    ("style-expression", "expression, behavior and -moz-binding",
    '<style>rect{behavior:url({u});-moz-binding:url({u}#x);width:expression(alert(1))}</s' 'tyle>'),
    ("style-image-fn", "image()", '<rect width="9" height="9" style="mask-image:image(\'{u}\')"/>'),
    ("style-element-fn", "element() and paint()",
    '<rect width="9" height="9" style="mask-image:paint(x);background:element(#a)"/>'),
    ("style-xlink-media", "a style element with a link",
    '<style type="text/css" xlink:href="{u}" src="{u}"/>'),
    ("xml-base", "xml:base and a short link",
    '<g xml:base="{u}"><image href="x.png" width="9" height="9"/></g>'),
    ("color-profile", "color-profile", '<color-profile xlink:href="{u}" name="a"/>'),
    ("cursor-element", "cursor, the element", '<cursor xlink:href="{u}"/>'),
    ("font-face-uri", "an SVG font by address",
    '<font-face><font-face-src><font-face-uri xlink:href="{u}"/></font-face-src></font-fa' 'ce>'),
    ("altglyph", "altGlyph", '<text><altGlyph xlink:href="{u}#g">x</altGlyph></text>'),
    ("set-fill", "an animation that sets fill to an address",
    '<rect width="9" height="9"><set attributeName="fill" to="url({u}#a)"/></rect>'),
    ("animate-style", "an animation of mask-image values",
    '<rect width="9" height="9"><animate attributeName="mask-image" '
    'values="none;url({u})" dur="1s"/></rect>'),
    ("ping", "a link that pings", '<a href="#x" ping="{u}"><text y="20">x</text></a>'),
    ("xinclude", "XInclude",
    '<xi:include xmlns:xi="http://www.w3.org/2001/XInclude" href="{u}" parse="text"/>'),
    ("xlink-show", "XLink that shows itself",
    '<g xlink:type="simple" xlink:show="embed" xlink:actuate="onLoad" xlink:href="{u}"/>'),
    ("presentation-d", "a path by CSS url",
    '<path d="M0 0" style="offset-path:url({u}#a);shape-inside:url({u}#a)"/>'),
    ("foreign-attr", "src, srcset and poster on shapes",
    '<image src="{u}" srcset="{u} 2x" poster="{u}" data="{u}"/>'),
    )
for _n, _what, _in in REQUESTS_2:
    for _un, _u in (_URLS if _n in ("image-href", "fill") else _URLS[:1]):
        drawing(f"request-{_n}" + ("" if _un == "http" else "-" + _un), f"{_what} -> {_u}",
            "refuse", svg(_in.replace("{u}", _u), XL))
REQUESTS_1: Rows = (("stylesheet-pi", f'<?xml-stylesheet href="{EVIL}/x.css"?>'),
    ("stylesheet-pi-xsl", '<?xml-stylesheet type="text/xsl" href="#x"?>'),
    ("doctype-system", f'<!DOCTYPE svg SYSTEM "{EVIL}/x.dtd">'),
    ("doctype-public", f'<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "{EVIL}/x.dtd">'),
    ("entity-file", '<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>'),
    ("entity-parameter", f'<!DOCTYPE svg [<!ENTITY % x SYSTEM "{EVIL}/x"> %x;]>'),
    ("notation",
    f'<!DOCTYPE svg [<!NOTATION n SYSTEM "{EVIL}/n"><!ENTITY x SYSTEM "{EVIL}/x" NDATA n>' ']>'),
    ("pi-php", '<?php system("id"); ?>')
    )
for _n, _head in REQUESTS_1:
    drawing("request-" + _n, _head[:60], "refuse", svg("<text y='20'>&x;</text>" if _n ==
        "entity-file" else "", head=_head + "\n"))
drawing("request-doctype-svg11", "the usual DOCTYPE of SVG 1.1, as old Inkscape writes it",
    "harmless", svg("", head=
    '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/D'
    'TD/svg11.dtd">\n'), "a request for the DTD")
drawing("entity-billion", "the billion laughs", "refuse", svg("<desc>&e9;</desc>",
    head="<!DOCTYPE svg [<!ENTITY e0 'ha'>" + "".join(f"<!ENTITY e{i} '{f'&e{i-1};' * 10}'>" for i
    in range(1, 10)) + "]>\n"))
drawing("entity-quadratic", "one entity of 60 kB used 10,000 times", "refuse", lambda: svg("<desc>"
    + "&a;" * 10_000 + "</desc>", head="<!DOCTYPE svg [<!ENTITY a '" + "a" * 60_000 + "'>]>\n"))
drawing("entity-in-attribute", "the billion laughs in an attribute", "refuse", svg(
    '<path d="&e9;"/>', head="<!DOCTYPE svg [<!ENTITY e0 'M0 0'>" + "".join(
    f"<!ENTITY e{i} '{f'&e{i-1};' * 10}'>" for i in range(1, 10)) + "]>\n"))
drawing("entity-unused-harmless", "a DTD with one entity that nothing uses", "refuse", svg("",
    head="<!DOCTYPE svg [<!ENTITY a 'b'>]>\n"))
drawing("doctype-200kb", "a DTD of 200 kB of comments", "refuse", svg("", head="<!DOCTYPE svg [" +
    "<!-- x -->" * 20_000 + "]>\n"))


def b64_of(d: Any) -> Any:
    return base64.b64encode(d if isinstance(d, bytes) else d.encode()).decode()


drawing("inner-svg-script", "image with a data: drawing that holds a script", "refuse", svg(
    '<image width="9" height="9" href="data:image/svg+xml;base64,'
    f'{b64_of(svg("<script>alert(1)</script>"))}"/>'))
drawing("inner-svg-use-bomb", "image with a data: drawing that holds a use bomb", "refuse", lambda:
    svg(
    f'<image width="9" height="9" href="data:image/svg+xml;base64,{b64_of(svg(use_bomb(10, 9)))}'
    '"/>'))
drawing("inner-svg-15-deep", "a drawing in a drawing in … 12 deep by data:", "refuse", lambda:
    functools.reduce(lambda d, _: svg(
    f'<image width="9" height="9" href="data:image/svg+xml;base64,{b64_of(d)}"/>'), range(12), svg(
    )))
drawing("inner-png-bomb", "image with a data: PNG of 30,000 by 30,000", "refuse", lambda: svg(
    f'<image width="9" height="9" href="data:image/png;base64,{b64_of(png_bomb(30_000, 30_000))}'
    '"/>'))
drawing("inner-html", "image with data:text/html", "refuse", svg(
    '<image width="9" height="9" href="data:text/html;base64,PHNjcmlwdD5hbGVydCgxKTwvc2Ny'
    'aXB0Pg=="/>'))
drawing("inner-png-upper", "DATA:IMAGE/PNG with blanks and line ends inside", "harmless", lambda:
    svg(
    f'<image width="9" height="9" href=" DATA:IMAGE/PNG;charset=x;base64, {b64_of(png(4, 4))[:20]}'
    f'&#10;{b64_of(png(4, 4))[20:]}"/>'))
drawing("inner-jpeg-with-place", "image with a data: JPEG that carries GPS and a name", "harmless",
    lambda: svg(
    f'<image width="96" height="60" href="data:image/jpeg;base64,{b64_of(jpeg_with(exif_gps()))}'
    '"/>'), "the place and the name in what readers get")
drawing("inner-self", "image of the drawing itself", "refuse", svg(
    '<image width="800" height="500" href="low-tide.svg"/>'))
drawing("inner-fragment", "image of #a (the whole drawing again)", "refuse", svg(
    '<image width="800" height="500" href="#"/>'))
