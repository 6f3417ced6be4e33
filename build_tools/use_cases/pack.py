"""Packing a unit as one file for another school: judged, made, and read as a stranger would."""

from __future__ import annotations

from pathlib import Path

from build_tools.building.pack import PackFile, made_pack
from build_tools.disk.sure_files import write_whole
from build_tools.model.build_bank import build_bank
from build_tools.packs.reading.bag_check import payload_of
from build_tools.packs.reading.contents import contents_of
from build_tools.packs.reading.refused_error import RefusedError
from build_tools.packs.reading.unzipping import unzipped
from build_tools.pictures.trouble import PictureError
from build_tools.rules.catalogue import all_rules
from build_tools.source.front_matter import read_strictly
from build_tools.use_cases.finished_unit import NotMade, finished_unit


def pack(content: Path, slug: str) -> PackFile | NotMade:
    """The pack of the unit `slug` in the folder `content`, judged by all that needs no other unit.

    Its bytes depend on the unit's own files, this software and the bank's list of words: not on the
    bank's name and topics, the other units, the machine or the day. Whoever takes it in with this
    software finds nothing in it to refuse.
    """
    found = finished_unit(content, slug)
    if isinstance(found, NotMade):
        return found
    rights = {rule.name for rule in all_rules() if rule.family == "rights"}
    unsettled = tuple(p for p in found.problems if p.rule in rights and p.severity != "note")
    if unsettled:
        return NotMade("its rights are not settled", unsettled)
    bank = build_bank(found.documents, [found.unit])
    try:
        made = made_pack(bank, found.unit, content / "units" / slug)
    except PictureError as error:
        return NotMade(str(error))
    return _as_taken_in(made)


def write_pack(made: PackFile, out: Path) -> Path:
    """Write the pack into the folder `out`; gives its place. Raises OSError, with nothing left."""
    out.mkdir(parents=True, exist_ok=True)
    write_whole(out / made.name, made.data)
    return out / made.name


def _as_taken_in(made: PackFile) -> PackFile | NotMade:
    """The same pack, or what whoever takes it in would say against it."""
    try:
        sent = contents_of(payload_of(unzipped(made.data)))
    except RefusedError as refused:
        return NotMade(f"whoever takes it in would refuse it: {refused}")
    for name, data in sent.unit_files.items():
        read = read_strictly(f"units/{sent.slug}/{name}", data) if name.endswith(".md") else ()
        if isinstance(read, list):
            return NotMade("whoever takes it in could not read it", tuple(read))
    return made
