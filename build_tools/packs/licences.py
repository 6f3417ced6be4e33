"""The words of the licences that a unit may have, bundled so that no network is asked."""

from __future__ import annotations

from pathlib import Path

_TEXTS = Path(__file__).parent / "licence_texts"
_ADDRESSES = {
    "CC0-1.0": "https://creativecommons.org/publicdomain/zero/1.0/",
    "OGL-UK-3.0": "https://www.nationalarchives.gov.uk/doc/open-government-licence/version/3/",
}


def licence_text(licence: str) -> str:
    """The whole text of a licence, by its SPDX id."""
    return (_TEXTS / f"{licence}.txt").read_text(encoding="utf-8")


def licence_address(licence: str) -> str:
    """Where a licence is published: what metadata names it by."""
    if licence in _ADDRESSES:
        return _ADDRESSES[licence]
    kind, _, version = licence.removeprefix("CC-").lower().rpartition("-")
    return f"https://creativecommons.org/licenses/{kind}/{version}/"
