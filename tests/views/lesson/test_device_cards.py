"""Device cards: which a line asks for, what stands on them, and a motif that shows each.

What a device does to a motif is held to its laws in tests/movement.
"""

from __future__ import annotations

from dataclasses import replace

from build_tools.movement.development import actions_of
from build_tools.views.lesson.asked_to_get import Kind, asked
from build_tools.views.lesson.device_cards import device_card, device_words, with_examples
from build_tools.views.lesson.to_print import to_print, where_to_get
from tests.support.sound_bank import real_bank, real_unit

LINE = "Device cards for each four: level, looking another way, canon, whistling"


def test_a_line_asks_for_device_cards_and_no_other_cards() -> None:
    assert asked(LINE).kinds == (Kind.DEVICES,)
    assert asked("Word cards: rock, rush").kinds == (Kind.WORDS,)


def test_the_devices_are_those_of_the_line_else_of_the_list_else_those_used() -> None:
    unit = real_unit()
    assert device_words(unit, LINE) == ("level", "looking another way", "canon", "whistling")
    short = "Device cards for each four"
    assert set(device_words(unit, short)) == {d.device for d in unit.dance.developments.values()}
    listed = replace(unit, kit=replace(unit.kit, collect=("Device cards: size and mirror",)))
    assert device_words(listed, short) == ("size", "mirror")


def test_a_card_says_what_a_device_is_in_the_bank_s_words() -> None:
    unit, words = real_unit(), real_bank().words
    level = device_card(unit, words, "level")
    known = words["change of level"]
    assert level.plain == f"{known.plain} {known.in_class}"
    assert device_card(unit, words, "whistling").plain is None
    assert device_card(unit, words, "canon").drawn is None


def test_the_example_is_the_unit_s_own_motif_so_changed() -> None:
    unit, words = real_unit(), real_bank().words
    card = device_card(unit, words, "level")
    assert card.drawn is not None
    dance = with_examples(unit.dance, ["level"], words)
    motif = next(iter(dance.motifs))
    changed = actions_of(dance, card.drawn)
    assert {action.level for action in changed} == {"low"}
    assert [replace(one, level=None) for one in changed] == [
        replace(one, level=None) for one in actions_of(dance, motif)
    ]


def test_they_are_on_the_page_to_print_a_set_for_each_group() -> None:
    unit = real_unit()
    lesson = replace(unit.lessons[1], collect=(LINE,))
    (cards,) = [one for one in to_print(unit, (lesson,)).cards if one.kind is Kind.DEVICES]
    assert cards.cards == ("level", "looking another way", "canon", "whistling")
    assert cards.sets > 1
    assert where_to_get(unit, lesson, LINE) == "to-print.html#lesson-2-at-devices-sets"
