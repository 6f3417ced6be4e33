"""What is taken out of plain data: a field that is only in a schema yet is left there."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields
from typing import Any


def known(kind: type[Any], data: Mapping[str, Any]) -> dict[str, Any]:
    """Those entries of `data` that are fields of the dataclass `kind`."""
    return {field.name: data[field.name] for field in fields(kind) if field.name in data}


def texts(data: Mapping[str, Any]) -> dict[str, str]:
    """Those entries of `data` that are texts."""
    return {name: text for name, text in data.items() if isinstance(text, str)}
