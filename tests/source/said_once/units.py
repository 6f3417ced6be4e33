"""Lessons and dances as they may be written, in full or short, sound or not."""

from __future__ import annotations

from typing import Any

from hypothesis import strategies as st

from tests.support.banks import ROOT

BASE = ROOT / "tests" / "rules" / "base" / "units" / "paper-boats"
LESSON = (BASE / "lesson-1.md").read_text(encoding="utf-8")


def with_lines(text: str, after: str, lines: str) -> str:
    """A file with lines put in below the one that ends in `after`."""
    assert text.count(f"{after}\n") == 1
    return text.replace(f"{after}\n", f"{after}\n{lines}\n")


def _both(one: dict[str, Any], other: dict[str, Any]) -> dict[str, Any]:
    return one | other


def _perhaps(**fields: st.SearchStrategy[Any]) -> st.SearchStrategy[dict[str, Any]]:
    return st.fixed_dictionaries({}, optional=fields)


minutes = st.integers(1, 20)
steps: st.SearchStrategy[dict[str, Any]] = st.builds(
    _both,
    st.fixed_dictionaries({"does": st.just("Walk"), "minutes": minutes}),
    _perhaps(
        phase=st.sampled_from(["warm-up", "recall", "explore", "make", "show", "cool-down"]),
        least=minutes,
        grouping=st.sampled_from(["alone", "pairs", "fours", "half class"]),
        intensity=st.sampled_from(["gentle", "steady", "vigorous"]),
        makes=st.just(["A"]),
        develops=st.just(["throw"]),
        joins=st.just(["A", "B"]),
        shows=st.just(["whole"]),
    ),
)
lessons: st.SearchStrategy[dict[str, Any]] = st.builds(
    _both,
    st.fixed_dictionaries({"steps": st.lists(steps, min_size=1, max_size=6)}),
    _perhaps(
        lesson=st.integers(1, 3),
        minutes=st.integers(10, 60),
        look_and_talk=_perhaps(who=st.sampled_from(["partner", "yourself", "half the class"])),
    ),
)
counts = st.one_of(st.integers(1, 16), st.sampled_from(["1/2", "1 1/2"]))
pieces = _perhaps(
    sound=st.sampled_from(["beat", "claps", "silence", "recording", "voice"]),
    by=st.sampled_from(["teacher", "class", "dancers"]),
    counts=counts,
    seconds=st.integers(5, 9),
)
standing = _perhaps(
    formation=st.sampled_from(["pairs", "line"]),
    facing=st.sampled_from(["front", "partner"]),
    place=st.sampled_from(["here", "there"]),
    apart=st.integers(1, 5),
)
sections = _perhaps(
    counts=st.integers(8, 48),
    groups=_perhaps(size=st.integers(1, 6), roles=st.just({"ones": [1], "twos": [2, 4]})),
    start=standing,
    end=standing,
    danced=st.lists(
        _perhaps(**{"what": st.just(["call"]), "as": st.sampled_from(["unison", "canon"])}),
        max_size=2,
    ),
    sound=_perhaps(follows=st.sampled_from(["dancers follow the sound", "other"])),
    heard=st.lists(pieces, max_size=3),
)
joins = _perhaps(
    **{
        "from": st.sampled_from(["A", "B"]),
        "to": st.sampled_from(["B", "A"]),
        "counts": counts,
        "heard": st.lists(pieces, max_size=2),
    }
)
units: st.SearchStrategy[dict[str, Any]] = st.fixed_dictionaries(
    {
        "dance": st.builds(
            _both,
            st.fixed_dictionaries({"form": st.sampled_from(["A", "A B", "A B A"])}),
            _perhaps(sound=_perhaps(follows=st.just("dancers follow each other"))),
        ),
        "sections": st.fixed_dictionaries({"A": sections, "B": sections}),
        "motifs": st.fixed_dictionaries(
            {"call": _perhaps(**{"from": st.sampled_from(["pupils", "teacher then pupils"])})}
        ),
        "transitions": st.lists(joins, max_size=2),
    }
)
