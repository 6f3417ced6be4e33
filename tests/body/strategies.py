"""Actions of every kind, word, level, part, way and feel, and those of the published units."""

from __future__ import annotations

from fractions import Fraction
from functools import cache

from hypothesis import strategies as st

from build_tools.body.poses import BODIES
from build_tools.model.build_dance import ACTION_KINDS
from build_tools.model.dance import Action
from build_tools.movement.effort import EFFORT_ACTIONS
from tests.support.figure_sheet import danced

LEVELS = (
    *("low", "middle", "high", "low to middle", "low to high", "middle to low"),
    *("middle to high", "high to low", "high to middle"),
)
FEELS = ("strong", "light", "sudden", "sustained", "direct", "indirect", "free", "bound")
WORDS = (
    *("rock", "rush", "break", "sink", "open", "flick", "shut", "grip", "scuttle", "dodge"),
    *("snap", "hide", "burst", "settle", "float", "spin", "pop", "stick", "draw", "dip"),
    *("stretch", "pluck", "load", "knock", "beat", "rest", "clap", "wave", "point", "bow"),
    *("twist", "star", "tall", "balance", "skip", "hop", "gallop", "run", "tiptoe", "creep"),
    *("lean", "tight"),
    *("stamp", "crawl", "roll", "tuck", "rise", "swing", "ripple", "close", "leap", "zoom"),
)
PARTS = (
    *("hands", "one hand", "fingers", "arms", "elbows", "an elbow", "shoulders", "head"),
    *("one foot", "knees", "legs", "hips", "back", "chest", "whole body"),
)


def _maybe(*values: str) -> st.SearchStrategy[str | None]:
    return st.sampled_from((None, *values))


actions = st.builds(
    Action,
    kind=st.sampled_from(ACTION_KINDS),
    counts=st.fractions(Fraction(1, 2), 8, max_denominator=2),
    word=_maybe(*WORDS),
    also=st.sampled_from(((), (), ("turn",), ("travel",), ("jump",), ("gesture",))),
    level=_maybe(*LEVELS),
    direction=_maybe("forwards", "backwards", "sideways", "diagonal", "up", "down"),
    side=_maybe("left", "right"),
    pathway=_maybe("straight", "curved", "zigzag"),
    size=_maybe("small", "big", "small to big", "big to small"),
    body_part=_maybe(*PARTS),
    dynamics=st.lists(st.sampled_from((*FEELS, *EFFORT_ACTIONS)), max_size=2, unique=True).map(
        tuple
    ),
)
befores = st.none() | actions
bodies = st.sampled_from(BODIES)
parts = st.floats(0, 1)


@cache
def published() -> tuple[tuple[Action, Action | None], ...]:
    """Each action of the published units, with the one before it in its motif."""
    found = []
    for _, _, actions_ in danced():
        found += list(zip(actions_, (None, *actions_), strict=False))
    return tuple(dict.fromkeys(found))


joined = st.tuples(actions, befores) | st.deferred(lambda: st.sampled_from(published()))
