"""YAML that has nothing odd in it, read in fewer steps: the plain data, or word that it is odd.

It keeps no places and explains nothing. Whatever `yaml_reader` would find fault with is `ODD`
here, and is read again there; on all other texts the two give the same data.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Final

import yaml

from build_tools.source.scalars import MOST_DEPTH, MOST_ENTRIES, WORDS, number, plain_letters
from build_tools.source.text import HIDDEN

ODD: Final = object()
"""What is given for a text that has to be read with care."""

_Next = Callable[[], Any]
_Scalar, _Alias = yaml.ScalarEvent, yaml.AliasEvent
_Map, _MapEnd = yaml.MappingStartEvent, yaml.MappingEndEvent
_List, _ListEnd = yaml.SequenceStartEvent, yaml.SequenceEndEvent
_MAY_START_A_NUMBER = frozenset("+-.0123456789")


class _Odd(Exception):  # noqa: N818 - it stops the reading and never leaves this module
    pass


def read_quickly(text: str) -> Any:
    """The plain data of one document, or `ODD`."""
    following: _Next = yaml.CLoader(text).get_event
    try:
        following()  # the start of the stream
        if type(following()) is not yaml.DocumentStartEvent:
            return None  # not even one document
        data = _value(following(), following, 1)
        following()  # the end of the document
        return data if type(following()) is yaml.StreamEndEvent else ODD
    except (_Odd, yaml.YAMLError):
        return ODD


def _value(event: Any, following: _Next, depth: int) -> Any:
    kind = type(event)
    if kind is _Alias or event.anchor is not None or event.tag is not None:
        raise _Odd
    if kind is _Scalar:
        return _scalar(event.value, event.style)
    if depth > MOST_DEPTH:
        raise _Odd
    return _map(following, depth + 1) if kind is _Map else _list(following, depth + 1)


def _map(following: _Next, depth: int) -> dict[str, Any]:
    held: dict[str, Any] = {}
    while type(name := following()) is _Scalar:
        field = plain_letters(name.value)
        if name.anchor is not None or name.tag is not None or field in held:
            raise _Odd
        if name.style == '"' and HIDDEN.search(field):
            raise _Odd
        event = following()
        # most values are plain text, which is taken here without another call
        if type(event) is _Scalar and event.anchor is None and event.tag is None:
            held[field] = _scalar(event.value, event.style)
        else:
            held[field] = _value(event, following, depth)
    if type(name) is not _MapEnd or len(held) > MOST_ENTRIES:
        raise _Odd
    return held


def _list(following: _Next, depth: int) -> list[Any]:
    held: list[Any] = []
    while type(event := following()) is not _ListEnd:
        held.append(_value(event, following, depth))
        if len(held) > MOST_ENTRIES:
            raise _Odd
    return held


def _scalar(text: str, style: str | None) -> str | int | float | bool | None:
    if style:
        if style == '"' and HIDDEN.search(text):
            raise _Odd
        return plain_letters(text)
    if text in WORDS:
        return WORDS[text]
    if text[0] in _MAY_START_A_NUMBER:
        value = number(text)
        if value is None:
            raise _Odd
        return value
    return plain_letters(text)
