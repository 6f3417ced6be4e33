"""What pupils decide is a blank; where they vary a theme, the blank knows the move it varies."""

from __future__ import annotations

from build_tools.movement.devices import OWN
from build_tools.views.dance.left_open import OPEN, drawn_actions, is_left_open
from build_tools.views.dance.moves_before import shown
from build_tools.views.words.plain_words import action_label
from tests.support.sound_bank import unit_named, whole_bank


def words_of(slug: str, name: str) -> list[str]:
    return [action_label(action) for action in drawn_actions(unit_named(slug).dance, name)]


def test_a_variation_of_pupils_own_keeps_the_theme_and_its_counts() -> None:
    """Smith-Autard 2010, Dance Composition: a theme is varied, and can still be known; from memory.

    An adviser found "every move is as pupils choose" under a row of empty boxes.
    """
    seen = 0
    for unit in whole_bank().units:
        dance = unit.dance
        for development in dance.developments.values():
            if development.device != OWN:
                continue
            before, after = (drawn_actions(dance, n) for n in (development.of, development.name))
            assert is_left_open(dance, development.name)
            assert [one.counts for one in before] == [one.counts for one in after]
            assert [shown(one) for one in before] == [shown(one) for one in after]
            seen += 1
    assert seen > 3


def test_a_variation_of_a_variation_is_still_of_the_theme() -> None:
    theme = ["swing", "lean", "slide", "clack", "clamp"]
    assert words_of("magnets", "our-own") == theme
    assert words_of("magnets", "our-own-home") == theme
    assert words_of("leaving", "second-change") == words_of("leaving", "verbs")


def test_what_is_known_of_a_variation_is_drawn_changed() -> None:
    """The way home of a four's own variation is backwards, whatever the four has chosen."""
    slide = drawn_actions(unit_named("magnets").dance, "our-own-home")[2]
    assert slide.kind == OPEN
    assert slide.theme is not None
    assert slide.theme.direction == "backwards"


def test_another_order_is_no_theme_to_show() -> None:
    """Where pupils choose the order, or what to leave out, nobody knows which move is where."""
    for unit in whole_bank().units:
        for name, development in unit.dance.developments.items():
            if development.device in ("change of order", "leaving out") and not development.order:
                blanks = [a for a in drawn_actions(unit.dance, name) if a.kind == OPEN]
                assert all(one.theme is None for one in blanks)
