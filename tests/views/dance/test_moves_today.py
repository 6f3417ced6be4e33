"""What a lesson dances, in plain words: from the sound unit's own dance, and as laws."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Any

import pytest

from build_tools.model.dance import Action
from build_tools.movement.development import actions_of
from build_tools.movement.effort import EFFORT_ACTIONS
from build_tools.views.dance.moves_today import danced_today, move_in_words, parts_of
from build_tools.views.dance.parts_named import motifs_in
from build_tools.views.words.plain_words import action_label
from tests.support.sound_bank import real_bank, whole_bank


def lessons() -> list[tuple[str, int]]:
    return [(unit.slug, one.number) for unit in real_bank().units for one in unit.lessons]


def action(kind: str = "jump", counts: int = 2, **given: Any) -> Action:
    return Action(kind, Fraction(counts), "pop", **given)


@pytest.mark.parametrize(
    ("given", "does"),
    [
        ({"level": "high", "dynamics": ("light", "sudden")}, "2 counts, jump, high, light, sudden"),
        ({"counts": 1, "level": "high to low"}, "1 count, jump, from high to low"),
        (
            {"kind": "gesture", "body_part": "arms", "size": "small to big"},
            "2 counts, move the arms, from small to big",
        ),
        (
            {"kind": "travel", "also": ("turn",), "direction": "sideways", "side": "left"},
            "2 counts, travel and turn, sideways to the left",
        ),
        (
            {"kind": "transfer", "pathway": "curved", "size": "small"},
            "2 counts, shift your weight, on a curved line, small",
        ),
    ],
)
def test_a_move_is_told_for_the_body(given: dict[str, Any], does: str) -> None:
    told = move_in_words(action(**given), counted=True)
    assert (told.word, told.does) == ("pop", does)
    assert move_in_words(action(**given), counted=False).does == does.partition(", ")[2]


@pytest.mark.parametrize("name", EFFORT_ACTIONS)
def test_an_effort_action_is_told_by_its_three_qualities(name: str) -> None:
    """Laban and Lawrence, Effort, 1947: weight, time and space."""
    plain = {"sustained": "slow and smooth", "direct": "straight", "indirect": "winding"}
    effort = EFFORT_ACTIONS[name]
    told = [plain.get(word, word) for word in (effort.weight, effort.time, effort.space)]
    assert move_in_words(action(dynamics=(name,)), counted=True).does.endswith(", ".join(told))


@pytest.mark.parametrize(("slug", "number"), lessons())
def test_every_move_and_section_of_the_lesson_is_told_once(slug: str, number: int) -> None:
    unit = next(unit for unit in real_bank().units if unit.slug == slug)
    lesson = unit.lessons[number - 1]
    told = danced_today(unit, lesson)
    words = [move.word for danced in told for move in danced.moves]
    assert len(words) == len(set(words))
    named = [
        name
        for step in lesson.steps
        for name in (*step.makes, *step.develops, *step.joins, *step.dances, *step.shows)
    ]
    for motif in motifs_in(unit.dance, named):
        assert {action_label(one) for one in actions_of(unit.dance, motif)} <= set(words)
    letters = [part.letter for danced in told for part in danced.parts]
    assert len(letters) == len(set(letters))
    for danced in told:
        for part in danced.parts:
            section = unit.dance.sections[part.letter]
            assert len(part.danced) == len(section.danced)
            if section.counts is not None:
                counts = re.match(r"Counts? (?:\S+ to )?([\d /]+)[,:]", part.danced[-1])
                assert counts is not None
                last = counts[1]
                assert Fraction(last) <= section.counts


def test_what_everyone_dances_is_a_sentence() -> None:
    """A teacher read "Counts 1 to 16, sheep: everyone, wherever they look" and saw no meaning."""
    unit = next(unit for unit in whole_bank().units if unit.slug == "through-the-gap")
    first, changed = parts_of(unit.dance, ("A", "A'"))
    assert first.danced[0] == "Counts 1 to 16: everyone dances “sheep” twice, wherever they look"
    assert changed.called == "A', A changed: night"
