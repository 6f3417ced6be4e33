"""Drawings that take long to draw or to read."""

# fmt: off

from __future__ import annotations

from typing import Any

from tests.packs.attacks.drawings_that_act import FREEZE, drawing, svg
from tests.packs.attacks.register import Rows
from tests.packs.attacks.zips import MB


def use_bomb(width: Any, depth: Any, tag: Any = "g", shape: Any =
    '<rect width="9" height="9"/>') -> Any:
    out = f'<{tag} id="u0">{shape}</{tag}>'
    for i in range(1, depth + 1):
        out += f'<{tag} id="u{i}">' + f'<use href="#u{i - 1}" x="1"/>' * width + f"</{tag}>"
    return f"<defs>{out}</defs><use href=\"#u{depth}\"/>"


WHAT_FREEZES_A_1: Rows = (("use-10-9", "use of use: 10^9 shapes", lambda: svg(use_bomb(10, 9))),
    ("use-2-28", "use of use: 2^28 shapes, only two in each", lambda: svg(use_bomb(2, 28))),
    ("use-symbols", "the same by symbols", lambda: svg(use_bomb(10, 7, "symbol"))),
    ("use-4-8-small", "use of use: 65,536 shapes (below some limits)", lambda: svg(use_bomb(4, 8))),
    ("use-xlink", "use by xlink with another prefix", lambda: svg(use_bomb(10, 9).replace(' href="',
    ' z:href="'), ' xmlns:z="http://www.w3.org/1999/xlink"')),
    ("use-nested-svg", "use of nested svg elements", lambda: svg(use_bomb(10, 8, "svg"))),
    ("use-ids-later", "ids given twice: the first is small, the second the bomb", lambda: svg(
    '<g id="u8"/>' + use_bomb(10, 8).replace('<defs>', '<g>').replace('</defs>', '</g>'))),
    ("use-encoded-id", "ids written with percent signs in the link", lambda: svg(use_bomb(10,
    9).replace('#u', '#%75'))),
    ("use-spaces", "links with spaces round them", lambda: svg(use_bomb(10, 9).replace('href="#u',
    'href=" #u'))),
    ("use-switch", "use in switch in a", lambda: svg(use_bomb(10, 8, "switch"))),
    ("use-in-text-mask", "use in a mask in use", lambda: svg("".join(f'<mask id="m{i}">' +
    f'<rect width="9" height="9" mask="url(#m{i - 1})"/>' * 10 + "</mask>" for i in range(1, 9)) +
    '<mask id="m0"><rect width="9" height="9"/></mask><rect width="9" height="9" '
    'mask="url(#m8)"/>')),
    ("use-own-parent", "use of what it stands in", lambda: svg('<g id="a"><use href="#a"/></g>')),
    ("use-cycle", "three uses in a ring", lambda: svg(
    '<g id="a"><use href="#b"/></g><g id="b"><use href="#c"/></g><g id="c"><use '
    'href="#a"/></g>')),
    ("use-chain-3000", "a chain of 3,000 uses", lambda: svg('<g id="u0"/>' + "".join(
    f'<use id="u{i}" href="#u{i - 1}"/>' for i in range(1, 3000)))),
    ("pattern-nested", "patterns filled by patterns, 9 levels of 10", lambda: svg("".join(
    f'<pattern id="p{i}" width=".1" height=".1">' + (
    f'<rect width="99" height="99" fill="url(#p{i - 1})"/>' * 10 if i else
    '<rect width="1" height="1"/>') + "</pattern>" for i in range(9)) +
    '<rect width="800" height="500" fill="url(#p8)"/>')),
    ("pattern-tiny", "a pattern of one millionth by one millionth", lambda: svg(
    '<pattern id="p" width=".000001" height=".000001" patternUnits="userSpaceOnUse"><rect'
    ' width="1" height="1"/></pattern><rect width="800" height="500" fill="url(#p)"/>')),
    ("pattern-huge", "a pattern tile of 10^8 by 10^8", lambda: svg(
    '<pattern id="p" width="100000000" height="100000000" '
    'patternUnits="userSpaceOnUse"><circle r="99999999"/></pattern><rect width="800" '
    'height="500" fill="url(#p)"/>')),
    ("pattern-self", "a pattern filled by itself", lambda: svg(
    '<pattern id="p" width="9" height="9"><rect width="9" height="9" '
    'fill="url(#p)"/></pattern><rect width="800" height="500" fill="url(#p)"/>')),
    ("clip-nested", "clip paths clipped by clip paths, 9 levels of 10", lambda: svg("".join(
    f'<clipPath id="c{i}">' + (f'<rect width="9" height="9" clip-path="url(#c{i - 1})"/>' * 10 if i
    else '<rect width="9" height="9"/>') + "</clipPath>" for i in range(9)) +
    '<rect width="9" height="9" clip-path="url(#c8)"/>')),
    ("marker-nested", "markers on markers, 6 levels of 30 corners", lambda: svg("".join(
    f'<marker id="m{i}" overflow="visible"><path d="M0 0{"h1" * 30}"' + (
    f' marker-mid="url(#m{i - 1})"' if i else "") + "/></marker>" for i in range(6)) +
    '<path d="M0 0' + "h1" * 30 + '" marker-mid="url(#m5)"/>')),
    ("marker-100000", "a marker with a text on each of 100,000 corners", lambda: svg(
    '<marker id="m"><text>abc</text></marker><path d="M0 0' + "h1v1" * 50_000 +
    '" marker-mid="url(#m)"/>')),
    ("context-fill", "context-fill through nested markers and patterns", lambda: svg(
    '<pattern id="p" width="9" height="9"><path d="M0 0h9" '
    'marker-mid="url(#m)"/></pattern><marker id="m"><rect width="9" height="9" '
    'fill="url(#p)"/></marker><path d="M0 0h1h1" marker-mid="url(#m)" fill="url(#p)"/>')),
    ("mask-by-style", "nested masks given in a style element", lambda: svg("<style>" + "".join(
    f".k{i}{{mask:url(#m{i})}}" for i in range(8)) + "</style>" + "".join(f'<mask id="m{i}">' +
    f'<rect class="k{i - 1}" width="9" height="9"/>' * 10 + "</mask>" for i in range(1, 8)) +
    '<mask id="m0"><rect width="9" height="9"/></mask><rect class="k7" width="9" ' 'height="9"/>')),
    ("gradient-chain", "20,000 gradients, each by the last", lambda: svg('<linearGradient id="g0"/>'
    + "".join(f'<linearGradient id="g{i}" href="#g{i - 1}"/>' for i in range(1, 20_000)) +
    '<rect width="9" height="9" fill="url(#g19999)"/>')),
    ("gradient-cycle", "two gradients, each by the other", lambda: svg(
    '<linearGradient id="a" href="#b"/><linearGradient id="b" href="#a"/><rect width="9" '
    'height="9" fill="url(#a)"/>')),
    ("gradient-stops", "a gradient of 50,000 stops", lambda: svg('<linearGradient id="a">' +
    '<stop offset=".5" stop-color="red"/>' * 50_000 +
    '</linearGradient><rect width="9" height="9" fill="url(#a)"/>')),
    ("filter-blur", "a blur of 10^6 over a region of 10^6", lambda: svg(
    '<filter id="f" x="-1000" y="-1000" width="10000" height="10000"><feGaussianBlur '
    'stdDeviation="1000000"/></filter><rect width="800" height="500" filter="url(#f)"/>')),
    ("filter-turbulence", "turbulence of 10^9 octaves", lambda: svg(
    '<filter id="f"><feTurbulence baseFrequency=".001" numOctaves="1000000000"/></filter>'
    '<rect width="800" height="500" filter="url(#f)"/>')),
    ("filter-convolve", "a convolution of 300 by 300", lambda: svg(
    f'<filter id="f"><feConvolveMatrix order="300" kernelMatrix="{"1 " * 90_000}"/></filt'
    'er><rect width="800" height="500" filter="url(#f)"/>')),
    ("filter-morphology", "a dilation by 10^6", lambda: svg(
    '<filter id="f"><feMorphology operator="dilate" radius="1000000"/></filter><rect '
    'width="800" height="500" filter="url(#f)"/>')),
    ("filter-chain", "1,000 blurs one after the other", lambda: svg('<filter id="f">' +
    '<feGaussianBlur stdDeviation="50"/>' * 1000 +
    '</filter><rect width="800" height="500" filter="url(#f)"/>')),
    ("filter-merge-doubling", "30 results, each merged twice into the next", lambda: svg(
    '<filter id="f"><feFlood result="r0"/>' + "".join(f'<feMerge result="r{i}">' +
    f'<feMergeNode in="r{i - 1}"/>' * 2 + "</feMerge>" for i in range(1, 31)) +
    '</filter><rect width="800" height="500" filter="url(#f)"/>')),
    ("filter-on-many", "a blur on each of 5,000 shapes", lambda: svg(
    '<filter id="f"><feGaussianBlur stdDeviation="40"/></filter>' +
    '<rect width="800" height="500" filter="url(#f)"/>' * 5000)),
    ("filter-css", "filter functions in a style: blur(9999px) 200 times", lambda: svg(
    f'<rect width="800" height="500" style="filter:{"blur(9999px) " * 200}"/>')),
    ("filter-image-self", "feImage of the shape it filters", lambda: svg(
    '<filter id="f"><feImage href="#r"/></filter><rect id="r" width="800" height="500" '
    'filter="url(#f)"/>')),
    ("filter-tile", "feTile over a huge region from a tiny one", lambda: svg(
    '<filter id="f" x="0" y="0" width="800" height="500" primitiveUnits="userSpaceOnUse" '
    'filterRes="100000"><feFlood width=".0001" height=".0001"/><feTile/></filter><rect '
    'width="800" height="500" filter="url(#f)"/>')),
    ("filter-lighting", "lighting on 500 layers", lambda: svg('<filter id="f">' +
    '<feDiffuseLighting surfaceScale="100"><feDistantLight ' 'azimuth="3"/></feDiffuseLighting>' *
    500 + '</filter><rect width="800" height="500" filter="url(#f)"/>')),
    ("backdrop", "mix-blend-mode and opacity groups, 3,000 deep", lambda: svg(
    '<g style="mix-blend-mode:multiply;isolation:isolate" opacity=".99">' * 3000 + "</g>" * 3000)),
    ("dash-tiny", "dashes of a millionth on a line of a million", lambda: svg(
    '<path d="M0 0H1000000" stroke="red" stroke-dasharray=".000001"/>')),
    ("dash-many-lines", "dashes of .001 on 300 lines", lambda: svg(
    '<path d="M0 0H800" stroke="red" stroke-dasharray=".001"/>' * 300)),
    ("dash-zero", "dashes 0 0 and negative", lambda: svg(
    '<path d="M0 0H800" stroke="red" stroke-dasharray="0 0 -1 0"/>')),
    ("dash-style", "tiny dashes in a style and by pathLength", lambda: svg(
    '<path pathLength="1000000000" d="M0 0H800" style="stroke:red;stroke-dasharray:1"/>')),
    ("dash-inherited", "tiny dashes given to the group of huge circles", lambda: svg(
    '<g stroke="red" stroke-dasharray=".0001" fill="none">' + '<circle r="100000"/>' * 50 +
    "</g>")),
    ("dash-scaled", "dashes of 1 in a group scaled by 10^-6, on lines of 10^9", lambda: svg(
    '<g transform="scale(.000001)" stroke="red" stroke-width="9999"><path d="M0 '
    '0H1000000000" stroke-dasharray="1"/></g>')),
    ("stroke-huge", "a stroke of 10^30 with round joins", lambda: svg('<path d="' + "M0 0l1 1" *
    2000 + '" stroke="red" stroke-width="1e30" stroke-linejoin="round"/>')),
    ("path-million", "a path of 1,000,000 segments", lambda: svg('<path stroke="red" d="M0 0' +
    "l9 9-9 8" * 500_000 + '"/>')),
    ("path-arcs", "100,000 arcs of huge radius", lambda: svg(
    '<path stroke="red" fill="none" d="M0 0' + "A1e9 1e9 0 1 1 9 9 " * 100_000 + '"/>')),
    ("path-overlap", "200 paths that cross themselves 1,000 times", lambda: svg(
    '<path fill-rule="evenodd" d="M0 0' + "".join(f"L{i * 7919 % 800} {i * 104729 % 500}" for i in
    range(4000)) + 'Z"/>' * 1)),
    ("path-number-slow", "a path of 300 kB of digits in one number", lambda: svg('<path d="M0 0L' +
    "9" * 300_000 + ' 0"/>')),
    ("path-dots", "a path of 300 kB of points and signs", lambda: svg('<path d="M' + "-.1" * 100_000
    + '"/>')),
    ("path-bad", "a path that is broken after 200 kB", lambda: svg('<path d="M0 0' + "h1" * 100_000
    + 'Q"/>')),
    ("coordinates-1e308", "coordinates of 1e308", lambda: svg(
    '<circle cx="1e308" cy="-1e308" r="1e308" stroke="red" stroke-width="1e308"/>')),
    ("coordinates-nan", "NaN, Infinity and 1e999", lambda: svg(
    '<circle cx="NaN" cy="Infinity" r="1e999"/>')),
    ("transform-huge", "60 nested scale(1e9)", lambda: svg('<g transform="scale(1e9)">' * 60 +
    '<rect width="1" height="1"/>' + "</g>" * 60)),
    ("transform-long", "a transform of 20,000 functions", lambda: svg(
    f'<rect width="9" height="9" transform="{"rotate(1) " * 20_000}"/>')),
    ("transform-animated", "1,000 animations without end on blurred groups", lambda: svg(
    '<filter id="f"><feGaussianBlur stdDeviation="30"/></filter>' +
    '<g filter="url(#f)"><rect width="400" height="400"/><animateTransform '
    'attributeName="transform" type="rotate" from="0" to="360" dur="1s" '
    'repeatCount="indefinite"/></g>' * 1000)),
    ("animation-css", "CSS animation without end", lambda: svg(
    '<style>@keyframes a{to{transform:rotate(1turn)}}rect{animation:a .01s ' 'infinite}</style>')),
    ("animate-flash", "the whole drawing flashes red and white 20 times a second (seizures)",
    lambda: svg('<rect width="800" height="500" fill="red"><animate attributeName="fill" '
    'values="red;white" dur=".05s" calcMode="discrete" repeatCount="indefinite"/></rect>')),
    ("animate-css-flash", "the same by CSS", lambda: svg(
    '<style>@keyframes f{50%{fill:#fff}}rect{fill:red;animation:f .06s steps(1) '
    'infinite}</style>')),
    ("shapes-300000", "300,000 shapes", lambda: svg('<rect width="9" height="9"/>\n' * 300_000)),
    ("shapes-20000-translucent", "20,000 shapes as large as the drawing, translucent", lambda: svg(
    '<rect width="800" height="500" fill="#123" fill-opacity=".01"/>' * 20_000)),
    ("texts-100000", "100,000 texts", lambda: svg('<text y="20">abc</text>' * 100_000)),
    ("text-glyphs", "one text of 1 MB", lambda: svg('<text y="20">' + "a" * MB + "</text>")),
    ("text-positions", "a text with 100,000 positions", lambda: svg(
    f'<text x="{"1 " * 100_000}" rotate="{"1 " * 100_000}">{"a" * 100_000}</text>')),
    ("text-path", "a text of 50,000 letters on a path of 50,000 curves", lambda: svg(
    '<path id="p" d="M0 0' + "q1 1 2 0" * 50_000 +
    f'"/><text><textPath href="#p">{"a" * 50_000}</textPath></text>')),
    ("text-size-huge", "letters of size 10^7 with shadows", lambda: svg(
    '<text font-size="10000000" style="text-shadow:0 0 9999px red">A</text>')),
    ("text-combining", "one letter with 50,000 accents", lambda: svg("<text y='20'>a" + "\u0301" *
    50_000 + "</text>")),
    ("tspan-deep", "5,000 nested tspan", lambda: svg("<text>" + "<tspan>" * 5000 + "a" + "</tspan>"
    * 5000 + "</text>")),
    ("group-depth-100000", "100,000 nested g", lambda: svg("<g>" * 100_000 + "</g>" * 100_000)),
    ("group-depth-990", "990 nested g (just below Python's recursion limit)", lambda: svg("<g>" *
    990 + "</g>" * 990)),
    ("svg-depth-2000", "2,000 nested svg with percentages", lambda: svg(
    '<svg width="150%" height="150%" viewBox="0 0 9 9">' * 2000 + "</svg>" * 2000)),
    ("attributes-50000", "50,000 attributes on one element", lambda: svg("<rect " + " ".join(
    f'data-a{i}="x"' for i in range(50_000)) + "/>")),
    ("ids-100000-same", "100,000 elements with the same id and a use of it", lambda: svg(
    '<g id="a"/>' * 100_000 + '<use href="#a"/>')),
    ("styles-selectors", "20,000 selectors of :has() and :not() over 20,000 shapes", lambda: svg(
    "<style>" + "svg :has(g):not(:is(a *)) > rect ~ rect{fill:red}" * 2000 + "</style>" + "<rect/>"
    * 20_000)),
    ("style-vars-doubling", "30 custom properties, each the last one twice", lambda: svg(
    "<style>svg{--a0:red;" + "".join(f"--a{i}:var(--a{i - 1}) var(--a{i - 1});" for i in range(1,
    31)) + "}</style>")),
    ("style-calc", "calc() nested 10,000 deep", lambda: svg(
    f'<rect style="width:{"calc(" * 10_000}1px{")" * 10_000}"/>')),
    )
for _n, _what, _d in WHAT_FREEZES_A_1:
    drawing("freeze-" + _n, _what, "harmless" if _n in ("use-4-8-small", "dash-zero",
        "group-depth-990", "coordinates-nan", "path-bad", "gradient-cycle") else "refuse", _d,
        FREEZE)


TEXTS_THAT_SLOW_1: Rows = (("attr-spaces", "200 kB of spaces in an attribute", lambda: svg(
    '<rect width="9" height="9" fill="' + " " * 200_000 + 'x"/>')),
    ("tag-newlines", "200 kB of line ends in a tag", lambda: svg("<rect" + "\n" * 200_000 + "/>")),
    ("tag-tabs-end", "200 kB of tabs in a closing tag", lambda: svg("<g></g" + "\t" * 200_000 +
    ">")),
    ("style-quotes", "100 kB of quotes in a style", lambda: svg("<style>" + "\"'" * 50_000 +
    "</style>")),
    ("style-comments", "100 kB of /* in a style", lambda: svg("<style>" + "/*" * 50_000 +
    "</style>")),
    ("style-comment-ends", "100 kB of */ in a style", lambda: svg("<style>" + "*/" * 50_000 +
    "</style>")),
    ("style-backslashes", "100 kB of backslashes in a style", lambda: svg("<style>" + "\\" * 100_000
    + "</style>")),
    ("style-backslash-newline", "100 kB of backslash and line end in a text", lambda: svg(
    "<style>a{b:\"" + "\\\n" * 50_000 + "</style>")),
    ("style-braces", "100 kB of {", lambda: svg("<style>" + "{" * 100_000 + "</style>")),
    ("style-parens", "100 kB of url(", lambda: svg("<style>a{b:" + "url(" * 25_000 + "</style>")),
    ("style-spaces-url", "url( and 100 kB of spaces", lambda: svg("<style>a{b:url(" + " " * 100_000
    + "#a x)}</style>")),
    ("style-at", "100 kB of @", lambda: svg("<style>" + "@" * 100_000 + "</style>")),
    ("style-cdo", "100 kB of <!-- in CDATA in a style", lambda: svg("<style><![CDATA[" + "<!--" *
    25_000 + "]]></style>")),
    ("style-idents", "100 kB of one identifier with escapes", lambda: svg("<style>" + "\\61 " *
    25_000 + "</style>")),
    ("style-u-plus", "100 kB of u+?", lambda: svg("<style>a{unicode-range:" + "u+?" * 30_000 +
    "}</style>")),
    ("style-attr-many", "30,000 style attributes of 10 declarations", lambda: svg('<rect style="' +
    "fill:#123;" * 10 + '"/>' * 1 + "<rect style='fill:red;fill:red;fill:red'/>" * 30_000)),
    ("attr-url-open", "a fill of 100 kB of url(#", lambda: svg('<rect fill="' + "url(#" * 20_000 +
    '"/>')),
    ("attr-semicolons", "a style attribute of 200 kB of ;", lambda: svg('<rect style="' + ";" *
    200_000 + '"/>')),
    ("attr-values", "an animation of 100,000 values", lambda: svg(
    '<animate attributeName="x" dur="1s" values="' + "1;" * 100_000 + '"/>')),
    ("comments-100000", "100,000 comments", lambda: svg("<!---->" * 100_000)),
    ("comment-4mb", "one comment of 4 MB", lambda: svg("<!--" + "x" * 4 * MB + "-->")),
    ("cdata-brackets", "200 kB of ]] in CDATA", lambda: svg("<desc><![CDATA[" + "]]" * 100_000 +
    "]]></desc>")),
    ("pi-50000", "50,000 instructions", lambda: svg("<?a b?>" * 50_000)),
    ("entities-numeric", "100,000 &#65;", lambda: svg("<desc>" + "&#65;" * 100_000 + "</desc>")),
    ("entities-long-number", "a number of 100,000 zeros in one entity", lambda: svg("<desc>&#" + "0"
    * 100_000 + "65;</desc>")),
    ("text-chunks", "1,000,000 lines of text (one call each in expat)", lambda: svg("<desc>" + "\n"
    * MB + "</desc>")),
    ("tail-spaces", "300 kB of spaces after the end", lambda: svg() + " " * 300_000),
    ("lt-in-text", "100 kB of < that open nothing", lambda: svg("<desc>" + "< " * 50_000 +
    "</desc>")),
    ("open-tags", "100 kB of <a b never closed", lambda: svg("<a b " * 20_000)),
    ("ns-flood", "20,000 elements, each with its own namespace", lambda: svg("".join(
    f'<a{i}:b xmlns:a{i}="urn:x{i}"/>' for i in range(20_000)))),
    ("ns-same-element", "20,000 namespaces on one element", lambda: svg("<g " + " ".join(
    f'xmlns:a{i}="urn:x{i}"' for i in range(20_000)) + "/>")),
    ("ns-huge", "a namespace of 1 MB on the root and 3,000 elements in it (each name copied: 3 GB)",
    lambda: svg("<q:g/>" * 3000, f' xmlns:q="urn:{"n" * MB}"')),
    ("attr-ns-huge", "the same for attributes", lambda: svg('<g q:a="1"/>' * 3000,
    f' xmlns:q="urn:{"n" * MB}"')),
    ("name-huge", "an element's name of 1 MB, 5 times", lambda: svg(f"<{'n' * MB}/>" * 5)),
    ("hash-collide", "50,000 attributes in 50,000 elements with names alike", lambda: svg("".join(
    f'<g data-{i:x}="{i}"/>' for i in range(50_000)))),
    ("class-flood", "100,000 classes", lambda: svg('<g class="' + "a " * 100_000 + '"/>')),
    ("viewbox-flood", "a viewBox of 100,000 numbers", lambda: svg(box='viewBox="' + "0 " * 100_000 +
    '"')),
    ("points-flood", "a polygon of 200,000 points", lambda: svg('<polygon points="' + "1,1 " *
    200_000 + '"/>')),
    ("title-200kb", "a title of 200 kB", lambda: svg(title="<title>" + "a" * 200_000 + "</title>")),
    ("size-3mb", "3 MB of honest shapes", lambda: svg(
    '<path d="M1 2L3 4" stroke="#123456" fill="none"/>\n' * 60_000)),
    ("size-15mb", "15 MB of honest shapes", lambda: svg(
    '<path d="M1 2L3 4" stroke="#123456" fill="none"/>\n' * 300_000)),
    ("digits-in-width", "a width of 5,000 digits", lambda: svg(
    f'<rect width="{"9" * 5000}" height="9"/>')),
    ("width-superscript", "a width of ² and of Arabic digits", lambda: svg(
    '<rect width="²" height="٣"/>', ' width="١٢" height="²"')),
    )
for _n, _what, _d in TEXTS_THAT_SLOW_1:
    drawing("slow-" + _n, _what, "harmless", _d,
        "take-in, check or site over 5 s or 200 MiB; a traceback; " + FREEZE)
