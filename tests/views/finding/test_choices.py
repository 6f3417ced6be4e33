"""What a search can be narrowed by."""

from __future__ import annotations

from dataclasses import replace

from build_tools.views.finding.choices import CHOICES, nothing_bought
from build_tools.views.finding.order_of_years import order_of_year
from tests.support.sound_bank import every_unit, real_bank, real_unit


def values(name: str) -> set[str]:
    (choices,) = (one for one in CHOICES if one.name == name)
    return {value.name for value in choices.of(real_bank(), real_unit())}


def test_the_rock_pool_has_what_its_dance_has() -> None:
    assert values("year") == {"england-3", "england-4"}
    assert values("lessons") == {"06"}
    assert {"canon", "mirror", "travel", "jump"} <= values("movement")
    assert {"pairs", "fours"} <= values("groups")
    assert values("form") == {"returns"}
    assert values("sound") == {"none", "drum", "voice"}
    assert values("needs") == {"no-screen", "tomorrow"}


def test_what_a_school_has_not_is_not_ready_tomorrow() -> None:
    kit = replace(real_unit().kit, collect=("Forty silk parachutes",))
    assert nothing_bought(real_bank(), real_unit())
    assert not nothing_bought(real_bank(), replace(real_unit(), kit=kit))


def test_a_screen_in_the_hall_is_seen() -> None:
    kit = replace(real_unit().kit, collect=("A projector for the drawing",))
    (needs,) = (one for one in CHOICES if one.name == "needs")
    found = {value.name for value in needs.of(real_bank(), replace(real_unit(), kit=kit))}
    assert "no-screen" not in found


def test_every_list_names_each_value_once_for_every_unit() -> None:
    for unit in every_unit():
        for choices in CHOICES:
            names = [value.name for value in choices.of(real_bank(), unit)]
            assert len(names) == len(set(names)), (unit.slug, choices.name)


def test_years_stand_in_the_order_pupils_go_through_them() -> None:
    years = ["scotland-s1", "england-10", "england-2", "england-r", "scotland-p7"]
    assert sorted(years, key=order_of_year) == [
        "england-r", "england-2", "england-10", "scotland-p7", "scotland-s1",
    ]  # fmt: skip
