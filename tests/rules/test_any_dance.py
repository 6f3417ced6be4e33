"""Whatever a unit says of its dance within the shape of its file: a problem, never a traceback.

Dances are made by slips in two sound units, one of them published: words of the lists put together
as nobody would, numbers left out or odd, names that fit or do not.
"""

from __future__ import annotations

import copy
from collections.abc import Mapping, Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from build_tools.checking.check_bank import check_read
from build_tools.schema_check.check import faults_of_shape
from build_tools.source.folder import UnitFolder, read_unit_folder
from tests.movement.strategies import FITS
from tests.rules.cases import BASE
from tests.support.banks import CONTENT

_UNITS = (
    (BASE, "paper-boats", "drift", "drift-slow"),
    (CONTENT, "kite-and-string", "kite", "kite-back"),
)
"""Where each lies, one of its motifs, and a development of that."""
_NAMES = (*["the motif"] * 5, *["the development"] * 3, "nobody")
"""The first two stand for those of the unit."""
_COUNTS = (1, 2, 4, 8, 64, "1/2", "1 1/2")
_DEVICES = (
    "repetition",
    "retrograde",
    "change of speed",
    "change of rhythm",
    "change of level",
    "change of direction",
    "change of dynamics",
    "mirror",
    "change of order",
    "replacing an action",
    "leaving out",
    "embellishment",
    "fragmentation",
    "accumulation",
    "combination",
    "change of formation",
    "change of number of dancers",
    "change of relationship",
    "own variation",
)
_LETTERS = ("A", "B", "A", "B", "A", "B", "D")


def _some(**fields: st.SearchStrategy[Any]) -> st.SearchStrategy[dict[str, Any]]:
    """Any of these fields, together or not."""
    return st.fixed_dictionaries({}, optional=fields)


_PASSAGES = st.lists(
    st.builds(
        lambda must, may: must | may,
        st.fixed_dictionaries(
            {
                "what": st.lists(st.sampled_from(_NAMES), min_size=1, max_size=3),
                "as": st.sampled_from(FITS),
            }
        ),
        _some(
            times=st.integers(1, 16),
            parts=st.integers(2, 8),
            after=st.sampled_from(_COUNTS),
            swap=st.booleans(),
            others=st.sampled_from(("hold", "watch", "echo", "frame")),
            roles=st.lists(st.sampled_from(("one", "two")), min_size=1, max_size=2, unique=True),
        ),
    ),
    min_size=1,
    max_size=3,
)
_DEVELOPMENTS = st.builds(
    lambda must, may: must | may,
    st.fixed_dictionaries(
        {"of": st.sampled_from(_NAMES), "device": st.sampled_from(_DEVICES)},
    ),
    _some(
        only=st.lists(st.integers(1, 12), min_size=1, max_size=3, unique=True),
        times=st.integers(2, 8),
        counts=st.lists(st.sampled_from(_COUNTS), min_size=1, max_size=4),
        order=st.lists(st.integers(1, 12), min_size=2, max_size=4, unique=True),
        keep=st.lists(st.integers(1, 12), min_size=2, max_size=2),
        leave_out=st.lists(st.integers(1, 12), min_size=1, max_size=3, unique=True),
        choice=st.sampled_from(("last-shape", "nothing")),
        level=st.sampled_from(("low", "medium", "high")),
        **{"and": st.sampled_from(_NAMES)},
    ),
)
_TRANSITIONS = st.lists(
    st.builds(
        lambda must, may: must | may,
        st.fixed_dictionaries(
            {
                "from": st.sampled_from((*_LETTERS, "any")),
                "to": st.sampled_from((*_LETTERS, "any")),
                "as": st.sampled_from(("move", "hold", "overlap", "cut", "straight on")),
                "how": st.just("Walk into your four"),
                "cue": st.just("The beat grows soft"),
            }
        ),
        _some(counts=st.sampled_from(_COUNTS)),
    ),
    min_size=1,
    max_size=4,
)
_FORMS = st.lists(st.sampled_from(_LETTERS), min_size=1, max_size=6).map(" ".join)


Slip = tuple[tuple[str, ...], Any]


@st.composite
def _slips(draw: st.DrawFn) -> tuple[Path, str, list[Slip]]:
    """A unit, one to three places of its file, and what stands there instead."""
    root, slug, motif, development = draw(st.sampled_from(_UNITS))
    own = {"the motif": motif, "the development": development}
    places: dict[tuple[str, ...], st.SearchStrategy[Any]] = {
        ("sections", "A", "danced"): _PASSAGES,
        ("sections", "B", "danced"): _PASSAGES,
        ("developments", development): _DEVELOPMENTS,
        ("transitions",): _TRANSITIONS,
        ("dance", "form"): _FORMS,
        ("dance", "tempo"): st.just(None),
        ("sections", "A", "counts"): st.sampled_from((1, 4, 32, None)),
    }
    chosen = draw(st.lists(st.sampled_from(list(places)), min_size=1, max_size=3, unique=True))
    return root, slug, [(place, _renamed(draw(places[place]), own)) for place in chosen]


def _renamed(value: Any, own: Mapping[str, str]) -> Any:
    """The value with the names of the unit's own motif and development."""
    if isinstance(value, dict):
        return {name: _renamed(one, own) for name, one in value.items()}
    if isinstance(value, list):
        return [_renamed(one, own) for one in value]
    return own.get(value, value) if isinstance(value, str) else value


def _with(root: Path, slug: str, slips: Sequence[Slip]) -> UnitFolder:
    folder = read_unit_folder(root, slug)
    assert folder.unit is not None
    data = copy.deepcopy(folder.unit.data)
    for place, value in slips:
        around = data
        for name in place[:-1]:
            around = around[name]
        if value is None:
            around.pop(place[-1], None)
        else:
            around[place[-1]] = value
    folder.unit = replace(folder.unit, data=data)
    return folder


@given(_slips())
def test_any_dance_is_judged(made: tuple[Path, str, list[Slip]]) -> None:
    folder = _with(*made)
    assert folder.unit is not None
    assume(not faults_of_shape(folder.unit, "unit"))
    assert check_read(made[1], folder, {}).unit is not None


@pytest.mark.parametrize("fit", [one for one in FITS if one != "unison"])
def test_what_the_parts_are_is_asked_at_its_line(fit: str) -> None:
    place = ("sections", "A", "danced")
    folder = _with(CONTENT, "kite-and-string", [(place, [{"what": ["kite"], "as": fit}])])
    found = check_read("kite-and-string", folder, {})
    (said,) = (one for one in found.problems if one.rule == "canon-not-spelt-out")
    assert said.severity == "error"
    assert f"{fit}" in said.message
    assert said.line > 80


def test_what_all_stands_on_is_not_allowed_nor_graded_down() -> None:
    """A page made of it would have nothing to say, so it stays an error, whatever a bank grades."""
    slips: list[Slip] = [
        (("sections", "A", "danced"), [{"what": ["kite"], "as": "canon"}]),
        (("allow",), {"canon-not-spelt-out": "It is danced as it comes."}),
    ]
    folder = _with(CONTENT, "kite-and-string", slips)
    found = check_read("kite-and-string", folder, {"canon-not-spelt-out": "note"})
    assert ("canon-not-spelt-out", "error") in {(p.rule, p.severity) for p in found.problems}
    assert not found.allowances
