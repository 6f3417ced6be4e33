"""How strokes and words of pictures are drawn most often, said once: by a class of the look.

The rules stand in the style that every page loads; they give way to any other rule, as the
attributes in their place would.
"""

from __future__ import annotations

import re
from functools import lru_cache

_COMMON = (
    'fill="currentColor" fill-opacity="0.1" stroke="currentColor" stroke-width="4"'
    ' stroke-linejoin="round"',
    'fill="currentColor" fill-opacity="0.1" stroke="currentColor" stroke-width="1.5"',
    'fill-opacity="0.1" stroke="currentColor" stroke-width="1.8"',
    'fill="none" fill-opacity="0" stroke="currentColor" stroke-width="4"'
    ' stroke-linejoin="round" stroke-dasharray="12 8"',
    'fill-opacity="0" stroke="currentColor" stroke-width="1.8" stroke-dasharray="5 3"',
    'fill="none" stroke="currentColor" stroke-width="0.75" stroke-dasharray="1 4"',
    'fill="none" stroke="currentColor" stroke-width="2"',
    'fill="none" stroke="currentColor" stroke-width="1.6"',
    'fill="none" stroke="currentColor" stroke-width="1.5"',
    'fill="none" stroke="currentColor" stroke-width="1"',
    'font-size="46" text-anchor="middle" font-weight="700"',
    'font-size="42" text-anchor="middle"',
    'font-size="14" text-anchor="middle" font-weight="700"',
    'font-size="13" text-anchor="middle"',
    'font-size="13" text-anchor="end"',
    'font-size="13"',
    'fill="none" stroke="currentColor" stroke-width="6.5"',
    'font-size="38" text-anchor="middle"',
    'stroke="currentColor" stroke-width="1.6" fill-opacity="0.12"',
    'stroke="currentColor" stroke-width="1.6" fill="none" stroke-dasharray="5 3"',
    'stroke="currentColor" stroke-width="1.5"',
    'fill-opacity="0.1" stroke="currentColor" stroke-width="4"',
    'fill="none" stroke="currentColor" stroke-width="4"',
    'font-size="40" text-anchor="middle" font-weight="700"',
    'opacity="0.5"',
    'fill="none" stroke="currentColor" stroke-width="1" stroke-dasharray="2 4"',
    'stroke-width="3.5"',
    'stroke-width="2"',
    'stroke-width="3"',
    'stroke-width="5.5"',
    'fill-opacity="0" stroke="currentColor" stroke-width="4" stroke-dasharray="12 8"',
    'opacity="0.3"',
    'font-size="13" text-anchor="middle" font-weight="700"',
    'fill="none" stroke="currentColor" stroke-width="7" stroke-linecap="round"',
    'fill="none" stroke="currentColor" stroke-width="4.4" stroke-linecap="round"',
    'fill="none" stroke="currentColor" stroke-width="20"',
    'fill="none" stroke="currentColor" stroke-width="14.8"',
    'fill="none" stroke="currentColor" stroke-width="18"',
    'fill="none" stroke="currentColor" stroke-width="14.8" opacity="0.2"',
    'fill="none" stroke="currentColor" stroke-width="18" opacity="0.2"',
    'fill="none" stroke="currentColor"',
    'font-size="17" text-anchor="middle" font-weight="700"',
    'font-size="16" font-weight="700" text-anchor="middle"',
    'fill="none" stroke="currentColor" stroke-width="1.1" stroke-linecap="round"',
    'stroke="currentColor" stroke-width="1"',
    'fill="none" stroke="currentColor" stroke-width="13"',
    'stroke="currentColor" stroke-width="1.5" fill="#fff"',
    'stroke-width="9.5"',
    'fill="currentColor" stroke-width="8"',
    'stroke-width="16.6"',
    'font-size="40" font-weight="700" text-anchor="middle" fill="currentColor" stroke="none"',
    'stroke-width="1" opacity="0.5"',
    'stroke="#fff" stroke-width="9.5"',
)
"""As `views/diagrams` writes it; the place in the list is the number in the class's name."""
_EVERY = ' fill="currentColor" stroke-linecap="round" stroke-linejoin="round"'
"""What every drawing says of itself."""
_DRAWING = re.compile(rf'(<svg [^>]*class="drawing [^"]*"){_EVERY}')
_ATTRIBUTE = re.compile(r' ([\w-]+)="([^"]*)"')
_LENGTHS = ("font-size",)
_SHAPE = re.compile(r"<(?:path|g|text|use|rect)(?= )([^>]*?)(/?)>")
_SAID = frozenset(name for run in _COMMON for name, _value in _ATTRIBUTE.findall(f" {run}"))
_NAMES = {
    frozenset(_ATTRIBUTE.findall(f" {run}")): f"k{n}" for n, run in enumerate(_COMMON, start=1)
}


def with_stroke_classes(html: str) -> str:
    """The page `html` with what its pictures say most often as classes; it looks the same."""
    return _SHAPE.sub(_shorter, _DRAWING.sub(r"\1", html))


def stroke_rules() -> str:
    """The style of the classes; it has to come before every other rule."""
    named = (("drawing", _ATTRIBUTE.findall(_EVERY)), *((n, run) for run, n in _NAMES.items()))
    return "".join(f":where(.{name}){{{_style(dict(run))}}}" for name, run in named)


def _style(said: dict[str, str]) -> str:
    return ";".join(f"{n}:{v}{'px' if n in _LENGTHS else ''}" for n, v in sorted(said.items()))


def _shorter(tag: re.Match[str]) -> str:
    return _shortened(tag[0])


@lru_cache(maxsize=8192)
def _shortened(tag: str) -> str:
    written = _ATTRIBUTE.findall(tag)
    said = frozenset(one for one in written if one[0] in _SAID)
    name = _NAMES.get(said)
    if name is None:
        return tag
    own = dict(written).get("class", "")
    for one, value in said:
        tag = tag.replace(f' {one}="{value}"', "", 1)
    if own:
        return tag.replace(f' class="{own}"', f' class="{own} {name}"', 1)
    end = len(tag) - (2 if tag.endswith("/>") else 1)
    return f'{tag[:end]} class="{name}"{tag[end:]}'
