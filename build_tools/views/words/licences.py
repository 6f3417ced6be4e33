"""Which licence may stand inside which: what a part asks of those who share the whole.

Creative Commons, Frequently Asked Questions: the adapter's licence chart ("If I derive or adapt
material offered under a Creative Commons license, which CC license(s) can I use?") and the
collection chart ("... to a collection"); Open Government Licence v3.0, "compatible with the
Creative Commons Attribution License 4.0".
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.views.written.works import Written, works_written

_CREDIT = ("CC-BY-4.0", "OGL-UK-3.0")
_NOT_SOLD = ("CC-BY-NC-4.0", "CC-BY-NC-SA-4.0", "CC-BY-NC-ND-4.0")
LICENCES = ("CC0-1.0", *_CREDIT, "CC-BY-SA-4.0", "CC-BY-ND-4.0", *_NOT_SOLD)

_WHOLES: dict[str, tuple[str, ...]] = {
    "CC0-1.0": LICENCES,
    "CC-BY-4.0": LICENCES[1:],
    "OGL-UK-3.0": LICENCES[1:],
    "CC-BY-SA-4.0": ("CC-BY-SA-4.0",),
    "CC-BY-ND-4.0": (),
    "CC-BY-NC-4.0": _NOT_SOLD,
    "CC-BY-NC-SA-4.0": ("CC-BY-NC-SA-4.0",),
    "CC-BY-NC-ND-4.0": (),
}
"""For each licence of a unit adapted, the licences that the new unit may have."""


_ADDRESSES = {
    "CC0-1.0": "https://creativecommons.org/publicdomain/zero/1.0/",
    "OGL-UK-3.0": "https://www.nationalarchives.gov.uk/doc/open-government-licence/version/3/",
}


def licence_address(licence: str) -> str:
    """Where a licence is published: what metadata names it by."""
    if licence in _ADDRESSES:
        return _ADDRESSES[licence]
    kind, _dash, version = licence.removeprefix("CC-").lower().rpartition("-")
    return f"https://creativecommons.org/licenses/{kind}/{version}/"


def licence_in_words(licence: str) -> str:
    """A licence's name with the address of its words."""
    address = licence_address(licence).removeprefix("https://").removeprefix("www.").rstrip("/")
    return f"{licence_name(licence)} ({address})"


def licence_name(licence: str) -> str:
    """A licence's name as people say it: CC BY-SA 4.0."""
    kind, _dash, version = licence.rpartition("-")
    name = _("Open Government Licence") if licence == "OGL-UK-3.0" else kind.replace("CC-", "CC ")
    return f"{name} {version}"


def wholes_for(part: str) -> tuple[str, ...]:
    """The licences that something made from a work under `part` may be shared under."""
    return _WHOLES[part]


def may_be_changed(licence: str) -> bool:
    """Whether a changed copy of a work under `licence` may be shared at all."""
    return bool(_WHOLES[licence])


def may_adapt(whole: str, part: str) -> bool:
    """Whether a unit shared under `whole` may be adapted from a work under `part`."""
    return whole in _WHOLES[part]


def may_hold(whole: str, part: str, changed: bool) -> bool:
    """Whether a unit shared under `whole` may hold a work under `part`, as it is or `changed`.

    A work that may not be changed can stand in a collection as it is, and where it may not be used
    for money, the whole may not be either. All others are held as if the unit were made from them.
    """
    if may_be_changed(part):
        return may_adapt(whole, part)
    return not changed and ("-NC" in whole or "-NC" not in part)


def narrower_items(unit: Unit, licence: str) -> Iterator[Written]:
    """What travels with `unit` and cannot stand in it under `licence`, with its places.

    An item with neither file nor words is only named, and its licence binds nobody here.
    """
    for one in works_written(unit):
        item = one.work
        travels = item.file or item.text_version
        if travels and not may_hold(licence, item.licence, changed=bool(item.changes)):
            yield one


def asks(whole: str, part: str) -> str:
    """What `part` asks and `whole` does not, to be read after the words "which asks"."""
    if "-NC" in part and "-NC" not in whole:
        return "that it is not used to make money"
    if "-ND" in part:
        return "that no changed copy of it is shared"
    if "-SA" in part:
        return f"that what is made with it is shared as {part} too"
    return "for a credit"
