"""Plain data written out as YAML that the bank's own reader reads back as it was."""

from __future__ import annotations

import json
import re
from typing import Any

_PLAIN_KEY = re.compile(r"[A-Za-z][A-Za-z0-9_-]*\Z")
_NOT_PLAIN = {"true", "false", "null", "yes", "no", "on", "off"}


def write_yaml(value: Any, indent: int = 0) -> str:
    """Plain data as block-style YAML, every text in double quotation marks."""
    margin = "  " * indent
    lines = []
    pairs = value.items() if isinstance(value, dict) else (("-", item) for item in value)
    for key, item in pairs:
        lead = "-" if isinstance(value, list) else f"{_key(key)}:"
        if isinstance(item, (dict, list)) and item:
            lines.append(f"{margin}{lead}\n{write_yaml(item, indent + 1)}")
        else:
            lines.append(f"{margin}{lead} {_scalar(item)}\n")
    return "".join(lines)


def _key(key: str) -> str:
    plain = _PLAIN_KEY.match(key) and key.lower() not in _NOT_PLAIN
    return key if plain else json.dumps(key, ensure_ascii=False)


def _scalar(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False)
