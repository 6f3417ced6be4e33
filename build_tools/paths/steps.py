"""How far an action takes a dancer, in metres, by its steps, their kind and size, and the age."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path
from typing import Any

from build_tools.body.ages import AtAge, tables
from build_tools.model.dance import Action

GOING = ("forwards", "backwards", "sideways", "diagonal")
"""Directions that take a dancer over the floor."""


def goes(action: Action) -> bool:
    """Whether it takes a dancer somewhere: travel, or a jump in a direction over the floor."""
    if "travel" in action.kinds:
        return action.direction not in ("up", "down")
    return "jump" in action.kinds and (action.direction in GOING or action.towards is not None)


def steps_of(action: Action) -> float:
    """How many steps it has: as said, else one a count, and for a jump one in all."""
    if action.steps is not None:
        return float(action.steps)
    return float(action.counts) if "travel" in action.kinds else 1.0


def step_length(action: Action, body: AtAge) -> float:
    """Metres of one of its steps.

    A step back is shorter than one ahead only where it would else be longer than a back step is by
    itself: small steps are as small either way, so who takes as many in and back is home again.
    """
    longer = tables()["steps"]
    kind = action.step or ("side-step" if action.direction == "sideways" else "walk")
    length = body.step * float(kinds()[kind])
    if action.direction == "sideways" and kind != "side-step":
        length *= longer["sideways"]
    sizes = [longer[size] for size in (action.size or "").split(" to ") if size]
    if sizes:
        length *= sum(sizes) / len(sizes)
    if action.direction == "backwards":
        length = min(length, max(length * longer["backwards"], body.back_step))
    return float(length)


def way_long(action: Action, body: AtAge) -> float:
    """Metres from where it starts to where it ends; 0 where it stays on the spot."""
    if not goes(action):
        return 0.0
    if action.in_all is not None:
        return float(action.in_all) * body.step
    return steps_of(action) * step_length(action, body)


@cache
def kinds() -> dict[str, float]:
    """How long a step of each kind is beside a walking step."""
    found: dict[str, Any] = json.loads(
        Path(__file__).with_name("steps.json").read_text(encoding="utf-8")
    )
    return {name: float(value) for name, value in found["kinds"].items()}
