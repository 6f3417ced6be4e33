"""What a file means that leaves an optional field out: from one release to the next, the same.

The law: a file that is valid today means tomorrow what it means today. There is no published source
for what an omitted field means: the table below records what it has meant since format 2, and a
default that somebody gives to one of them later fails here, and has to be a field of a new format.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass, replace
from fractions import Fraction
from typing import Any

import pytest

from build_tools.checking.check_bank import check_shape
from build_tools.model.build import build_unit
from build_tools.model.unit import Unit
from build_tools.shapes.schemas import Kind
from build_tools.source.folder import UnitFolder, read_unit_folder
from build_tools.source.front_matter import Document, read_markdown
from tests.rules.cases import BASE
from tests.support.optional_fields import optional_fields, with_and_without
from tests.support.writing_yaml import write_yaml

FOLDER = read_unit_folder(BASE, "paper-boats")
ONE_LESSON = replace(FOLDER, lessons=FOLDER.lessons[:1])
NOTHING: tuple[Any, ...] = (None, (), {})
"""What nearly every omitted field means: nothing is said of it."""
MEANS: Mapping[Kind, Mapping[str, Mapping[str, Any]]] = {
    "unit": {
        # what is not said to be so is not so
        "draft": {"Unit.draft": False},
        "dance.sound.looped": {"Sound.looped": False},
        "sections.*.danced[].swap": {"Passage.swap": False},
        "sections.*.start.each_group_one_way": {"Standing.each_group_one_way": False},
        # eight counts to a phrase are usual in music for dance
        "dance.phrase": {"Dance.phrase": 8},
        # what is not said to be done again is done once
        "sections.*.danced[].times": {"Passage.times": 1},
        "motifs.*.actions[].times": {"Action.times": 1},
        # who has nothing to do yet is still
        "sections.*.danced[].others": {"Passage.others": "hold"},
        # a section sounds as the dance does that it is of
        "sections.*.sound": {"Sound.kind": "drum", "Sound.what": "A steady beat",
                             "Sound.follows": "dancers follow the sound"},
        # one side that nobody keeps free stays as near to the wall as it comes
        "sections.*.start.free.front": {"Standing.free": (("back", Fraction(1)),)},
        "sections.*.start.free.back": {"Standing.free": (("front", Fraction(1)),)},
        "sections.*.start.free.left": {"Standing.free": (("front", Fraction(1)),)},
        "sections.*.start.free.right": {"Standing.free": (("front", Fraction(1)),)},
        # a lesson has what the unit says for all besides its own
        "safety": {"Unit.safety": (), "Lesson.standing": 0, "Lesson.safety": (
            "The school's risk assessment comes first.", "Check the floor is dry and clear.")},
    },
    "lesson": {
        # a step that says no least time is not meant to be squeezed
        "steps[].least": {"Step.least": 6},
        # what is not said to be left out first is not
        "steps[].can_wait": {"Step.can_wait": False},
        # what a lesson gets ready that does not say it is what its unit collects
        "collect": {"Lesson.collect": ("One drum",)},
    },
}  # fmt: skip


def read(document: Document, data: Any) -> Document:
    found = read_markdown(document.file, f"---\n{write_yaml(data)}---\n{document.body}".encode())
    assert isinstance(found, Document), found
    return found


def built(kind: Kind, data: Any) -> Unit:
    folder: UnitFolder = ONE_LESSON
    assert folder.unit is not None
    if kind == "unit":
        folder = replace(folder, unit=read(folder.unit, data))
    else:
        folder = replace(folder, lessons=[read(folder.lessons[0], data)])
    assert folder.unit is not None
    assert check_shape(folder) == []
    return build_unit("paper-boats", folder.unit, folder.lessons, folder.media)


def told(said: Any, left: Any, where: str = "") -> Iterator[tuple[str, Any]]:
    """Where two models differ, and what the second has there."""
    if said == left and type(said) is type(left):
        return
    if is_dataclass(said) and type(said) is type(left):
        for field in fields(said):
            one, other = getattr(said, field.name), getattr(left, field.name)
            yield from told(one, other, f"{type(said).__name__}.{field.name}")
    elif isinstance(said, Mapping) and isinstance(left, Mapping) and said and left:
        for name in {**said, **left}:
            yield from told(said.get(name), left.get(name), where)
    elif isinstance(said, tuple) and len(said) == len(left or ()) and is_dataclass(said[0]):
        for one, other in zip(said, left, strict=True):
            yield from told(one, other, where)
    else:
        yield where, left


def named(path: tuple[str, ...]) -> str:
    return ".".join(path).replace(".[]", "[]")


@pytest.mark.parametrize("kind", ["unit", "lesson"])
def test_an_omitted_field_means_what_it_always_meant(kind: Kind) -> None:
    document = FOLDER.unit if kind == "unit" else FOLDER.lessons[0]
    assert document is not None
    recorded, tried = dict(MEANS[kind]), 0
    for path in optional_fields(kind):
        said, left = with_and_without(document.data, path, kind)
        found = dict(told(built(kind, said), built(kind, left)))
        assert found, f"{named(path)}: the model knows nothing of it"
        meant = recorded.pop(named(path), None)
        if meant is None:
            assert all(one in NOTHING for one in found.values()), (named(path), found)
        else:
            assert found == meant, named(path)
        tried += 1
    assert not recorded, "fields that are in no schema"
    assert tried > {"unit": 90, "lesson": 40}[kind], "the schemas were walked"
