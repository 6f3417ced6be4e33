"""Pictures of bodies: small, the same each time, told in words, and no two moves alike."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from dataclasses import replace
from fractions import Fraction
from itertools import combinations
from pathlib import Path

import pytest
from hypothesis import given

from build_tools.body.poses import BODIES, moved
from build_tools.body.ranges import beyond
from build_tools.body.skeleton import skeleton
from build_tools.model.dance import Action
from build_tools.views.diagrams.body_figure import HEIGHT, body_figure, figure_of
from tests.body.strategies import bodies, joined, published

MOST_BYTES = 1500
SEEN = ("strong", "light", "sudden", "sustained", "indirect", "free", "bound")
"""What shows where nothing moves; direct is how a move goes that is none of these."""
TITLE = re.compile(r"<title>.*?</title>")


@given(joined, bodies)
def test_each_picture_is_whole_and_within_its_frame(
    pair: tuple[Action, Action | None], body: str
) -> None:
    drawn = ET.fromstring(figure_of(*pair, body))
    _, _, width, height = map(float, drawn.attrib["viewBox"].split())
    assert height == HEIGHT
    assert 20 < width < 420
    for path in drawn.iter("path"):
        x, y = map(float, re.findall(r"-?[\d.]+", path.attrib["d"])[:2])
        assert -6 <= x <= width + 6
        assert -148 <= y <= 4


@pytest.mark.parametrize("body", BODIES)
def test_each_published_picture_is_small(body: str) -> None:
    for action, before in published():
        drawn = figure_of(action, before, body)
        symbol = drawn[drawn.index("<g") : drawn.rindex("</svg>")]
        assert len(symbol) <= MOST_BYTES, (action.word, body, len(symbol))


@given(joined, bodies)
def test_the_words_say_who_and_what(pair: tuple[Action, Action | None], body: str) -> None:
    figure = body_figure(*pair, body)
    assert figure.title == figure.words[0]
    assert figure.title[0].isupper()
    assert "None" not in figure.title
    assert ("wheelchair" in figure.title) == (body == "wheels")
    assert f"<title>{figure.title}</title>" in figure.svg


@pytest.mark.parametrize("body", BODIES)
def test_no_two_moves_of_a_published_motif_look_alike(body: str) -> None:
    """But two that say the same: over and under are one move, there and back again."""
    seen: dict[str, Action] = {}
    for action, before in published():
        if before is None:
            seen = {}
        drawn = TITLE.sub("", figure_of(action, before, body))
        other = seen.setdefault(drawn, action)
        same = (other.kind, other.level, other.direction) == (
            action.kind,
            action.level,
            action.direction,
        )
        assert other is action or same, (other, action)


@pytest.mark.parametrize("pair", list(combinations(SEEN, 2)), ids=" and ".join)
def test_feels_look_unlike_in_a_still_picture(pair: tuple[str, str]) -> None:
    one, other = (
        figure_of(Action("gesture", Fraction(2), level="low to high", dynamics=(feel,)))
        for feel in pair
    )
    assert TITLE.sub("", one) != TITLE.sub("", other)


def test_a_picture_is_the_same_at_each_drawing() -> None:
    """Byte for byte, as it was when somebody last looked at it and found it good."""
    kept = Path(__file__).with_name("body_break.svg").read_text(encoding="utf-8")
    action = Action("jump", Fraction(2), "break", level="high", size="big", dynamics=("strong",))
    assert figure_of(action) == kept.strip()


def _way_drawn(svg: str) -> list[tuple[float, float]]:
    """The points of the arrow's line, without its head."""
    drawn = next(
        one.attrib["d"] for one in ET.fromstring(svg).iter("path") if one.get("class") == "way"
    )
    first = re.split(r"(?<=\d)M", drawn)[0]
    found, (x, y) = [], (0.0, 0.0)
    for letter, numbers in re.findall(r"([MLl])([^MLl]*)", first):
        values = list(map(float, re.findall(r"-?\d*\.?\d+", numbers)))
        for dx, dy in zip(values[::2], values[1::2], strict=True):
            x, y = (x + dx, y + dy) if letter == "l" else (dx, dy)
            found.append((x, y))
    return found


@pytest.mark.parametrize("feel", [(), ("light",), ("indirect", "light")])
def test_a_curved_way_is_one_bend(feel: tuple[str, ...]) -> None:
    """The path over the floor has one, to one side (`paths/legs.py`); the arrow was an S."""
    action = Action("travel", Fraction(4), direction="forwards", pathway="curved", dynamics=feel)
    points = _way_drawn(figure_of(action))
    start, end = points[0], points[-1]
    aside = [
        (end[0] - start[0]) * (y - start[1]) - (end[1] - start[1]) * (x - start[0])
        for x, y in points[1:-1]
    ]
    assert max(map(abs, aside)) > 1
    assert all(one < 0 for one in aside) or all(one > 0 for one in aside)


@pytest.mark.parametrize("side", ["left", "right"])
def test_arms_that_go_up_diagonally_go_up_on_a_slant_to_their_side(side: str) -> None:
    """Both hands end higher and further to that side than the head; they went straight up."""
    up = Action(
        "gesture", Fraction(2), level="low to high", direction="diagonal", side=side,
        body_part="arms",
    )  # fmt: skip
    straight = Action("gesture", Fraction(2), level="low to high", direction="up", body_part="arms")
    body = skeleton(moved(up).shown)
    sign = -1 if side == "left" else 1
    for arm in (body.right_arm, body.left_arm):
        assert arm.tip.y > body.head.y
    middle = (body.right_arm.tip.x + body.left_arm.tip.x) / 2
    assert sign * (middle - body.pelvis.x) > 0.25
    assert not beyond(body)
    points = _way_drawn(figure_of(up))
    assert sign * (points[-1][0] - points[0][0]) > 5
    assert points[-1][1] < points[0][1]
    assert abs(_way_drawn(figure_of(straight))[-1][0] - _way_drawn(figure_of(straight))[0][0]) < 1


@pytest.mark.parametrize(
    "action",
    [
        Action("gesture", Fraction(4), level="low to high"),
        Action("travel", Fraction(4), level="middle", direction="forwards", steps=Fraction(3)),
        Action("travel", Fraction(4), direction="forwards", pathway="curved", steps=Fraction(3)),
        Action("travel", Fraction(4), direction="backwards", steps=Fraction(1)),
        Action("turn", Fraction(4), side="left", turn_by="half"),
        Action("gesture", Fraction(4), "lean", level="middle", direction="forwards"),
        Action("transfer", Fraction(4), "sink", level="high to low"),
    ],
)
def test_slow_held_back_and_free_have_each_a_mark_of_its_own(action: Action) -> None:
    """A reader who never danced took all three for an ordinary pace in 67 figures: slow is dots,
    held back a bar across the way, one straight line more, and free a curl, one arc more."""

    def strokes(feel: tuple[str, ...]) -> tuple[bool, int, int]:
        drawn = figure_of(replace(action, dynamics=feel))
        ways = "".join(re.findall(r'<path d="([^"]*)" class="way"', drawn))
        return "stroke-dasharray" in drawn, ways.count("M"), ways.count("a4.5")

    plain, slow, held, free = (
        strokes(feel) for feel in ((), ("sustained",), ("bound",), ("free",))
    )
    assert (plain[0], slow[0], held[0], free[0]) == (False, True, False, False)
    assert held[1] == plain[1] + 1
    assert free[1] == plain[1] + 1
    assert (plain[2], held[2], free[2]) == (0, 0, 1)
