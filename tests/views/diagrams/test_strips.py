"""Order strips: a box an action, its width its counts, the pupils' word inside."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest

from build_tools.checking.check_bank import check_unit
from build_tools.model.dance import Action, Dance, Development
from build_tools.movement.development import actions_of
from build_tools.pages.moves.moves import motif_views
from build_tools.views.dance.left_open import OPEN, drawn_actions
from build_tools.views.dance.without_counts import is_counted
from build_tools.views.diagrams.strip import order_strip
from build_tools.views.diagrams.strip_changes import changes_unseen
from build_tools.views.diagrams.svg import text_width, wrapped
from build_tools.views.words.plain_words import action_in_words, action_label
from tests.support.drawn import Seen, seen_in
from tests.support.sound_bank import real_bank, real_unit, whole_bank

UNUSUAL = Path(__file__).parents[2] / "unusual_units"
NAMED = [
    (unit.slug, name, actions_of(unit.dance, name))
    for unit in real_bank().units
    for name in (*unit.dance.motifs, *unit.dance.developments)
]


def boxes(seen: Seen) -> list[dict[str, str]]:
    return [a for n, a in seen.elements if n == "path" and a.get("class") in ("box", "open-box")]


def width(box: dict[str, str]) -> float:
    numbers = box["d"].replace("M", " ").replace("L", " ").replace("V", " ").split()
    return float(numbers[2]) - float(numbers[0])


@pytest.mark.parametrize(("slug", "name", "actions"), NAMED)
def test_a_strip_carries_every_word_and_says_every_action(
    slug: str, name: str, actions: tuple[Action, ...]
) -> None:
    figure = order_strip(f"{slug} {name}", actions, 8)
    seen = seen_in(figure.svg)
    drawn = [w for w in seen.words if w in {action_label(a) for a in actions}]
    assert drawn == [action_label(a) for a in actions]
    assert len(boxes(seen)) == len(figure.words) == len(actions)
    for action, line in zip(actions, figure.words, strict=True):
        assert line.endswith(action_in_words(action))


def test_widths_go_by_counts_and_stillness_is_an_open_box() -> None:
    actions = (
        Action("travel", Fraction(4), "scuttle", pathway="curved", level="low to high"),
        Action("turn", Fraction(2), "whirl"),
        Action("stillness", Fraction(2), "wait", level="low"),
    )
    drawn = boxes(seen_in(order_strip("Gust", actions, 8).svg))
    assert [box["class"] for box in drawn] == ["box", "box", "open-box"]
    gap = 3
    assert (width(drawn[0]) + gap) == pytest.approx(2 * (width(drawn[1]) + gap))
    assert width(drawn[1]) == pytest.approx(width(drawn[2]))


def test_a_rising_action_ends_higher_than_it_starts_and_a_retrograde_the_other_way() -> None:
    rising = Action("gesture", Fraction(4), "reach", level="low to high")
    falling = Action("gesture", Fraction(4), "reach", level="high to low")

    def corners(action: Action) -> tuple[float, float]:
        (box,) = boxes(seen_in(order_strip("One", (action,), 8).svg))
        first, second = box["d"][1:].split("V")[0].split("L")
        return float(first.split()[1]), float(second.split()[1])

    start, end = corners(rising)
    assert end < start  # a smaller y is higher on the page
    assert corners(falling) == (end, start)


def test_left_and_right_point_apart() -> None:
    def turned(side: str) -> str:
        action = Action("travel", Fraction(4), "go", direction="sideways", side=side)
        seen = seen_in(order_strip("One", (action,), 8).svg)
        (found,) = (v for v in seen.values("g", "transform") if "rotate" in v)
        return found.split("rotate")[1]

    assert (turned("left"), turned("right")) == ("(270)", "(90)")


def test_a_long_motif_goes_on_below_and_counts_on() -> None:
    actions = tuple(Action("travel", Fraction(4), f"part {n}") for n in range(1, 7))
    seen = seen_in(order_strip("Long", actions, 8).svg)
    assert [w for w in seen.words if w.isdigit()] == ["8", "16", "24"]


def test_each_row_of_a_long_motif_says_which_counts_it_holds() -> None:
    actions = tuple(Action("travel", Fraction(4), f"part {n}") for n in range(1, 5))
    words = seen_in(order_strip("Long", actions, 8).svg).words
    assert [w for w in words if w.startswith("counts")] == ["counts 1 to 8", "counts 9 to 16"]
    short = seen_in(order_strip("Short", actions[:2], 8).svg).words
    assert not [w for w in short if w.startswith("counts")]


STATUE = (
    Action("stillness", Fraction(2), "curled", level="low"),
    Action("stillness", Fraction(1), "lean", level="middle"),
    Action("travel", Fraction(3), "steal", level="middle"),
)


def test_a_strip_that_nobody_counts_speaks_of_moves_and_not_of_counts() -> None:
    # common practice, no source: an uncounted dance goes by cues, and its moves by one another
    figure = order_strip("Statue", STATUE, None)
    assert figure.words == (
        "1. curled: twice as long as a short one, hold still, low level",
        "2. lean: short, hold still, middle level",
        "3. steal: 3 times as long as a short one, travel, middle level",
    )
    words = seen_in(figure.svg).words
    assert "a wider box lasts longer" in words
    assert not [w for w in words if w.isdigit() or "count" in w]


def test_rows_of_a_long_strip_that_nobody_counts_hold_moves() -> None:
    actions = tuple(Action("travel", Fraction(4), f"part {n}") for n in range(1, 6))
    figure = order_strip("Long", actions, None)
    words = seen_in(figure.svg).words
    assert [w for w in words if w.startswith("move")] == ["moves 1 to 2", "moves 3 to 4", "move 5"]
    assert "a wider box lasts longer" not in words
    assert figure.words[0] == "1. part 1: travel"


@pytest.mark.parametrize("slug", ["silent-statues", "improvised-weather", "reception-toys"])
def test_a_dance_is_counted_where_anything_in_it_goes_by_counts(slug: str) -> None:
    unit = check_unit(UNUSUAL, slug, {}).unit
    assert unit is not None
    assert is_counted(unit.dance) == (slug == "reception-toys")
    strips = [v.strip for v in motif_views(unit)]
    counts = [line for strip in strips for line in strip.words if re.search(r"\bcounts?\b", line)]
    assert bool(counts) == (slug == "reception-toys")


def developed(development: Development) -> Dance:
    dance = real_unit().dance
    return replace(dance, developments={development.name: development})


@pytest.mark.parametrize(
    ("development", "told"),
    [
        (
            Development("new", "wave", "change of dynamics", dynamics=("strong", "sudden")),
            ("strong, sudden",) * 4,
        ),
        (Development("new", "wave", "change of body part", body_part="elbows"), ("elbows",) * 4),
        (
            Development("new", "wave", "change of size", only=(1, 3), choice="any"),
            ("bigger or smaller", "", "bigger or smaller", ""),
        ),
        (Development("new", "wave", "retrograde"), ()),
        (Development("new", "wave", "mirror"), ()),
    ],
)
def test_what_no_box_can_show_is_said_under_the_action(
    development: Development, told: tuple[str, ...]
) -> None:
    dance = developed(development)
    assert changes_unseen(dance, "new") == told
    assert changes_unseen(dance, "wave") == ()
    actions = actions_of(dance, "new")
    figure = order_strip("New", actions, 8, told)
    drawn = seen_in(figure.svg).text()
    for change, line in zip(told, figure.words, strict=False):
        assert (f"(new: {change})" in line) == bool(change)
        assert change in drawn
    plain = seen_in(order_strip("New", actions, 8).svg).text()
    assert (drawn != plain) == bool(told)


def test_neighbours_that_share_a_change_share_its_word() -> None:
    actions = tuple(Action("travel", Fraction(2), word) for word in ("go", "run", "hop", "sit"))
    drawn = seen_in(order_strip("One", actions, 8, ("light", "light", "", "strong")).svg)
    assert [w for w in drawn.words if w in ("light", "strong")] == ["light", "strong"]


def test_a_word_too_long_for_its_box_is_squeezed_into_it() -> None:
    action = Action("jump", Fraction(1), "somersaultingly splendid")
    seen = seen_in(order_strip("One", (action,), 8).svg)
    (squeezed,) = (a for _, a in seen.elements if "textlength" in a)
    assert float(squeezed["textlength"]) < text_width("somersaultingly splendid")


def test_words_are_broken_between_words_and_cut_only_past_the_last_line() -> None:
    words = "The tide turns and the sea comes home again"
    lines = wrapped(words, 100, most=9)
    assert " ".join(lines) == words
    assert all(text_width(line) <= 100 for line in lines)
    assert wrapped(words, 100, most=2)[-1].endswith("…")


def test_blanks_are_named_for_what_pupils_choose() -> None:
    """Boxes without a word would leave a reader to guess what goes in them."""
    units = {unit.slug: unit.dance for unit in whole_bank().units}
    told = changes_unseen(units["magnets"], "our-own")
    assert set(told) == {
        "pupils choose: the one thing that changes in your four's own variation of the theme"
    }
    home = changes_unseen(units["magnets"], "our-own-home")
    assert set(home) == set(told), "what is made from it has the same blanks"
    for dance in units.values():
        for name in (*dance.motifs, *dance.developments):
            blanks = [action.kind == OPEN for action in drawn_actions(dance, name)]
            if any(blanks):
                told = changes_unseen(dance, name)
                assert [one.startswith("pupils choose: ") for one in told] == blanks
