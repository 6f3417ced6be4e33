"""A step that goes over what another lesson made is in the grouping in which that was made."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from build_tools.checking.check_bank import check_shape
from build_tools.model.build import build_unit
from build_tools.model.lesson import Lesson
from build_tools.source.folder import read_unit_folder
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.tidy import Tidied, tidied
from tests.rules.cases import BASE

FOLDER = read_unit_folder(BASE, "paper-boats")
THIRD = FOLDER.lessons[2]
STEPS = """  - does: Walk and freeze
    minutes: 6
    intensity: steady
    task: Walk, freeze.
  - does: Dance the whirl again
    minutes: 10
    task: Dance the whirl.
    dances: B
  - does: Find another start
    minutes: 10
    task: Try three starts.
  - does: Watch the whirl
    minutes: 10
    task: Dance for the others, then swap.
    shows: B
  - does: Breathe
    minutes: 4
    task: Breathe.
"""


def third(steps: str = STEPS, who: str = "") -> tuple[Document, Lesson]:
    """The third lesson of the small unit with these steps, as it is read and as it is built."""
    text = THIRD.yaml_text
    head, rest = text.split("steps:\n")
    talk = rest[rest.index("look_and_talk:") :]
    talk = re.sub(r"\n  who: .*", who, talk)
    made = f"---\n{head}steps:\n{steps}{talk}---\n"
    document = read_markdown(THIRD.file, made.encode())
    assert isinstance(document, Document), document
    folder = replace(FOLDER, lessons=[*FOLDER.lessons[:2], document])
    assert check_shape(folder) == []
    assert folder.unit is not None
    unit = build_unit("paper-boats", folder.unit, folder.lessons, folder.media)
    return document, unit.lessons[2]


def test_what_another_lesson_made_is_danced_as_it_was_made() -> None:
    document, lesson = third()
    written = [step["grouping"] for step in document.data["steps"]]
    assert written == ["alone", "as made", "as made", "as made", "alone"]
    assert [step.grouping for step in lesson.steps] == ["alone", *["fours"] * 3, "alone"]
    assert lesson.look_and_talk is not None
    assert lesson.look_and_talk.who == "another group"


@pytest.mark.parametrize("grouping", ["alone", "pairs"])
def test_what_is_written_stands_and_is_kept(grouping: str) -> None:
    steps = STEPS.replace("    task: Try", f"    grouping: {grouping}\n    task: Try")
    document, lesson = third(steps)
    groupings = ["alone", "fours", grouping, grouping, "alone"]
    assert [step.grouping for step in lesson.steps] == groupings
    made = tidied(document.file, f"---\n{document.yaml_text}---\n".encode())
    assert isinstance(made, Tidied)
    assert made.text.count("grouping:") == 1


def test_a_grouping_that_was_written_before_goes_on() -> None:
    steps = STEPS.replace("    task: Walk", "    grouping: pairs\n    task: Walk")
    assert [step.grouping for step in third(steps)[1].steps][1] == "pairs"


def test_as_made_may_be_written() -> None:
    steps = STEPS.replace("    task: Walk", "    grouping: pairs\n    task: Walk")
    steps = steps.replace(
        "    task: Dance the whirl", "    grouping: as made\n    task: Dance the whirl"
    )
    assert [step.grouping for step in third(steps)[1].steps][1:3] == ["fours", "fours"]


def test_who_looks_may_be_written_otherwise() -> None:
    talk = third(who="\n  who: half the class")[1].look_and_talk
    assert talk is not None
    assert talk.who == "half the class"
