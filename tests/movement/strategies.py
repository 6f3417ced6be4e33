"""Random motifs, developments and passages, and a dance made of given parts."""

from __future__ import annotations

import json
from collections.abc import Mapping
from fractions import Fraction
from pathlib import Path
from typing import Any

from hypothesis import strategies as st

from build_tools.model.build_dance import ACTION_KINDS
from build_tools.model.dance import (
    Action,
    Addition,
    Dance,
    Development,
    Motif,
    Passage,
    Section,
    Sound,
    Standing,
    Transition,
)
from build_tools.movement.devices import DEVICES

PUBLISHED: dict[str, Any] = json.loads(
    Path(__file__).with_name("published.json").read_text(encoding="utf-8")
)
LEVELS = ("low", "middle", "high", "low to high", "high to low", "middle to high")
SIZES = ("small", "big", "small to big", "big to small")
SOUND = Sound("drum", "a beat", "dancers follow the sound")
HERE = Standing("scattered", "front", "own space")

counts = st.fractions(min_value=Fraction(1, 4), max_value=16, max_denominator=4)
tempi = st.integers(min_value=30, max_value=240)


def _maybe(*values: str) -> st.SearchStrategy[str | None]:
    return st.sampled_from((None, *values))


actions = st.builds(
    Action,
    kind=st.sampled_from(ACTION_KINDS),
    counts=counts,
    level=_maybe(*LEVELS),
    direction=_maybe("forwards", "backwards", "sideways"),
    side=_maybe("left", "right"),
    facing=_maybe("front", "left", "right", "partner"),
    size=_maybe(*SIZES),
    dynamics=st.sampled_from(((), ("strong",), ("float",))),
)
motifs = st.lists(actions, min_size=1, max_size=8).map(tuple)
_numbers = st.lists(st.integers(1, 9), max_size=5, unique=True).map(tuple)
developments = st.builds(
    Development,
    name=st.just("changed"),
    of=st.just("motif"),
    device=st.sampled_from(DEVICES),
    only=_numbers,
    choice=_maybe("a-choice"),
    times=st.sampled_from((None, 2, 3)),
    counts=st.lists(counts, max_size=8).map(tuple),
    size=_maybe(*SIZES),
    level=_maybe(*LEVELS),
    direction=_maybe("up"),
    facing=_maybe("back"),
    pathway=_maybe("curved"),
    dynamics=st.sampled_from(((), ("light",))),
    body_part=_maybe("elbows"),
    order=_numbers,
    replaced=st.sampled_from((None, 1, 4, 9)),
    replacement=actions,
    left_out=_numbers,
    added=st.lists(st.builds(Addition, st.integers(0, 9), actions), max_size=3).map(tuple),
    kept=st.sampled_from((None, (1, 1), (1, 3), (2, 4), (4, 2))),
    joined_to=_maybe("other"),
    formation=_maybe("circle"),
    dancers=_maybe("pairs"),
    relationship=_maybe("mirror"),
)
FITS = (
    "unison",
    "canon",
    "canon in turn",
    "canon together",
    "canon to one ending",
    "question and answer",
    "side by side",
)
NAMES = ("one", "two", "three")
passages = st.builds(
    Passage,
    what=st.lists(st.sampled_from(NAMES), min_size=1, max_size=4).map(tuple),
    fit=st.sampled_from(FITS),
    times=st.integers(1, 3),
    parts=st.sampled_from((None, 2, 3, 4)),
    after=st.none() | counts,
)
lengths = st.fixed_dictionaries(dict.fromkeys(NAMES, counts))


def section(letter: str, length: int | None, *danced: Passage) -> Section:
    """A section of `length` counts, or one without counts."""
    return Section(
        letter=letter,
        idea="an idea",
        counts=None if length is None else Fraction(length),
        seconds=None,
        ends_on=None,
        improvised_from=None,
        improvised_rules=(),
        start=HERE,
        end=HERE,
        danced=danced,
        sound=SOUND,
    )


def dance(
    form: str,
    sections: list[Section],
    *,
    transitions: tuple[Transition, ...] = (),
    tempo: int | None = None,
    motifs: Mapping[str, tuple[Action, ...]] | None = None,
    developments: tuple[Development, ...] = (),
) -> Dance:
    """A dance of these parts."""
    return Dance(
        form=tuple(form),
        order_choice=None,
        tempo=tempo,
        phrase=8,
        front="one wall",
        sound=SOUND,
        sections={s.letter: s for s in sections},
        motifs={n: Motif(n, "pupils", "an idea", a) for n, a in (motifs or {}).items()},
        developments={d.name: d for d in developments},
        transitions=transitions,
        choices={},
        ending=(),
    )
