"""Faults that only a class on a floor shows: who comes how near, who is late, who has no way."""

from __future__ import annotations

from typing import Any

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()

_SIDE_STEPS = {
    "travel": 4, "direction": "sideways", "side": "right", "step": "side-step", "steps": 4,
}  # fmt: skip


def _danced_anew(
    unit: EditableUnit, actions: list[Any], start: Any, size: int = 1, **passage: Any
) -> str | None:
    """A motif `lane` of `actions`, danced in the first counted section from `start`; its letter."""
    letters = unit.top["dance"]["form"].split()
    letter = next((x for x in letters if "counts" in unit.top["sections"][x]), None)
    if letter is None:
        return None
    unit.top.setdefault("motifs", {})["lane"] = {
        "from": "teacher", "idea": "A lane through the hall", "actions": actions,
    }  # fmt: skip
    section = unit.top["sections"][letter]
    place = section["start"]["place"]
    section["groups"] = {"size": size, "roles": {"ones": [1], "twos": [2]} if size == 2 else {}}
    if size == 4:
        section["groups"]["roles"] = {"ones": [1, 4], "twos": [2, 3]}
    if not section["groups"]["roles"]:
        del section["groups"]["roles"]
    section["start"] = {"place": place, "spot": "new place", **start}
    section["danced"] = [{"what": ["lane"], "as": "unison", **passage}]
    section["counts"] = sum(next(iter(action.values())) for action in actions)
    return str(letter)


def _first_passage(unit: EditableUnit, letter: str | None) -> Place | None:
    return None if letter is None else (unit.file, ("sections", letter, "danced", 0))


_PAIRS = {"formation": "pairs", "facing": "partner", "within": "face to face"}
_ROWS = {"formation": "scattered", "facing": "front", "apart": 2}


@fault("nearer-than-an-arm", "set")
def pairs_in_one_lane(unit: EditableUnit) -> Place | None:
    start = {**_PAIRS, "formation": "small groups", "apart": "1 1/2", "groups_apart": 4}
    letter = _danced_anew(
        unit, [_SIDE_STEPS], start, 4,
        what=["lane", "lane"], parts=2, roles=["ones", "twos"], **{"as": "question and answer"},
    )  # fmt: skip
    return _first_passage(unit, letter)


@fault("partners-meet-nose-to-nose", "set")
def six_three_three(unit: EditableUnit) -> Place | None:
    go = {"travel": 4, "step": "walk", "steps": 3, "towards": "partner"}
    letter = _danced_anew(unit, [go], {**_PAIRS, "apart": 6, "groups_apart": 2}, 2)
    return _first_passage(unit, letter)


@fault("heads-meet-as-they-rise", "set")
def heads_meet(unit: EditableUnit) -> Place | None:
    burst = {"gesture": 2, "level": "low to high"}
    letter = _danced_anew(unit, [burst], {**_PAIRS, "apart": "1/2", "groups_apart": 2}, 2)
    return _first_passage(unit, letter)


@fault("no-floor-left-for-the-way", "set")
def all_at_the_watchers(unit: EditableUnit) -> Place | None:
    march = {"travel": 16, "direction": "forwards", "step": "walk", "steps": 16}
    letter = _danced_anew(unit, [march], _ROWS)
    return _first_passage(unit, letter)


@fault("too-few-for-the-shape", "set")
def five_in_a_square(unit: EditableUnit) -> Place | None:
    start = {"formation": "small groups", "facing": "front", "within": "square", "apart": 2}
    letter = _danced_anew(unit, [_SIDE_STEPS], start, 5)
    return None if letter is None else (unit.file, ("sections", letter, "start", "within"))


@fault("ends-away-from-its-place", "set")
def home_that_is_not(unit: EditableUnit) -> Place | None:
    letter = _danced_anew(unit, [_SIDE_STEPS], _ROWS)
    if letter is None or letter != unit.top["dance"]["form"].split()[0]:
        return None
    return unit.set(unit.file, ("sections", letter, "end", "place"), "The same place, still")


def _joined(
    unit: EditableUnit, kind: str, counts: int | None, start: Any
) -> tuple[str, int] | None:
    """The first two sections, on the spot, with a join between; the second's letter, and where."""
    stay = {"gesture": 8, "level": "middle"}
    first = _danced_anew(unit, [stay], {**_ROWS, "apart": 1})
    letters = unit.top["dance"]["form"].split()
    if first is None or first != letters[0] or letters[1] == first:
        return None
    unit.top["dance"].pop("order", None)
    second = letters[1]
    section = unit.top["sections"][second]
    section["groups"] = {"size": 1}
    section["start"] = {"place": section["start"]["place"], **start}
    join: dict[str, Any] = {"from": first, "to": second, "as": kind, "how": "Go", "cue": "A drum"}
    if counts is not None:
        join["counts"] = counts
    unit.top.setdefault("transitions", []).insert(0, join)
    return second, 0


_COLUMNS = {
    "formation": "rows", "facing": "front", "columns": 1, "apart": 1, "groups_apart": 1,
    "spot": "new place",
}  # fmt: skip


@fault("late-for-the-next-section", "set")
def one_count_to_get_there(unit: EditableUnit) -> Place | None:
    if "tempo" not in unit.top["dance"]:
        return None
    found = _joined(unit, "move", 1, _COLUMNS)
    return found and (unit.file, ("transitions", found[1], "counts"))


@fault("section-starts-where-nobody-is", "set")
def nobody_is_there(unit: EditableUnit) -> Place | None:
    found = _joined(unit, "cut", None, _COLUMNS)
    return found and (unit.file, ("sections", found[0], "start"))


@fault("walks-to-where-they-stand", "set")
def walks_on_the_spot(unit: EditableUnit) -> Place | None:
    found = _joined(unit, "move", 8, {**_ROWS, "spot": "where they are"})
    if found is None:
        return None
    return unit.set(unit.file, ("transitions", 0, "how"), "Walk to your place in the row")
