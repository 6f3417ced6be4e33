"""Places in fields: what they find, how a value is filled there, and what is said where none is."""

from __future__ import annotations

from typing import Any

import pytest

from tests.manuals.examples import OPEN
from tests.manuals.fields import NotLaid, called, put, take_out, without_empty_lists


def lesson() -> dict[str, Any]:
    return {
        "lesson": 1,
        "steps": [
            {"phase": "warm-up", "task": "Walk."},
            {"phase": "make", "task": "Make it.", "makes": ["wave", "A"]},
            {"phase": "rehearse", "task": "Dance it.", "dances": ["A"]},
        ],
        "if": {"stuck": "Wait."},
    }


@pytest.mark.parametrize(
    ("place", "changed"),
    [
        ("steps/0/task", [0]),
        ("steps/phase=make/task", [1]),
        ("steps/makes=A/task", [1]),
        ("steps/*/task", [0, 1, 2]),
    ],
)
def test_a_value_is_put_at_its_places_and_nowhere_else(place: str, changed: list[int]) -> None:
    data = lesson()
    put(data, place, "Run.")
    assert [n for n, step in enumerate(data["steps"]) if step["task"] == "Run."] == changed


def test_a_field_that_is_not_there_yet_is_put_there() -> None:
    data = lesson()
    put(data, "steps/0/say", "Stop.")
    put(data, "change/room", "Stay near the wall.")
    put(data, "steps/+", {"phase": "cool-down"})
    assert data["steps"][0]["say"] == "Stop."
    assert data["change"] == {"room": "Stay near the wall."}
    assert data["steps"][3] == {"phase": "cool-down"}


@pytest.mark.parametrize("place", ["steps/7/task", "steps/phase=join/task", "look/at/this"])
def test_a_place_that_is_gone_is_named(place: str) -> None:
    with pytest.raises(NotLaid, match=place):
        put(lesson(), place, "Run.")


def test_what_is_left_open_is_what_stands_there() -> None:
    data = {"A": {"counts": 32, "start": {"formation": "line", "facing": "front"}}}
    put(data, "A", {"start": {"formation": "circle", OPEN: ""}, OPEN: ""})
    assert data["A"] == {"counts": 32, "start": {"formation": "circle", "facing": "front"}}


def test_a_map_with_nothing_left_open_takes_the_place_of_what_stands_there() -> None:
    data = {"sound": {"kind": "drum", "what": "One drum"}}
    put(data, "sound", {"kind": "voice", "follows": "dancers"})
    assert data["sound"] == {"kind": "voice", "follows": "dancers"}


def test_a_map_with_one_key_changes_that_key() -> None:
    data = {"sound": {"kind": "drum", "what": "One drum"}}
    put(data, "sound", {"kind": "voice"})
    assert data["sound"] == {"kind": "voice", "what": "One drum"}


def test_what_is_new_and_left_open_is_filled_from_a_neighbour() -> None:
    data: dict[str, Any] = {"motifs": {"wave": {"from": "teacher", "idea": "The sea"}}}
    put(data, "motifs/gust", {"from": "pupils", OPEN: ""})
    put(data, "motifs", {"leaf": OPEN})
    assert data["motifs"]["gust"] == {"from": "pupils", "idea": "The sea"}
    assert (
        data["motifs"]["leaf"] == data["motifs"]["wave"] == {"from": "teacher", "idea": "The sea"}
    )


def test_a_list_left_open_at_one_end_goes_on_with_what_stands_there() -> None:
    data = {"ways": [{"from": "A", "to": "B", "how": "Walk"}]}
    put(data, "ways", [{"from": "B", "to": "C", OPEN: ""}, OPEN])
    assert data["ways"] == [
        {"from": "B", "to": "C", "how": "Walk"},
        {"from": "A", "to": "B", "how": "Walk"},
    ]


def test_a_name_is_taken_out_of_every_list() -> None:
    data = lesson()
    for field in ("makes", "dances"):
        take_out(data, f"steps/*/{field}/A")
    pruned = without_empty_lists(data)
    assert pruned["steps"][1]["makes"] == ["wave"]
    assert "dances" not in pruned["steps"][2]


def test_what_is_not_there_need_not_be_taken_out() -> None:
    data = lesson()
    take_out(data, "steps/phase=join/joins")
    assert data == lesson()


def test_things_are_called_as_the_unit_calls_them_and_longer_names_stay() -> None:
    said = {"gust": {"of": "gust"}, "gust-slow": "Dance the gust, not gusts."}
    names = {"gust": "wave"}
    assert called(said, names) == {
        "wave": {"of": "wave"},
        "gust-slow": "Dance the wave, not gusts.",
    }
