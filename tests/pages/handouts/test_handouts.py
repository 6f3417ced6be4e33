"""What a lesson hands out, for every lesson there is: strips for groups, words, a blank sheet.

Common practice, no source: one strip for each group of a class of thirty, and no pupil's name on
anything that is printed before the lesson.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from functools import cache
from typing import TypeVar

import pytest

from build_tools.disk.places import OVERRIDES
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.pages.handouts.card_sets import CARD_POINTS
from build_tools.pages.handouts.handouts import HandoutsView, handouts_page
from build_tools.pages.handouts.of_lessons import HandedOut, handed_out
from build_tools.pages.handouts.shown_for import Shown
from build_tools.views.lesson.handouts import asks_for_strips, copies_for, strips_to_hand
from build_tools.views.lesson.to_print import to_print
from tests.support.drawn import Seen, page_seen
from tests.support.sound_bank import every_unit, real_bank, real_unit

T = TypeVar("T")
UNITS = every_unit()
LESSONS = [(unit, lesson) for unit in UNITS for lesson in unit.lessons]
NAMES = [f"{unit.slug}-{lesson.number}" for unit, lesson in LESSONS]


def view_of(unit: Unit, lesson: Lesson | None) -> HandedOut:
    return handed_out(real_bank(), unit, lesson)


@cache
def page_of(unit: Unit) -> HandoutsView:
    context = handouts_page(real_bank(), unit).context
    assert isinstance(context, HandoutsView)
    return context


@cache
def seen(unit: Unit) -> Seen:
    return page_seen(handouts_page(real_bank(), unit))


@pytest.mark.parametrize(
    ("grouping", "copies"),
    # thirty pupils: 15 pairs, 10 threes, 8 groups near to four (6 of four and 2 of three)
    [
        ("alone", 15),
        ("pairs", 15),
        ("threes", 10),
        ("fours", 8),
        ("fives", 6),
        ("sixes", 5),
        ("half class", 2),
        ("whole class", 1),
    ],
)
def test_there_is_a_strip_for_each_group_of_thirty(grouping: str, copies: int) -> None:
    assert USUAL_CLASS == 30
    lesson = real_unit().lessons[0]
    newly_made = replace(lesson, steps=(replace(lesson.steps[0], grouping=grouping),))
    assert copies_for(real_unit(), newly_made, grouping, 30) == copies


def test_fours_that_pairs_make_are_seven_in_a_class_of_thirty() -> None:
    """Fifteen pairs make six fours and, with the pair over, one six."""
    lesson = real_unit().lessons[0]
    steps = (replace(lesson.steps[0], grouping=one) for one in ("pairs", "fours"))
    assert copies_for(real_unit(), replace(lesson, steps=tuple(steps)), "fours", 30) == 7


@pytest.mark.parametrize(("unit", "lesson"), LESSONS, ids=NAMES)
def test_all_that_is_made_changed_or_danced_has_its_strips(unit: Unit, lesson: Lesson) -> None:
    handed = {one.name: one.copies for one in strips_to_hand(unit, lesson)}
    for step in lesson.steps:
        for name in (*step.makes, *step.develops, *step.dances, *step.shows):
            if name in unit.dance.motifs or name in unit.dance.developments:
                assert name in handed
    shown = view_of(unit, lesson).strips
    assert [one.given.count for one in shown] == [str(many) for many in handed.values()]
    # nobody is asked to cut what the lesson's own list does not ask for
    if not asks_for_strips(lesson):
        assert set(handed.values()) <= {1}


@pytest.mark.parametrize(("unit", "lesson"), LESSONS, ids=NAMES)
def test_each_side_stands_once_and_says_how_often_to_print_it(unit: Unit, lesson: Lesson) -> None:
    """The page's script makes the copies; who has none reads how many there are to be."""
    view, found = view_of(unit, lesson), seen(unit)
    sets = {one.anchor: one.sets for one in to_print(unit, (lesson,)).cards}
    strips = [one.given for one in view.strips]
    many = [*(sets[one.anchor] for one in view.card_sets), *(int(s.count) for s in strips)]
    said = [*(one.by_hand for one in view.card_sets), *(one.by_hand for one in strips)]
    for number, words in zip(many, said, strict=True):
        assert (words is None) == (number == 1)
        times = f"Print this side {number} times for 30 pupils: one "
        assert words is None or words.startswith(times)
        assert words is None or words in found.text()
    drawn = [one for one in found.values("svg", "id") if one.startswith("at-drawing-")]
    assert len(drawn) == len(set(drawn)) == len(page_of(unit).strips)


def test_the_crabs_strips_by_hand() -> None:
    # lesson 3 makes the crab and both its changes in pairs, and recalls the anemone in the fours
    # of lesson 2, which were whole pairs: six fours and one six
    unit = real_unit()
    put_up = ", one to put up: 1"
    given = strips_given(unit, 2)
    assert given[:3] == [f"{name}{put_up}" for name in ("Crab", "Mirror crab", "Crab answer")]
    assert all(one.endswith(put_up) for one in given)
    more = {one.name: one.given.more for one in view_of(unit, unit.lessons[2]).strips}
    assert more["Crab"] == "pairs"
    assert more["Anemone"] == "pairs"
    asked = replace(unit.lessons[2], collect=("Strips of the crab, one for each pair",))
    headings = strips_given(replace(unit, lessons=(*unit.lessons[:2], asked)), 2)
    assert headings[:3] == [
        "Crab, one for each pair: 15",
        "Mirror crab, one for each pair: 15",
        "Crab answer, one for each pair: 15",
    ]
    assert "Anemone, one for each group: 7" in headings


def test_a_drawing_has_one_heading_whichever_lesson_shows_it() -> None:
    """Two teachers read two or three beside each drawing, and nothing said which to choose."""
    for unit in UNITS:
        if not any(map(asks_for_strips, unit.lessons)):
            assert [len(one.given) for one in page_of(unit).strips] == [1] * len(
                page_of(unit).strips
            )


def strips_given(unit: Unit, place: int) -> list[str]:
    strips = (one.given for one in view_of(unit, unit.lessons[place]).strips)
    return [f"{given.heading}: {given.count}" for given in strips]


@pytest.mark.parametrize(("unit", "lesson"), LESSONS, ids=NAMES)
def test_words_have_their_meanings_and_actions_their_cards(unit: Unit, lesson: Lesson) -> None:
    view, text = view_of(unit, lesson), seen(unit).text()
    for word, plain in lesson.words.items():
        assert word in {row.label for row in view.words}
        assert " ".join(plain[1:].split()) in text
    cards = [card for one in view.card_sets if one.anchor == "at-cards" for card in one.cards]
    words = [card.word for card in cards]
    assert len(words) == len(set(words))
    for step in lesson.steps:
        for name in step.makes:
            if name in unit.dance.motifs:
                assert any(card.body for card in cards)
                said = {action.word for action in unit.dance.motifs[name].actions if action.word}
                assert said <= set(words)


def test_words_on_cards_are_large() -> None:
    styles = (OVERRIDES / "handouts" / "handouts.css").read_text(encoding="utf-8")
    assert f"font-size: {CARD_POINTS}pt" in styles
    assert CARD_POINTS >= 48


@pytest.mark.parametrize(("unit", "lesson"), LESSONS, ids=NAMES)
def test_the_sheet_has_the_lessons_end_points_and_nobodys_name(unit: Unit, lesson: Lesson) -> None:
    view, text = view_of(unit, lesson), seen(unit).text()
    named = lesson.look_and_talk.end_points if lesson.look_and_talk else ()
    ends = [unit.end_points[n] for n in named] or list(unit.end_points.values())
    assert len(view.looking) == len(ends)
    for end in ends:
        assert " ".join(end.looks_like[1:].split()) in text
    assert page_of(unit).rows == tuple(range(1, 31))
    assert "No pupil is named here and nothing is kept" in text


def test_all_that_a_lesson_asks_to_get_and_that_is_paper_is_printed() -> None:
    """By hand, from the lists "What to get" of the published units."""
    units = {unit.slug: unit for unit in real_bank().units}
    first = view_of(units["rock-pool"], units["rock-pool"].lessons[0])
    assert [one.title for one in first.pictures] == ["Low tide", "Twelve hours"]
    assert [one.title for one in first.texts] == ["Low water"]
    poem = first.texts[0].text
    assert "The sea lets go." in poem
    assert "public sector information" not in poem
    sets = {one.anchor: [card.word for card in one.cards] for one in first.card_sets}
    assert sets["at-signs"] == ["sea", "beach"]
    assert sets["at-cards"][:4] == ["rock", "rush", "break", "sink"]
    second = view_of(units["rock-pool"], units["rock-pool"].lessons[1])
    assert [one.title for one in second.pictures] == ["Low tide"]
    assert [
        card.word for one in second.card_sets if one.anchor == "at-numbers" for card in one.cards
    ] == list("1234")
    order = view_of(units["weaving-shed"], units["weaving-shed"].lessons[3])
    (letters,) = [one for one in order.card_sets if one.anchor.startswith("at-letters")]
    assert [card.word for card in letters.cards] == list("ABCD")
    # a set for each row of four of thirty pupils, whose pairs join: six fours, and a six
    assert letters.grouping == "fours"
    assert (
        letters.by_hand == "Print this side 7 times for 30 pupils: one set for each group of four."
    )


def test_the_mill_story_is_printed_without_the_notes_around_it() -> None:
    unit = next(unit for unit in real_bank().units if unit.slug == "weaving-shed")
    (story,) = view_of(unit, unit.lessons[0]).texts
    assert story.title == "Threadwell Mill"
    assert "Half past five, and dark." in story.text
    assert "a town that we made up" not in story.text


def test_what_pupils_choose_has_a_line_on_its_strip() -> None:
    unit = next(unit for unit in real_bank().units if unit.slug == "weaving-shed")
    (own,) = [one for one in view_of(unit, unit.lessons[2]).strips if one.name == "Own pattern"]
    assert own.choices == (unit.dance.choices["pattern-order"].what,)


def test_the_page_shows_each_lesson_what_it_hands_out_and_nothing_else() -> None:
    """In each of its views: of the whole unit, and of each lesson."""
    for unit in UNITS:
        page = page_of(unit)
        assert [one.name for one in page.one_by_one] == page.every.split()
        for name, lesson in (("all", None), *((str(one.number), one) for one in unit.lessons)):
            own = view_of(unit, lesson)
            pictures, texts = in_view(page.pictures, name), in_view(page.texts, name)
            words = in_view(page.words, name)
            assert same(pictures, own.pictures)
            assert same(texts, own.texts)
            assert same(words, own.words)
            sets = {
                (one.anchor, one.grouping): one
                for one in page.card_sets
                if name in one.views.split()
            }
            assert sets.keys() == {(one.anchor, one.grouping) for one in own.card_sets}
            for of in own.card_sets:
                found = sets[of.anchor, of.grouping]
                shown = in_view(found.cards, name)
                assert same(shown, of.cards)
                assert in_view(found.by_hand, name) == ([of.by_hand] if of.by_hand else [])
                odd = [
                    card
                    for card, views in zip(found.cards, found.odd, strict=True)
                    if name in views.split()
                ]
                assert [one.what for one in odd] == (shown[-1:] if len(shown) % 2 else [])
            strips = [one for one in page.strips if name in one.views.split()]
            given = [(one.name, *in_view(one.given, name)) for one in strips]
            assert same(given, [(one.name, one.given) for one in own.strips])
            assert (name in page.strips_asked.split()) == own.strips_asked
            sheets = [one for one in page.sheets if name in one.views.split()]
            looking = [[in_view(one, name) for one in sheet.columns] for sheet in sheets]
            assert looking == [[[end] for end in own.looking]] * len(sheets)
            assert len(sheets) == bool(own.looking)


def in_view(things: tuple[Shown[T], ...], name: str) -> list[T]:
    return [one.what for one in things if name in one.views.split()]


def same(some: Iterable[object], others: Iterable[object]) -> bool:
    """In whatever order: a lesson's come in the order of the unit."""
    return sorted(map(repr, some)) == sorted(map(repr, others))


def test_styles_choose_a_lesson_without_a_script_as_far_as_units_go() -> None:
    styles = (OVERRIDES / "handouts" / "handouts.css").read_text(encoding="utf-8")
    for unit in UNITS:
        for lesson in unit.lessons:
            assert f':not([data-in~="{lesson.number}"])' in styles
            assert f"#lesson-{lesson.number}:target" in styles


def test_everything_of_a_unit_has_each_strip_once() -> None:
    for unit in real_bank().units:
        view = view_of(unit, None)
        names = [one.name for one in view.strips]
        assert len(names) == len(set(names))
        for lesson in unit.lessons:
            own = view_of(unit, lesson)
            assert {one.name for one in own.strips} <= set(names)
            assert set(own.pictures) <= set(view.pictures)
            assert set(own.texts) <= set(view.texts)
            for one in own.card_sets:
                words = {c.word for s in view.card_sets if s.anchor == one.anchor for c in s.cards}
                assert {card.word for card in one.cards} <= words
