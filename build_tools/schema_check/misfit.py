"""One thing a validator complains of, in the few terms the wording needs."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from build_tools.problem import FieldPath

if TYPE_CHECKING:
    from jsonschema.exceptions import ValidationError


@dataclass(frozen=True, slots=True)
class Misfit:
    """`value` at `path` does not fit `keyword`, whose setting is `bound`, in `schema`."""

    keyword: str
    bound: Any
    value: Any
    schema: Mapping[str, Any]
    path: FieldPath
    is_name: bool
    """Whether it is the name of a field that does not fit, and not its value."""


def as_misfit(error: ValidationError) -> Misfit:
    """The validator's `error`, told apart from the validator."""
    schema: Any = error.schema
    return Misfit(
        keyword=str(error.validator),
        bound=error.validator_value,
        value=error.instance,
        schema=schema if isinstance(schema, Mapping) else {},
        path=tuple(error.absolute_path),
        is_name="propertyNames" in error.absolute_schema_path,
    )
