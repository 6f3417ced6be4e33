"""Tidied files: the same to every reader of YAML, nothing lost, twice the same as once.

Held to two libraries: PyYAML (YAML 1.1) and ruamel.yaml (YAML 1.2).
"""

from __future__ import annotations

import json
import random
import re
import string
from pathlib import Path
from typing import Any

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st
from ruamel.yaml import YAML

from build_tools.problem import Problem
from build_tools.schema_check.check import check_document
from build_tools.shapes.shape import shape_of
from build_tools.source.front_matter import Document, kind_of_file, read_data, read_markdown
from build_tools.source.front_matter_split import Split, split
from build_tools.source.said_once.in_full import in_full
from build_tools.source.tidy import NotTidied, Tidied, as_every_program_reads_it, tidied
from build_tools.source.typed.rows import spread
from tests.source.typed.slipping import slipped
from tests.support.banks import CONTENT, LOOKED_AT, ROOT

BASE = ROOT / "tests" / "rules" / "base"
FILES = [
    path
    for folder in (CONTENT, BASE)
    for path in sorted([*folder.glob("units/*/*.md"), *folder.rglob("*.yml")])
    if kind_of_file(path.name)
]
FEW, MANY = 15, 5_000
LESSON = (BASE / "units" / "paper-boats" / "lesson-1.md").read_text(encoding="utf-8")


def read(name: str, text: str) -> Document:
    found = (read_data if name.endswith(".yml") else read_markdown)(name, text.encode())
    assert isinstance(found, Document), found
    return found


def by_libraries(name: str, text: str) -> Any:
    """The fields as both libraries read them, which is alike."""
    halves = split(text)
    fields = halves.fields if isinstance(halves, Split) and name.endswith(".md") else text
    one = yaml.safe_load(fields)
    other = YAML(typ="safe", pure=True).load(fields)
    assert json.dumps(one) == json.dumps(other)
    return one


def made_tidy(name: str, text: str) -> str:
    made = tidied(name, text.encode())
    assert isinstance(made, Tidied), made
    return made.text


def holds(name: str, text: str) -> None:
    """Every law of tidying, of one text that can be read."""
    before = read(name, text)
    made = made_tidy(name, text)
    after = read(name, made)
    assert after.data == before.data
    assert after.body == before.body
    assert after.guesses == ()
    plain, kind = by_libraries(name, made), kind_of_file(name)
    assert kind is not None
    fields = spread(plain).data if name == "unit.md" else plain
    assert in_full(fields, kind, name) == before.data
    assert made_tidy(name, made) == made


def later(path: Path) -> bool:
    """Whether a file is left to the long run: one of a unit that is not looked at closely."""
    return path.is_relative_to(CONTENT / "units") and path.parent.name not in LOOKED_AT


@pytest.mark.parametrize(
    "path",
    [
        pytest.param(
            path,
            marks=pytest.mark.thorough if later(path) else (),
            id=f"{path.parent.name}/{path.name}",
        )
        for path in FILES
    ],
)
def test_every_file_of_ours(path: Path) -> None:
    holds(path.name, path.read_text(encoding="utf-8"))


# A tab, quotation marks, signs of YAML, letters beyond the first plane, marks that combine.
SIGNS = (
    string.ascii_letters
    + string.digits
    + " :#-'\"[]{}|>&*!%@`,?~=\\/.()_ äÉ’“”\u00a0\u0301ßšŵ日本😀"
)
texts = st.one_of(
    st.text(SIGNS, min_size=1, max_size=60),
    st.text(
        st.characters(exclude_categories=["Cc", "Cs", "Zl", "Zp", "Cf", "Cn"]),
        min_size=1,
        max_size=60,
    ),
    st.sampled_from(["yes", "no", "012", "1e3", "3:45", "2026-11-25", "~", "0x1F", "1_000", ".5"]),
)


def _typed(text: str) -> str:
    """Words as a hand types them after a colon: no spaces round them, no marks round the whole."""
    return text.strip()


@given(texts)
def test_what_is_typed_in_a_text_is_what_is_read(text: str) -> None:
    typed = _typed(text)
    whole_in_marks = typed[:1] in "\"'“‘„«" or re.match(r"[|>][-+0-9]*( +#.*)?$", typed)
    if not typed or whole_in_marks or typed.startswith("<"):
        return
    typed_lesson = LESSON.replace("look_for: Sharp edges.", f"look_for: {typed}")
    found = read_markdown("lesson-1.md", typed_lesson.encode())
    if isinstance(found, list):
        assert {p.rule for p in found} <= {"raw-html", "hidden-character"}, found
        return
    assert found.data["steps"][1]["look_for"] == typed
    holds("lesson-1.md", typed_lesson)


def test_a_text_in_marks_is_what_is_between_them() -> None:
    for typed, meant in (('"Go: low"', "Go: low"), ("'It''s #1'", "It's #1"), ("“a: b”", "a: b")):
        text = LESSON.replace("Sharp edges.", typed)
        assert read("lesson-1.md", text).data["steps"][1]["look_for"] == meant
        holds("lesson-1.md", text)


def misshapen(file: str, text: str) -> list[Problem]:
    """What the schema says of a file that was read all the same."""
    kind = kind_of_file(file)
    assert kind is not None
    return check_document(read(file, text), kind)


def test_slips_are_tidied_with_every_word(thorough: bool) -> None:
    choose = random.Random(20_261_129)
    done = 0
    for number in range(MANY if thorough else FEW):
        path = FILES[number % len(FILES)]
        if path.suffix != ".md":
            continue
        halves = split(path.read_text(encoding="utf-8"))
        assert isinstance(halves, Split)
        text = f"---\n{slipped(halves.fields, (), choose)}---\n{halves.body}"
        made = tidied(path.name, text.encode())
        if isinstance(made, NotTidied):
            assert made.problems or misshapen(path.name, text), (number, made.reason)
            continue
        holds(path.name, text)
        done += 1
    assert done > FEW // 4


REMARKS = LESSON.replace(
    "collect: [A drum]", "# what to bring\ncollect:   # soon\n  # first\n  - A drum\n\n\n"
).replace("minutes: 40", "minutes: 40  # the whole slot")


def test_remarks_stay_where_they_are() -> None:
    made = made_tidy("lesson-1.md", REMARKS)
    assert "# what to bring\ncollect:  # soon\n  # first\n  - A drum\n\nsteps:" in made
    assert "minutes: 40  # the whole slot\n" in made
    assert made_tidy("lesson-1.md", made) == made


def test_a_file_with_a_fault_is_left() -> None:
    made = tidied(
        "lesson-1.md", LESSON.replace("    task: Rock", "    // ask\n    task: Rock").encode()
    )
    assert isinstance(made, NotTidied)
    assert made.problems


def test_a_file_that_is_none_of_a_banks_is_left() -> None:
    assert isinstance(tidied("notes.md", b"---\na: 1\n---\n"), NotTidied)
    assert shape_of("lesson").takes == "fields"


def test_only_what_yaml_reads_otherwise_is_sent_in_another_form() -> None:
    plain = LESSON.encode()
    assert as_every_program_reads_it("lesson-1.md", plain) == plain
    typed = LESSON.replace("Sharp edges.", "Card #1: sharp.").encode()
    sent = as_every_program_reads_it("lesson-1.md", typed).decode()
    assert by_libraries("lesson-1.md", sent)["steps"][1]["look_for"] == "Card #1: sharp."


def test_a_remark_behind_the_sign_of_a_folded_text_stays() -> None:
    raw = b"---\ntitle: A\nsummary: >- # why so short\n  Words\n  and more.\n---\n"
    made = tidied("unit.md", raw)
    assert isinstance(made, Tidied)
    assert "# why so short" in made.text
    assert "Words and more." in made.text


FOCUS = re.search(r"^focus: .*$", LESSON, re.MULTILINE)


@pytest.mark.parametrize(
    "typed",
    [
        'focus: "A long one that\ngoes on here."',
        "focus: 'A long one, it''s\nso.'",
        'focus: "A long one that\n\ngoes on after an empty line."',
        'focus: "A long one that\ngoes on: here."',
        'focus: "A long one that\ntitle: is a field elsewhere."',
        'focus: "A long one that\n- looks like a list."',
        'focus: "A long one that\n# looks like a remark."',
        'focus: "A long one that\ngoes on."  # her remark',
    ],
)
def test_a_text_in_quotation_marks_may_go_on_at_the_very_beginning_of_a_line(typed: str) -> None:
    """YAML 1.2.2, 7.3.1 and 7.4: at the outermost level a quoted text needs no indent."""
    assert FOCUS is not None
    text = LESSON.replace(FOCUS.group(), typed)
    # a number sign is looked at again, in case it stands in a text
    assert read("lesson-1.md", text).kind == ("lesson" if "# her remark" in typed else None)
    holds("lesson-1.md", text)
    assert ("# her remark" in made_tidy("lesson-1.md", text)) == ("# her remark" in typed)


def test_where_yaml_reads_on_in_no_file_a_quoted_text_ends_all_the_same() -> None:
    assert FOCUS is not None
    typed = 'focus: "A long one that\ngoes on here."\nstory_so_far: Think: what was it?'
    holds("lesson-1.md", LESSON.replace(FOCUS.group(), typed))
