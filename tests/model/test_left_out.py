"""What need not be typed twice: left out, a lesson gets ready what its unit collects."""

from __future__ import annotations

import copy
from dataclasses import replace

from build_tools.checking.check_bank import check_shape
from build_tools.model.build import build_unit
from build_tools.model.unit import Unit
from build_tools.source.folder import read_unit_folder
from tests.rules.cases import BASE

FOLDER = read_unit_folder(BASE, "paper-boats")


def built(*, said: bool) -> Unit:
    """The small unit, whose lessons say what the unit collects once more, or say nothing of it."""
    assert FOLDER.unit is not None
    lessons = []
    for lesson in FOLDER.lessons:
        data = copy.deepcopy(lesson.data)
        data["collect"] = list(FOLDER.unit.data["kit"]["collect"])
        if not said:
            del data["collect"]
        lessons.append(replace(lesson, data=data))
    assert check_shape(replace(FOLDER, lessons=lessons)) == []
    return build_unit("paper-boats", FOLDER.unit, lessons, FOLDER.media)


def test_what_is_left_out_is_what_the_unit_collects() -> None:
    assert built(said=False).lessons == built(said=True).lessons
    assert all(lesson.collect for lesson in built(said=False).lessons)


def test_what_a_lesson_says_is_its_own() -> None:
    assert FOLDER.unit is not None
    unit = build_unit("paper-boats", FOLDER.unit, FOLDER.lessons, FOLDER.media)
    said = [tuple(lesson.data["collect"]) for lesson in FOLDER.lessons]
    assert [lesson.collect for lesson in unit.lessons] == said


def test_what_a_lesson_says_of_safety_is_not_said_again_for_every_lesson() -> None:
    assert FOLDER.unit is not None
    lines = ["The school's risk assessment comes first.", "Check the floor."]
    unit = replace(FOLDER.unit, data={**FOLDER.unit.data, "safety": lines})
    own = {**FOLDER.lessons[0].data, "safety": ["Bend the knees.", "check the  floor"]}
    lessons = [replace(FOLDER.lessons[0], data=own), *FOLDER.lessons[1:]]
    built = build_unit("paper-boats", unit, lessons, FOLDER.media).lessons[0]
    assert built.safety == ("Bend the knees.", "check the  floor", lines[0])
    assert built.standing == 1
