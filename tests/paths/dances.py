"""Small dances for the paths, written as units write them."""

from __future__ import annotations

from typing import Any

from build_tools.model.build_dance import build_dance
from build_tools.model.dance import Dance

Data = dict[str, Any]
DRUM = {"kind": "drum", "what": "A steady beat", "follows": "dancers follow the sound"}


def standing(formation: str, facing: str = "front", **more: Any) -> Data:
    """How dancers stand, with anything besides."""
    return {"formation": formation, "facing": facing, "place": "In the hall", **more}


def section(counts: int | None, start: Data, danced: list[Data], **more: Any) -> Data:
    """A section of counts, or one that is made up where there are none; it ends as it starts."""
    made = {"idea": "an idea", "start": start, "end": start, "danced": danced, **more}
    if counts is None:
        rules = {
            "start": "On the roll.",
            "rules": ["Go."],
            "seconds": "20 to 30",
            "ends_on": "A tap",
        }
        return {"improvised": rules, **made}
    return {"counts": counts, **made}


def dance_of(
    form: str,
    sections: Data,
    motifs: Data,
    *,
    transitions: list[Data] | None = None,
    tempo: int | None = 120,
    front: str = "One long wall, where watchers sit.",
    developments: Data | None = None,
    sides: Data | None = None,
) -> Dance:
    """The dance of these parts; `motifs` are lists of actions by name."""
    dance: Data = {"form": form, "front": front, "sound": DRUM}
    if tempo is not None:
        dance["tempo"] = tempo
    if sides is not None:
        dance["sides"] = sides
    joins = [{"how": "Go.", "cue": "A tap", **one} for one in transitions or []]
    return build_dance(
        {
            "dance": dance,
            "sections": sections,
            "motifs": {
                n: {"from": "teacher", "idea": "one", "actions": a} for n, a in motifs.items()
            },
            "developments": developments or {},
            "transitions": joins,
            "ending": [{"who": "everyone", "does": "Hold."}],
        }
    )


def pool() -> Dance:
    """Fours and pairs, a swap, an improvised part and a way home, all said in fields."""
    fours = {"size": 4, "roles": {"first": [1], "second": [2], "third": [3], "fourth": [4]}}
    pairs = {"size": 2, "roles": {"ones": [1], "twos": [2]}}
    water = {"size": 2, "roles": {"water": [1], "holders": [2]}}
    own = standing("scattered", within="square", apart=6, spot="first place")
    ring = standing("small groups", "centre", within="circle", apart=3, groups_apart=4)
    facing = standing("pairs", "partner", within="face to face", apart=4, groups_apart=5)
    rush = {"travel": 4, "direction": "sideways", "towards": "beach", "step": "side-step"}
    back = {"travel": 4, "direction": "sideways", "towards": "sea", "step": "side-step"}
    return dance_of(
        "A B C D A",
        {
            "A": section(
                16,
                own,
                [{"what": ["tide"], "as": "unison"}, {"what": ["home"], "as": "unison"}],
                groups=fours,
            ),
            "B": section(
                20,
                ring,
                [{"what": ["open"], "as": "canon", "parts": 4, "after": 4,
                  "roles": ["first", "second", "third", "fourth"]}],
                groups=fours,
            ),
            "C": section(
                32,
                facing,
                [{"what": ["crab", "answer"], "as": "question and answer",
                  "roles": ["ones", "twos"], "swap": True}],
                groups=pairs,
            ),
            "D": section(None, facing, [], groups=water, end=standing("scattered", "mixed")),
        },
        {
            "tide": [{"transfer": 2, "level": "low to middle"}, rush, {"jump": 2, "level": "high"}],
            "home": [{"transfer": 2, "level": "high to low"}, back, {"stillness": 2}],
            "open": [
                {"gesture": 2, "level": "low to high"},
                {"turn": 2, "turn_by": "whole"},
                {"travel": 2, "towards": "centre", "size": "small"},
                {"travel": 2, "direction": "backwards", "size": "small", "steps": 2},
            ],
            "crab": [
                {"travel": 4, "direction": "sideways", "side": "right", "step": "side-step"},
                {"stillness": 4, "level": "low"},
            ],
        },
        developments={"answer": {"of": "crab", "device": "mirror"}},
        transitions=[
            {"from": "A", "to": "B", "as": "move", "counts": 8},
            {"from": "B", "to": "C", "as": "move", "counts": 8},
            {"from": "C", "to": "D", "as": "hold", "counts": 8},
            {"from": "D", "to": "A", "as": "move", "counts": 16},
        ],
        sides={"left": "sea", "right": "beach"},
    )  # fmt: skip


def loom() -> Dance:
    """Rows in two columns: a canon along the row, a step out and home."""
    row = {"size": 4, "roles": {"odds": [1, 3], "evens": [2, 4]}}
    rows = standing("rows", apart=2, groups_apart=4, columns=2)
    out = {"travel": 2, "direction": "forwards", "steps": 2}
    home = {"travel": 2, "direction": "backwards", "steps": 2}
    return dance_of(
        "A B",
        {
            "A": section(
                24,
                rows,
                [
                    {"what": ["draw"], "as": "unison"},
                    {
                        "what": ["draw"],
                        "as": "canon in turn",
                        "parts": 2,
                        "roles": ["odds", "evens"],
                    },
                ],
                groups=row,
            ),
            "B": section(
                16, rows, [{"what": ["draw"], "as": "canon", "parts": 4, "after": 2}], groups=row
            ),
        },
        {"draw": [out, {"stillness": 4}, home]},
        transitions=[{"from": "A", "to": "B", "as": "straight on"}],
    )
