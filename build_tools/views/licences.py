"""Which licence may stand inside which: what a part asks of those who share the whole.

Creative Commons, licence compatibility chart for new works made from others; Open Government
Licence v3.0, "compatible with the Creative Commons Attribution License 4.0".
"""

from __future__ import annotations

_CREDIT = ("CC-BY-4.0", "OGL-UK-3.0")
_NOT_SOLD = ("CC-BY-NC-4.0", "CC-BY-NC-SA-4.0")
_ALL = ("CC0-1.0", *_CREDIT, "CC-BY-SA-4.0", *_NOT_SOLD)

_WHOLES: dict[str, tuple[str, ...]] = {
    "CC0-1.0": _ALL,
    "CC-BY-4.0": _ALL[1:],
    "OGL-UK-3.0": _ALL[1:],
    "CC-BY-SA-4.0": ("CC-BY-SA-4.0",),
    "CC-BY-NC-4.0": _NOT_SOLD,
    "CC-BY-NC-SA-4.0": ("CC-BY-NC-SA-4.0",),
}
"""For each licence of a part, or of a unit adapted, the licences that the whole may have."""


def may_hold(whole: str, part: str) -> bool:
    """Whether a unit shared under `whole` may hold, or be adapted from, a work under `part`."""
    return whole in _WHOLES[part]


def wholes_for(part: str) -> tuple[str, ...]:
    """The licences that something made with a work under `part` may be shared under."""
    return _WHOLES[part]


def asks(whole: str, part: str) -> str:
    """What `part` asks and `whole` does not, to be read after the words "which asks"."""
    if "-NC" in part and "-NC" not in whole:
        return "that it is not used to make money"
    if "-SA" in part:
        return f"that what is made with it is shared as {part} too"
    return "for a credit"
