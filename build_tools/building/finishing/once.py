"""What a page shows several times stands in it once: pictures, and how their strokes are drawn.

A picture that comes again shows the first one's shapes (`use`, SVG 2), which every browser does
within a page; from one page to another it is forbidden where pages are opened from a folder. What
is shown again is styled as if it stood in nothing but its class `shapes` (the use-element shadow
tree), so the rules for what stands in a drawing name that class too. What strokes and words of
pictures have in common is a class, whose rules (`rules`) stand in the style that every page loads;
they give way to any other rule, as the attributes in their place would.
"""

from __future__ import annotations

import re
from collections import Counter

_SVG = re.compile(r"<svg\b|</svg>")
_HEAD = re.compile(r"<svg\b[^>]*>(?:<title>[^<]*</title>)?")
_END = "</svg>"
_WORTH = 60
"""So many letters of shapes are worth a name and a way to it."""
_RUNS = (
    ' class="box" fill="currentColor" fill-opacity="0.1" stroke="currentColor" stroke-width="4"'
    ' stroke-linejoin="round"',
    ' class="box" fill="currentColor" fill-opacity="0.1" stroke="currentColor" stroke-width="1.5"',
    ' class="box" fill-opacity="0.1" stroke="currentColor" stroke-width="1.8"',
    ' class="open-box" fill="none" fill-opacity="0" stroke="currentColor" stroke-width="4"'
    ' stroke-linejoin="round" stroke-dasharray="12 8"',
    ' class="open-box" fill-opacity="0" stroke="currentColor" stroke-width="1.8"'
    ' stroke-dasharray="5 3"',
    ' fill="none" stroke="currentColor" stroke-width="0.75" class="rule" stroke-dasharray="1 4"',
    ' fill="none" stroke="currentColor" stroke-width="2" class="rule"',
    ' fill="none" stroke="currentColor" stroke-width="1.6"',
    ' fill="none" stroke="currentColor" stroke-width="1.5"',
    ' fill="none" stroke="currentColor" stroke-width="2"',
    ' fill="none" stroke="currentColor" stroke-width="1"',
    ' font-size="46" text-anchor="middle" font-weight="700"',
    ' font-size="42" class="quiet" text-anchor="middle"',
    ' font-size="14" text-anchor="middle" font-weight="700"',
    ' font-size="13" class="quiet" text-anchor="middle"',
    ' font-size="13" class="quiet" text-anchor="end"',
    ' font-size="13" class="quiet"',
)
"""How strokes and words are drawn most often, as `views/diagrams` writes it."""
_EVERY = ' fill="currentColor" stroke-linecap="round" stroke-linejoin="round"'
"""What every drawing says of itself."""
_DRAWING = re.compile(rf'(<svg [^>]*class="drawing [^"]*"){_EVERY}')
_ATTRIBUTE = re.compile(r' ([\w-]+)="([^"]*)"')
_LENGTHS = ("font-size",)
_WHOLE = r"(?! class=)(?=[ />])"
_RUN = re.compile("|".join(f"{re.escape(run)}{_WHOLE}" for run in sorted(_RUNS, key=len)[::-1]))
_NAMES = {run: f"k{n}" for n, run in enumerate(_RUNS)}


def once(html: str) -> str:
    """The page `html` with what it repeats standing once; it looks the same."""
    return _classes(_pictures(html))


def rules() -> str:
    """The style of the classes; it has to come before every other rule."""
    named = (("drawing", _EVERY), *((name, run) for run, name in _NAMES.items()))
    return "".join(f":where(.{name}){{{_style(run)}}}" for name, run in named)


def _style(run: str) -> str:
    said = [(name, value) for name, value in _ATTRIBUTE.findall(run) if name != "class"]
    return ";".join(f"{n}:{value}{'px' if n in _LENGTHS else ''}" for n, value in said)


def _classes(html: str) -> str:
    def shorter(run: re.Match[str]) -> str:
        own = dict(_ATTRIBUTE.findall(run[0])).get("class", "")
        return f' class="{own + " " if own else ""}{_NAMES[run[0]]}"'

    return _RUN.sub(shorter, _DRAWING.sub(r"\1", html))


def _pictures(html: str) -> str:
    found = _whole_pictures(html)
    times = Counter(html[start:end] for start, end in found)
    names: dict[str, str] = {}
    pieces, at = [], 0
    for start, end in found:
        whole = html[start:end]
        head = _head(whole)
        shapes = whole[len(head) : -len(_END)]
        if times[whole] < 2 or len(shapes) < _WORTH:
            continue
        pieces.append(html[at:start])
        at = end
        if whole in names:
            pieces.append(f'{head}<use href="#{names[whole]}"/>{_END}')
        else:
            names[whole] = f"drawn-{len(names) + 1}"
            pieces.append(f'{head}<g class="shapes" id="{names[whole]}">{shapes}</g>{_END}')
    return "".join((*pieces, html[at:]))


def _head(whole: str) -> str:
    found = _HEAD.match(whole)
    return found[0] if found else ""


def _whole_pictures(html: str) -> list[tuple[int, int]]:
    """Where each picture begins and ends; one may hold others."""
    found, depth, start = [], 0, 0
    for tag in _SVG.finditer(html):
        if tag[0] != _END:
            start = start if depth else tag.start()
            depth += 1
        else:
            depth -= 1
            if not depth:
                found.append((start, tag.end()))
    return found
